package portwright.calc.firing.log;

import portwright.calc.firing.Step;

/** Power where a controller gives none: over its line, over a fixed share, or after the end. */
final class StuckPower {
    private static final double STUCK_POWER = 0.25;
    private static final double STUCK_SHARE = 0.18;
    private static final double STUCK_K = 20;
    /** A cone that ends a step is noted late, and hot walls follow a falling line late. */
    private static final double STUCK_LATE_S = 1800;

    private static final int STUCK_FOR = 3;
    private static final int STUCK_AFTER = 5;

    private final Followed f;

    StuckPower(Followed f) {
        this.f = f;
    }

    /** The interval from which something stays on whichever possible step is in force; -1 for none. */
    int from(Tracker.Range possible) {
        double full = f.c.kiln().elements().fullW();
        int run = 0;
        for (int i = 0; i < f.intervals(); i++) {
            run = f.logged.get(i).neededW() > stuckFrom(i, possible) * full ? run + 1 : 0;
            if (run == (f.tracker.step[i] < 0 ? STUCK_AFTER : STUCK_FOR)) {
                return i - run + 1;
            }
        }
        return -1;
    }

    /** Share of full power that says at an interval that something stays on; infinite where nothing can be said. */
    private double stuckFrom(int i, Tracker.Range possible) {
        int s = f.tracker.step[i];
        if (f.blind[i] || f.tracker.unsure[i] || f.otherwise(i) || f.tracker.opening(i)) {
            return Double.POSITIVE_INFINITY;
        }
        double other = 0;
        for (int k = possible.first()[i]; k <= possible.last()[i]; k++) {
            if (k != s && k < f.tracker.over) {
                other = Math.max(other, othersMost(k));
            }
        }
        return Math.max(other, stuckFrom(i, s));
    }

    /** The same for a step that may be in force instead of the likeliest; its line nobody knows. */
    private double othersMost(int step) {
        double share = f.c.steps().get(step).elementShare();
        return Double.isNaN(share) ? Double.POSITIVE_INFINITY : share + STUCK_SHARE;
    }

    private double stuckFrom(int i, int s) {
        if (s < 0) {
            return i > 0 && f.tracker.step[i - 1] < 0 && !f.gasOn(i) ? STUCK_POWER : Double.POSITIVE_INFINITY;
        }
        Step step = f.c.steps().get(s);
        if (!step.electric() || i == 0 || f.tracker.step[i - 1] != s) {
            return Double.POSITIVE_INFINITY;
        }
        if (!Double.isNaN(step.elementShare())) {
            return step.elementShare() + STUCK_SHARE;
        }
        // The controller follows the reading, wrong as it may be.
        double start = f.grid.kelvin()[f.tracker.begin[s]];
        for (int k = f.tracker.begin[s]; k <= f.grid.at(f.tracker.lateS[s]); k++) {
            start = Math.max(start, f.grid.kelvin()[k]);
        }
        double line = start;
        if (!(step.goal() instanceof Step.Hold)) {
            if (Double.isInfinite(step.rateKPerS()) || f.vague(s)) {
                return Double.POSITIVE_INFINITY;
            }
            double since = f.grid.timeS()[i] - f.tracker.lateS[s];
            line = step.goal() instanceof Step.To t && t.temperatureK() < start
                    ? Math.max(t.temperatureK(), start - step.rateKPerS() * Math.max(0, since - STUCK_LATE_S))
                    : start + step.rateKPerS() * since;
        }
        return f.grid.kelvin()[i] > line + STUCK_K ? STUCK_POWER : Double.POSITIVE_INFINITY;
    }
}
