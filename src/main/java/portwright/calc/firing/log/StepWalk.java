package portwright.calc.firing.log;

import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.Step;
import portwright.units.Celsius;

/** One way through the steps of the plan along a record: each step begins where the goal of the one before is met. */
final class StepWalk {
    /** Rows minutes apart may miss the last of a climb. */
    private static final double PEAK_K = 10;

    private static final double NEARLY = 0.6;
    private static final double CLIMBS_K_PER_S = 20 / 3600.0;
    private static final double STANDS = 0.3;
    /** Points over which a reading that turned climbs. */
    private static final int TURNS_FOR = 3;

    /** When the kiln is ready for a step after the minutes in which it stands open. */
    enum Ready {
        /** At once. */
        AT_ONCE,
        /** As the readings show it; at once where they show nothing. */
        SEEN,
        /** As the readings show it; else after the planned minutes. */
        PLANNED
    }

    /**
     * What is taken for granted on a way.
     *
     * @param scale of the readings in °C
     * @param nearK a temperature counts as met so far below it
     * @param coneK heat work counts at readings so much higher
     * @param soon holds count as begun as much earlier as the readings lie apart
     * @param ready when a step counts as begun after open minutes
     */
    record Way(double scale, double nearK, double coneK, boolean soon, Ready ready) {}

    /** Step at each point; the number of steps behind the last one. */
    final int[] step;
    /** Point at which each step begins; −1 when it never does. */
    final int[] begin;
    /** When the kiln is ready for each step, s; 0 for one that never begins. */
    final double[] readyS;

    /** Work of each step's cone up to the last reading. */
    final double[] work;
    /** Work of the cones at readings that lie higher by {@link StepRecord#SAGS_K}. */
    private final double[] workNear;
    /** Highest reading in the step so far, K. */
    private double topK;

    double overS;
    int s;
    double startK;

    private final Grid g;
    private final List<Step> steps;

    /**
     * @param readings smoothed, K
     * @param peakK how far the readings about a point rise over the smoothed line, K
     * @param rows readings as they stand, which do a cone's work
     * @param coneS when the cone of each step fell by the log; NaN without a note
     */
    StepWalk(
            Grid g,
            double[] readings,
            double[] peakK,
            List<LogRow> rows,
            List<Step> steps,
            double[] coneS,
            Openings openings,
            Way way) {
        this.g = g;
        this.steps = steps;
        int over = steps.size();
        step = new int[g.size()];
        begin = new int[over];
        readyS = new double[over];
        work = new double[over];
        workNear = new double[over];
        Arrays.fill(begin, -1);
        begin[0] = 0;
        startK = scaled(readings[0], way);
        topK = startK;
        int off = offForGood();
        int row = 0;
        for (int i = 0; i < g.size(); i++) {
            double t = g.timeS()[i];
            double k = scaled(readings[i], way);
            if (i > 0) {
                row = work(rows, row, g.timeS()[i - 1], t, readings[i] - g.kelvin()[i], way);
            }
            topK = Math.max(topK, k + peakK[i] * way.scale);
            boolean opened = s + 1 < over
                    && (openings.before(s + 1)
                            ? opened(openings.from(s + 1, t), i, k, coneS[s], way) || i >= off && putOut(way)
                            : shareSet(i, k, way) || turned(i, k, way));
            while (s < over
                    && (opened
                            || done(
                                    steps.get(s),
                                    t,
                                    k + peakK[i] * way.scale,
                                    startK,
                                    readyS[s] - (way.soon ? g.reachS()[begin[s]] : 0),
                                    work[s],
                                    coneS[s],
                                    way.nearK))) {
                opened = false;
                s++;
                startK = k;
                topK = k;
                if (s < over) {
                    begin[s] = i;
                    readyS[s] = ready(openings, s, t, way.ready);
                } else {
                    overS = t;
                }
            }
            step[i] = s;
        }
        int n = g.size() - 1;
        work(rows, row, g.timeS()[n], rows.get(rows.size() - 1).timeS(), readings[n] - g.kelvin()[n], way);
    }

    /** Whether the kiln was opened for the next step at a point: at a peak, or where a climb ends, as good as this step's goal, which smoothing hides. */
    private boolean opened(Openings.Seen fall, int i, double k, double coneS, Way way) {
        if (way.ready == Ready.PLANNED) {
            return false;
        }
        if (steps.get(s).goal() instanceof Step.To to) {
            double least = to.temperatureK() - PEAK_K;
            double climb = Math.max(0, g.climbKPerS()[Math.max(0, i - 2)]);
            return startK <= to.temperatureK()
                    && (fall != null && scaled(fall.peakK() + climb * fall.gapS(), way) >= least
                            || k >= least && stands(i));
        }
        return steps.get(s).goal() instanceof Step.ToCone && Double.isNaN(coneS) && fall != null && work[s] >= NEARLY;
    }

    /** Whether a climb ended as good as at its goal because the elements were set to the fixed share at which the next step holds. */
    private boolean shareSet(int i, double k, Way way) {
        Step next = steps.get(s + 1);
        return way.ready != Ready.PLANNED
                && steps.get(s).goal() instanceof Step.To to
                && Double.isNaN(steps.get(s).elementShare())
                && next.goal() instanceof Step.Hold
                && next.elementShare() < 1
                && startK <= to.temperatureK()
                && k >= to.temperatureK() - PEAK_K
                && stands(i);
    }

