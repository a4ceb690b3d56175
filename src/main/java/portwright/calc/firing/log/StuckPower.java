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

    /** The same in a firing at a pace of its own, which may change its rate. */
    private static final int STUCK_OWN = 6;

    private static final int JUMP_NEAR = 6;

    private final Followed f;
    private final Pace pace;
    /** First step not looked at in a firing at a pace of its own; -1 for one of the plan. */
    private final int ownUntil;
    /** Whether such a firing ran faster than the plan from its first minute, so that only a controller's climb before tells what stays on. */
    private final boolean fast;

    StuckPower(Followed f) {
        this(f, -1, false);
    }

    /** Looks at the steps before one of a firing at a pace of its own. */
    StuckPower(Followed f, int ownUntil, boolean fast) {
        this.f = f;
        this.ownUntil = ownUntil;
        this.fast = fast;
        pace = new Pace(f);
    }

    /** The interval from which something stays on whichever possible step is in force; -1 for none. */
    int from(Tracker.Range possible) {
        double full = f.c.kiln().elements().fullW();
        int run = 0;
        for (int i = 0; i < f.intervals(); i++) {
            if (comesOn(i)) {
                return i + 2;
            }
            boolean told = ownUntil < 0 || own(i);
            run = told && f.logged.get(i).neededW() > stuckFrom(i, possible) * full ? run + 1 : 0;
            if (run == (ownUntil >= 0 ? STUCK_OWN : f.tracker.step[i] < 0 ? STUCK_AFTER : STUCK_FOR)) {
                return i - run + 1;
            }
        }
        return -1;
    }

    /** Whether power comes on at an interval while a controller leads an electric step, and nothing else may be in force thereabouts. */
    private boolean comesOn(int i) {
        int s = f.tracker.step[i];
        if (s < 0 || !pace.jumps(i, f.c.steps().get(s).rateKPerS(), ownUntil >= 0)) {
            return false;
        }
        Step step = f.c.steps().get(s);
        boolean led = step.electric()
                && !step.gas()
                && Double.isNaN(step.elementShare())
                && !(step.goal() instanceof Step.Hold)
                && Double.isFinite(step.rateKPerS());
        for (int k = i - JUMP_NEAR; led && k <= i + JUMP_NEAR; k++) {
            led = f.tracker.byProbe.first()[k] == s && f.tracker.byProbe.last()[k] == s && !f.gasOn(k);
        }
        return led;
    }

    /** Whether an interval of a firing at its own pace lies before the gas, behind a climb that a controller led and outside of any. */
    private boolean own(int i) {
        return f.tracker.step[i] >= 0
                && f.tracker.byProbe.last()[i] < ownUntil
                && !pace.led[i]
                && !(fast && Double.isNaN(pace.between(0, i)));
    }

    /** Share of full power that says at an interval that something stays on; infinite where nothing can be said. */
    private double stuckFrom(int i, Tracker.Range possible) {
        int s = f.tracker.step[i];
        if (f.blind[i] || f.turned.at(i) || f.tracker.unsure[i] || f.otherwise(i) || f.tracker.opening(i)) {
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
                    : start + rate(step, s, i) * since;
        }
        return f.grid.kelvin()[i] > line + STUCK_K ? STUCK_POWER : Double.POSITIVE_INFINITY;
    }

    /** The rate of a climb: the plan's, or the one at which a controller led it until then. */
    private double rate(Step step, int s, int i) {
        double own = pace.between(f.tracker.begin[s], i);
        double least = ownUntil < 0 ? step.rateKPerS() : 0;
        return Double.isNaN(own)
                ? step.rateKPerS() * Pace.UNTOLD
                : Math.min(Math.max(least, own), step.rateKPerS() * Pace.UNTOLD);
    }
}
