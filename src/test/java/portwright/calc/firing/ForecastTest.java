package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.data.Cones;

class ForecastTest {
    private static final double Z = Heat.ZERO_C;
    private static final double IN = 0.0254;
    private static final ConeWork TEN = BalanceTest.TEN;
    private static final ConeWork EIGHT = ConeWork.of(Cones.load().find("8").orElseThrow());

    private static KilnHeat kiln(
            int sides, double flatsIn, double lossFactor, double loadKg, double watts, List<OpenPort> ports) {
        Layer brick = new Layer(2.5 * IN, Conductivity.linear(0.12, 1e-4), 580, 1050);
        return TestKilns.polygon(
                sides, flatsIn * IN, 27 * IN, 2.5 * IN, new Layer[] {brick}, lossFactor, loadKg, watts, ports, 20 + Z);
    }

    private static double stall(KilnHeat k) {
        return SteadyShell.stallK(k, k.elements().fullW()) - Z;
    }

    /**
     * Trade page on kiln power: 11.5 kW in a 23 × 27 in kiln (4.0 W per square inch of inner surface) reaches cone 10,
     * in a 28 × 27 in kiln (3.1) only cone 8. The conflict: with brick as tabled and no loss factor the model takes the
     * big kiln to cone 10 as well. The trade's figure needs a loss factor of about 1.3.
     */
    @Test
    @Tag("published")
    void powerForEachInnerSurface() {
        double inner23 = kiln(10, 23, 1, 70, 11500, List.of()).innerAreaM2() / (IN * IN);
        double inner28 = kiln(12, 28, 1, 100, 11500, List.of()).innerAreaM2() / (IN * IN);
        assertThat(11500 / inner23).isBetween(3.95, 4.05);
        assertThat(11500 / inner28).isBetween(3.05, 3.15);
        assertThat(stall(kiln(12, 28, 1.0, 100, 11500, List.of()))).isGreaterThan(1400);
        double low = 1.0;
        double high = 2.0;
        while (high - low > 0.001) {
            double mid = (low + high) / 2;
            if (stall(kiln(12, 28, mid, 100, 11500, List.of())) > 1285) {
                low = mid;
            } else {
                high = mid;
            }
        }
        assertThat(low)
                .as("loss factor at which the big kiln stalls at cone 10")
                .isBetween(1.25, 1.35);
        assertThat(stall(kiln(10, 23, low, 70, 11500, List.of()))).isGreaterThan(1450);
        FiringRun small = Simulation.run(
                kiln(10, 23, low, 70, 11500, List.of()),
                GasExchange.NONE,
                List.of(Step.electric(TestKilns.to(900), 100 / 3600.0), TestKilns.full(new Step.ToCone(TEN))),
                List.of(EIGHT),
                Numerics.STANDARD);
        assertThat(small.reached()).isTrue();
        assertThat(small.endS() / 3600).isLessThan(13);
    }

