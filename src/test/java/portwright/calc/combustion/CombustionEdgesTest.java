package portwright.calc.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.Edges;
import portwright.calc.flow.GasState;
import portwright.data.Constants;
import portwright.source.Source;

/** Edges of arguments, soot, and mixtures; expected values by hand, by algebra or from the named handbook figures. */
class CombustionEdgesTest {
    private static final double ATM = 101325;
    private static final Source NONE = Source.memory("made up", "", "");

    private static Fuel fuel(double c, double h, double o, double molar, double gross, double net, double cp) {
        return new Fuel("own", c, h, o, 0, molar, gross, net, 0, cp, NONE);
    }

    private static Products propane(double lambda, double kelvin) {
        return Products.of(Fuels.propane(), Air.ROOM, lambda, kelvin, ATM);
    }

    @Test
    void arguments() {
        Edges.hold("[200,3500]", Equilibrium::at);
        Edges.hold("(0,1e9]", lambda -> propane(lambda, 1400));
        Edges.hold("[1e3,1e7]", p -> Products.of(Fuels.propane(), Air.ROOM, 0.9, 1400, p));
        Edges.hold("(0.05,1)", o -> new Air(o, 0.029, NONE));
        Edges.hold("(0.02,0.04)", m -> new Air(0.21, m, NONE));
        Species co = Species.of("CO");
        Edges.hold("[200,6000]", co::heatCapacity);
        Edges.hold("(0,1e8)", p -> OxygenProbe.emfMv(p, 1400));
        Edges.hold("[200,3500]", t -> OxygenProbe.emfMv(1, t));
        Edges.hold("(-1e3,3e3)", mv -> OxygenProbe.oxygenPressure(mv, 1400));
        Edges.hold("[200,3500]", t -> OxygenProbe.oxygenPressure(500, t));
        Edges.hold("[0,1e6)", x -> Fuels.mixture("own", Map.of("methane", 1.0, "nitrogen", x), NONE));
        assertThatThrownBy(() -> Fuels.mixture("own", Map.of("methane", 0.0), NONE))
                .hasMessageContaining("no component");
        assertThat(OxygenProbe.oxygenPressure(OxygenProbe.emfMv(3e-7, 1400), 1400))
                .isCloseTo(3e-7, Percentage.withPercentage(1e-9));
    }

    /** What burns: c + h/4 - o/2 above 0. Hydrogen and carbon monoxide do, water and carbon dioxide do not. */
    @Test
    void whatAFuelIs() {
        assertThat(fuel(0, 2, 0, 0.002, 9, 8, 29).stoichOxygen()).isEqualTo(0.5);
        assertThat(fuel(1, 0, 1, 0.028, 9, 8, 29).stoichOxygen()).isEqualTo(0.5);
        assertThatThrownBy(() -> fuel(0, 2, 1, 0.018, 9, 8, 29)).hasMessageContaining("needs no oxygen");
        assertThatThrownBy(() -> fuel(1, 0, 2, 0.044, 9, 8, 29)).hasMessageContaining("needs no oxygen");
        assertThat(fuel(1, 0, 0, 0.012, 9, 8, 29).stoichOxygen()).isEqualTo(1);
        assertThatThrownBy(() -> fuel(-1e-9, 8, 0, 0.044, 9, 8, 29)).hasMessageContaining("gas that burns");
        assertThatThrownBy(() -> fuel(3, -1e-9, 0, 0.044, 9, 8, 29)).hasMessageContaining("gas that burns");
        assertThatThrownBy(() -> fuel(3, 8, -1e-9, 0.044, 9, 8, 29)).hasMessageContaining("gas that burns");
        assertThat(fuel(1, 0, 0, 0.012, 9, 9, 29).grossHeat()).isEqualTo(9);
        assertThatThrownBy(() -> fuel(1, 4, 0, 0, 9, 8, 29)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> fuel(1, 4, 0, 0.016, 9, 0, 29)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> fuel(1, 4, 0, 0.016, 8, 8.1, 29)).hasMessageContaining("not below net heat");
        assertThatThrownBy(() -> fuel(1, 4, 0, 0.016, 9, 8, Constants.R)).hasMessageContaining("heat capacity");
    }

