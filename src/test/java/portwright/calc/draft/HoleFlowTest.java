package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import portwright.calc.flow.Discharge;
import portwright.calc.flow.GasState;

/** The solver's inner loop against the plain formulas, and its slopes against differences. */
class HoleFlowTest {
    private static HoleFlow hole(double diameter, double length, double cdFactor, double openShare) {
        HoleFlow h = new HoleFlow();
        h.shape(diameter, length, cdFactor, Discharge.exitLoss(openShare));
        return h;
    }

    /** Flow in kg/s of one gas on both sides. */
    private static double flow(HoleFlow h, double dp, double density, double viscosity) {
        h.at(dp, density, viscosity, density, viscosity, density);
        return h.flow;
    }

    @Test
    void agreesWithTheHoleFormula() {
        for (long seed = 0; seed < 2000; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            double d = r.nextDouble(0.01, 0.1);
            double length = r.nextDouble(0.01, 0.2);
            double share = r.nextDouble(0.01, 1);
            double dp = Math.pow(10, r.nextDouble(-6, 1.5));
            double rho = r.nextDouble(0.2, 1.3);
            double mu = r.nextDouble(1.7e-5, 5.5e-5);
            HoleFlow h = hole(d, length, 1, share);
            double plain = PlainFlow.hole(d, length, dp, rho, mu, share);
            h.at(dp, rho, mu, 0.3, 5e-5, 0);
            assertThat(h.flow).as("seed " + seed).isCloseTo(plain, within(1e-12 * plain));
            h.at(-dp, 1.2, 1.8e-5, rho, mu, 0);
            assertThat(-h.flow).as("seed " + seed).isCloseTo(plain, within(1e-12 * plain));
        }
    }

    @Test
    void flowIsOddRisingAndLaminarNearZero() {
        for (long seed = 0; seed < 2000; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            double d = r.nextDouble(0.004, 0.104);
            double length = r.nextDouble(0, 0.15);
            double rho = r.nextDouble(0.15, 1.35);
            double mu = GasState.viscosity(r.nextDouble(270, 1670));
            double share = r.nextDouble(1e-3, 1);
            double dp = Math.pow(10, r.nextDouble(-9, 2));
            String at = "seed " + seed;
            HoleFlow h = hole(d, length, 1, share);
            double m = flow(h, dp, rho, mu);
            assertThat(flow(h, -dp, rho, mu)).as(at).isEqualTo(-m);
            assertThat(flow(h, dp * 1.001, rho, mu)).as(at + " more pressure").isGreaterThan(m);
            assertThat(flow(hole(d, length, 1, Math.min(1, share + 1e-3)), dp, rho, mu))
                    .as(at + " more open")
                    .isGreaterThanOrEqualTo(m);
            assertThat(flow(hole(d, length, 1, 1), dp, rho, mu))
                    .as(at + " open")
                    .isLessThan(Math.PI / 4 * d * d * Math.sqrt(2 * rho * dp));
        }
        HoleFlow h = hole(0.03, 0.064, 1, 1);
        double small = flow(h, 1e-9, 1.2, 1.8e-5);
        assertThat(flow(h, 2e-9, 1.2, 1.8e-5)).isCloseTo(2 * small, Percentage.withPercentage(1));
        assertThat(flow(h, 0, 1.2, 1.8e-5)).isZero();
        HoleFlow shut = new HoleFlow();
        shut.shape(0.03, 0.064, 1, Double.POSITIVE_INFINITY);
        assertThat(flow(shut, 5, 1.2, 1.8e-5)).isZero();
    }

    @Test
    void factorScalesTheFlow() {
        assertThat(flow(hole(0.03, 0.064, 0.9, 1), 3, 1.2, 1.8e-5))
                .isCloseTo(0.9 * flow(hole(0.03, 0.064, 1, 1), 3, 1.2, 1.8e-5), Percentage.withPercentage(1e-9));
    }

    @Test
    void slopesAreTrue() {
        for (long seed = 0; seed < 2000; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            double d = r.nextDouble(0.01, 0.1);
            HoleFlow h = hole(d, 0.064, r.nextDouble(0.8, 1.1), r.nextDouble(0.05, 1));
            h.gas(Math.pow(10, r.nextDouble(-6, -3.5)), r.nextDouble(0.5, 1.8));
            h.streamTemperature = r.nextBoolean() ? 0 : 1000;
            double dp = Math.pow(10, r.nextDouble(-4, 1)) * (r.nextInt(4) == 0 ? -1 : 1);
            h.at(dp * 1.000001, 1.2, 1.8e-5, 0.25, 5e-5, 0.35);
            double up = h.flow;
            h.at(dp * 0.999999, 1.2, 1.8e-5, 0.25, 5e-5, 0.35);
            double down = h.flow;
            h.at(dp, 1.2, 1.8e-5, 0.25, 5e-5, 0.35);
            double difference = (up - down) / (dp * 2e-6);
            assertThat(h.slope).as("seed " + seed).isCloseTo(difference, within(1e-4 * difference));
        }
    }
}
