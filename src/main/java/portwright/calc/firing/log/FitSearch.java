package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import portwright.calc.firing.GasExchange;

/**
 * Loss factor by generalised, leak area by plain least squares: one from known power without gas, the other from known power with it. Both are
 * sums over the missing power, so what else may be off, written as its covariance, gives their bands.
 */
final class FitSearch {
    static final double LEAST_CM2 = 0.5;
    static final double MOST_CM2 = 60;
    /** More air warms a rich kiln and cools a lean one, so that two leaks may fit: all the way is tried. */
    private static final double[] TRIED_CM2 = {1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40};

    private static final double LOSS_STEP = 0.02;
    private static final double LEAK_STEP = 0.15;
    /** Widening of the band, natural logarithm. */
    private static final double WIDER = 0.25;

    private static final int ROUNDS = 6;
    private static final double LONGEST = 0.7;
    private static final double NEAR = 1e-3;

    private final Followed base;
    private final int[] told;
    private final DoubleFunction<GasExchange> draft;
    private final RealMatrix covariance;
    private final boolean[] gas;

    /**
     * What was found.
     *
     * @param lossSd standard deviation of the loss factor
     * @param leakLowM2 smallest leak area that the record does not rule out (5 % of its band)
     * @param leakHighM2 largest (95 %)
     * @param designFits whether the design's own leak is not ruled out
     * @param left root mean square of the missing power left, as a share of full power
     * @param leftOfDesign the same with the design's own leak
     */
    record Found(
            double loss,
            double lossSd,
            double leakM2,
            double leakLowM2,
            double leakHighM2,
            boolean designFits,
            double left,
            double leftOfDesign) {}

    FitSearch(Followed base, List<Integer> use, DoubleFunction<GasExchange> draft) {
        this.base = base;
        this.draft = draft;
        told = use.stream().mapToInt(Integer::intValue).toArray();
        Unsure u = new Unsure(base, told);
        List<double[]> columns = new ArrayList<>(List.of(load(u), u.lagging(), u.power(), u.gas(), u.draught()));
        columns.addAll(u.probe());
        gas = new boolean[told.length];
        for (int i = 0; i < gas.length; i++) {
            gas[i] = base.gasOn(told[i]);
        }
        covariance =
                Evidence.covariance(told, Evidence.noise(base, told, u.column(i -> base.missing(i, true))), columns);
    }

    private double[] load(Unsure u) {
        double[] out = u.load();
        double known = Double.isNaN(Notes.loadKg(base.c.log())) ? 1 : Unsure.LOAD_TOLD / Unsure.LOAD;
        for (int i = 0; i < out.length; i++) {
            out[i] *= known;
        }
        return out;
    }

    /** The loss factor alone, the design's leak kept; null where none fits. */
    Found loss() {
        double loss = base.c.kiln().lossFactor();
        for (int k = 0; ; k++) {
            double[] y = missing(loss, base.c.gas());
            double[] a = slope(y, missing(loss * (1 + LOSS_STEP), base.c.gas()), loss * LOSS_STEP);
            double step = along(weights(a, false), y);
            if (Math.abs(step) < NEAR || k == ROUNDS) {
                return new Found(
                        loss,
                        sd(weights(a, false)),
                        Double.NaN,
                        Double.NaN,
                        Double.NaN,
                        false,
                        rms(y, false),
                        Double.NaN);
            }
            loss += step;
            if (!(loss > Fit.LEAST_LOSS && loss < Fit.MOST_LOSS)) {
                return null;
            }
        }
    }

    /** The leak area of a kiln whose loss factor the time without gas has told; null where it runs out of its bounds. */
    Found leak(double loss) {
        double cm2 = best(loss);
        for (int k = 0; ; k++) {
            GasExchange draught = draft.apply(cm2 * 1e-4);
            double[] y = missing(loss, draught);
            double[] b = slope(y, missing(loss, draft.apply(cm2 * 1e-4 * Math.exp(LEAK_STEP))), LEAK_STEP);
            double step = Math.max(-LONGEST, Math.min(LONGEST, dot(b, y, true) / dot(b, b, true)));
            if (Math.abs(step) < NEAR || k == ROUNDS) {
                double[] a = slope(y, missing(loss * (1 + LOSS_STEP), draught), loss * LOSS_STEP);
                double[] design = missing(loss, base.c.gas());
                return new Found(
                        loss,
                        sd(weights(a, false)),
                        cm2 * 1e-4,
                        end(loss, cm2, y, a, -1) * 1e-4,
                        end(loss, cm2, y, a, 1) * 1e-4,
                        sigmas(design, y, a) < Fit.SIGMAS,
                        rms(y, true),
                        rms(design, true));
            }
            cm2 *= Math.exp(step);
            if (!(cm2 > LEAST_CM2 && cm2 < MOST_CM2)) {
                return null;
            }
        }
    }

