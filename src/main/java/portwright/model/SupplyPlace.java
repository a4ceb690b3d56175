package portwright.model;

/** Where the cylinder stands. */
public enum SupplyPlace implements Ided {
    OUTDOORS("outdoors"),
    INDOORS("indoors"),
    BASEMENT("basement"),
    PIT("pit");

    private final String id;

    SupplyPlace(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
