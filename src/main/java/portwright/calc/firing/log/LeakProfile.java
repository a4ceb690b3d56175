package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import portwright.calc.firing.GasExchange;

/**
 * The leak area from minutes at known power with the ports open and no gas, beside minutes with the ports plugged. No gas is in play, and what else may be off (load,
 * power, thermocouple) is nearly the same in both, so that the step between them is the heat of the air drawn. With the plate shut all of that air leaves by the leak; plugged, the leak
 * draws a little under half as much, which reads as loss.
 *
 * <p>For each leak area tried the loss factor takes its best value within what is tried of it; misfit is weighed by the covariance of what may be off. The band holds every area whose misfit
 * lies within 1.645² of the least, widened where the least itself is more than chance, and by how well the flow through a crack is reckoned.
 */
final class LeakProfile {
    /** How well the flow through a leak is reckoned, a standard deviation: its height and edges are not known (own judgement). */
    private static final double CRACK = 0.10;

    private static final double LEAST_CM2 = 0.5;
    private static final double MOST_CM2 = 120;
    private static final double RATIO = Math.exp(0.2);
    /** How well a design knows its loss factor, a standard deviation as a share of it: else a huge leak beside walls that lose next to nothing fits as well (own judgement). */
    private static final double LOSS_KNOWN = 0.30;

    private static final double LOSS_STEP = 0.02;
    private static final double WANDER_S = 3600;
    private static final double NOISE_S = 600;
    /** A number known to a factor of two to either side is worth writing down, and so is a small one known to 3 cm² to either side: less than a plate is set by. */
    private static final double TELLS_FACTOR = 4;

    private static final double TELLS_M2 = 6e-4;

    /**
     * What was found.
     *
     * @param leakM2 best
     * @param lowM2 5 % of its band
     * @param highM2 95 %
     * @param loss factor that goes with it
     * @param lossSd its standard deviation, that of the leak carried
     * @param lossAtLow factor that goes with the smallest leak of the band
     * @param lossAtHigh with the largest
     * @param left root mean square of the missing power left, as a share of full power
     */
    record Found(
            double leakM2,
            double lowM2,
            double highM2,
            double loss,
            double lossSd,
            double lossAtLow,
            double lossAtHigh,
            double left) {
        /** Whether the band is narrow enough to be a number, and has an upper end. */
        boolean tells() {
            boolean ends = highM2 < MOST_CM2 * 1e-4 / RATIO;
            return ends && highM2 < TELLS_FACTOR * lowM2 || highM2 - lowM2 < TELLS_M2;
        }
    }

    private final Followed base;
    private final int[] told;
    private final DoubleFunction<GasExchange> draft;
    private final DecompositionSolver solver;
    private final double start;
    private final double design;

    /**
     * @param use intervals at known power without gas, plugged or open
     * @param start loss factor near which the best one is sought
     */
    LeakProfile(Followed base, List<Integer> use, DoubleFunction<GasExchange> draft, double start) {
        this.base = base;
        this.draft = draft;
        this.start = start;
        design = base.c.kiln().lossFactor();
        told = use.stream().mapToInt(Integer::intValue).toArray();
        solver = new CholeskyDecomposition(covariance()).getSolver();
    }

