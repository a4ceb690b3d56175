package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Power that is missing wherever the steps ask for a known power, from the start or since a time between two such. Loss and load are known to ±20 % at best, so that less than
 * a quarter is a note; more is a circuit that is out, and a few minutes at known power are enough to tell it.
 */
final class FromTheStart {
    static final double WEAK = 0.17;
    /** Missing beyond what loss, load and voltage can explain together: a circuit is out. */
    static final double CIRCUIT = 0.24;

    private static final int LEAST = 4;
    private static final int CIRCUIT_LEAST = 2;
    /** One of fewer readings may be wrong and be all there is to it. */
    private static final int LEAST_ROWS = 4;

    private static final double WARM_K = 473.15;
    /** In place of an interval: so from the first that tells; and when it began is not known. */
    private static final int START = -1;

    private static final int UNKNOWN = -2;

    private FromTheStart() {}

    /** The finding of intervals before an end; null for none. */
    static LogFinding of(Followed f, int end) {
        double full = f.c.kiln().elements().fullW();
        List<Integer> told = new ArrayList<>();
        for (int i = 0; i < end; i++) {
            if (!Double.isNaN(f.asked[i])) {
                told.add(i);
            }
        }
        if (told.size() < CIRCUIT_LEAST || fewRows(f, told)) {
            return null;
        }
        List<Integer> decides = decides(f, told);
        boolean led = f.gasOn(decides.get(0)) && led(f.c.steps().get(f.tracker.step[decides.get(0)]));
        double m = missing(f, told);
        int sound = led ? UNKNOWN : m < CIRCUIT ? START : soundUntil(f, told, decides);
        List<Integer> since = sound == UNKNOWN ? mostTold(f, told) : told.subList(sound + 1, told.size());
        int first = first(f, sound == START ? seen(f, told, decides) : since);
        double before = sound == START ? JustBefore.soundS(f, told.get(0), m) : Double.NaN;
        boolean change = m > WEAK && told.size() >= LEAST && before > 0;
        if ((m >= CIRCUIT || change) && first >= 0) {
            double share = share(f, since);
            boolean air = !f.damperLogged && f.gasOn(first(f, since));
            LogFinding found = new LogFinding(
                    air ? Kind.ELEMENT_OR_AIR : Kind.ELEMENT,
                    f.grid.timeS()[first],
                    f.grid.kelvin()[first],
                    share * f.asked[first],
                    Double.NaN,
                    false,
                    f.offsets.isEmpty());
            found = air ? found : found.ofElements(share, full);
            found = !air && asWellByAir(f, since) ? found.orByAir() : found;
            if (sound == UNKNOWN) {
                return found.soundUntil(0);
            }
            if (sound == START) {
                return before > 0 ? found.soundUntil(before) : found.fromTheStart();
            }
            return found.soundUntil(Math.max(0, f.grid.timeS()[told.get(sound)] - f.grid.reachS()[told.get(sound)]));
        }
        return m > WEAK && told.size() >= LEAST
                ? new LogFinding(Kind.WEAK, 0, Double.NaN, Double.NaN, Double.NaN, false, f.offsets.isEmpty())
                        .ofElements(share(f, told), full)
                : null;
    }

    /** Whether the intervals all rest on the same two or three readings, far apart: they tell no more than these do, and one of them may be wrong. */
    private static boolean fewRows(Followed f, List<Integer> told) {
        Set<LogRow> rows = new HashSet<>();
        boolean seldom = false;
        for (int i : told) {
            seldom |= f.grid.reachS()[i] > Grid.HALF_S;
            for (int k = i; k <= i + 1; k++) {
                double from = f.grid.timeS()[k] - f.grid.backS()[k];
                double to = f.grid.timeS()[k] + f.grid.aheadS()[k];
                f.c.log().readings().stream()
                        .filter(r -> r.timeS() >= from - 1 && r.timeS() <= to + 1)
                        .forEach(rows::add);
            }
        }
        return seldom && rows.size() < LEAST_ROWS;
    }

