package portwright.calc.firing.log;

import java.util.List;
import portwright.calc.firing.Step;

/** Which step of the plan a record was in at each point: goals met by temperature, logged cones, heat work or time. */
final class Tracker {
    /** A goal counts as met so far below it; heat work counts at readings so much higher. */
    private static final double NEAR_K = 3;
    /** Smoothing carries the edge of the fall this many points. */
    private static final int EDGE = 3;

    private static final double ZERO_C = 273.15;
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

    /** First and last step that a point may belong to for all that the rows tell; {@link #over} behind the last. */
    final Range byRows;
    /** The same where the thermocouple, too, may be off. */
    final Range byProbe;
    /** Number of steps: the step of a point behind the last one. */
    final int over;

    private final Grid g;
    private final List<Step> steps;
    private final double[] coneS;
    /** How far the readings about a point rise over the smoothed line where it turns down there, K; 0 elsewhere. */
    private final double[] peakK;

    Tracker(Grid g, double[] kelvin, List<Step> steps, FiringLog log, ProbeBand band) {
        this.g = g;
        this.steps = steps;
        over = steps.size();
        unsure = new boolean[g.size()];
        lateS = new double[steps.size() + 1];
        coneS = coneS(log);
        peakK = peaks(log);
        earlyS = coneS;
        int shut = shut(g);
        Walk w = new Walk(kelvin, 1, false);
        begin = w.begin;
        step = w.step;
        for (int k = 0; k < over; k++) {
            double startedS = k + 1 < over ? w.begin[k + 1] < 0 ? 0 : g.timeS()[w.begin[k + 1]] : w.overS;
            lateS[k + 1] = Math.max(lateS[k + 1], startedS);
        }
        byRows = range(new Walk(kelvin, 1, true).step, step);
        byProbe = range(
                new Walk(kelvin, 1 + band.lowShare(), true).step, new Walk(kelvin, 1 - band.highShare(), false).step);
        for (int i = 0; i < g.size(); i++) {
            step[i] = step[i] < over && !(i >= shut && steps.get(step[i]).gas()) ? step[i] : -1;
        }
        reached = w.s >= over || w.s == over - 1 && atTheEnd(kelvin, log, steps.get(w.s), w.s, w.startK, w.work[w.s]);
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
            while (from < rows.size() && rows.get(from).timeS() < t - Grid.HALF_S) {
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

    /** One way through the steps. */
    private final class Walk {
        final int[] step = new int[g.size()];
        final int[] begin = new int[over];
        final double[] work = new double[over];
        double overS;
        int s;
        double startK;

        /**
         * @param scale of the readings in °C
         * @param soon holds count as begun as much earlier as the readings lie apart
         */
        Walk(double[] readings, double scale, boolean soon) {
            double[] kelvin = new double[readings.length];
            for (int i = 0; i < kelvin.length; i++) {
                kelvin[i] = ZERO_C + (readings[i] - ZERO_C) * scale;
            }
            java.util.Arrays.fill(begin, -1);
            begin[0] = 0;
            startK = kelvin[0];
            for (int i = 0; i < g.size(); i++) {
                double dt = i == 0 ? 0 : g.timeS()[i] - g.timeS()[i - 1];
                for (int k = s; k < over; k++) {
                    if (steps.get(k).goal() instanceof Step.ToCone c && i > 0) {
                        work[k] += dt * c.cone().perSecond((kelvin[i] + kelvin[i - 1]) / 2 + NEAR_K);
                    }
                }
                while (s < over
                        && done(
                                steps.get(s),
                                g.timeS()[i],
                                kelvin[i] + peakK[i] * scale,
                                startK,
                                g.timeS()[begin[s]] - (soon ? g.reachS()[begin[s]] : 0),
                                work[s],
                                coneS[s])) {
                    s++;
                    startK = kelvin[i];
                    if (s < over) {
                        begin[s] = i;
                    } else {
                        overS = g.timeS()[i];
                    }
                }
                step[i] = s;
            }
        }
    }

    /** Whether the last step's goal is met in the last row, which may lie behind the last point; a hold began up to a point's spacing earlier. */
    private boolean atTheEnd(double[] kelvin, FiringLog log, Step last, int s, double startK, double work) {
        double endS = log.rows().get(log.rows().size() - 1).timeS();
        int n = g.size() - 1;
        double past = endS - g.timeS()[n];
        double k = kelvin[n] + past * g.climbKPerS()[n];
        double more =
                last.goal() instanceof Step.ToCone c ? past * c.cone().perSecond((kelvin[n] + k) / 2 + NEAR_K) : 0;
        return done(last, endS, k, startK, g.timeS()[begin[s]] - Grid.SPACING_S, work + more, coneS[s]);
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

    private static boolean done(Step s, double t, double k, double startK, double beginS, double work, double coneS) {
        if (s.goal() instanceof Step.Hold h) {
            return t - beginS >= h.seconds() - 1;
        }
        if (s.goal() instanceof Step.To to) {
            return startK <= to.temperatureK() ? k >= to.temperatureK() - NEAR_K : k <= to.temperatureK() + NEAR_K;
        }
        return Double.isNaN(coneS) ? work >= 1 : coneS <= t;
    }
}