    private RealMatrix covariance() {
        Unsure u = new Unsure(base, told);
        List<double[]> columns = new ArrayList<>(List.of(u.load(), u.lagging(), u.power(), u.draught()));
        columns.addAll(u.probe());
        double noise = Evidence.noise(base, told, missing(start, base.c.gas()));
        double full = base.c.kiln().elements().fullW();
        int n = told.length;
        double[][] s = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double dt = Math.abs(told[i] - told[j]) * Grid.SPACING_S;
                // Voltage wanders, so what it moves is in proportion to the power that is on.
                double wander =
                        Evidence.WANDER * Evidence.WANDER * base.asked[told[i]] * base.asked[told[j]] / full / full;
                s[i][j] = wander * Math.exp(-dt / WANDER_S) + noise * noise * Math.exp(-dt / NOISE_S);
                for (double[] c : columns) {
                    s[i][j] += c[i] * c[j];
                }
            }
        }
        return new Array2DRowRealMatrix(s, false);
    }

    /** The best leak area and its band. */
    Found find() {
        List<Double> cm2 = new ArrayList<>();
        List<Double> misfit = new ArrayList<>();
        int best = 0;
        for (double x = LEAST_CM2; x <= MOST_CM2 * 1.001; x *= RATIO) {
            cm2.add(Math.log(x));
            misfit.add(at(x).misfit());
            best = misfit.get(misfit.size() - 1) < misfit.get(best) ? misfit.size() - 1 : best;
        }
        double at = vertex(cm2, misfit, best);
        double least = misfit.get(best);
        double within = Fit.SIGMAS * Fit.SIGMAS * Math.max(1, least / Math.max(1, told.length - 2));
        double low = end(cm2, misfit, best, least + within, -1);
        double high = end(cm2, misfit, best, least + within, 1);
        double crack = Fit.SIGMAS * CRACK;
        At middle = at(Math.exp(at));
        At few = at(Math.exp(at - Math.hypot(at - Math.min(at, low), crack)));
        At much = at(Math.exp(at + Math.hypot(Math.max(at, high) - at, crack)));
        return new Found(
                middle.cm2 * 1e-4,
                few.cm2 * 1e-4,
                much.cm2 * 1e-4,
                middle.loss,
                Math.hypot(middle.sd, (few.loss - much.loss) / 2 / Fit.SIGMAS),
                few.loss,
                much.loss,
                middle.left());
    }

    /** Lowest point of the parabola through the best area tried and its neighbours. */
    private static double vertex(List<Double> x, List<Double> y, int k) {
        if (k == 0 || k == x.size() - 1) {
            return x.get(k);
        }
        double a = y.get(k - 1) - y.get(k);
        double b = y.get(k + 1) - y.get(k);
        double h = x.get(k + 1) - x.get(k);
        return a + b > 0 ? x.get(k) + h * (a - b) / (2 * (a + b)) : x.get(k);
    }

    /** The farthest crossing of a misfit to one side, by straight line between areas tried; the end of what is tried where there is none. */
    private static double end(List<Double> x, List<Double> y, int from, double most, int way) {
        double out = x.get(from);
        for (int k = from; k + way >= 0 && k + way < x.size(); k += way) {
            double a = y.get(k);
            double b = y.get(k + way);
            if (b <= most) {
                out = x.get(k + way);
            } else if (a <= most) {
                out = x.get(k) + (x.get(k + way) - x.get(k)) * (most - a) / (b - a);
            }
        }
        return out;
    }

    private At at(double cm2) {
        return new At(cm2, draft.apply(cm2 * 1e-4));
    }

    /** A leak area with the loss factor that goes with it. */
    private final class At {
        private final double cm2;
        private final double[] y;
        private final double[] a;
        private final double ay;
        private final double aa;
        private final double loss;
        private final double sd;

        At(double cm2, GasExchange gas) {
            this.cm2 = cm2;
            y = missing(start, gas);
            a = Columns.slope(y, missing(start * (1 + LOSS_STEP), gas), start * LOSS_STEP);
            double[] wa = solved(a);
            double known = 1 / (LOSS_KNOWN * LOSS_KNOWN * design * design);
            ay = Columns.dot(y, wa) + (design - start) * known;
            aa = Columns.dot(a, wa) + known;
            loss = Math.max(Fit.LEAST_LOSS, Math.min(Fit.MOST_LOSS, start + ay / aa));
            sd = 1 / Math.sqrt(aa);
        }

        double misfit() {
            double more = loss - start;
            double off = (design - start) / (LOSS_KNOWN * design);
            return Columns.dot(y, solved(y)) + off * off - 2 * more * ay + more * more * aa;
        }

        double left() {
            double sum = 0;
            for (int i = 0; i < y.length; i++) {
                double r = y[i] - (loss - start) * a[i];
                sum += r * r;
            }
            return Math.sqrt(sum / y.length);
        }
    }

    private double[] missing(double factor, GasExchange gas) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the fit was given up");
        }
        Followed f = base.with(base.c.with(base.c.kiln().withLossFactor(factor), gas));
        double[] out = new double[told.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = f.missing(told[i], true);
        }
        return out;
    }

    private double[] solved(double[] v) {
        return solver.solve(new ArrayRealVector(v, false)).toArray();
    }
}
