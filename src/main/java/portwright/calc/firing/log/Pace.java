package portwright.calc.firing.log;

/**
 * How a kiln was led along a record: where it climbs straight with growing power a controller holds a rate, the plan's or another; where its power
 * stays and the climb falls off nothing holds it back. Limits are this project's judgement, set on simulated records.
 */
final class Pace {
    /** Intervals of a window, and of each third of it. */
    static final int WINDOW = 12;

    private static final int THIRD = WINDOW / 3;
    private static final double CLIMBS_K_PER_S = 20 / 3600.0;
    private static final double WARM_K = 333.15;
    private static final double STRAIGHT = 0.03;
    private static final double STRAIGHT_K_PER_S = 2.5 / 3600;
    /** A controller adds so much of full power from the first third to the last; walls and load that lag hide less. */
    private static final double MORE_POWER = 0.006;

    private static final double SAME_POWER = 0.02;
    /** A climb at one power loses so much from the first third to the last. */
    private static final double FALLS_OFF = 0.05;

    private static final double LEAST_K_PER_S = 10 / 3600.0;
    /** A pace of its own is no more than so much over the plan's rate before a straight climb tells it. */
    static final double UNTOLD = 1.3;

    /** Intervals before and behind a jump whose power is compared. */
    private static final int BEFORE = 6;

    private static final int AFTER = 6;
    /** A relay that sticks puts on a group of the elements, a third and more, of which the controller gave a part. */
    private static final double JUMP = 0.10;

    private static final double SHOOTS = 1.5;
    private static final double SLOWED = 0.8;
    private static final double NO_MORE = 0.01;

    /** Whether an interval lies in a window that a controller leads. */
    final boolean[] led;

    private final double[] rate;
    private final Followed f;

    Pace(Followed f) {
        this.f = f;
        led = new boolean[f.intervals()];
        rate = new double[Math.max(0, f.intervals() - WINDOW + 1)];
        for (int i = 0; i < rate.length; i++) {
            rate[i] = leads(i) ? f.climb(i, i + WINDOW) : Double.NaN;
            for (int k = i; !Double.isNaN(rate[i]) && k < i + WINDOW; k++) {
                led[k] = true;
            }
        }
    }

    /** Fastest rate at which a controller led the kiln from one interval to another, K/s; NaN where none shows. */
    double between(int from, int to) {
        double out = Double.NaN;
        for (int i = Math.max(0, from); i + WINDOW <= to && i < rate.length; i++) {
            out = Double.isNaN(rate[i]) || rate[i] <= out ? out : rate[i];
        }
        return out;
    }

    /** Rate of the first climb in which a controller led the kiln from one interval to another, K/s; NaN where none shows. */
    double first(int from, int to) {
        for (int i = Math.max(0, from); i + WINDOW <= to && i < rate.length; i++) {
            if (!Double.isNaN(rate[i])) {
                return rate[i];
            }
        }
        return Double.NaN;
    }

    /** Whether the power stays and the climb falls off in the window that begins at an interval. */
    boolean flat(int i) {
        double first = f.climb(i, i + THIRD);
        double last = f.climb(i + 2 * THIRD, i + WINDOW);
        double middle = f.share(i + THIRD, THIRD);
        return !blind(i)
                && first > LEAST_K_PER_S
                && last > 0
                && first - last > FALLS_OFF * first
                && Math.abs(f.share(i + 2 * THIRD, THIRD) - f.share(i, THIRD)) < SAME_POWER
                && Math.abs(middle - (f.share(i, THIRD) + f.share(i + 2 * THIRD, THIRD)) / 2) < SAME_POWER;
    }

    /**
     * Whether power comes on at an interval, in the midst of a climb at about the rate asked, and stays: the climb shoots up, which load and brick
     * then slow.
     *
     * @param asked rate of the step, K/s
     * @param own whether the firing may have a programme of its own, whose next rate asks for more power too, and for ever more
     */
    boolean jumps(int i, double asked, boolean own) {
        if (i < BEFORE || i + AFTER + 2 * THIRD > f.intervals() || f.kelvin[i - BEFORE] < WARM_K) {
            return false;
        }
        double was = f.climb(i - BEFORE, i - 2);
        if (was < asked / UNTOLD / UNTOLD || was > asked * UNTOLD) {
            return false;
        }
        double shot = 0;
        for (int k = i - 1; k <= i + 3; k++) {
            shot = Math.max(shot, f.grid.climbKPerS()[k]);
            if (f.blind[k] || f.grid.reachS()[k] > Grid.HALF_S) {
                return false;
            }
        }
        double then = f.climb(i + AFTER, i + AFTER + THIRD);
        return f.share(i + AFTER, THIRD) - f.share(i - BEFORE, THIRD) > JUMP
                && f.share(i + 3, THIRD) - f.share(i - BEFORE, THIRD) > JUMP
                && shot > SHOOTS * was
                && then > SLOWED * was
                && (!own
                        || then < SLOWED * shot
                                && f.share(i + AFTER + THIRD, THIRD) - f.share(i + AFTER, THIRD) < NO_MORE);
    }

    private boolean leads(int i) {
        double mean = f.climb(i, i + WINDOW);
        boolean straight = !blind(i) && mean > CLIMBS_K_PER_S && f.kelvin[i] > WARM_K;
        for (int k = i; straight && k < i + WINDOW; k += THIRD) {
            straight = Math.abs(f.climb(k, k + THIRD) - mean) <= Math.max(STRAIGHT * mean, STRAIGHT_K_PER_S);
        }
        return straight && f.share(i + 2 * THIRD, THIRD) - f.share(i, THIRD) > MORE_POWER;
    }

    private boolean blind(int from) {
        boolean out = false;
        for (int i = from; i < from + WINDOW; i++) {
            out |= f.blind[i];
        }
        return out;
    }
}
