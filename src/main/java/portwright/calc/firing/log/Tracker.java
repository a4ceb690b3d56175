package portwright.calc.firing.log;

import java.util.List;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.StepWalk.Ready;

/** Which step of the plan a record was in at each point: goals met by temperature, logged cones, heat work or time. */
final class Tracker {
    /** A goal counts as met so far below it; heat work counts at readings so much higher. */
    private static final double NEAR_K = 3;
    /** Smoothing carries the edge of the fall this many points. */
    private static final int EDGE = 3;

    /** A goal is surely met so far beyond it. */
    private static final double SURELY_K = 2;
    /** A cone may fall at readings so much lower than its chart has it. */
    private static final double CONE_K = 10;

    private static final double LATEST_S = 3600;
    private static final double COOLS_K_PER_S = -20 / 3600.0;

    /** Step at each point; −1 after the last one. */
    final int[] step;
    /** Point at which each step began; −1 when it never did. */
    final int[] begin;
    /** When each step began at the latest, s: a cone that ends the step before it may have been noted late. */
    final double[] lateS;
    /** When a cone that ends a step may have fallen at the earliest, s; NaN for a step that no logged cone ends. */
    final double[] earlyS;
    /** Whether a point lies between the earliest and the latest time at which a cone that ends a step may have fallen. */
    final boolean[] unsure;
    /** Whether the last step's goal was met by the last row, which may lie behind the last point. */
    final boolean reached;

    /** When the kiln is ready for each step after the minutes in which it stands open, as far as the readings show them, s. */
    final double[] readyS;

    /** First and last step that a point may belong to for all that the rows tell; {@link #over} behind the last. */
    final Range byRows;
    /** The same where the thermocouple, too, may be off. */
    final Range byProbe;
    /** Number of steps: the step of a point behind the last one. */
    final int over;

    final Openings openings;

    private final double[] openUntilS;
    private final double[] openEndS;
    /** When gas burns first for each step that lights it. */
    final double[] litS;

    private final Grid g;
    private final List<Step> steps;
    private final double[] coneS;
    /** How far the readings about a point rise over the smoothed line where it turns down there, K; 0 elsewhere. */
    private final double[] peakK;

    Tracker(Grid g, double[] kelvin, List<Step> steps, FiringLog log, ProbeBand band, double lightingS) {
        this.g = g;
        this.steps = steps;
        over = steps.size();
        unsure = new boolean[g.size()];
        lateS = new double[steps.size() + 1];
        coneS = coneS(log);
        peakK = peaks(log);
        earlyS = coneS;
        int shut = shut(g);
        openings = new Openings(log, steps, lightingS);
        Ways ways = new Ways(kelvin, log.readings());
        StepWalk w = ways.walk(1, NEAR_K, NEAR_K, false, Ready.SEEN);
        begin = w.begin;
        step = w.step;
        for (int k = 0; k < over; k++) {
            double startedS = k + 1 < over ? w.begin[k + 1] < 0 ? 0 : g.timeS()[w.begin[k + 1]] : w.overS;
            // A noted cone tells it to the row; the next point lies up to a spacing behind.
            lateS[k + 1] = startedS >= lateS[k + 1] + Grid.SPACING_S ? startedS : lateS[k + 1];
        }
        StepWalk surely = ways.walk(1, -SURELY_K, -SURELY_K, false, Ready.PLANNED);
        byRows = range(ways.walk(1, NEAR_K, CONE_K, true, Ready.AT_ONCE).step, bounded(surely.step, step));
        byProbe = range(
                ways.walk(1 + band.lowShare(), NEAR_K, NEAR_K, true, Ready.AT_ONCE).step,
                ways.walk(1 - band.highShare(), NEAR_K, NEAR_K, false, Ready.PLANNED).step);
        readyS = w.readyS;
        openUntilS = new double[over];
        openEndS = new double[over];
        litS = new double[over];
        for (int k = 0; k < over; k++) {
            if (begin[k] >= 0 && openings.before(k)) {
                openUntilS[k] = openUntil(k, surely.begin[k]);
                openEndS[k] = openings.endS(k, g.timeS()[begin[k]]);
                litS[k] = openings.litS(k, g.timeS()[begin[k]]);
            }
        }
        for (int i = 0; i < g.size(); i++) {
            step[i] = step[i] < over && !(i >= shut && steps.get(step[i]).gas()) ? step[i] : -1;
        }
        reached = w.s >= over || w.s == over - 1 && atTheEnd(kelvin, log, steps.get(w.s), w);
    }

