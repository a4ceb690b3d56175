package portwright.model;

/** What heats the kiln in a step. */
public enum Heat implements Ided {
    ELECTRIC("electric"),
    GAS("gas"),
    BOTH("both"),
    NONE("none");

    private final String id;

    Heat(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
