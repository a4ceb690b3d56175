package portwright.model;

/** The user's own unit system, for display. */
public enum UnitSystem implements Ided {
    INCH("inch"),
    METRIC("metric");

    private final String id;

    UnitSystem(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