    /**
     * Common practice, no source: gas opened at about 907 °C, heavy for the first 47 °C takes about half an hour, 1030 °C
     * after about 1 h 45 min, cone 10 some 12 h after a slow electric start; the climb slows and never reverses.
     *
     * <p>Inputs: 23 × 27 in decagon of 190 L, 2.5 in group 23 wall, loss factor 1.25, 57 kg of ware and shelves, 11.5 kW;
     * 120 °C/h to 907 °C on the controller; then 6 kW net of propane at lambda 0.8 with the elements on a fixed half up to
     * 1030 °C, all elements from there.
     */
    @Test
    void reductionFiringOfCommonPractice() {
        KilnHeat k = kiln(10, 23, 1.25, 57, 11500, TestKilns.FIVE_PORTS);
        Step half = new Step(TestKilns.to(1030), Step.FULL, true, true, 0.5, true, new Step.Share(1));
        Step all = new Step(new Step.ToCone(TEN), Step.FULL, true, true, 1.0, true, new Step.Share(1));
        FiringRun r = Simulation.run(
                k,
                new AvailableHeat(6000, 0.8, 0.002),
                List.of(Step.electric(TestKilns.to(907), 120 / 3600.0), half, all),
                List.of(),
                Numerics.STANDARD);
        double on = r.steps().get(1).startS();
        assertThat((r.timeAtK(954 + Z) - on) / 60).isBetween(25.0, 38.0);
        assertThat((r.timeAtK(1030 + Z) - on) / 60).isBetween(90.0, 120.0);
        assertThat(r.reached()).isTrue();
        assertThat(r.endS() / 3600).isBetween(10.5, 13.0);
        for (int step = 1; step <= 2; step++) {
            double last = Double.POSITIVE_INFINITY;
            int skip = 3;
            for (Sample s : r.samples()) {
                if (s.step() == step) {
                    assertThat(s.climbKPerS()).isGreaterThan(0);
                    if (skip-- <= 0) {
                        assertThat(s.climbKPerS()).isLessThan(last * 1.001);
                    }
                    last = s.climbKPerS();
                }
            }
        }
    }

    /** The same kiln with a controller asked for 90 °C/h sheds power when the gas comes on: it does not show the slow first half hour. */
    @Test
    void aControllerShedsPowerForTheGas() {
        KilnHeat k = kiln(10, 23, 1.25, 57, 11500, TestKilns.FIVE_PORTS);
        Step both = new Step(TestKilns.to(1030), 90 / 3600.0, true, true, Step.CONTROLLER, true, new Step.Share(1));
        FiringRun r = Simulation.run(
                k,
                new AvailableHeat(6000, 0.8, 0.002),
                List.of(Step.electric(TestKilns.to(907), 90 / 3600.0), both),
                List.of(),
                Numerics.STANDARD);
        Sample before = r.samples().stream()
                .filter(s -> s.step() == 0)
                .reduce((a, b) -> b)
                .orElseThrow();
        Sample after = r.samples().stream()
                .filter(s -> s.step() == 1)
                .skip(2)
                .findFirst()
                .orElseThrow();
        assertThat(after.electricW()).isLessThan(before.electricW() - 1000);
        assertThat(r.steps().get(1).seconds()).isBetween(123 / 90.0 * 3600 - 2, 123 / 90.0 * 3600 + 2);
    }

    @Test
    void theBandLiesAroundTheForecast() {
        Forecast f = Forecast.of(
                kiln(10, 23, 1.25, 70, 11500, TestKilns.FIVE_PORTS),
                new AvailableHeat(4000, 0.9, 0.002),
                BalanceTest.mixed(),
                List.of(),
                Numerics.STANDARD);
        assertThat(f.quick().steps().get(3).seconds())
                .isLessThan(f.nominal().steps().get(3).seconds());
        assertThat(f.slow().steps().get(3).seconds())
                .isGreaterThan(f.nominal().steps().get(3).seconds());
        assertThat(f.stallAllK()).isGreaterThan(f.stallElectricK());
    }

    /** Read: a raw-glaze firing of a kiln of about 100 L takes 64 kWh; studio practice (from memory) 1 to 3 kWh/kg of ware and furniture. Orders of magnitude only. */
    @Test
    void energyOfAFiringIsOfTheTradesSize() {
        KilnHeat k = kiln(10, 23, 1.25, 70, 11500, List.of());
        FiringRun r = Simulation.run(
                k,
                GasExchange.NONE,
                List.of(Step.electric(TestKilns.to(1000), 100 / 3600.0), TestKilns.full(new Step.ToCone(TEN))),
                List.of(),
                Numerics.STANDARD);
        double kwh = r.electricJ() / 3.6e6;
        assertThat(kwh / 70).isBetween(0.9, 3.0);
        assertThat(kwh / 190).isBetween(0.25, 1.0);
    }
}
