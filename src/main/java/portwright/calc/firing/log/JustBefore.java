package portwright.calc.firing.log;

/**
 * What the minutes just before the first that tell show of a loss: which of two steps was in force there nobody knows, but no step asks more than the larger of
 * their shares, so that what is missing there is bounded from above.
 */
final class JustBefore {
    /** Intervals looked back. */
    private static final int BACK = 9;

    private static final int LEAST = 2;

    private JustBefore() {}

    /**
     * The latest time up to which two intervals in a row, close before one, show no such loss at the most that may have been asked, s; NaN for none.
     *
     * @param first first interval that tells
     * @param missing what is missing from then on, as a share of full power
     */
    static double soundS(Followed f, int first, double missing) {
        int run = 0;
        for (int i = first - 1; i >= Math.max(0, first - BACK); i--) {
            run = tells(f, i, first) && most(f, i) - need(f, i) < missing - FromTheStart.WEAK ? run + 1 : 0;
            if (run == LEAST) {
                return f.grid.timeS()[i + LEAST];
            }
        }
        return Double.NaN;
    }

    private static boolean tells(Followed f, int i, int first) {
        return f.tracker.step[i] >= 0
                && f.tracker.byProbe.last()[i] < f.tracker.over
                && !f.blind[i]
                && !f.turned.at(i)
                && !f.tracker.unsure[i]
                && !f.tracker.opening(i)
                && f.grid.reachS()[i] <= Grid.HALF_S
                && Math.abs(f.gasScale(i) - 1) <= AskedPower.GAS_OFF_SCALE
                && f.gasOn(i) == f.gasOn(first);
    }

    private static double need(Followed f, int i) {
        return f.logged.get(i).neededW() / f.c.kiln().elements().fullW();
    }

    /** The largest share of the element power that a step asks that may be in force about an interval. */
    private static double most(Followed f, int i) {
        double out = 0;
        int n = f.tracker.step.length - 1;
        for (int k = f.tracker.byProbe.first()[Math.max(0, i - 2)];
                k <= Math.min(f.tracker.over - 1, f.tracker.byProbe.last()[Math.min(n, i + 2)]);
                k++) {
            double share = f.c.steps().get(k).elementShare();
            out = Math.max(out, Double.isNaN(share) ? 1 : share);
        }
        return out;
    }
}
