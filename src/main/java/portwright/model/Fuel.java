package portwright.model;

/** Fuel gases. */
public enum Fuel implements Ided {
    PROPANE("propane"),
    BUTANE("butane"),
    NATURAL_GAS("natural-gas"),
    METHANE("methane");

    private final String id;

    Fuel(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