    /**
     * The intervals of the first step at known power, which tells whether it was so from the start. A controller's step asks full power where the kiln
     * has fallen behind; so few of them that noise may be all there is to it decide nothing, unless no step has more.
     */
    private static List<Integer> decides(Followed f, List<Integer> told) {
        for (int i : told) {
            List<Integer> in = of(f, told, f.tracker.step[i]);
            if (in.size() >= LEAST) {
                return in;
            }
        }
        return of(f, told, f.tracker.step[told.get(0)]);
    }

    /** Where a loss that was there from the start is seen: from the first step that tells on, or where most is told if no step tells enough. */
    private static List<Integer> seen(Followed f, List<Integer> told, List<Integer> decides) {
        return decides.size() < LEAST
                ? mostTold(f, told)
                : told.stream().filter(i -> i >= decides.get(0)).toList();
    }

    /**
     * Place of the last interval that shows no such loss, where the first step at known power does not show it: of all places the one that parts the
     * missing power best into two levels, {@link #UNKNOWN} without any; {@link #START} where that step does show it.
     */
    private static int soundUntil(Followed f, List<Integer> told, List<Integer> decides) {
        if (missing(f, decides) >= CIRCUIT) {
            return START;
        }
        double[] m = told.stream().mapToDouble(i -> f.missing(i, true)).toArray();
        int best = UNKNOWN;
        double most = 0;
        for (int k = 1; k < m.length; k++) {
            double before = Arrays.stream(m, 0, k).average().orElseThrow();
            double after = Arrays.stream(m, k, m.length).average().orElseThrow();
            double parts = (after - before) * (after - before) * k * (m.length - k);
            if (before < CIRCUIT && after > before && parts > most) {
                most = parts;
                best = k - 1;
            }
        }
        return best;
    }

    /** Whether a damper farther open than logged, all open at most, would take as much heat where gas burns. */
    private static boolean asWellByAir(Followed f, List<Integer> at) {
        if (!at.stream().allMatch(f::gasOn)) {
            return false;
        }
        List<Replay.Need> wide = Evidence.wide(f, true);
        return Followed.median(at.stream()
                        .map(i -> wide.get(i).neededW() - f.logged.get(i).neededW())
                        .toList())
                >= missing(f, at) * f.c.kiln().elements().fullW();
    }

    private static int first(Followed f, List<Integer> at) {
        return at.stream()
                .filter(i -> f.missing(i, true) >= WEAK && f.kelvin[i] > WARM_K)
                .findFirst()
                .orElse(-1);
    }

    /** Whether a controller leads a step: then its power is known only where the kiln has fallen behind, and nothing tells of the time before. */
    static boolean led(Step s) {
        return Double.isNaN(s.elementShare()) && (s.goal() instanceof Step.Hold || Double.isFinite(s.rateKPerS()));
    }

    /** The intervals of the step that tells most, the last of such. */
    private static List<Integer> mostTold(Followed f, List<Integer> told) {
        List<Integer> most = List.of();
        for (int s = 0; s < f.c.steps().size(); s++) {
            List<Integer> in = of(f, told, s);
            most = in.size() >= most.size() ? in : most;
        }
        return most;
    }

    private static List<Integer> of(Followed f, List<Integer> told, int step) {
        return told.stream().filter(i -> f.tracker.step[i] == step).toList();
    }

    private static double missing(Followed f, List<Integer> at) {
        return Followed.median(at.stream().map(i -> f.missing(i, true)).toList());
    }

    /** Missing power as a share of what is asked. */
    private static double share(Followed f, List<Integer> at) {
        double full = f.c.kiln().elements().fullW();
        return Followed.median(
                at.stream().map(i -> f.missing(i, true) * full / f.asked[i]).toList());
    }
}