    /** Handbook figures, from memory: propane burns with 15.68 kg of air per kg, is 1.52 times as heavy as air, 1.865 kg/m³ at 15 °C, cp/cv 1.131; air 1.225 kg/m³, 1005 J/kgK. */
    @Tag("published")
    @Test
    void propaneAndAir() {
        Fuel f = Fuels.propane();
        assertThat(15.68 / f.stoichAirByMass(Air.ROOM)).isEqualTo(1, within(2e-3));
        assertThat(f.molarMass() / Air.ROOM.molarMass()).isEqualTo(1.522, within(1e-3));
        assertThat(GasState.density(ATM, f.molarMass(), 288.15)).isEqualTo(1.865, within(1e-3));
        assertThat(f.isentropicExponent()).isEqualTo(1.131, within(6e-4));
        assertThat(Air.ROOM.density(ATM, 288.15)).isEqualTo(1.225, within(5e-4));
        assertThat((Air.ROOM.enthalpy(301) - Air.ROOM.enthalpy(299)) / 2 / 0.0289651)
                .isEqualTo(1005, within(5.0));
        // 100 K of warming of a mole of air
        assertThat(Air.ROOM.enthalpy(398.15) - Air.ROOM.enthalpy(298.15)).isEqualTo(2920, within(20.0));
    }

    /** Enthalpies of formation at 25 °C, CODATA and kin from memory: methane -74.6, propane -104.7, n-butane -125.6 kJ/mol; the heats of combustion here give them within 1.2 kJ. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"methane,-74.6", "propane,-104.7", "n-butane,-125.6"})
    void formationFollowsFromTheNetHeat(String gas, double kJ) {
        Fuel f = Fuels.mixture(gas, Map.of(gas, 3.0), NONE);
        assertThat(f.formationEnthalpy() / 1000).isEqualTo(kJ, within(1.2));
        assertThat(f.enthalpy(298.15)).isEqualTo(f.formationEnthalpy(), within(1e-9));
        assertThat(f.enthalpy(308.15) - f.enthalpy(298.15)).isEqualTo(10 * f.heatCapacity(), within(1e-6));
    }

    /** Moles by mass: 1/(0.2/44.0956 + 0.8/58.1222) = 54.6457 g/mol; shares are normalised, so 2 : 2 is 1 : 1, 51.1089 g/mol. */
    @Test
    void mixtures() {
        assertThat(Fuels.propaneButane(0.2).molarMass()).isEqualTo(0.0546457, within(1e-6));
        Fuel even = Fuels.mixture("own", Map.of("propane", 2.0, "n-butane", 2.0), null);
        assertThat(even.molarMass()).isEqualTo(0.0511089, within(1e-6));
        assertThat(even.carbon()).isEqualTo(3.5, within(1e-12));
        assertThat(even.source()).isNotNull();
        assertThat(Fuels.mixture("own", Map.of("propane", 2.0), NONE).source()).isEqualTo(NONE);
        assertThat(Fuels.names()).contains("propane", "butane", "methane", "natural-gas");
    }

    /** CODATA, from memory: entropy of CO2 at 25 °C and 1 bar 213.8 J/(mol K). */
    @Tag("published")
    @Test
    void speciesOfTheTable() {
        Species co2 = Species.of("CO2");
        assertThat(co2.entropy(298.15)).isEqualTo(213.8, within(0.1));
        assertThat(co2.name()).isEqualTo("CO2");
        assertThat(co2.atoms("O")).isEqualTo(2);
        assertThat(co2.atoms("N")).isZero();
        assertThat(co2.tMin()).isEqualTo(200);
        assertThat(co2.tMax()).isEqualTo(6000);
        assertThat(co2.source().title()).isNotBlank();
    }

    /** Heat capacity at fixed composition is the slope of enthalpy: where all oxygen is CO, and in lean cold gas, the composition does not move. */
    @ParameterizedTest
    @CsvSource({"0.2,1300", "0.2,900", "2,700"})
    void heatCapacityIsTheSlopeOfEnthalpy(double lambda, double kelvin) {
        Products p = propane(lambda, kelvin);
        double slope = (propane(lambda, kelvin + 1).enthalpy()
                        - propane(lambda, kelvin - 1).enthalpy())
                / 2;
        assertThat(p.heatCapacity()).isCloseTo(slope, Percentage.withPercentage(1e-3));
    }

