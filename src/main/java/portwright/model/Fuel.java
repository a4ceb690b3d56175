package portwright.model;

/** Fuel gases. */
public enum Fuel implements Ided {
    PROPANE("propane", From.CYLINDER, false),
    BUTANE("butane", From.CYLINDER, false),
    /** A mix as sold in cylinders; its shares stand in {@code supply.cylinder.propane}. */
    PROPANE_BUTANE("propane-butane", From.CYLINDER, false),
    NATURAL_GAS("natural-gas", From.PIPE, true),
    METHANE("methane", From.PIPE, true);

    private enum From {
        /** Kept liquid; wants a row in {@code lp_gases.csv}. */
        CYLINDER,
        /** From the mains or a works of its own; no cylinder goes with it. */
        PIPE
    }

    private final String id;
    private final From from;
    private final boolean stated;

    /** @param stated see {@link #statedBySupplier} */
    Fuel(String id, From from, boolean stated) {
        this.id = id;
        this.from = from;
        this.stated = stated;
    }

    /** Whether it comes from a cylinder; every other comes by pipe. */
    public boolean bottled() {
        return from == From.CYLINDER;
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