    /** A step may begin later than the likeliest by no more than an hour, unless it is the end of the firing: the last goal may be nearly met for long. */
    private int[] bounded(int[] late, int[] likely) {
        int[] out = new int[late.length];
        int reach = (int) (LATEST_S / Grid.SPACING_S);
        for (int i = 0; i < out.length; i++) {
            out[i] = i < reach ? late[i] : Math.max(late[i], Math.min(over - 1, likely[i - reach]));
        }
        return out;
    }

    /** Until when the kiln may stand open before a step, or be on its way back, s. */
    private double openUntil(int k, int surely) {
        double from = g.timeS()[begin[k]];
        double late = surely < 0 ? from + LATEST_S : Math.min(from + LATEST_S, g.timeS()[surely]);
        return (openings.seen(k, from) != null ? openings.endS(k, from) : openings.endS(k, Math.max(from, late)))
                + Grid.HALF_S;
    }

    /** The step before which the kiln stands open or burns clean at a time; −1 for none. */
    int opensFor(double timeS) {
        for (int k = 0; k < over; k++) {
            if (timeS < openEndS[k] && timeS >= g.timeS()[begin[k]]) {
                return k;
            }
        }
        return -1;
    }

    /** Whether gas that a step burns is not yet lit at a time, for all that a log without a gas column tells. */
    boolean unlit(double timeS) {
        int k = opensFor(timeS);
        return k >= 0 && timeS < litS[k];
    }

    /** Whether the minutes with the kiln open, or the way back from them, may lie in an interval. */
    boolean opening(int i) {
        for (int k = 0; k < over; k++) {
            if (g.timeS()[i] < openUntilS[k] && g.timeS()[i] + Grid.SPACING_S > g.timeS()[begin[k]] - Grid.HALF_S) {
                return true;
            }
        }
        return false;
    }

    /** Ways through the steps of one record. */
    private final class Ways {
        final double[] kelvin;
        final List<LogRow> rows;

        Ways(double[] kelvin, List<LogRow> rows) {
            this.kelvin = kelvin;
            this.rows = rows;
        }

        StepWalk walk(double scale, double nearK, double coneK, boolean soon, Ready ready) {
            return new StepWalk(
                    g, kelvin, peakK, rows, steps, coneS, openings, new StepWalk.Way(scale, nearK, coneK, soon, ready));
        }
    }

    /**
     * A goal that is met and left at once, because the next step gives less power or opens the ports, is smoothed away: where the line turns down, the mean of
     * the two highest readings about it counts.
     */
    private double[] peaks(FiringLog log) {
        double[] out = new double[g.size()];
        List<LogRow> rows = log.readings();
        int from = 0;
        for (int i = 0; i + 1 < out.length; i++) {
            double t = g.timeS()[i];
            while (rows.get(from).timeS() < t - Grid.HALF_S) {
                from++;
            }
            double first = Double.NEGATIVE_INFINITY;
            double second = Double.NEGATIVE_INFINITY;
            for (int k = from; k < rows.size() && rows.get(k).timeS() <= t + Grid.HALF_S; k++) {
                double x = rows.get(k).kelvin();
                second = Math.max(second, Math.min(first, x));
                first = Math.max(first, x);
            }
            boolean turns = g.climbKPerS()[Math.max(0, i - 2)] > 0 && g.climbKPerS()[i + 1] < 0;
            out[i] = turns && Double.isFinite(second) ? Math.max(0, (first + second) / 2 - g.kelvin()[i]) : 0;
        }
        return out;
    }

