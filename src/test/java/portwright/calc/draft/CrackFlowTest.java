package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class CrackFlowTest {
    /** Flow in kg/s through a crack 1.8 m long in 60 mm of brick. */
    private static double flow(double gap, double dp, double density, double viscosity) {
        CrackFlow c = new CrackFlow();
        c.set(new Crack(0, gap, 1.8, 0.06));
        c.at(dp, density, viscosity, density, viscosity);
        return c.flow;
    }

    @Test
    void agreesWithTheCrackFormula() {
        CrackFlow c = new CrackFlow();
        c.set(new Crack(0, 0.4e-3, 1.5, 0.064));
        for (double dp : new double[] {1e-6, 0.1, 5, 30}) {
            c.at(dp, 1.2, 1.8e-5, 0.25, 5e-5);
            double plain = PlainFlow.crack(0.4e-3, 1.5, 0.064, dp, 1.2, 1.8e-5);
            assertThat(c.flow).isCloseTo(plain, within(1e-9 * plain));
        }
    }

    @Test
    void solvesItsOwnLawForEitherSign() {
        for (double gap : new double[] {1e-5, 1e-4, 1e-3, 3e-3}) {
            for (double dp : new double[] {-8, -1e-6, 1e-6, 0.5, 8}) {
                double u = flow(gap, dp, 0.24, 5e-5) / (0.24 * gap * 1.8);
                double back = 12 * 5e-5 * 0.06 * u / (gap * gap) + 0.75 * 0.24 * u * Math.abs(u);
                assertThat(back).isCloseTo(dp, Percentage.withPercentage(1e-9));
            }
        }
        assertThat(flow(0, 5, 0.24, 5e-5)).isZero();
        assertThat(flow(1e-3, 0, 0.24, 5e-5)).isZero();
    }

    /** A hairline is laminar: eight times the flow for twice the gap, and far below the same area taken as a hole. */
    @Test
    void trapHairlineIsNoOrifice() {
        double one = flow(1e-4, 5, 0.24, 5e-5);
        assertThat(flow(2e-4, 5, 0.24, 5e-5) / one).isEqualTo(8, within(0.01));
        double asHole = 0.61 * 1e-4 * 1.8 * Math.sqrt(2 * 0.24 * 5);
        assertThat(asHole / one).isGreaterThan(30);
    }

    /** A hairline passes ρ w h³ Δp/(12 μ L): flow between parallel plates. 1.2 · 1.8 · 1e-15 · 5/(12 · 1.8e-5 · 0.06) = 8.3333e-10 kg/s. */
    @Test
    void hairlineIsFlowBetweenPlates() {
        assertThat(flow(1e-5, 5, 1.2, 1.8e-5)).isCloseTo(8.33333e-10, Percentage.withPercentage(1e-3));
        assertThat(flow(1e-5, -5, 1.2, 1.8e-5)).isCloseTo(-8.33333e-10, Percentage.withPercentage(1e-3));
    }
}
