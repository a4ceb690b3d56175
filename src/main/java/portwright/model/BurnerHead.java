package portwright.model;

/** Burner heads, by how much jet momentum reaches the hole. */
public enum BurnerHead implements Ided {
    PORTED("ported"),
    VENTURI("venturi"),
    BARE("bare");

    private final String id;

    BurnerHead(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
