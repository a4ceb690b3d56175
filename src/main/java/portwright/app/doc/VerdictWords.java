package portwright.app.doc;

import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.Verdict;

/** The verdict of the whole design in two lines. "No stop" is the best it says. */
public record VerdictWords(Verdict sign, String count, String forbids) {
    private static final String NOT_PROVEN = "drilling and lighting not proven yet";

    /** The verdict as far as it is known: before the first whole check, and after one that was called off, less than a stop stays open. */
    public static VerdictWords of(Document doc) {
        int unread = doc.unread().all().size();
        VerdictWords known = of(doc.result(), unread, FindingOrder.unchecked(doc));
        if (doc.stopped() && known.sign() != Verdict.STOP) {
            return new VerdictWords(Verdict.INCOMPLETE, "check called off", unread == 0 ? NOT_PROVEN : known.forbids());
        }
        return doc.waiting() && !doc.stopped()
                ? new VerdictWords(Verdict.INCOMPLETE, "checking", "gas, room and firing follow")
                : known;
    }

    /**
     * The worse of the two verdicts, with what it forbids; {@code unread} fields hold something that cannot be read: nothing is proven then, and what
     * was found for the last good values is still counted.
     */
    static VerdictWords of(CheckResult r, int unread, String unchecked) {
        VerdictWords read = of(r, unchecked);
        if (unread == 0) {
            return read;
        }
        String fields = unread + (unread == 1 ? " field unreadable" : " fields unreadable");
        return read.sign() == Verdict.STOP
                ? new VerdictWords(Verdict.STOP, read.count() + ", " + fields, unproven(read.forbids()))
                : new VerdictWords(
                        Verdict.INCOMPLETE,
                        read.sign() == Verdict.CLEAR ? fields : fields + ", " + read.count(),
                        unread == 1
                                ? "not proven; nothing prints until it is mended"
                                : "not proven; nothing prints until they are mended");
    }

    /** What a stop forbids while a field is unreadable: nothing is allowed then. */
    private static String unproven(String forbids) {
        return forbids.replace("drilling allowed", "drilling not proven");
    }

    /**
     * The worse of the two verdicts, with what it forbids.
     *
     * @param unchecked what stands open on the tiles of the steps, as {@link FindingOrder#unchecked} words it; empty for nothing
     */
    static VerdictWords of(CheckResult r, String unchecked) {
        long stops = r.count(Severity.STOP);
        long drill = r.stops(Forbids.DRILLING);
        long light = r.stops(Forbids.LIGHTING);
        if (stops > 0) {
            String what = drill > 0 && light > 0
                    ? "do not drill, do not light"
                    : drill > 0
                            ? "do not drill yet"
                            : light > 0 ? "do not light; drilling " + allowed(r.drilling()) : "read the slip";
            return new VerdictWords(Verdict.STOP, stops + (stops == 1 ? " stop" : " stops"), what);
        }
        if (r.drilling() == Verdict.INCOMPLETE || r.lighting() == Verdict.INCOMPLETE) {
            long n = r.unchecked();
            String what =
                    r.drilling() == Verdict.INCOMPLETE ? NOT_PROVEN : "no stop for drilling; lighting not proven yet";
            return new VerdictWords(Verdict.INCOMPLETE, n + " not checked", what);
        }
        long cautions = r.count(Severity.CAUTION);
        if (cautions > 0) {
            return new VerdictWords(
                    Verdict.CAUTION,
                    cautions + (cautions == 1 ? " caution" : " cautions"),
                    unchecked.isEmpty()
                            ? "no stop: go on knowingly"
                            : "no stop, and " + unchecked + ": go on knowingly");
        }
        if (!unchecked.isEmpty()) {
            return new VerdictWords(Verdict.INCOMPLETE, "no stop", unchecked);
        }
        return new VerdictWords(Verdict.CLEAR, "no stop", "every rule was checked");
    }

    private static String allowed(Verdict drilling) {
        return drilling == Verdict.INCOMPLETE ? "not all checked" : "allowed";
    }
}
