package portwright.model;

/** Fuel gases. */
public enum Fuel implements Ided {
    PROPANE("propane", From.CYLINDER, true, false),
    BUTANE("butane", From.CYLINDER, true, false),
    /** A mix as sold in cylinders; its shares stand in {@code supply.cylinder.propane}. */
    PROPANE_BUTANE("propane-butane", From.CYLINDER, true, false),
    NATURAL_GAS("natural-gas", From.PIPE, false, true),
    METHANE("methane", From.PIPE, false, true);

    private enum From {
        /** Kept liquid; wants a row in {@code lp_gases.csv}. */
        CYLINDER,
        /** From the mains or a works of its own; no cylinder goes with it. */
        PIPE
    }

    private final String id;
    private final From from;
    private final boolean sinks;
    private final boolean stated;

    /**
     * @param sinks see {@link #sinks}
     * @param stated see {@link #statedBySupplier}
     */
    Fuel(String id, From from, boolean sinks, boolean stated) {
        this.id = id;
        this.from = from;
        this.sinks = sinks;
        this.stated = stated;
    }

    /** Whether it comes from a cylinder; every other comes by pipe. */
    public boolean bottled() {
        return from == From.CYLINDER;
    }

    /** Whether it is heavier than air at the same temperature: what leaks gathers on the floor and in hollows. */
    public boolean sinks() {
        return sinks;
    }

    /** Whether a supplier's heat and density describe it: only a gas that is mostly methane, with ethane and nitrogen. */
    public boolean statedBySupplier() {
        return stated;
    }

    @Override
    public String id() {
        return id;
    }
}
