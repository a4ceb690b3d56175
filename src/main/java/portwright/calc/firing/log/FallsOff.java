package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Elements that are all on and give too little, told by the climb alone: the power stays, the climb falls off, and the reading lies behind what the
 * controller had led or the plan asks. It asks no plan to be kept, only that no gas burns.
 */
final class FallsOff {
    /** Below this the probe's lag and the skin of brick and load hide the power. */
    static final double WARM_K = 723.15;

    private static final double BEHIND_K = 8;
    private static final double SLOW = 0.8;
    private static final int APART = Pace.WINDOW + 2;

    private final Followed f;
    private final Pace pace;
    private final int until;

    private FallsOff(Followed f, int until) {
        this.f = f;
        this.until = until;
        pace = new Pace(f);
    }

    /**
     * The finding or note before a step; null for none.
     *
     * @param until first step not looked at, where gas may burn
     * @param end first interval not looked at
     */
    static LogFinding of(Followed f, int until, int end) {
        return new FallsOff(f, until).found(end);
    }

    /**
     * Writes full power as asked where the climb of a firing of its own tells that all elements are on and no gas burns, so that a later firing can be laid
     * beside it. Far under full power it may be a share set by hand, of which nothing is known.
     */
    static void ask(Followed f) {
        double full = f.c.kiln().elements().fullW();
        if (f.plan == null || !(full > 0)) {
            return;
        }
        int gas = f.other.guessed() ? firstGas(f.plan) : Integer.MAX_VALUE;
        Pace pace = new Pace(f);
        List<Double> shares = new ArrayList<>();
        boolean[] on = new boolean[f.intervals()];
        for (int i = 0; i + APART + Pace.WINDOW <= on.length; i++) {
            for (int k = i; pace.flat(i) && pace.flat(i + APART) && k < i + APART + Pace.WINDOW; k++) {
                on[k] |= f.kelvin[k] > WARM_K && f.plan.tracker.byProbe.last()[k] < gas;
            }
        }
        for (int i = 0; i < on.length; i++) {
            if (on[i]) {
                shares.add(f.logged.get(i).neededW() / full);
            }
        }
        boolean all = Followed.median(shares) > 1 - FromTheStart.CIRCUIT;
        for (int i = 0; all && i < on.length; i++) {
            f.asked[i] = on[i] ? full : f.asked[i];
        }
    }

    /** First step of the plan that burns gas; their number for none. */
    static int firstGas(Followed f) {
        int gas = 0;
        while (gas < f.c.steps().size() && !f.c.steps().get(gas).gas()) {
            gas++;
        }
        return gas;
    }

    private LogFinding found(int end) {
        double full = f.c.kiln().elements().fullW();
        List<Double> missing = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        int first = -1;
        int next = 0;
        for (int i = 0; i + APART + Pace.WINDOW <= end; i++) {
            // One window falls off where a programme goes on to a slower rate; one behind it does not.
            if (!tells(i) || !tells(i + APART)) {
                continue;
            }
            first = first < 0 ? i : first;
            for (int k = Math.max(i, next); k < i + APART + Pace.WINDOW; k++) {
                double asked = asked(k);
                double m = asked - f.logged.get(k).neededW() / full;
                missing.add(m);
                shares.add(m / asked);
            }
            next = i + APART + Pace.WINDOW;
        }
        double m = Followed.median(missing);
        if (!(m > FromTheStart.WEAK)) {
            return null;
        }
        LogFinding found = new LogFinding(
                m >= FromTheStart.CIRCUIT * asked(first) ? Kind.ELEMENT : Kind.WEAK,
                f.grid.timeS()[first],
                f.grid.kelvin()[first],
                Double.NaN,
                Double.NaN,
                false,
                f.offsets.isEmpty());
        return found.ofElements(Followed.median(shares), full).toldBehind();
    }

    private boolean tells(int i) {
        for (int k = i; k < i + Pace.WINDOW; k++) {
            if (f.tracker.step[k] < 0 || f.tracker.byProbe.last()[k] >= until || f.tracker.opening(k)) {
                return false;
            }
        }
        return f.kelvin[i] > WARM_K && pace.flat(i) && behind(i);
    }

    /** Whether the kiln lies behind at the end of a window: where a step asks a rate, behind that at which it was led, else behind the plan's. */
    private boolean behind(int i) {
        int s = f.tracker.step[i];
        Step step = f.c.steps().get(s);
        if (!step.electric() || step.goal() instanceof Step.Hold || cools(step, s)) {
            return false;
        }
        if (!Double.isNaN(step.elementShare()) || Double.isInfinite(step.rateKPerS())) {
            return true;
        }
        double own = pace.first(f.tracker.begin[s], i + Pace.WINDOW);
        double rate = own < Pace.UNTOLD * step.rateKPerS() ? own : SLOW * step.rateKPerS();
        int last = i + Pace.WINDOW;
        double since = f.grid.timeS()[last] - f.grid.timeS()[f.tracker.begin[s]];
        return f.grid.kelvin()[last] < f.grid.kelvin()[f.tracker.begin[s]] + rate * since - BEHIND_K;
    }

    private boolean cools(Step step, int s) {
        return step.goal() instanceof Step.To t && t.temperatureK() < f.grid.kelvin()[f.tracker.begin[s]];
    }

    /** Least share of the elements that a step asks that may be in force. */
    private double asked(int i) {
        double out = 1;
        for (int k = f.tracker.byProbe.first()[i];
                k <= Math.min(f.tracker.over - 1, f.tracker.byProbe.last()[i]);
                k++) {
            double share = f.c.steps().get(k).elementShare();
            out = Double.isNaN(share) ? out : Math.min(out, share);
        }
        return out;
    }
}
