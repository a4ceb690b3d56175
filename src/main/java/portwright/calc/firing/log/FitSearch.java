package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import portwright.calc.firing.GasExchange;

/**
 * Loss factor by generalised, leak area by plain least squares: one from known power without gas, the other from known power with it. Both are
 * sums over the missing power, so what else may be off, written as its covariance, gives their bands. Leaks draw with the ports plugged too, so each leak
 * area has a loss factor of its own: while the loss is sought the leak is one of the things that may be off, while the leak is sought the loss moves along.
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
     * @param lossSd standard deviation of the loss factor: with the leak as unsure as {@link Unsure#leak} has it, or with the band of the leak that was found
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

    /** For the loss factor, from intervals without gas. */
    static FitSearch ofLoss(Followed base, List<Integer> use, DoubleFunction<GasExchange> draft, double designLeakM2) {
        return new FitSearch(base, use, draft, u -> List.of(u.leak(draft, designLeakM2)));
    }

    /** For the leak area, from intervals without and with gas. */
    static FitSearch ofLeak(Followed base, List<Integer> use, DoubleFunction<GasExchange> draft) {
        return new FitSearch(base, use, draft, u -> List.of());
    }

    private FitSearch(
            Followed base,
            List<Integer> use,
            DoubleFunction<GasExchange> draft,
            Function<Unsure, List<double[]>> besides) {
        this.base = base;
        this.draft = draft;
        told = use.stream().mapToInt(Integer::intValue).toArray();
        Unsure u = new Unsure(base, told);
        List<double[]> columns = new ArrayList<>(List.of(load(u), u.lagging(), u.power(), u.gas(), u.draught()));
        columns.addAll(u.probe());
        columns.addAll(besides.apply(u));
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
            double[] a = Columns.slope(y, missing(loss * (1 + LOSS_STEP), base.c.gas()), loss * LOSS_STEP);
            double step = Columns.dot(weights(a, false), y);
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

    /**
     * The leak area, each one tried with the loss factor that the time without gas then tells; null where it runs out of its bounds.
     *
     * @param loss factor near which the one that goes with a leak is sought
     */
    Found leak(double loss) {
        double[] start = missing(loss, base.c.gas());
        Joint joint =
                new Joint(loss, Columns.slope(start, missing(loss * (1 + LOSS_STEP), base.c.gas()), loss * LOSS_STEP));
        double cm2 = best(joint);
        for (int k = 0; ; k++) {
            double[] y = joint.missing(cm2);
            double[] b = Columns.slope(y, joint.missing(cm2 * Math.exp(LEAK_STEP)), LEAK_STEP);
            double step = Math.max(-LONGEST, Math.min(LONGEST, dot(b, y, true) / dot(b, b, true)));
            if (Math.abs(step) < NEAR || k == ROUNDS) {
                double[] design = joint.of(start);
                double low = end(joint, cm2, y, -1);
                double high = end(joint, cm2, y, 1);
                return new Found(
                        joint.loss(cm2),
                        Math.hypot(sd(joint.weights), (joint.loss(low) - joint.loss(high)) / 2 / Fit.SIGMAS),
                        cm2 * 1e-4,
                        low * 1e-4,
                        high * 1e-4,
                        sigmas(design, y, joint) < Fit.SIGMAS,
                        rms(y, true),
                        rms(design, true));
            }
            cm2 *= Math.exp(step);
            if (!(cm2 > LEAST_CM2 && cm2 < MOST_CM2)) {
                return null;
            }
        }
    }

    /** Missing power of leak areas with the loss factor that the time without gas tells beside each. */
    private final class Joint {
        private final double start;
        private final double[] slope;
        private final double[] weights;

        Joint(double start, double[] slope) {
            this.start = start;
            this.slope = slope;
            weights = weights(slope, false);
        }

        double[] missing(double cm2) {
            return of(FitSearch.this.missing(start, draft.apply(cm2 * 1e-4)));
        }

        double[] of(double[] atStart) {
            double more = Columns.dot(weights, atStart);
            double[] out = new double[atStart.length];
            for (int i = 0; i < out.length; i++) {
                out[i] = atStart[i] - more * slope[i];
            }
            return out;
        }

        double loss(double cm2) {
            return start + Columns.dot(weights, FitSearch.this.missing(start, draft.apply(cm2 * 1e-4)));
        }
    }

    /**
     * The last leak area to one side that the record does not rule out, cm²: heat left of the gas rises with air to lambda 1 and then falls, so
     * that the slope at the best one says nothing of the far ones.
     */
    private double end(Joint joint, double cm2, double[] best, int way) {
        double edge = way < 0 ? LEAST_CM2 : MOST_CM2;
        double out = edge;
        for (double x = edge; way * (x - cm2) > 0; x *= Math.exp(-way * WIDER)) {
            if (sigmas(joint.missing(x), best, joint) < Fit.SIGMAS) {
                return out;
            }
            out = x;
        }
        return out;
    }

    /** How many standard deviations the missing power of another leak area lies from that of the best one, with gas; the loss factor's own band is carried. */
    private double sigmas(double[] other, double[] best, Joint joint) {
        double[] d = Columns.slope(other, best, 1);
        double whole = dot(d, d, true);
        if (whole < 1e-12) {
            return 0;
        }
        double carried = dot(joint.slope, d, true) / whole;
        double[] v = weights(d, true);
        for (int i = 0; i < v.length; i++) {
            v[i] -= carried * joint.weights[i];
        }
        return 1 / sd(v);
    }

    private double best(Joint joint) {
        double best = TRIED_CM2[0];
        double least = Double.POSITIVE_INFINITY;
        for (double cm2 : TRIED_CM2) {
            double left = rms(joint.missing(cm2), true);
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

    private double sd(double[] weights) {
        return Math.sqrt(Columns.dot(covariance.operate(weights), weights));
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
