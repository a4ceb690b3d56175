package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rows of two independent models (computed, not read): 23 × 27 in decagon, 2.5 in wall of k = 0.12 + 1e-4 T, 70 kg load,
 * ports shut. They agree with each other within 7 °C/h; that is the tolerance here. Where they differ the middle stands
 * in the table and half their difference is added.
 */
@Tag("published")
class CheckRowsTest {
    private static FiringRun climb(double kw, double factor) {
        return Simulation.run(
                TestKilns.decagon(kw * 1000, factor),
                GasExchange.NONE,
                List.of(TestKilns.full(TestKilns.to(1290))),
                List.of(),
                Numerics.STANDARD);
    }

    @ParameterizedTest
    @CsvSource({
        "8, 1.0, 98, 73, 47, 7",
        "9.6, 1.0, 153.5, 126.5, 99, 10.5",
        "11.5, 1.0, 211, 185, 158, 7",
        "9.6, 1.25, 114, 83, 52, 7"
    })
    void climbAtThreeTemperatures(
            double kw, double factor, double at1000, double at1100, double at1200, double tolerance) {
        FiringRun run = climb(kw, factor);
        assertThat(run.climbAtK(1273.15) * 3600).isCloseTo(at1000, within(tolerance));
        assertThat(run.climbAtK(1373.15) * 3600).isCloseTo(at1100, within(tolerance));
        assertThat(run.climbAtK(1473.15) * 3600).isCloseTo(at1200, within(tolerance));
    }

    @Test
    void sixKilowattsStallBelowCone10() {
        double stall = SteadyShell.stallK(TestKilns.decagon(6000, 1.0), t -> 6000) - 273.15;
        assertThat(stall).isBetween(1080.0, 1125.0);
        FiringRun run = climb(6, 1.0);
        assertThat(run.reached()).isFalse();
        assertThat(run.steps().get(0).stalled()).isTrue();
    }

    @Test
    void eightKilowattsWithLossFactorStall() {
        double stall = SteadyShell.stallK(TestKilns.decagon(8000, 1.25), t -> 8000) - 273.15;
        assertThat(stall).isCloseTo(1197, within(7.0));
    }

    /** 4 kW of propane at lambda 0.85 adds 53, 42 and 34 °C/h, the holes it burns through radiating meanwhile. */
    @ParameterizedTest
    @CsvSource({"1000, 53", "1100, 42", "1200, 34"})
    void gasAddsToTheClimb(double celsius, double adds) {
        KilnHeat kiln = TestKilns.decagon(9600, 1.0, 70, TestKilns.FIVE_PORTS);
        Step both = new Step(TestKilns.to(1285), Step.FULL, true, true, Step.CONTROLLER, true, new Step.Share(1));
        FiringRun with = Simulation.run(
                kiln,
                new AvailableHeat(4000, 0.85, 0.002),
                List.of(TestKilns.full(TestKilns.to(900)), both),
                List.of(),
                Numerics.STANDARD);
        FiringRun without = climb(9.6, 1.0);
        double more = (with.climbAtK(celsius + 273.15) - without.climbAtK(celsius + 273.15)) * 3600;
        assertThat(more).isCloseTo(adds, within(7.0));
    }
}
