package portwright.model;

/** Plan shapes of kiln shelves. */
public enum ShelfShape implements Ided {
    ROUND("round"),
    HALF("half"),
    POLYGON("polygon"),
    RECTANGLE("rectangle");

    private final String id;

    ShelfShape(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
