package portwright.calc.firing.log;

import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.Step;

/**
 * Whether a log tells of another firing than the plan's: an oxidising glaze or bisque firing of the same kiln at a pace of its own. Nothing
 * that rests on the plan's rates and shares is then laid against it. Limits are this project's judgement: what a broken element, a stuck
 * relay or a wrong probe does to the plan's own firing must not look like it. A log with gas or damper in it is held to be the plan's.
 */
public final class OtherFiring {
    /** Why a log is no firing of the plan. */
    public enum Why {
        /** It is the plan's for all that the log tells. */
        NOT,
        /** A note says so. */
        NOTE,
        /** Logged without gas where the plan burns it, and climbing on. */
        NO_GAS,
        /** A straight climb that takes more and more power, at a rate that no step in question asks: a controller with another programme. */
        OWN_RATE,
        /** Faster than the plan from the first minute of a cold kiln. */
        FAST_START;

        /** Whether the pace alone tells it. */
        boolean guessed() {
            return this == OWN_RATE || this == FAST_START;
        }
    }

    private static final int HOUR = 12;
    private static final double CLIMBS_K_PER_S = 20 / 3600.0;
    /** Intervals of each third of a straight climb. */
    private static final int THIRD = 6;

    private static final double STRAIGHT = 0.06;
    private static final double STRAIGHT_K_PER_S = 2 / 3600.0;
    private static final double MORE_POWER = 0.03;
    /** Over this share the elements may be all on, and the kiln behind the plan's rate. */
    private static final double SURELY_LED = 0.75;

    private static final double OTHER_RATE = 0.12;
    private static final double WARM_K = 373.15;
    private static final double FASTER = 1.5;
    private static final int QUARTER_HOUR = 3;

    private final Followed f;

    private OtherFiring(Followed f) {
        this.f = f;
    }

    static Why of(Followed f) {
        if (f.c.log().scaleDoubted() || Arrays.stream(f.grid.gasPa()).anyMatch(pa -> pa > 0)) {
            return Why.NOT;
        }
        OtherFiring o = new OtherFiring(f);
        if (Notes.electric(f.c.log())) {
            return Why.NOTE;
        }
        if (o.withoutGas()) {
            return Why.NO_GAS;
        }
        if (f.damperLogged || f.c.kiln().elements().fullW() <= 0) {
            return Why.NOT;
        }
        return o.fastStart() ? Why.FAST_START : o.ownRate() ? Why.OWN_RATE : Why.NOT;
    }

    private boolean withoutGas() {
        int run = 0;
        for (int i = 0; i < f.intervals(); i++) {
            run = f.otherwise(i) && !f.blind[i] && f.grid.climbKPerS()[i] > CLIMBS_K_PER_S ? run + 1 : 0;
            if (run == HOUR) {
                return true;
            }
        }
        return false;
    }

    private boolean ownRate() {
        for (int i = 0; i + 3 * THIRD < f.grid.size(); i++) {
            double mean = f.climb(i, i + 3 * THIRD);
            if (mean > CLIMBS_K_PER_S
                    && f.kelvin[i] > WARM_K
                    && straight(i, mean)
                    && f.share(i + 2 * THIRD, THIRD) - f.share(i, THIRD) > MORE_POWER
                    && f.share(i + 2 * THIRD, THIRD) < SURELY_LED
                    && noStepAsks(i, mean)) {
                return true;
            }
        }
        return false;
    }

    private boolean straight(int from, double mean) {
        for (int k = 0; k < 3; k++) {
            double part = f.climb(from + k * THIRD, from + (k + 1) * THIRD);
            if (Math.abs(part - mean) > Math.max(STRAIGHT * mean, STRAIGHT_K_PER_S)) {
                return false;
            }
        }
        for (int i = from; i < from + 3 * THIRD; i++) {
            if (f.blind[i]) {
                return false;
            }
        }
        return true;
    }

    private boolean noStepAsks(int from, double rate) {
        List<Step> steps = f.c.steps();
        for (int i = from; i <= from + 3 * THIRD; i++) {
            if (f.tracker.step[i] < 0) {
                return false;
            }
            for (int k = f.tracker.byProbe.first()[i];
                    k <= Math.min(f.tracker.over - 1, f.tracker.byProbe.last()[i]);
                    k++) {
                Step s = steps.get(k);
                // Gas and elements that are all on may climb as straight as a controller.
                if (s.gas() && !(s.electric() && Double.isNaN(s.elementShare()) && Double.isFinite(s.rateKPerS()))) {
                    return false;
                }
                boolean led = Double.isNaN(s.elementShare()) && s.electric() && !(s.goal() instanceof Step.Hold);
                if (led && Math.abs(rate / s.rateKPerS() - 1) <= OTHER_RATE) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean fastStart() {
        if (f.grid.size() <= HOUR || f.kelvin[0] > WARM_K) {
            return false;
        }
        double asked = 0;
        for (int i = 0; i <= HOUR; i++) {
            int s = f.tracker.step[i];
            asked = Math.max(
                    asked, s < 0 ? Double.POSITIVE_INFINITY : f.c.steps().get(s).rateKPerS());
        }
        for (int i = 0; i < HOUR; i += QUARTER_HOUR) {
            if (f.blind[i] || !(f.climb(i, i + QUARTER_HOUR) > FASTER * asked)) {
                return false;
            }
        }
        return true;
    }
}