    /** First and last possible step of each point. */
    record Range(int[] first, int[] last) {}

    private Range range(int[] ahead, int[] behind) {
        int[] first = new int[g.size()];
        int[] last = new int[g.size()];
        for (int i = 0; i < g.size(); i++) {
            last[i] = Math.max(step[i], ahead[Math.min(g.size() - 1, i + points(g.aheadS()[i]))]);
            first[i] = Math.min(step[i], behind[Math.max(0, i - points(g.backS()[i]))]);
        }
        return new Range(first, last);
    }

    /** Points within a reach; none within that of the smoothing. */
    private static int points(double reachS) {
        return reachS > Grid.HALF_S ? (int) Math.ceil(reachS / Grid.SPACING_S) : 0;
    }

    /** Whether the last step's goal is met in the last row, which may lie behind the last point; a hold began up to a point's spacing earlier. */
    private boolean atTheEnd(double[] kelvin, FiringLog log, Step last, StepWalk w) {
        double endS = log.rows().get(log.rows().size() - 1).timeS();
        int n = g.size() - 1;
        double past = endS - g.timeS()[n];
        double k = kelvin[n] + past * g.climbKPerS()[n];
        double unread = endS - log.readings().get(log.readings().size() - 1).timeS();
        double work = last.goal() instanceof Step.ToCone c
                ? w.workWith(c.cone(), unread, k - unread / 2 * g.climbKPerS()[n] + NEAR_K)
                : 0;
        return StepWalk.done(last, endS, k, w.startK, w.readyS[w.s] - Grid.SPACING_S, work, coneS[w.s], NEAR_K);
    }

    /** When the cone of each step may have fallen by the log; NaN where it notes none. */
    private double[] coneS(FiringLog log) {
        double[] out = new double[steps.size()];
        java.util.Arrays.fill(out, Double.NaN);
        for (int k = 0; k < out.length; k++) {
            if (steps.get(k).goal() instanceof Step.ToCone c) {
                for (LogRow r : log.cones()) {
                    if (Double.isNaN(out[k]) && r.cone().equals(c.cone().name())) {
                        out[k] = log.before(r);
                        lateS[k + 1] = r.timeS();
                        for (int i = g.at(out[k]);
                                i < g.size()
                                        && g.timeS()[i] < r.timeS() + Grid.SPACING_S
                                        && !(k == out.length - 1 && off(g, i));
                                i++) {
                            unsure[i] = true;
                        }
                    }
                }
            }
        }
        return out;
    }

    /** Whether the gas is logged off here and a smear before, after it was on: the firing is over whenever the cone was noted. */
    private static boolean off(Grid g, int i) {
        int smear = (int) Math.ceil(g.reachS()[i] / Grid.SPACING_S);
        boolean off = i > smear;
        for (int k = i; off && k >= i - smear; k--) {
            off = g.gasPa()[k] == 0;
        }
        boolean was = false;
        for (int k = 0; k < i; k++) {
            was |= g.gasPa()[k] > 0;
        }
        return off && was;
    }

    /** The point from which the gas is logged off and the kiln cools to the end of the record: it was shut down. Beyond the end where it was not. */
    private static int shut(Grid g) {
        int gas = g.size() - 1;
        while (gas >= 0 && !(g.gasPa()[gas] > 0)) {
            gas--;
        }
        int falls = g.size();
        while (falls > gas + 1 && g.climbKPerS()[falls - 1] < COOLS_K_PER_S) {
            falls--;
        }
        return gas >= 0 && falls < g.size() && falls <= gas + EDGE ? gas + 1 : Integer.MAX_VALUE;
    }
}