    /** The same where composition does move: the sum over the six gases, written out; mass is kept. */
    @Test
    void richHotGas() {
        Products p = propane(0.8, 1500);
        double sum = 0;
        double[] n = {p.co(), p.co2(), p.h2(), p.h2o(), p.o2(), p.n2()};
        String[] names = {"CO", "CO2", "H2", "H2O", "O2", "N2"};
        for (int i = 0; i < n.length; i++) {
            sum += n[i] * Species.of(names[i]).heatCapacity(1500);
        }
        assertThat(p.heatCapacity()).isEqualTo(sum, within(1e-9));
        assertThat(p.mass() / Fuels.propane().molarMass())
                .isEqualTo(1 + 0.8 * Fuels.propane().stoichAirByMass(Air.ROOM), within(1e-9));
        assertThat(AtmosphereLevel.of(p.lambda())).isEqualTo(AtmosphereLevel.HEAVY);
        assertThat(AtmosphereLevel.HEAVY.lambdaLow()).isEqualTo(0.8);
    }

    /**
     * Propane at lambda 0.2: 2 CO, 4 H2, 1 C, 0.2 · 5 · 0.7905/0.2095 N2. Over graphite the gas has pCO2 = B pCO² and √pO2 =
     * pCO2/(K1 pCO), so pO2 = (B pCO/K1)², all in bar.
     */
    @Test
    void sootHoldsTheOxygenDown() {
        Products p = propane(0.2, 1300);
        double n2 = 0.7905 / 0.2095;
        assertThat(p.co()).isEqualTo(2, within(1e-9));
        assertThat(p.solidCarbon()).isEqualTo(1, within(1e-9));
        assertThat(p.n2()).isEqualTo(n2, within(1e-9));
        double pCo = 1.01325 * 2 / (2 + 4 + n2);
        Equilibrium e = p.equilibrium();
        assertThat(p.oxygenPressure() / 1e5)
                .isCloseTo(Math.pow(Math.exp(e.lnB() - e.lnK1()) * pCo, 2), Percentage.withPercentage(1e-9));
        assertThat(p.carbonActivity()).isEqualTo(1);
        // C2H2 with a fifth of its 2.5 O2 has one O for two C
        Fuel acetylene = fuel(2, 2, 0, 0.026, 1.3e6, 1.25e6, 44);
        assertThat(Products.of(acetylene, Air.ROOM, 0.2, 1300, ATM).solidCarbon())
                .isEqualTo(1, within(1e-9));
    }

    /** Methane at lambda 0.25 has just the oxygen for CO: no soot and no CO2; the probe still reads. */
    @Test
    void theVeryEdgeOfSoot() {
        Products p = Products.of(Fuels.methane(), Air.ROOM, 0.25, 1300, ATM);
        assertThat(p.co()).isEqualTo(1, within(1e-9));
        assertThat(p.solidCarbon()).isZero();
        assertThat(p.probeMv()).isBetween(500.0, 1600.0);
    }

    /** Close to every awkward point oxygen is kept: atoms in the gas are those of the air. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-15, 1e-13, 1e-11, 1e-8, 1e-5, 1e-2})
    void oxygenIsKeptNearSootAndNearLambdaOne(double beside) {
        for (double t : new double[] {200, 250, 400, 800, 1500, 2500, 3500}) {
            for (double lambda : new double[] {0.3 + beside, 1 - beside, 1 + beside}) {
                Products p = propane(lambda, t);
                assertThat(p.co() + 2 * p.co2() + p.h2o() + 2 * p.o2())
                        .as("lambda %s at %s K", lambda, t)
                        .isCloseTo(10 * lambda, Percentage.withPercentage(1e-9));
                assertThat(p.oxygenPressure()).isPositive();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1.0000000000000002,OXIDIZING",
        "1,NEUTRAL",
        "0.98,NEUTRAL",
        "0.9799999,LIGHT",
        "0.94,LIGHT",
        "0.9399999,MEDIUM",
        "0.87,MEDIUM",
        "0.8699999,HEAVY",
        "0.8,HEAVY",
        "0.7999999,BEYOND",
        "0,BEYOND"
    })
    void levelsAtTheirEdges(double lambda, AtmosphereLevel level) {
        assertThat(AtmosphereLevel.of(lambda)).isEqualTo(level);
        assertThat(lambda).isBetween(level.lambdaLow(), level.lambdaHigh());
        assertThatThrownBy(() -> AtmosphereLevel.of(-1e-9)).hasMessageContaining("from 0 up");
    }

    @Test
    void theProbeIsIllConditionedAroundLambdaOne() {
        assertThat(new double[] {0.97999, 0.98, 1, 1.02, 1.02001})
                .satisfies(l -> assertThat(Arrays.stream(l).mapToObj(OxygenProbe::illConditioned))
                        .containsExactly(false, true, true, true, false));
    }
}
