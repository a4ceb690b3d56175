package portwright.calc.firing.log;

import portwright.calc.firing.Step;

/** What a step asks of the elements along a record. */
final class AskedPower {
    private static final double LAG_K = 12;
    private static final double HOLD_K = 6;
    private static final double SLOW_SHARE = 0.7;
    static final double GAS_OFF_SCALE = 0.15;
    private static final double WARM_START_K = 373.15;
    private static final double SAME_SHARE = 0.05;

    private final Followed f;

    AskedPower(Followed f) {
        this.f = f;
    }

    /** Power asked in an interval, W; NaN where the record does not tell. Writes the least that may be asked where only that is known. */
    double of(int i) {
        int s = f.tracker.step[i];
        if (s < 0
                || !f.c.planned()
                || f.blind[i]
                || f.tracker.unsure[i]
                || f.turned.at(i)
                || f.tracker.opening(i)
                || Math.abs(f.gasScale(i) - 1) > GAS_OFF_SCALE
                || f.kelvin[0] > WARM_START_K && i < Followed.SETTLE) {
            return Double.NaN;
        }
        double reach = Math.max(f.grid.reachS()[i], f.grid.reachS()[i + 1]);
        int edge = (int) Math.ceil(reach / Grid.SPACING_S) + (reach > Grid.HALF_S ? 1 : 0);
        for (int k = Math.max(0, i - edge); k <= Math.min(f.tracker.step.length - 1, i + edge); k++) {
            if (f.tracker.step[k] != s && (k > i || f.tracker.step[k] >= 0)) {
                return Double.NaN;
            }
        }
        Step step = f.c.steps().get(s);
        double full = f.c.kiln().elements().fullW();
        if (!step.electric() || f.otherwise(i)) {
            return Double.NaN;
        }
        int smear = f.offsets.isEmpty() ? (int) Math.ceil(Grid.HALF_S / Grid.SPACING_S) : 0;
        int first = Math.max(0, i - smear);
        int last = Math.min(f.tracker.step.length - 1, i + smear);
        double least = most(s);
        for (int k = f.tracker.byProbe.first()[first]; k <= f.tracker.byProbe.last()[last]; k++) {
            double other = k == s ? least : asks(k, i);
            least = Double.isNaN(other) ? Double.NaN : Math.min(least, other);
        }
        if (!(least >= most(s) - SAME_SHARE)) {
            f.leastAsked[i] = asks(s, i) > 0 ? full * least : Double.NaN;
            return Double.NaN;
        }
        if (!Double.isNaN(step.elementShare())) {
            return full * step.elementShare();
        }
        double start = f.kelvin[f.tracker.begin[s]];
        if (step.goal() instanceof Step.Hold) {
            return !f.vague(s) && f.kelvin[i] < start - HOLD_K ? full : Double.NaN;
        }
        if (f.cools(s)) {
            return Double.NaN;
        }
        if (Double.isInfinite(step.rateKPerS())) {
            return full;
        }
        if (f.vague(s)) {
            return Double.NaN;
        }
        int ready = f.grid.at(f.tracker.readyS[s]);
        double set = f.kelvin[ready] + step.rateKPerS() * (f.grid.timeS()[i] - f.grid.timeS()[ready]);
        if (step.goal() instanceof Step.To to) {
            set = Math.min(set, to.temperatureK());
        }
        return set - f.kelvin[i] > LAG_K && f.grid.climbKPerS()[i] < SLOW_SHARE * step.rateKPerS() ? full : Double.NaN;
    }

    /** Largest share of the element power that a step may ask. */
    private double most(int step) {
        double share = f.c.steps().get(step).elementShare();
        return Double.isNaN(share) ? 1 : share;
    }

    /**
     * Share of the element power that a step would ask at an interval: all along, or because the reading has fallen well below where it was;
     * NaN where a controller chooses it, or behind the last step.
     */
    private double asks(int step, int i) {
        if (step >= f.tracker.over) {
            return Double.NaN;
        }
        Step x = f.c.steps().get(step);
        if (!x.electric()) {
            return 0;
        }
        boolean full = !(x.goal() instanceof Step.Hold) && Double.isInfinite(x.rateKPerS());
        double peak = 0;
        for (int k = 0; k <= i; k++) {
            peak = Math.max(peak, f.kelvin[k]);
        }
        double start = f.tracker.begin[step] < 0 ? f.kelvin[i] : f.kelvin[f.tracker.begin[step]];
        boolean behind = !f.cools(step, start) && f.kelvin[i] < peak - 2 * LAG_K;
        return !Double.isNaN(x.elementShare()) || full || behind ? most(step) : Double.NaN;
    }
}
