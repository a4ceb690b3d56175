package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How the elements' resistance changed between two firings, from the power that the kiln took in the same heat at full or fixed power, gas
 * or no gas in both.
 *
 * <p>Loss of the walls and brick are the same in both and cancel. What need not be the same carries the band: load (unless both logs note
 * it), voltage of the day, gas, and what a thermocouple may have drifted.
 *
 * @param first record, from 0
 * @param last record, from 0
 * @param rise R_last/R_first − 1
 * @param low 5 % of its band
 * @param high 95 %
 * @param gas whether gas burnt in what is compared
 * @param fromK coldest reading compared, K
 * @param toK hottest
 * @param loadTold whether both logs note the load
 * @param tellsFrom smallest rise of resistance that these two logs would tell
 * @param tellsFromNoted the same if both noted the load
 */
public record PowerTrend(
        int first,
        int last,
        double rise,
        double low,
        double high,
        boolean gas,
        double fromK,
        double toK,
        boolean loadTold,
        double tellsFrom,
        double tellsFromNoted) {
    /** Widths of temperature in which two firings are laid beside each other. */
    private static final double BIN_K = 10;

    private static final int LEAST_BINS = 3;
    private static final int LEAST_POINTS = 6;
    /** Heat of load and furniture from one firing to the next, as a share: a packed kiln and a half empty one (this project's judgement). */
    private static final double LOAD_UNKNOWN = 0.30;

    private static final double NOISE = 0.01;
    private static final double SIGMAS = 1.645;

    /** Whether a change of resistance shows: the band leaves out that nothing happened. */
    public boolean tells() {
        return low > 0 || high < 0;
    }

    /**
     * The two records farthest apart that can be compared; null where no two can.
     *
     * @param traces one a record, by its number
     * @param order numbers of the records that count, oldest first
     */
    static PowerTrend of(List<PowerTrace> traces, List<Integer> order) {
        for (int span = order.size() - 1; span > 0; span--) {
            for (int i = 0; i + span < order.size(); i++) {
                int a = order.get(i);
                int b = order.get(i + span);
                PowerTrend t = of(a, traces.get(a), b, traces.get(b), false);
                t = t == null ? of(a, traces.get(a), b, traces.get(b), true) : t;
                if (t != null) {
                    return t;
                }
            }
        }
        return null;
    }

    private static PowerTrend of(int first, PowerTrace a, int last, PowerTrace b, boolean gas) {
        Map<Long, List<PowerTrace.Point>> was = bins(a, gas);
        Map<Long, List<PowerTrace.Point>> is = bins(b, gas);
        was.keySet().retainAll(is.keySet());
        is.keySet().retainAll(was.keySet());
        if (was.size() < LEAST_BINS || points(was) < LEAST_POINTS || points(is) < LEAST_POINTS) {
            return null;
        }
        Mean x = Mean.of(was, a.loadTold());
        Mean y = Mean.of(is, b.loadTold());
        if (!(x.share > 0 && y.share > 0)) {
            return null;
        }
        double rise = x.share / y.share - 1;
        double sd = sd(x, y);
        List<Long> heat = new ArrayList<>(was.keySet());
        return new PowerTrend(
                first,
                last,
                rise,
                (1 + rise) * Math.exp(-SIGMAS * sd) - 1,
                (1 + rise) * Math.exp(SIGMAS * sd) - 1,
                gas,
                heat.get(0) * BIN_K,
                (heat.get(heat.size() - 1) + 1) * BIN_K,
                a.loadTold() && b.loadTold(),
                Math.exp(SIGMAS * sd) - 1,
                Math.exp(SIGMAS * sd(Mean.of(was, true), Mean.of(is, true))) - 1);
    }

    private static double sd(Mean x, Mean y) {
        return Math.hypot(x.sd / x.share, y.sd / y.share);
    }

    private static Map<Long, List<PowerTrace.Point>> bins(PowerTrace t, boolean gas) {
        Map<Long, List<PowerTrace.Point>> out = new TreeMap<>();
        for (PowerTrace.Point p : t.points()) {
            if (p.gas() == gas) {
                out.computeIfAbsent((long) Math.floor(p.kelvin() / BIN_K), k -> new ArrayList<>())
                        .add(p);
            }
        }
        return out;
    }

    private static int points(Map<Long, List<PowerTrace.Point>> bins) {
        return bins.values().stream().mapToInt(List::size).sum();
    }

    /** Mean share over bins that count alike, and its standard deviation. */
    private record Mean(double share, double sd) {
        static Mean of(Map<Long, List<PowerTrace.Point>> bins, boolean loadTold) {
            double share = 0;
            double[] moves = null;
            for (List<PowerTrace.Point> in : bins.values()) {
                for (PowerTrace.Point p : in) {
                    double w = 1.0 / in.size() / bins.size();
                    share += w * p.share();
                    moves = moves == null ? new double[p.moves().length] : moves;
                    for (int k = 0; k < moves.length; k++) {
                        moves[k] += w * p.moves()[k];
                    }
                }
            }
            double sum = NOISE * NOISE + Evidence.WANDER * Evidence.WANDER;
            for (int k = 0; k < moves.length; k++) {
                double m = moves[k] * (k == 0 ? (loadTold ? Unsure.LOAD_TOLD : LOAD_UNKNOWN) / Unsure.LOAD : 1);
                sum += m * m;
            }
            return new Mean(share, Math.sqrt(sum));
        }
    }
}
