package portwright.report;

import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.Verdict;

/** A verdict in words, the same wherever it is told as text; it never calms about what was not checked. */
public final class VerdictLine {
    private VerdictLine() {}

    /** {@code Drilling: no stop, 2 cautions.} */
    public static String drilling(CheckResult r) {
        return "Drilling: " + words(r, Forbids.DRILLING, r.drilling(), "Do not drill");
    }

    /** {@code Lighting: STOP. Do not light: 1 stop.} */
    public static String lighting(CheckResult r) {
        return "Lighting: " + words(r, Forbids.LIGHTING, r.lighting(), "Do not light");
    }

    private static String words(CheckResult r, Forbids purpose, Verdict v, String stop) {
        return switch (v) {
            case STOP -> "STOP. " + stop + ": " + count(r.stops(purpose), "stop") + ".";
            case INCOMPLETE ->
                "INCOMPLETE. No stop found, but " + count(r.unchecked(purpose), "rule") + " could not be checked.";
            case CAUTION, CLEAR ->
                "no stop, "
                        + (r.cautions(purpose) == 0 ? "no caution" : count(r.cautions(purpose), "caution"))
                        + (r.notChecked().stream().anyMatch(n -> n.forbids() == Forbids.NOTHING)
                                ? " in what was checked."
                                : ".");
        };
    }

    /** {@code 1 stop}, {@code 2 stops}. */
    public static String count(long n, String word) {
        return n + " " + word + (n == 1 ? "" : "s");
    }
}
