package portwright.check;

/** How grave a finding is. */
public enum Severity {
    STOP("stop"),
    CAUTION("caution"),
    NOTE("note");

    private final String id;

    Severity(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
