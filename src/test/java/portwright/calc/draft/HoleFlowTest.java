package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import portwright.calc.flow.Crack;
import portwright.calc.flow.Hole;

/** The solver's inner loop against the plain formulas of the flow package, and its slopes against differences. */
class HoleFlowTest {
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
            HoleFlow h = new HoleFlow();
            h.shape(d, length, 1, Hole.exitLoss(share));
            h.at(dp, rho, mu, 0.3, 5e-5, 0);
            assertThat(h.flow)
                    .as("seed " + seed)
                    .isCloseTo(new Hole(d, length).massFlow(dp, rho, mu, share), within(1e-12 * h.flow));
            h.at(-dp, 1.2, 1.8e-5, rho, mu, 0);
            assertThat(-h.flow)
                    .as("seed " + seed)
                    .isCloseTo(new Hole(d, length).massFlow(dp, rho, mu, share), within(-1e-12 * h.flow));
        }
    }

    @Test
    void slopesAreTrue() {
        for (long seed = 0; seed < 2000; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            HoleFlow h = new HoleFlow();
            double d = r.nextDouble(0.01, 0.1);
            h.shape(d, 0.064, r.nextDouble(0.8, 1.1), Hole.exitLoss(r.nextDouble(0.05, 1)));
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

    @Test
    void agreesWithTheCrackFormula() {
        CrackFlow c = new CrackFlow();
        c.width = 0.4e-3;
        c.length = 1.5;
        c.depth = 0.064;
        for (double dp : new double[] {1e-6, 0.1, 5, 30}) {
            c.at(dp, 1.2, 1.8e-5, 0.25, 5e-5);
            assertThat(c.flow)
                    .isCloseTo(new Crack(0.4e-3, 1.5, 0.064).massFlow(dp, 1.2, 1.8e-5), within(1e-12 * c.flow));
        }
    }
}
