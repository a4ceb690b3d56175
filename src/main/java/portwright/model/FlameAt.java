package portwright.model;

/** Where the flame burns. */
public enum FlameAt implements Ided {
    CHAMBER("chamber"),
    HOLE("hole"),
    BELOW("below");

    private final String id;

    FlameAt(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
