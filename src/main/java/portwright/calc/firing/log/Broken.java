package portwright.calc.firing.log;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Failures that records found and that neither a later sound record nor a note has cleared.
 *
 * @param power record of the last failure of an element or relay, from 0; −1 for none
 * @param what what was found there; null for none
 * @param probe record of the last dead or frozen thermocouple; −1 for none
 */
public record Broken(int power, Kind what, int probe) {
    /** Nothing is broken. */
    public static final Broken NONE = new Broken(-1, null, -1);

    private static final Set<Kind> POWER =
            EnumSet.of(Kind.RELAY, Kind.STUCK, Kind.ELEMENT, Kind.ELEMENT_OR_AIR, Kind.AIR_OR_ELEMENT);
    private static final Set<Kind> PROBE = EnumSet.of(Kind.DEAD_PROBE, Kind.FROZEN);
    /** A firing of its own that gave so much of full power had all its elements. */
    private static final double SOUND_SHARE = 0.9;

    /** What is broken after one more record. */
    Broken after(int number, RecordResult r) {
        LogFinding failed = last(r, POWER, r.repairs().powerS());
        LogFinding dead = last(r, PROBE, r.repairs().probeS());
        boolean mended = !Double.isNaN(r.repairs().powerS()) || what != null && sound(r, what);
        int p = dead != null
                ? number
                : r.scaleDoubted() && Double.isNaN(r.repairs().probeS()) ? probe : -1;
        return failed != null
                ? new Broken(number, failed.kind(), p)
                : mended ? new Broken(-1, null, p) : new Broken(power, what, p);
    }

    private static LogFinding last(RecordResult r, Set<Kind> kinds, double repairedS) {
        List<LogFinding> found = r.findings().stream()
                .filter(x -> kinds.contains(x.kind()) && !(x.timeS() <= repairedS))
                .toList();
        return found.isEmpty() ? null : found.get(0);
    }

    /** Whether a record without a finding of power would have shown this one. */
    private static boolean sound(RecordResult r, Kind what) {
        if (r.findings().stream().anyMatch(x -> x.kind() == Kind.WEAK || x.kind() == Kind.MORE_POWER)) {
            return false;
        }
        if (r.own() != null) {
            return what != Kind.STUCK && r.own().mostShare() >= SOUND_SHARE;
        }
        boolean shows = what == Kind.STUCK || what == Kind.RELAY || r.smallestLoss() < 1;
        return r.reached() && shows;
    }
}
