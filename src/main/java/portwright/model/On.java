package portwright.model;

/** The part of the kiln that something sits on. */
public enum On implements Ided {
    FLOOR("floor"),
    WALL("wall"),
    LID("lid");

    private final String id;

    On(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
