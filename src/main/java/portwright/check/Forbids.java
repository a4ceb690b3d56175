package portwright.check;

/** What a finding forbids. */
public enum Forbids {
    DRILLING("drilling"),
    LIGHTING("lighting"),
    NOTHING(null);

    private final String id;

    Forbids(String id) {
        this.id = id;
    }

    /** Word in results; null for nothing. */
    public String id() {
        return id;
    }
}
