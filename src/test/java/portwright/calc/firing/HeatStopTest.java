package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class HeatStopTest {
    private static final double K800 = 1073.15;
    private static final double K750 = 1023.15;

    /** Draws a steady power out of the chamber with the gas off and none with it on. */
    private record Drain(double watts) implements GasExchange {
        @Override
        public Flow at(boolean gasOn, double damperShare, double chamberK) {
            return gasOn ? Flow.NONE : new Flow(-watts, 0, 0, 0.001, 0);
        }

        @Override
        public double damperFor(double lambda, double chamberK) {
            return 1;
        }
    }

    private static Step gas(Step.Goal goal) {
        return new Step(goal, Step.FULL, true, true, Step.CONTROLLER, true, new Step.Share(1));
    }

    private static KilnHeat wall(double area, Conductivity k, double thickness, double load) {
        Layer brick = new Layer(thickness, k, 500, 1000);
        Film none = (face, room) -> 0;
        return new KilnHeat(
                List.of(new ShellPart("wall", List.of(brick), area, area, none)),
                1,
                load,
                load > 0 ? 50 : 0,
                Elements.fresh(0),
                List.of(),
                K800);
    }

    /**
     * Semi-infinite solid at 800 °C that gives a steady flux at its face: t = (π/α) (k ΔT / 2q)². With k 0.2 W/(m K), ρc 5e5 J/(m³ K),
     * q 600 W/m², ΔT 50 K: α 4e-7 m²/s, t = 545 s; brick conducting 20 % less: t ∝ k ρ c, so 436 s, and that is the shortest.
     */
    @Test
    @Tag("published")
    void thickWallUnderASteadyFlux() {
        HeatStop h = HeatStop.shortest(
                wall(2, Conductivity.linear(0.2, 0), 0.1, 0),
                new Drain(1200),
                List.of(gas(new Step.Hold(60))),
                K750,
                Numerics.STANDARD);
        assertThat(h.fromK()).isCloseTo(K800, within(0.01));
        assertThat(h.seconds()).isCloseTo(0.8 * Math.PI / 4e-7 * Math.pow(0.2 * 50 / (2 * 600), 2), within(0.03 * 436));
    }

    /** A load of 60 kJ/K that nothing else warms loses 50 K at 2 kW in 25 min; the thin wall of 2.5 kJ/K adds one more. */
    @Test
    void loadAlone() {
        HeatStop h = HeatStop.shortest(
                wall(1, Conductivity.linear(50, 0), 0.005, 60_000),
                new Drain(2000),
                List.of(gas(new Step.Hold(60))),
                K750,
                Numerics.STANDARD);
        assertThat(h.seconds()).isBetween(1500.0, 62_500 * 50 / 2000.0 + 1);
    }

    @Test
    void noGasStepNoAnswerAndHotterLastsLonger() {
        KilnHeat kiln = TestKilns.decagon(11500, 1.25, 57, TestKilns.FIVE_PORTS);
        GasExchange air = new AvailableHeat(4000, 0.9, 0.002);
        assertThat(HeatStop.shortest(kiln, air, List.of(TestKilns.full(TestKilns.to(850))), K750, Numerics.STANDARD))
                .isNull();
        double last = 0;
        for (double c : new double[] {740, 800, 850, 907, 1000}) {
            double s = HeatStop.shortest(
                            kiln,
                            air,
                            List.of(
                                    Step.electric(TestKilns.to(c), 120 / 3600.0),
                                    gas(TestKilns.to(c + 20)),
                                    gas(TestKilns.to(1050))),
                            K750,
                            Numerics.STANDARD)
                    .seconds();
            assertThat(s).as("gas on at %s", c).isGreaterThanOrEqualTo(last);
            last = s;
        }
    }
}
