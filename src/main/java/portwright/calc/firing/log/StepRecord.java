package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.Step;

/**
 * One step as it went. Where the kiln stood open before or after it, it begins at the trough and ends at the peak.
 *
 * @param index from 0
 * @param climbKPerS mean over the step
 * @param gasKg gas, from the design's flow and the logged pressure
 * @param sagK of a heated hold: how far its end lies under what it was to keep, K; 0 for others
 */
public record StepRecord(
        int index,
        double startS,
        double endS,
        double startK,
        double endK,
        double climbKPerS,
        double gasKg,
        double sagK) {
    /** A kiln that is held while it stands open has left that temperature for good when it is so much above it. */
    private static final double LEFT_K = 2;

    private static final double HELD_K_PER_S = 15 / 3600.0;

    /** A hold that ends so much lower did not keep its goal (this project's judgement: half the step between most neighbouring cones), K. */
    public static final double SAGS_K = 10;

    /** Whether it is a hold that did not keep its goal, or climbs back from minutes with open ports but not to it. */
    public boolean sags() {
        return sagK > SAGS_K;
    }

    /** The steps of a record in the order of the plan; none of a firing that is not the plan's. */
    static List<StepRecord> of(Followed f, double[] gas) {
        List<StepRecord> out = new ArrayList<>();
        Tracker t = f.tracker;
        for (int s = 0; f.c.planned() && s < t.begin.length; s++) {
            int a = t.begin[s];
            if (a < 0) {
                continue;
            }
            int b = a;
            while (b + 1 < f.grid.size() && t.step[b] == s) {
                b++;
            }
            double startS = f.grid.timeS()[a];
            double startK = f.grid.kelvin()[a];
            double endS = f.grid.timeS()[b];
            double endK = f.grid.kelvin()[b];
            Openings.Seen before = t.openings.seen(s, startS);
            Openings.Seen after = s + 1 < t.over && t.begin[s + 1] >= 0 ? t.openings.seen(s + 1, endS) : null;
            if (before != null) {
                startS = before.troughS();
                startK = before.troughK();
            } else if (t.openings.before(s)) {
                int left = left(f, a, b, startS + t.openings.plannedS(s));
                startS = f.grid.timeS()[left];
                startK = f.grid.kelvin()[left];
            }
            if (after != null && after.peakS() > startS) {
                endS = after.peakS();
                endK = after.peakK();
            }
            double dt = endS - startS;
            boolean holds = f.c.steps().get(s).goal() instanceof Step.Hold
                    && (f.c.steps().get(s).electric() || f.c.steps().get(s).gas());
            double kept = out.isEmpty()
                    ? startK
                    : Math.max(startK, out.get(out.size() - 1).endK());
            out.add(new StepRecord(
                    s,
                    startS,
                    endS,
                    startK,
                    endK,
                    dt > 0 ? (endK - startK) / dt : Double.NaN,
                    gas[s],
                    holds ? Math.max(0, kept - endK - past(f, b)) : 0));
        }
        return out;
    }

    /** How far the line climbs or falls from the last point of all to the last row, K; 0 for any other point. */
    private static double past(Followed f, int point) {
        List<LogRow> r = f.c.log().readings();
        return point + 1 < f.grid.size()
                ? 0
                : (r.get(r.size() - 1).timeS() - f.grid.timeS()[point]) * f.grid.climbKPerS()[point];
    }

    /** The last point of the planned open minutes that is no hotter than the kiln is held in them; their first where it climbs at once. */
    private static int left(Followed f, int from, int to, double untilS) {
        int middle = f.grid.at((f.grid.timeS()[from] + untilS) / 2);
        if (f.grid.climbKPerS()[middle] > HELD_K_PER_S) {
            return from;
        }
        int out = from;
        for (int i = from; i < to && f.grid.timeS()[i] < untilS + Grid.SPACING_S; i++) {
            out = f.grid.kelvin()[i] <= f.grid.kelvin()[middle] + LEFT_K ? i : out;
        }
        return out;
    }
}
