package portwright.model;

/** A duct between an opening and what it leads to. */
public enum Duct implements Ided {
    VERTICAL("vertical"),
    HORIZONTAL("horizontal");

    private final String id;

    Duct(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
