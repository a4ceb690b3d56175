package portwright.model;

/** Fuel gases. */
public enum Fuel implements Ided {
    PROPANE("propane"),
    BUTANE("butane"),
    /** A mix as sold in cylinders; its shares stand in {@code supply.cylinder.propane}. */
    PROPANE_BUTANE("propane-butane"),
    NATURAL_GAS("natural-gas"),
    METHANE("methane");

    private final String id;

    /** Whether it comes from the mains; the others are kept in cylinders. */
    public boolean mains() {
        return this == NATURAL_GAS || this == METHANE;
    }

    Fuel(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