    /** Whether a fall or climb ended as good as at its goal, which smoothing hides: the readings turn, as the next step asks. */
    private boolean turned(int i, double k, Way way) {
        if (!(steps.get(s).goal() instanceof Step.To to)) {
            return false;
        }
        Step.Goal next = steps.get(s + 1).goal();
        int up = startK <= to.temperatureK() ? 1 : -1;
        boolean turns = next instanceof Step.ToCone && up < 0
                || next instanceof Step.To n && up * (to.temperatureK() - n.temperatureK()) > 0;
        int after = Math.min(g.size() - 1, i + 1);
        int then = Math.min(g.size() - 1, i + TURNS_FOR);
        // Smoothing rounds the turn off over the time that a point rests on.
        double off = Math.abs(way.scale - 1) * (to.temperatureK() - Celsius.ZERO_C)
                + Math.max(0, up * g.climbKPerS()[Math.max(0, i - TURNS_FOR)]) * g.reachS()[i];
        return turns
                && up * (to.temperatureK() - k) <= PEAK_K + off
                && up * (g.kelvin()[i] - g.kelvin()[after]) >= 0
                && up * (g.kelvin()[i] - g.kelvin()[then]) > CLIMBS_K_PER_S * TURNS_FOR * Grid.SPACING_S;
    }

    /** The first point without gas behind the last one that is logged to burn; beyond the end where the log tells of none. */
    private int offForGood() {
        int i = g.size();
        while (i > 0 && g.gasPa()[i - 1] == 0) {
            i--;
        }
        return i > 0 && g.gasPa()[i - 1] > 0 ? i : g.size();
    }

    /** Whether gas that was put out for good ended the last step with gas: as good as at its goal, by no more than a hold may sag. */
    private boolean putOut(Way way) {
        if (way.ready == Ready.PLANNED
                || !steps.get(s).gas()
                || steps.subList(s + 1, steps.size()).stream().anyMatch(Step::gas)) {
            return false;
        }
        return steps.get(s).goal() instanceof Step.To to
                ? startK <= to.temperatureK() && topK >= to.temperatureK() - StepRecord.SAGS_K
                : steps.get(s).goal() instanceof Step.ToCone && workNear[s] >= 1;
    }

    /** Whether a climb ends at a point. */
    private boolean stands(int i) {
        double before = g.climbKPerS()[Math.max(0, i - 2)];
        int next = Math.min(g.size() - 1, i + 1);
        double after = Math.min(g.climbKPerS()[next], g.climbKPerS()[Math.min(g.size() - 1, i + 2)]);
        double gained = (g.kelvin()[next] - g.kelvin()[i]) / Grid.SPACING_S;
        return before > CLIMBS_K_PER_S && Math.max(after, gained) < STANDS * before;
    }

    private static double ready(Openings o, int step, double t, Ready ready) {
        if (!o.before(step) || ready == Ready.AT_ONCE) {
            return t;
        }
        return ready == Ready.PLANNED || o.seen(step, t) != null ? o.endS(step, t) : t;
    }

    private static double scaled(double kelvin, Way way) {
        return Celsius.ZERO_C + (kelvin - Celsius.ZERO_C) * way.scale;
    }

    /** Adds the work between two times along straight lines from reading to reading; the reading from which the next one begins. */
    private int work(List<LogRow> rows, int from, double fromS, double toS, double put, Way way) {
        int k = from;
        double t = fromS;
        double end = Math.min(toS, rows.get(rows.size() - 1).timeS());
        while (t < end) {
            while (rows.get(k + 1).timeS() <= t) {
                k++;
            }
            LogRow a = rows.get(k);
            LogRow b = rows.get(k + 1);
            double until = Math.min(end, b.timeS());
            double share = ((t + until) / 2 - a.timeS()) / (b.timeS() - a.timeS());
            add(until - t, scaled(a.kelvin() + share * (b.kelvin() - a.kelvin()) + put, way) + way.coneK);
            t = until;
        }
        return k;
    }

    private void add(double dt, double kelvin) {
        for (int k = s; k < steps.size(); k++) {
            if (steps.get(k).goal() instanceof Step.ToCone c) {
                work[k] += dt * c.cone().perSecond(kelvin);
                workNear[k] += dt * c.cone().perSecond(kelvin + StepRecord.SAGS_K);
            }
        }
    }

    /** The work of the step in force with what follows the last reading, at a temperature. */
    double workWith(ConeWork cone, double dt, double kelvin) {
        return work[s] + dt * cone.perSecond(kelvin);
    }

    static boolean done(
            Step s, double t, double k, double startK, double readyS, double work, double coneS, double nearK) {
        if (s.goal() instanceof Step.Hold h) {
            return t - readyS >= h.seconds() - 1;
        }
        if (s.goal() instanceof Step.To to) {
            return startK <= to.temperatureK() ? k >= to.temperatureK() - nearK : k <= to.temperatureK() + nearK;
        }
        return Double.isNaN(coneS) ? work >= 1 : coneS <= t;
    }
}
