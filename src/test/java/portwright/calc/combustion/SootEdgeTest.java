package portwright.calc.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.data.Constants;

/** The ends of the oxygen balance: a hair above the least oxygen that makes all carbon CO, rounding must not stop it; and where it begins to look. */
class SootEdgeTest {
    /** Every fuel that a design may name, and one that brings much oxygen of its own. */
    private static final List<Fuel> FUELS = Stream.concat(
                    Fuels.names().stream().map(Fuels::of),
                    Stream.of(Fuels.mixture("half burnt", Map.of("methane", 0.6, "carbon dioxide", 0.4), null)))
            .toList();

    /** Lambda at which the oxygen of air and fuel just makes all carbon CO, by atoms: propane 3 of 10, butane 4 of 13, methane 1 of 4. */
    private static double edge(Fuel fuel) {
        return (fuel.carbon() - fuel.oxygen()) / (2 * fuel.stoichOxygen());
    }

    /** By hand from the formulas alone; 60 % methane with 40 % carbon dioxide: 1 carbon, 0.8 oxygen, 1.2 oxygen molecules: 0.2 of 2.4. */
    @Test
    void theEdgeByAtoms() {
        assertThat(edge(Fuels.propane())).isEqualTo(3 / 10.0, within(1e-15));
        assertThat(edge(Fuels.butane())).isEqualTo(4 / 13.0, within(1e-15));
        assertThat(edge(Fuels.methane())).isEqualTo(1 / 4.0, within(1e-15));
        assertThat(edge(FUELS.get(FUELS.size() - 1))).isEqualTo(0.2 / 2.4, within(1e-15));
    }

    /** From the edge up in steps of single and doubled roundings: carbon is CO, hydrogen H2, as just below the edge. */
    @ParameterizedTest
    @ValueSource(doubles = {200, 300, 800, 1300, 2000, 3500})
    void composedAlikeOnBothSides(double kelvin) {
        for (Fuel fuel : FUELS) {
            for (double pressure : new double[] {1e3, 101325, 1e7}) {
                Products below = Products.of(fuel, Air.ROOM, edge(fuel) * (1 - 1e-12), kelvin, pressure);
                assertThat(below.solidCarbon()).isBetween(0.0, 1e-10);
                for (int k = 0; k < 60; k++) {
                    double above = k < 20
                            ? edge(fuel) + k * Math.ulp(edge(fuel))
                            : edge(fuel) * (1 + Math.pow(2, (k - 20) / 2.0 - 50));
                    Products p = Products.of(fuel, Air.ROOM, above, kelvin, pressure);
                    double spare = 2 * fuel.stoichOxygen() * (above - edge(fuel));
                    String what = fuel.name() + " at " + kelvin + " K, lambda above by " + (above - edge(fuel));
                    assertThat(p.co()).as(what).isEqualTo(below.co(), within(1e-9 + spare));
                    assertThat(p.h2()).as(what).isEqualTo(below.h2(), within(1e-9 + spare));
                    assertThat(p.o2()).as(what).isBetween(0.0, 1e-9 + spare);
                    assertThat(kelvin < 800 || p.oxygenPressure() > 0)
                            .as(what + ": some oxygen is left")
                            .isTrue();
                    assertThat(p.co() + p.co2() + p.solidCarbon()).as(what).isEqualTo(fuel.carbon(), within(1e-9));
                }
            }
        }
    }

    /** Rich, the first guess leaves out the free oxygen and is off by its share of what lacks, 1e-5 and less; lean that of air with next to no CO and H2; at lambda 1 their balance.
     * Where two of these are equal they are off the most: lean by the root of s³ = s + 1, 1.325, rich by that of s³ + s = 1, 0.682. */
    @Test
    void theSearchBeginsWhereTheAnswerIs() {
        for (Fuel fuel : FUELS) {
            for (double kelvin = 1000; kelvin <= 1600; kelvin += 100) {
                for (double lambda : new double[] {0.35, 0.5, 0.7, 0.9, 0.97}) {
                    double free =
                            Products.of(fuel, Air.ROOM, lambda, kelvin, 101325).o2();
                    assertThat(off(fuel, kelvin, lambda))
                            .as("%s at %s K, lambda %s", fuel.name(), kelvin, lambda)
                            .isEqualTo(0, within(1e-6 + 1.1 * free / ((1 - lambda) * fuel.stoichOxygen())));
                }
                for (double lambda : new double[] {1, 1.03, 1.5, 3}) {
                    assertThat(off(fuel, kelvin, lambda)).isEqualTo(0, within(3e-3));
                }
                for (double near = 1e-12; near < 0.1; near *= 2) {
                    assertThat(off(fuel, kelvin, 1 + near)).isBetween(-0.282, 3e-3);
                    assertThat(off(fuel, kelvin, 1 - near)).isBetween(-3e-3, 0.383);
                }
            }
        }
    }

    /** Natural logarithm of first guess over root. */
    private static double off(Fuel fuel, double kelvin, double lambda) {
        Equilibrium e = Equilibrium.at(kelvin);
        double pBar = 101325 / Constants.BAR;
        double c = fuel.carbon();
        double h2 = fuel.hydrogen() / 2;
        double oxygen = fuel.stoichOxygen();
        double n = c + h2 + lambda * oxygen * Air.ROOM.nitrogen() / Air.ROOM.oxygen() + fuel.nitrogen() / 2;
        double excess = 2 * (lambda - 1) * oxygen;
        double lean = excess > 0 ? Math.sqrt(pBar * excess / (2 * n + excess)) : 0;
        double guess = e.start(c, h2, n, excess, excess + c + h2, pBar, lean);
        return Math.log(guess / Math.sqrt(e.burn(fuel, Air.ROOM, lambda, 101325).oxygenPressure() / Constants.BAR));
    }
}
