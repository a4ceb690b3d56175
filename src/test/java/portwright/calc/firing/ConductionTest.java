package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Conduction against closed solutions of the heat-transfer handbooks (Carslaw and Jaeger's; formulas from memory, evaluated with an independent library). */
@Tag("published")
class ConductionTest {
    private static final double K = 0.2;
    private static final double RHO = 600;
    private static final double CP = 1050;

    private static Layer layer(double thickness) {
        return new Layer(thickness, Conductivity.constant(K), RHO, CP);
    }

    @Test
    void semiInfiniteSolidWithItsFaceSuddenlyHot() {
        double thick = 0.5;
        ShellPart part = new ShellPart("slab", List.of(layer(thick)), 1, 1, (f, r) -> 0);
        PartGrid grid = new PartGrid(part, 1, 300, 300, 400);
        double dt = 5;
        double t = 3600;
        for (int i = 0; i < t / dt; i++) {
            grid.eliminate(1 / dt);
            grid.complete(1300);
            grid.accept();
        }
        double a = K / (RHO * CP);
        double dx = thick / 400;
        for (int node : new int[] {8, 16, 32, 60}) {
            double exact = 300 + 1000 * Erf.erfc(node * dx / (2 * Math.sqrt(a * t)));
            assertThat(grid.temperatureK(node)).as("depth %.4f m", node * dx).isCloseTo(exact, within(1.5));
        }
        double flux = K * 1000 / Math.sqrt(Math.PI * a * t);
        grid.eliminate(1 / dt);
        double computed = grid.faceSlope() * 1300 - grid.faceOffset();
        assertThat(computed).isCloseTo(flux, within(0.005 * flux));
    }

    @Test
    void slabWithConvectionFollowsItsSeries() {
        double thick = 0.08;
        double h = 5;
        double bi = h * thick / K;
        ShellPart part = new ShellPart("slab", List.of(layer(thick)), 1, 1, (f, r) -> h);
        KilnHeat kiln = new KilnHeat(List.of(part), 1, 0, 0, Elements.fresh(0), List.of(), 300);
        Balance balance = new Balance(kiln, 1000, 40);
        FlowCurve closed = new FlowCurve(kiln, GasExchange.NONE, TestKilns.full(TestKilns.to(1)), 1);
        double dt = 10;
        double t = 2.5 * 3600;
        for (int i = 0; i < t / dt; i++) {
            balance.advance(dt, Double.NaN, 0, closed);
            balance.accept();
        }
        double fo = K / (RHO * CP) * t / (thick * thick);
        double theta = 0;
        for (int n = 0; n < 8; n++) {
            double low = n * Math.PI + 1e-9;
            double zeta =
                    new BrentSolver(1e-12).solve(200, z -> z * Math.sin(z) - bi * Math.cos(z), low, low + Math.PI / 2);
            double c = 4 * Math.sin(zeta) / (2 * zeta + Math.sin(2 * zeta));
            theta += c * Math.exp(-zeta * zeta * fo);
        }
        assertThat(fo).isBetween(0.3, 0.6);
        assertThat(balance.chamberK()).isCloseTo(300 + 700 * theta, within(1.0));
    }

    @Test
    void steadyFirstRootOfTheSeriesIsTheHandbookOne() {
        // Bi 1: first root 0.8603, coefficient 1.1191 (heat-transfer textbooks, from memory)
        double zeta = new BrentSolver(1e-12).solve(200, z -> z * Math.tan(z) - 1, 0.1, 1.5);
        assertThat(zeta).isCloseTo(0.8603, within(5e-5));
        assertThat(4 * Math.sin(zeta) / (2 * zeta + Math.sin(2 * zeta))).isCloseTo(1.1191, within(5e-5));
    }

    @Test
    void steadyWallOfThreeLayersIsASumOfResistances() {
        Layer hot = new Layer(0.0635, Conductivity.constant(0.23), 580, 1050);
        Layer middle = new Layer(0.025, Conductivity.constant(0.10), 128, 1130);
        Layer jacket = new Layer(0.012, Conductivity.constant(0.50), 900, 900);
        ShellPart wall = new ShellPart("wall", List.of(hot, middle, jacket), 2, 2, (f, r) -> 12);
        double r = 0.0635 / 0.23 + 0.025 / 0.10 + 0.012 / 0.50 + 1 / 12.0;
        assertThat(SteadyShell.partLossW(wall, 1, 293.15, 1273.15)).isCloseTo(2 * 980 / r, within(1e-6 * 980 / r));
    }

    @Test
    void steadyWallWhoseConductivityRisesFollowsItsIntegral() {
        Layer brick = new Layer(0.0635, Conductivity.linear(0.12, 1e-4), 580, 1050);
        ShellPart wall = new ShellPart("wall", List.of(brick), 1, 1, (f, r) -> 1e6);
        double integral = 0.12 * (1200 - 20) + 1e-4 / 2 * (1200.0 * 1200 - 20 * 20);
        double q = integral / 0.0635;
        assertThat(SteadyShell.partLossW(wall, 1, 293.15, 1473.15)).isCloseTo(q, within(1e-3 * q));
    }

    @Test
    void steadyAreaThatGrowsOutwardFollowsTheLogarithmicMean() {
        Layer brick = new Layer(0.1, Conductivity.constant(0.2), 580, 1050);
        ShellPart pipe = new ShellPart("ring", List.of(brick), 1, 1.6, (f, r) -> 1e7);
        double mean = 0.6 / Math.log(1.6);
        double q = 0.2 * mean * 500 / 0.1;
        assertThat(SteadyShell.partLossW(pipe, 1, 300, 800)).isCloseTo(q, within(1e-3 * q));
    }
}
