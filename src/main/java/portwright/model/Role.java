package portwright.model;

/** What a port is for. */
public enum Role implements Ided {
    INLET("inlet"),
    FLUE("flue");

    private final String id;

    Role(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
