package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.combustion.Fuels;
import portwright.calc.combustion.Products;

class FireStateTest {
    /** Available share of the net heat, propane, independent computation; two digits given. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"0.85,900,0.47", "0.85,1100,0.39", "1.0,1000,0.57", "1.0,1200,0.47", "1.2,1100,0.44", "0.7,1200,0.21"})
    void heatLeftInTheChamber(double lambda, double celsius, double share) {
        DraftExchange x = new DraftExchange(Cases.reference(celsius, 5, 1, 0, 0));
        double open = x.damperFor(lambda, Cases.kelvin(celsius));
        FireState s = x.at(true, open, Cases.kelvin(celsius));
        assertThat(s.lambda().orElseThrow()).isCloseTo(lambda, within(1e-6));
        assertThat(s.heatW() / s.fuelNetW()).isCloseTo(share, within(0.006));
        assertThat(s.fuelNetW()).isCloseTo(5000, within(0.1));
    }

    /** Open ports with the gas off draw about 2 g/s and take 2 to 3 kW (independent computation, rounded). */
    @Test
    void openPortsCoolWithTheGasOff() {
        FireState s =
                new DraftExchange(Cases.build(1100, 5, 1, 0, 0, 2, 0.032, 2, 0.032)).at(false, 1, Cases.kelvin(1100));
        assertThat(s.balance().airFlow() * 1e3).isBetween(1.5, 2.5);
        assertThat(-s.heatW()).isBetween(1.7e3, 3.2e3);
        assertThat(s.lambda()).isEmpty();
        assertThat(s.formal()).isTrue();
    }

    @Test
    void elementsAndMassAreKept() {
        for (double open : new double[] {1, 0.7, 0.5}) {
            FireState s = FireState.of(Cases.reference(1150, 5, open, 0.2, 400));
            Products p = s.products();
            double carbon = p.co() + p.co2() + p.solidCarbon();
            double hydrogen = 2 * (p.h2() + p.h2o());
            double oxygen = p.co() + 2 * p.co2() + p.h2o() + 2 * p.o2();
            assertThat(carbon).isCloseTo(3, within(1e-9));
            assertThat(hydrogen).isCloseTo(8, within(1e-9));
            assertThat(oxygen).isCloseTo(2 * p.lambda() * 5, within(1e-9));
            // the balance's closed form of the molar mass against the equilibrium's
            assertThat(s.balance().productMolarMass()).isCloseTo(p.molarMass(), within(2e-4 * p.molarMass()));
            double flow = s.balance().gasFlow() / p.fuel().molarMass() * p.mass();
            assertThat(flow).isCloseTo(s.balance().airFlow() + s.balance().gasFlow(), within(1e-9));
        }
    }

    @Test
    void heatSplitsOverTheProducts() {
        FireState s = FireState.of(Cases.reference(1150, 5, 0.6, 0, 0));
        double mol = s.balance().gasFlow() / Fuels.propane().molarMass();
        double in = mol * s.products().enthalpyIn(Cases.ROOM);
        double out = mol * s.products().enthalpy();
        assertThat(in - out).isCloseTo(s.heatW(), within(1e-9 * Math.abs(in)));
    }

    @Test
    void veryRichIsFormalNotSilent() {
        FireState s = FireState.of(Cases.reference(1100, 9, 0.3, 0, 0));
        assertThat(s.formal()).isTrue();
        assertThat(s.shown()).isEmpty();
        FireState cold = FireState.of(Cases.reference(600, 2, 1, 0, 0));
        assertThat(cold.formal()).isTrue();
        assertThat(cold.lambda()).isPresent();
    }

    @Test
    void unreachableLambdaGivesTheNearestShare() {
        DraftExchange x = new DraftExchange(Cases.reference(1100, 9, 1, 0, 0));
        assertThat(x.damperFor(3, Cases.kelvin(1100))).isEqualTo(1);
        assertThat(x.damperFor(0.01, Cases.kelvin(1100))).isBetween(0.0, 0.6);
    }
}
