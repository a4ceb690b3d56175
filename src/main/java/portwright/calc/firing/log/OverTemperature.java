package portwright.calc.firing.log;

import java.util.List;
import portwright.calc.firing.HardestCone;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * A reading that runs on over what the plan reaches: where no step that may be in force climbs, it stands far over the hottest reading of the
 * climbs before. Limits are this project's judgement of what controller and thermocouple play with.
 */
final class OverTemperature {
    private static final double PLAY_K = 12;
    private static final double NOISES = 6;
    /** Holds that no controller leads rise as far as loss and gas let them: so much more than planned, and half of that rise. */
    private static final double LOOSE_K = 30;

    private static final double LOOSE_SHARE = 0.5;
    /** Readings, or the last ones of a log with few. */
    private static final int LEAST = 3;

    private static final double LEAST_S = 240;
    /** Rows so far apart leave open which step is in force. */
    private static final double SELDOM_S = 1200;

    private final Followed f;
    private final double playK;

    /** Where it begins: interval, and whether elements alone can have done it. */
    record Found(LogFinding finding, int at, boolean byElements) {}

    private OverTemperature(Followed f) {
        this.f = f;
        playK = Math.max(PLAY_K, NOISES * Spikes.noise(f.c.log().readings()));
    }

    /** The first such time; null for none. */
    static Found of(Followed f) {
        return f.c.planned() ? new OverTemperature(f).found() : null;
    }

    private Found found() {
        List<LogRow> r = f.c.log().readings();
        double line = Double.NEGATIVE_INFINITY;
        double allowed = Double.POSITIVE_INFINITY;
        int from = -1;
        for (int k = 0; k < r.size(); k++) {
            int i = f.grid.at(r.get(k).timeS());
            double kelvin = r.get(k).kelvin();
            if (climbs(i) || f.blind[i]) {
                line = Math.max(line, kelvin);
                from = -1;
                continue;
            }
            if (line == Double.NEGATIVE_INFINITY) {
                continue; // the log begins in a hold: nothing tells yet what its climbs reached
            }
            allowed = line + allowance(i);
            from = kelvin <= allowed ? -1 : from < 0 ? k : from;
            if (from >= 0
                    && k - from + 1 >= LEAST
                    && r.get(k).timeS() - r.get(from).timeS() >= LEAST_S) {
                return told(r, from, line);
            }
        }
        return from >= 0 && r.size() - from >= 2 ? told(r, from, line) : null;
    }

    /** Whether a step that climbs may be in force. */
    private boolean climbs(int i) {
        // A thermocouple that reads low has the kiln in a later step than the rows tell.
        int[] latest = f.offsets.isEmpty() ? f.tracker.byProbe.last() : f.tracker.byRows.last();
        int last = Math.min(
                f.tracker.over - 1, Math.max(latest[i], f.tracker.byRows.last()[i]));
        for (int k = f.tracker.byRows.first()[i]; k <= last; k++) {
            boolean holds = f.c.steps().get(k).goal() instanceof Step.Hold;
            if (!holds && !cools(k)) {
                return true;
            }
        }
        return f.tracker.unsure[i] || f.grid.reachS()[i] >= SELDOM_S;
    }

    private boolean cools(int step) {
        int begin = f.tracker.begin[step];
        return begin >= 0 && f.cools(step, f.grid.kelvin()[begin]);
    }

    /** Whether a controller leads the elements of a step. */
    private boolean led(int step) {
        return f.c.steps().get(step).electric()
                && Double.isNaN(f.c.steps().get(step).elementShare());
    }

    /** How far the reading may go over the hottest one of the climbs, K. */
    private double allowance(int i) {
        double out = playK;
        for (int k = f.tracker.byRows.first()[i];
                k <= Math.min(f.tracker.over - 1, f.tracker.byRows.last()[i]);
                k++) {
            boolean led = led(k);
            double more = risen(k);
            out = Math.max(out, led && more < 1 ? playK : LOOSE_K + (1 + LOOSE_SHARE) * more);
        }
        return out;
    }

    /** How far a step and those that do not climb just before it rise as planned, each over the hottest before it, K. */
    private double risen(int step) {
        double out = 0;
        for (int k = step; k >= 0 && (k == step || f.c.steps().get(k).goal() instanceof Step.Hold || cools(k)); k--) {
            double rise = f.c.plannedRiseK()[k];
            out += Double.isNaN(rise) ? 0 : Math.max(0, rise);
        }
        return out;
    }

    private Found told(List<LogRow> r, int from, double line) {
        int i = f.grid.at(r.get(from).timeS());
        int s = f.tracker.step[i];
        double top = line;
        for (int k = from; k < r.size() && !climbs(f.grid.at(r.get(k).timeS())); k++) {
            top = Math.max(top, r.get(k).kelvin());
        }
        boolean byElements = s >= 0 && led(s) && !f.c.steps().get(s).gas() && !f.gasOn(i);
        boolean byRate = s < 0 || led(s);
        String last = HardestCone.along(
                r.stream().mapToDouble(LogRow::timeS).toArray(),
                r.stream().mapToDouble(LogRow::kelvin).toArray());
        boolean lessWare = !byRate && f.c.lessWare() && !HardestCone.harder(last, f.c.plannedCone());
        return new Found(
                new LogFinding(
                                lessWare ? Kind.OVER_WITH_LESS_WARE : Kind.OVER,
                                r.get(from).timeS(),
                                r.get(from).kelvin(),
                                Double.NaN,
                                top - line,
                                false,
                                false)
                        .withCones(f.gasOn(i), f.c.plannedCone(), last),
                i,
                byElements);
    }
}
