package portwright.calc.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.data.Constants;

class JetTest {

    private static final double PSI = 6894.757293168;
    private static final double IN_WC = 249.08891;

    private static Jet jet(Fuel f) {
        return new Jet(f.molarMass(), f.isentropicExponent(), Constants.T_GAS, Constants.ATMOSPHERE);
    }

    /** Computed by an independent reference: k, critical ratio, choking pressure, flux at 1 bar gauge. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"propane,1.131,0.578,0.739,548.3", "methane,1.308,0.544,0.848,348.3", "butane,1.095,0.586,0.716,622.0"})
    void reproducesTheCompressibleTable(String fuel, double k, double rc, double chokeBar, double flux) {
        Fuel f = Fuels.of(fuel);
        Jet j = jet(f);
        assertThat(f.isentropicExponent()).isEqualTo(k, Offset.offset(6e-4));
        assertThat(j.criticalRatio()).isEqualTo(rc, Offset.offset(6e-4));
        assertThat((1 / j.criticalRatio() - 1) * Constants.ATMOSPHERE / 1e5).isEqualTo(chokeBar, Offset.offset(6e-4));
        assertThat(j.massFlow(1, 1e-6, 1e5) * 1e6).isEqualTo(flux, Offset.offset(0.06));
    }

    /** How much the incompressible form over-predicts, %, propane: computed by an independent reference. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"0.1,1.6", "0.3,4.5", "0.7,9.6", "1.0,11.4"})
    void incompressibleFormOverPredicts(double bar, double pct) {
        Jet j = jet(Fuels.propane());
        double incompressible = Math.sqrt(2 * j.density() * bar * 1e5);
        assertThat(100 * (incompressible / j.massFlux(bar * 1e5) - 1)).isEqualTo(pct, Offset.offset(0.06));
    }

    @Tag("published")
    @Test
    void reproducesTheJetSpeeds() {
        Jet j = jet(Fuels.propane());
        // the reference gives the full expansion; the jet keeps 0.9 of it
        assertThat(j.speed(4 * PSI) / 0.9).isEqualTo(161, Offset.offset(0.6));
        assertThat(j.speed(1e5) / 0.9).isEqualTo(268, Offset.offset(0.6));
        assertThat(j.speed(11 * IN_WC)).isEqualTo(49, Offset.offset(0.6));
    }

    /** A burner of a 25 lb-cylinder conversion at 5 psi in a 30 mm hole: jet momentum over hole area is 8 to 9 Pa, above the stack. */
    @Test
    void trapMomentumAtFivePsiIsAboveTheStack() {
        Jet j = jet(Fuels.propane());
        double mass = 5000 / 3.0 / Fuels.propane().netHeatByMass();
        assertThat(j.momentum(mass, 5 * PSI) / (Math.PI / 4 * 0.030 * 0.030)).isBetween(8.0, 9.5);
        double incompressibleSpeed = 0.9 * Math.sqrt(2 * 5 * PSI / j.density());
        assertThat(j.speed(5 * PSI)).isLessThan(0.985 * incompressibleSpeed);
    }

    /** The supply density in the low-pressure formula would give more gas than the jet passes. */
    @ParameterizedTest
    @CsvSource({"2740,1.013", "5000,1.024"})
    void trapDensityIsAtAtmosphericPressure(double gauge, double naiveFactor) {
        Jet j = jet(Fuels.propane());
        double rhoAtm = Constants.ATMOSPHERE * 0.04409562 / (Constants.R * Constants.T_GAS);
        assertThat(j.massFlux(gauge)).isCloseTo(Math.sqrt(2 * rhoAtm * gauge), Percentage.withPercentage(1e-9));
        double naive = Math.sqrt(2 * rhoAtm * (1 + gauge / Constants.ATMOSPHERE) * gauge);
        assertThat(naive / j.massFlux(gauge)).isEqualTo(naiveFactor, Offset.offset(1e-3));
    }

    /** At altitude a fixed gauge pressure passes gas as the root of the air pressure. */
    @Test
    void trapAltitudeActsOnTheJet() {
        double p = GasState.pressureAtAltitude(1600);
        Jet high = new Jet(0.04409562, 1.131, Constants.T_GAS, p);
        assertThat(high.massFlux(2740) / jet(Fuels.propane()).massFlux(2740))
                .isEqualTo(Math.sqrt(p / Constants.ATMOSPHERE), Offset.offset(1e-9));
    }

    @Test
    void flowAndSpeedRiseWithPressureWithoutJumps() {
        for (String fuel : new String[] {"propane", "methane", "butane"}) {
            Jet j = jet(Fuels.of(fuel));
            double flux = 0;
            double speed = 0;
            for (double p = 0; p < 3e5; p += 25) {
                double f = j.massFlux(p);
                double v = j.speed(p);
                if (p > 0) {
                    assertThat(f).isGreaterThan(flux);
                    assertThat(v).isGreaterThan(speed);
                }
                if (p > 1000) {
                    assertThat(f / flux).isLessThan(1.02);
                }
                flux = f;
                speed = v;
            }
        }
    }

    @Test
    void severalJetsAddUp() {
        Jet j = jet(Fuels.propane());
        assertThat(j.massFlow(0.9, 0.7, 3, 2740))
                .isCloseTo(3 * j.massFlow(0.9, 0.7, 1, 2740), Percentage.withPercentage(1e-12));
        assertThat(j.massFlow(0.9, 0.7, 1, 0)).isZero();
    }

    @Test
    void refusesNonsense() {
        Jet j = jet(Fuels.propane());
        assertThatThrownBy(() -> j.massFlow(0.9, 0.7, 1, -1)).hasMessageContaining("gas pressure -1.0 Pa");
        assertThatThrownBy(() -> j.massFlow(1.2, 0.7, 1, 10)).hasMessageContaining("discharge coefficient 1.2");
        assertThatThrownBy(() -> j.massFlow(0.9, -0.7, 1, 10)).hasMessageContaining("jet diameter -0.7 mm");
        assertThatThrownBy(() -> j.massFlow(0.9, Double.NaN, 1, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> j.massFlow(0.9, 0.7, 0, 10)).hasMessageContaining("number of jets 0");
        assertThatThrownBy(() -> new Jet(44.1, 1.13, 288, 101325)).hasMessageContaining("kg/mol");
        assertThatThrownBy(() -> new Jet(0.0441, 1.13, 15, 101325)).hasMessageContaining("kelvin");
        assertThatThrownBy(() -> new Jet(0.0441, 1.13, 288, 1.01)).hasMessageContaining("pascal");
    }
}
