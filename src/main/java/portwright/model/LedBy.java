package portwright.model;

/** What leads flue gas outdoors: a tight pipe on the flues with a draught of its own, or a hood over the lid. */
public enum LedBy implements Ided {
    PIPE("pipe"),
    HOOD("hood");

    private final String id;

    LedBy(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
