package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.data.Cones;
import portwright.units.Celsius;

class ForecastTest {
    private static final double Z = Celsius.ZERO_C;
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
        return SteadyShell.stallK(k, t -> k.elements().fullW()) - Z;
    }

    /**
     * Trade page on kiln power: 11.5 kW in a 23 × 27 in kiln (4.0 W per square inch of inner surface) reaches cone 10,
     * in a 28 × 27 in kiln (3.1) only cone 8. The conflict: with brick as tabled and no loss factor the model takes the
     * big kiln to cone 10 as well. Two figures that are not one: the steady climb ends at the chart's temperature of cone 10 (60 °C/h)
     * from a loss factor of about 1.3 on; the goal itself, the cone down, is lost later, since a slow climb bends it lower.
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
                .as("loss factor at which the steady climb ends at 1285 °C, the chart's temperature of cone 10")
                .isBetween(1.25, 1.35);
        assertThat(tenFalls(low + 0.05))
                .as("past that factor the cone still falls: a climb that ends is not a goal that is lost")
                .isTrue();
        double falls = low;
        double lost = 2.0;
        while (lost - falls > 0.01) {
            double mid = (falls + lost) / 2;
            if (tenFalls(mid)) {
                falls = mid;
            } else {
                lost = mid;
            }
        }
        assertThat(lost).as("loss factor at which cone 10 itself is lost").isBetween(1.40, 1.50);
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

    private static boolean tenFalls(double lossFactor) {
        return Simulation.run(
                        kiln(12, 28, lossFactor, 100, 11500, List.of()),
                        GasExchange.NONE,
                        List.of(Step.electric(TestKilns.to(900), 100 / 3600.0), TestKilns.full(new Step.ToCone(TEN))),
                        List.of(),
                        Numerics.STANDARD)
                .reached();
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
