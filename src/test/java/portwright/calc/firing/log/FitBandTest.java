package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * Bands of the hand-made kiln, of which missing power is a straight line in loss factor and leak, so that they follow from linear algebra: generalised least squares (in
 * any textbook of statistics: the covariance of an estimate A y is A S A').
 */
class FitBandTest {
    private Followed f;
    private int[] told;
    private Unsure u;
    /** What a unit of the factor takes, and a cm² of leak, as shares of full power. */
    private double[] a;

    private double[] b;

    private void of(Followed followed, List<Integer> use) {
        f = followed;
        told = use.stream().mapToInt(i -> i).toArray();
        u = new Unsure(f, told);
        a = new double[told.length];
        b = new double[told.length];
        for (int i = 0; i < told.length; i++) {
            double over = (f.kelvin[told[i]] + f.kelvin[told[i] + 1]) / 2 - HandLog.ROOM_K;
            boolean open = f.setting(told[i], true).portsOpen();
            a[i] = HandLogFits.WALL * over / HandLog.FULL_W;
            b[i] = (open ? HandLogFits.OPEN : HandLogFits.PLUGGED) * over / HandLog.FULL_W;
        }
    }

    private double[] missing() {
        return u.column(i -> f.missing(i, true));
    }

    private static RealVector v(double[] x) {
        return new ArrayRealVector(x);
    }

    /** The loss factor's deviation is 1/√(a' S⁻¹ a): S is what load, lag, power, thermocouple, leak, wander and noise do. A note of the load halves what it does. */
    @Test
    void theLossFactor() {
        double[] sds = new double[3];
        for (int k = 0; k < 3; k++) {
            HandLog h = HandLogFits.design(1.25, 0.5);
            if (k == 1) {
                h.note("load 30 kg");
            }
            Followed x = HandLogFits.plain(h, 240, 0.95, 1.25, 0.5).followed(HandLog.share(1900, 0.95));
            List<Integer> use = HandLogFits.told(x, false, false);
            of(x, use);
            if (k == 2) {
                for (int i : told) {
                    x.asked[i] += i % 2 == 0 ? 200 : -200;
                }
            }
            double[] load = u.load();
            for (int i = 0; i < load.length; i++) {
                load[i] *= k == 1 ? 0.5 : 1;
            }
            List<double[]> columns = new ArrayList<>(List.of(load, u.lagging(), u.power()));
            columns.addAll(u.probe());
            columns.add(u.leak(HandLogFits::draft, 0.5e-4));
            RealMatrix s = Evidence.covariance(told, Evidence.noise(f, told, missing()), columns);
            double sd = 1
                    / Math.sqrt(v(a).dotProduct(
                                    new CholeskyDecomposition(s).getSolver().solve(v(a))));
            sds[k] = FitSearch.ofLoss(f, use, HandLogFits::draft, 0.5e-4).loss().lossSd();
            assertThat(sds[k]).isCloseTo(sd, within(0.003 * sd));
        }
        assertThat(sds[1]).isLessThan(0.98 * sds[0]);
        assertThat(sds[2]).isGreaterThan(1.02 * sds[0]);
    }

    /**
     * The leak: plain least squares with gas, the factor by generalised ones without. The band ends at the first area tried, from 0.5 and 60 cm² inwards by a factor
     * e^0.25, that lies within 1.645 deviations; the one before is told. The factor carries it, an eighth of a unit a cm².
     */
    @Test
    void theLeakWithGas() {
        double cm2 = 6;
        HandLog h = HandLogFits.plain(HandLogFits.design(1.25, 6), 240, 0.95, 1.25, cm2);
        HandLogFits.gas(h, 120, 1.25, cm2);
        double top = h.log().rows().get(48).kelvin() - HandLog.ZERO_C;
        Followed x = h.followed(HandLog.share(top - 1, 0.95), HandLog.gas(1900));
        List<Integer> plain = HandLogFits.told(x, false, false);
        List<Integer> use = new ArrayList<>(plain);
        use.addAll(HandLogFits.told(x, true, true));
        of(x, use);
        int n = plain.size();
        List<double[]> columns = new ArrayList<>(List.of(u.load(), u.lagging(), u.power(), u.gas()));
        columns.addAll(u.probe());
        RealMatrix s = Evidence.covariance(told, Evidence.noise(f, told, missing()), columns);
        RealVector ap = v(a).getSubVector(0, n);
        DecompositionSolver solver = new CholeskyDecomposition(s.getSubMatrix(0, n - 1, 0, n - 1)).getSolver();
        RealVector w = solver.solve(ap);
        double sd0 = 1 / Math.sqrt(ap.dotProduct(w));
        w = w.mapMultiply(sd0 * sd0);
        // A cm² more is half a W/K more without gas, which the factor takes over: an eighth of 4 W/K.
        double over = w.dotProduct(v(b).getSubVector(0, n));
        assertThat(over).isCloseTo(0.125, within(1e-6));
        RealVector d = v(b).subtract(v(a).mapMultiply(over)).getSubVector(n, told.length - n);
        RealVector vg = d.mapMultiply(1 / d.dotProduct(d));
        RealVector vp = w.mapMultiply(-vg.dotProduct(v(a).getSubVector(n, told.length - n)));
        RealVector all = vp.append(vg);
        double sd = Math.sqrt(s.operate(all).dotProduct(all));
        double low = 0.5;
        while (cm2 - low * Math.exp(0.25) >= 1.645 * sd) {
            low *= Math.exp(0.25);
        }
        double high = 60;
        while (high * Math.exp(-0.25) - cm2 >= 1.645 * sd) {
            high *= Math.exp(-0.25);
        }
        FitSearch.Found found = FitSearch.ofLeak(f, use, HandLogFits::draft).leak(1.3);
        assertThat(found.leakM2()).isCloseTo(cm2 * 1e-4, within(0.05e-4));
        assertThat(found.leakLowM2()).isCloseTo(low * 1e-4, within(1e-9));
        assertThat(found.leakHighM2()).isCloseTo(high * 1e-4, within(1e-9));
        assertThat(found.lossSd()).isCloseTo(Math.hypot(sd0, 0.125 * (high - low) / 2 / 1.645), within(0.003));
    }

    /** Three hours plugged and three open at 0.9 of the power. */
    private static Followed byAir(double designFactor) {
        HandLog h = HandLogFits.plain(HandLogFits.design(designFactor, 4), 180, 0.9, 1.25, 6);
        double top = h.log().rows().get(36).kelvin() - HandLog.ZERO_C;
        HandLogFits.open(h, 180, 0.9, 1.25, 6);
        return h.followed(HandLog.share(top - 1, 0.9), HandLogFits.open(1900, 0.9));
    }

    /** Both numbers by generalised least squares, the design's factor known to 30 % beside the record; misfit beyond chance widens the band. */
    private void isTwoNumbers(double designFactor, double start) {
        List<double[]> columns = new ArrayList<>(List.of(u.load(), u.lagging(), u.power()));
        columns.addAll(u.probe());
        RealMatrix s = Evidence.covariance(told, Evidence.noise(f, told, missing()), columns);
        for (int i = 0; i < told.length; i++) {
            for (int j = 0; j < told.length; j++) {
                // Voltage wanders by a share of the power that is on.
                double dt = Math.abs(told[i] - told[j]) * 300;
                double on = f.asked[told[i]] * f.asked[told[j]] / HandLog.FULL_W / HandLog.FULL_W;
                s.addToEntry(i, j, (on - 1) * 0.0004 * Math.exp(-dt / 3600));
            }
        }
        DecompositionSolver solver = new CholeskyDecomposition(s).getSolver();
        RealVector y = v(missing());
        double aa = v(a).dotProduct(solver.solve(v(a))) + 1 / Math.pow(0.3 * designFactor, 2);
        double ab = v(a).dotProduct(solver.solve(v(b)));
        double bb = v(b).dotProduct(solver.solve(v(b)));
        double ay = v(a).dotProduct(solver.solve(y));
        double by = v(b).dotProduct(solver.solve(y));
        double det = aa * bb - ab * ab;
        double factor = (bb * ay - ab * by) / det;
        double leak = (aa * by - ab * ay) / det;
        double misfit = y.dotProduct(solver.solve(y)) - factor * ay - leak * by;
        double wider = Math.sqrt(Math.max(1, misfit / (told.length - 2)));
        double cm2 = 4 + leak;
        double off = 1.645 * wider * Math.sqrt(aa / det);
        double low = cm2 * Math.exp(-Math.hypot(Math.log(cm2 / (cm2 - off)), 0.1645));
        double high = cm2 * Math.exp(Math.hypot(Math.log((cm2 + off) / cm2), 0.1645));
        LeakProfile.Found x = new LeakProfile(
                        f, java.util.stream.IntStream.of(told).boxed().toList(), HandLogFits::draft, start)
                .find();
        // The parabola is laid through logarithms of areas a fifth apart.
        assertThat(x.leakM2()).isCloseTo(cm2 * 1e-4, within(0.025e-4 * cm2));
        assertThat(x.lowM2()).isCloseTo(low * 1e-4, within(0.05e-4 * low));
        assertThat(x.highM2()).isCloseTo(high * 1e-4, within(0.05e-4 * high));
        double each = ab / aa;
        assertThat(x.loss()).isCloseTo(designFactor + factor + (cm2 - x.leakM2() * 1e4) * each, within(0.005));
        assertThat(x.lossAtLow()).isCloseTo(x.loss() + (x.leakM2() - x.lowM2()) * 1e4 * each, within(0.01));
        // No factor under 0.6 is tried.
        assertThat(x.lossAtHigh())
                .isCloseTo(Math.max(0.6, x.loss() + (x.leakM2() - x.highM2()) * 1e4 * each), within(0.01));
        double carried = (x.lossAtLow() - x.lossAtHigh()) / 2 / 1.645;
        assertThat(x.lossSd()).isCloseTo(Math.hypot(1 / Math.sqrt(aa), carried), within(0.003));
    }

    private static List<Integer> both(Followed x) {
        List<Integer> all = new ArrayList<>(HandLogFits.told(x, false, false));
        all.addAll(HandLogFits.told(x, false, true));
        return all;
    }

    @Test
    void theLeakByOpenPorts() {
        Followed x = byAir(1.25);
        of(x, both(x));
        isTwoNumbers(1.25, 1.2);
    }

    /** Six intervals of each, of which two are off by 600 W; a design with another factor. */
    @Test
    void moreMisfitThanChance() {
        Followed x = byAir(1.5);
        List<Integer> few = new ArrayList<>(HandLogFits.told(x, false, false).subList(0, 6));
        few.addAll(HandLogFits.told(x, false, true).subList(10, 16));
        of(x, few);
        x.asked[told[2]] += 600;
        x.asked[told[5]] -= 600;
        x.asked[told[8]] += 600;
        x.asked[told[11]] -= 600;
        isTwoNumbers(1.5, 2.4);
    }
}
