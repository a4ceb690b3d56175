package portwright.model;

/** How rows of bricks are laid. */
public enum Bond implements Ided {
    HALF("half"),
    STACKED("stacked");

    private final String id;

    Bond(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
