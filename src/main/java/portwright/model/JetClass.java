package portwright.model;

/** How a jet was made. */
public enum JetClass implements Ided {
    FACTORY("factory"),
    DRILLED("drilled"),
    SHEET("sheet");

    private final String id;

    JetClass(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
