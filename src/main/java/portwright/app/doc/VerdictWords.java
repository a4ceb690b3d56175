package portwright.app.doc;

import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.Verdict;

/** The verdict of the whole design in two lines. "No stop" is the best it says. */
public record VerdictWords(Verdict sign, String count, String forbids) {
    /** The verdict as far as it is known: before the first whole check, and after one that was called off, less than a stop stays open. */
    public static VerdictWords of(Document doc) {
        VerdictWords known = of(doc.result(), doc.unread().all().size());
        if (doc.stopped() && known.sign() != Verdict.STOP) {
            return new VerdictWords(Verdict.INCOMPLETE, "check called off", "drilling and lighting stay open");
        }
        return doc.waiting() && !doc.stopped()
                ? new VerdictWords(Verdict.INCOMPLETE, "checking", "gas, room and firing follow")
                : known;
    }

    /** The worse of the two verdicts, with what it forbids; {@code unread} fields hold something that cannot be read, so that less than a stop stays open. */
    static VerdictWords of(CheckResult r, int unread) {
        VerdictWords read = of(r);
        return unread == 0 || read.sign() == Verdict.STOP
                ? read
                : new VerdictWords(
                        Verdict.INCOMPLETE,
                        unread + (unread == 1 ? " field unreadable" : " fields unreadable"),
                        "drilling and lighting stay open");
    }

    /** The worse of the two verdicts, with what it forbids. */
    static VerdictWords of(CheckResult r) {
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
            long n = r.notChecked().stream().map(x -> x.rule()).distinct().count();
            String what = r.drilling() == Verdict.INCOMPLETE
                    ? "drilling and lighting stay open"
                    : "no stop for drilling; lighting stays open";
            return new VerdictWords(Verdict.INCOMPLETE, n + " not checked", what);
        }
        long cautions = r.count(Severity.CAUTION);
        if (cautions > 0) {
            return new VerdictWords(
                    Verdict.CAUTION, cautions + (cautions == 1 ? " caution" : " cautions"), "no stop: go on knowingly");
        }
        return new VerdictWords(Verdict.CLEAR, "no stop", "every rule was checked");
    }

    private static String allowed(Verdict drilling) {
        return drilling == Verdict.INCOMPLETE ? "not all checked" : "allowed";
    }
}