    /**
     * The last leak area to one side that the record does not rule out, cm²: heat left of the gas rises with air to lambda 1 and then falls, so
     * that the slope at the best one says nothing of the far ones.
     */
    private double end(double loss, double cm2, double[] best, double[] a, int way) {
        double edge = way < 0 ? LEAST_CM2 : MOST_CM2;
        double out = edge;
        for (double x = edge; way * (x - cm2) > 0; x *= Math.exp(-way * WIDER)) {
            if (sigmas(missing(loss, draft.apply(x * 1e-4)), best, a) < Fit.SIGMAS) {
                return out;
            }
            out = x;
        }
        return out;
    }

    /** How many standard deviations the missing power of another leak area lies from that of the best one, with gas; the loss factor's own band is carried. */
    private double sigmas(double[] other, double[] best, double[] a) {
        double[] d = slope(other, best, 1);
        double whole = dot(d, d, true);
        if (whole < 1e-12) {
            return 0;
        }
        double carried = dot(a, d, true) / whole;
        double[] ofLoss = weights(a, false);
        double[] v = weights(d, true);
        for (int i = 0; i < v.length; i++) {
            v[i] -= carried * ofLoss[i];
        }
        return 1 / sd(v);
    }

    private double best(double loss) {
        double best = TRIED_CM2[0];
        double least = Double.POSITIVE_INFINITY;
        for (double cm2 : TRIED_CM2) {
            double left = rms(missing(loss, draft.apply(cm2 * 1e-4)), true);
            best = left < least ? cm2 : best;
            least = Math.min(left, least);
        }
        return best;
    }

    /**
     * How much each interval's missing power moves the number whose slope is given: without gas by generalised least squares, so that what load,
     * power and thermocouple explain in common counts little.
     */
    private double[] weights(double[] slope, boolean withGas) {
        double[] in = withGas ? slope : solved(slope);
        double whole = dot(slope, in, withGas);
        double[] out = new double[slope.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = gas[i] == withGas ? in[i] / whole : 0;
        }
        return out;
    }

    private double[] solved(double[] slope) {
        int[] at = IntStream.range(0, gas.length).filter(i -> !gas[i]).toArray();
        double[] some = Arrays.stream(at).mapToDouble(i -> slope[i]).toArray();
        double[] x = new CholeskyDecomposition(covariance.getSubMatrix(at, at))
                .getSolver()
                .solve(new ArrayRealVector(some))
                .toArray();
        double[] out = new double[slope.length];
        for (int i = 0; i < at.length; i++) {
            out[at[i]] = x[i];
        }
        return out;
    }

    private static double along(double[] weights, double[] y) {
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            sum += weights[i] * y[i];
        }
        return sum;
    }

    private double sd(double[] weights) {
        double[] c = covariance.operate(weights);
        double sum = 0;
        for (int i = 0; i < c.length; i++) {
            sum += c[i] * weights[i];
        }
        return Math.sqrt(sum);
    }

    private double[] missing(double loss, GasExchange gas) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the fit was given up");
        }
        Followed f = base.with(base.c.with(base.c.kiln().withLossFactor(loss), gas));
        double[] out = new double[told.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = f.missing(told[i], true);
        }
        return out;
    }

    /** How much missing power a unit of the input explains. */
    private static double[] slope(double[] before, double[] after, double by) {
        double[] out = new double[before.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (before[i] - after[i]) / by;
        }
        return out;
    }

    private double dot(double[] a, double[] b, boolean withGas) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += gas[i] == withGas ? a[i] * b[i] : 0;
        }
        return sum;
    }

    private double rms(double[] y, boolean withGas) {
        int n = 0;
        for (boolean g : gas) {
            n += g == withGas ? 1 : 0;
        }
        return Math.sqrt(dot(y, y, withGas) / n);
    }
}
