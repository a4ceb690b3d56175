package portwright.check;

/** Verdict on one purpose, worst first. Never says "safe". */
public enum Verdict {
    STOP("stop"),
    INCOMPLETE("incomplete"),
    CAUTION("caution"),
    CLEAR("clear");

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
