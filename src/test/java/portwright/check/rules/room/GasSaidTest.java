package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.check.rules.room.OneRule.caution;
import static portwright.check.rules.room.OneRule.check;
import static portwright.check.rules.room.OneRule.lacks;
import static portwright.check.rules.room.OneRule.lacksAlone;
import static portwright.check.rules.room.OneRule.silent;
import static portwright.check.rules.room.OneRule.stop;
import static portwright.check.rules.room.OneRule.three;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;

/** What the rules on supply, flame devices and floor tell, and where they begin to tell it. */
class GasSaidTest {
    private static final Rule PRESSURE = new SupplyPressure();
    private static final Rule PLACE = new CylinderPlace();
    private static final Rule FLAME = new FlameSupervision();
    private static final Rule FLOOR = new FloorFire();

    private static String pressures(String supply, String regulator, String a, String b) {
        return "supply.pressure=\"" + supply + "\" ; supply.regulator={\"max\":\"" + regulator
                + "\"} ; burners[0].pressure=\"" + a + "\" ; burners[1].pressure=\"" + b + "\"";
    }

    private static void measures(Finding f, Double measured, Double limit, String unit) {
        measure(f.measured(), measured, unit);
        measure(f.limit(), limit, unit);
    }

    private static void measure(Measure m, Double value, String unit) {
        if (value == null) {
            assertThat(m).isNull();
        } else {
            assertThat(m.value()).isCloseTo(value, within(Math.abs(value) * 2e-4));
            assertThat(m.unit()).isEqualTo(unit);
        }
    }

    /** Ids are what a design's own limits and the rule book call them. */
    @Test
    void theRulesByTheirNames() {
        assertThat(Stream.of(PRESSURE, PLACE, FLAME, FLOOR).map(Rule::id))
                .containsExactly("supply-pressure", "cylinder-place", "flame-supervision", "floor-fire");
    }

    // ---- supply-pressure ----

    /** Border of low pressure: common practice, no source. At it nothing is told. */
    @Test
    void fromFiftyMillibarHoseAndRegulatorAreOfAnotherKind() {
        silent(PRESSURE, pressures("50 mbar", "50 mbar", "50 mbar", "50 mbar"));
        Finding f = caution(PRESSURE, pressures("51 mbar", "51 mbar", "51 mbar", "51 mbar"));
        measures(f, 5100.0, 5000.0, "Pa");
        assertThat(f.parts()).isEmpty();
        assertThat(f.limitSetByUser()).isFalse();
        assertThat(f.message()).isEqualTo("The supply runs at 51 mbar, over 50 mbar.");
        Finding own = caution(
                PRESSURE,
                pressures("45 mbar", "45 mbar", "45 mbar", "45 mbar")
                        + " ; limits={\"supply-pressure\":{\"caution\":\"40 mbar\"}}");
        measures(own, 4500.0, 4000.0, "Pa");
        assertThat(own.limitSetByUser()).isTrue();
    }

    /** 1 psi is 6894.757 Pa (NIST SP 811): half of it 34.5 mbar. What the regulator cannot pass is not told as too much for a burner. */
    @Test
    void theSupplyCannotBeOverItsRegulator() {
        silent(PRESSURE, pressures("0.5 psi", "0.5 psi", "0.5 psi", "0.5 psi"));
        Finding f = stop(PRESSURE, pressures("40 mbar", "0.5 psi", "20 mbar", "40 mbar"));
        measures(f, 4000.0, 3447.3785, "Pa");
        assertThat(f.parts()).isEmpty();
        assertThat(f.message())
                .isEqualTo("The supply pressure of 40 mbar is over the 34.5 mbar that the regulator gives.");
        assertThat(f.remedy()).startsWith("Fit a regulator for 40 mbar, or");
    }

    /** 11 in w.c. are 27.3998 mbar (conventional inch of water, NIST SP 811): who types 27.4 means the same. A fifth of a percent is own judgement. */
    @Test
    void oneFigureInTwoUnitsIsTheSame() {
        silent(PRESSURE, pressures("11 inH2O", "11 inH2O", "27.4 mbar", "27.45 mbar"));
        silent(PRESSURE, pressures("34.5 mbar", "0.5 psi", "34.5 mbar", "0.5 psi"));
        assertThat(stop(PRESSURE, pressures("11 inH2O", "11 inH2O", "11 inH2O", "27.46 mbar"))
                        .parts())
                .containsExactly("burner B");
        assertThat(stop(PRESSURE, pressures("34.6 mbar", "0.5 psi", "34.6 mbar", "34.6 mbar"))
                        .message())
                .startsWith("The supply pressure of 34.6 mbar is over the 34.5 mbar");
        assertThat(caution(PRESSURE, pressures("50.01 mbar", "50.01 mbar", "50.01 mbar", "50.01 mbar"))
                        .message())
                .isEqualTo("The supply runs at just over 50 mbar, over 50 mbar.");
    }

    @Test
    void aBurnerCannotHaveMoreThanTheSupply() {
        Finding f = stop(PRESSURE, pressures("30 mbar", "37 mbar", "30 mbar", "37 mbar"));
        measures(f, 3700.0, 3000.0, "Pa");
        assertThat(f.parts()).containsExactly("burner B");
        assertThat(f.message()).isEqualTo("burner B asks for 37 mbar; the supply gives 30 mbar.");
        assertThat(f.remedy())
                .startsWith("Raise the supply to 37 mbar with")
                .endsWith("fit burners and jets made for 30 mbar.");
    }

    /** Flow of a jet goes with the root of its pressure (Bernoulli): twice is 1.414, 1.15 times is 1.072. A tenth more is not told: own judgement. */
    @ParameterizedTest
    @CsvSource({"33 mbar, 30 mbar, ", "33.1 mbar, 30 mbar, 5", "40 mbar, 20 mbar, 41", "46 mbar, 40 mbar, 7"})
    void aBurnerCountedUnderTheSupplyTakesMore(String supply, String burner, Integer more) {
        String edits = pressures(supply, "50 mbar", supply, burner);
        if (more == null) {
            silent(PRESSURE, edits);
            return;
        }
        Finding f = caution(PRESSURE, edits);
        double gives = Double.parseDouble(supply.replace(" mbar", ""));
        double counted = Double.parseDouble(burner.replace(" mbar", ""));
        measures(f, gives * 100, counted * 100, "Pa");
        assertThat(f.parts()).containsExactly("burner B");
        assertThat(f.message())
                .isEqualTo("The supply gives " + supply + "; burner B is counted at " + burner
                        + ". Fed with all of it the burner takes " + more + " % more gas than any figure here.");
        assertThat(f.remedy()).contains("hold " + burner + " at burner B");
    }

    /** Canadian gas-technician units 8 and 10: 11 in w.c. or 0 to 30 psi, not mixed. The border of 50 mbar itself is low. */
    @Test
    void lowAndHighPressureAreNotMixed() {
        Finding line = stop(PRESSURE, pressures("60 mbar", "70 mbar", "30 mbar", "25 mbar"));
        measures(line, 7000.0, 5000.0, "Pa");
        assertThat(line.parts()).containsExactly("burner A", "burner B");
        assertThat(line.message())
                .startsWith(
                        "The supply runs at 60 mbar; burner A, burner B are made for 25 mbar: low and high pressure are not mixed.");
        assertThat(line.remedy())
                .isEqualTo(
                        "Fit a fixed regulator for 25 mbar (not over 50 mbar), or burners, valves and hose that are all rated for 70 mbar.");
        Finding regulator = stop(PRESSURE, pressures("30 mbar", "60 mbar", "30 mbar", "30 mbar"));
        measures(regulator, 6000.0, 5000.0, "Pa");
        assertThat(regulator.message())
                .startsWith("The regulator gives up to 60 mbar; burner A, burner B are made for 30 mbar:");
        Finding one = stop(PRESSURE, pressures("60 mbar", "60 mbar", "50 mbar", "60 mbar"));
        assertThat(one.parts()).containsExactly("burner A");
        assertThat(one.message()).startsWith("The supply runs at 60 mbar; burner A is made for 50 mbar:");
        silent(PRESSURE, pressures("50 mbar", "50 mbar", "50 mbar", "46 mbar"));
        assertThat(check(PRESSURE, pressures("60 mbar", "60 mbar", "60 mbar", "60 mbar"))
                        .findings())
                .allSatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.CAUTION));
    }

    @Test
    void aStricterBorderOfTheOwnersCounts() {
        Finding f = stop(
                PRESSURE,
                pressures("45 mbar", "45 mbar", "35 mbar", "45 mbar")
                        + " ; limits={\"supply-pressure\":{\"stop\":\"40 mbar\"}}");
        measures(f, 4500.0, 4000.0, "Pa");
        assertThat(f.limitSetByUser()).isTrue();
        assertThat(f.message()).contains("burner A is made for 35 mbar");
        assertThat(f.remedy()).contains("(not over 40 mbar)");
    }

    /** Without the regulator's most a line at the border shows still that they are mixed. */
    @Test
    void whatThePressureLacks() {
        lacksAlone(PRESSURE, "burners=-", "burners");
        lacksAlone(PRESSURE, "supply.pressure=-", "supply.pressure");
        lacksAlone(PRESSURE, "supply=-", "supply.pressure");
        lacksAlone(PRESSURE, "supply.regulator=-", "supply.regulator.max");
        lacksAlone(PRESSURE, "burners[1].pressure=-", "burners[1].pressure");
        Findings out = check(PRESSURE, "supply.regulator=- ; supply.pressure=\"60 mbar\"");
        lacks(out, PRESSURE, Forbids.LIGHTING, "supply.regulator.max");
        assertThat(out.findings()).singleElement().satisfies(f -> measures(f, 6000.0, 5000.0, "Pa"));
        silent(
                PRESSURE,
                "supply.regulator=- ; supply.cylinder=- ; supply.count=- ; supply.ambient=- ; burners[0].fuel=\"natural-gas\" ; burners[1].fuel=\"natural-gas\"");
        silent(
                PRESSURE,
                "burners=[] ; supply=- ; firing.steps=[{\"to\":\"900 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"}]");
        lacksAlone(PRESSURE, "burners=[] ; supply=-", "supply.pressure");
    }

    // ---- cylinder-place ----

    /** NFPA 58 6.2.1 and IFC 6103.2.1, as the rule names them: LP-gas cylinders stand outdoors. */
    @ParameterizedTest
    @CsvSource({
        "indoors, The cylinder stands indoors:",
        "basement, The cylinder stands in a basement:",
        "pit, The cylinder stands in a pit:"
    })
    void theCylinderStandsOutdoors(String place, String said) {
        Finding f = stop(PLACE, "supply.place=\"" + place + "\"");
        measures(f, null, null, null);
        assertThat(f.parts()).isEmpty();
        assertThat(f.message()).startsWith(said).contains("gas that sinks and stays");
        assertThat(f.source().line()).contains("NFPA 58");
    }

    @Test
    void whatThePlaceLacks() {
        silent(PLACE, "");
        lacksAlone(PLACE, "supply.place=-", "supply.place");
        lacksAlone(PLACE, "supply=-", "supply.place");
        lacksAlone(PLACE, "supply=- ; burners=-", "supply.place", "burners");
        lacksAlone(PLACE, "supply.place=- ; burners[0].fuel=-", "supply.place", "burners");
        assertThat(stop(PLACE, "supply.place=\"pit\" ; burners=-").parts()).isEmpty();
        silent(PLACE, "supply=- ; burners[0].fuel=\"natural-gas\" ; burners[1].fuel=\"natural-gas\"");
        stop(PLACE, "supply.place=\"indoors\" ; burners=[]");
        silent(PLACE, "supply.place=\"indoors\" ; burners=[] ; firing=-");
    }

    // ---- flame-supervision ----

    private static String devices(String closesA, String closesB) {
        return "burners[0].flameSafety={\"closes\":\"" + closesA + "\"} ; burners[1].flameSafety={\"closes\":\""
                + closesB + "\"}";
    }

    /** Net heat of propane 2043.37 kJ/mol, 44.0956 g/mol (ISO 6976:2016). */
    private static double kgPerS(double watts) {
        return watts / (2043.37e3 / 0.0440956);
    }

    /** Eight sides 17 in apart, 18 in high; lower limit 1.7 % (IEC 60079-20-1:2010), 24.05 L/mol at 20 °C (gas law). */
    private static double limitKg() {
        double chamber = 8 * Math.tan(Math.PI / 8) * Math.pow(8.5 * 0.0254, 2) * 18 * 0.0254;
        return chamber * 0.017 * 0.0440956 / 0.02405;
    }

    /** A quarter of the lower limit: EN 746-2:2010, 5.3.3.2. Two burners of 1.6 kW. */
    @Test
    void whatTheDevicesLetInTogether() {
        double seconds = 0.25 * limitKg() / kgPerS(3200);
        silent(FLAME, devices(seconds * 0.998 + " s", seconds * 0.998 + " s"));
        Finding f = caution(FLAME, devices("20 s", "10 s"));
        double grams = 1000 * kgPerS(1600) * 30;
        measures(f, grams, 250 * limitKg(), "g");
        assertThat(f.parts()).containsExactly("burner A", "burner B");
        assertThat(f.limitSetByUser()).isFalse();
        double share = grams / 1000 / limitKg();
        assertThat(f.message())
                .startsWith("Before they shut the flame devices let in " + three(grams) + " g together (longest 20 s); "
                        + three(1000 * limitKg()) + " g bring")
                .contains(": " + three(share * 100) + " %, 25 % is the most.");
        assertThat(f.remedy()).startsWith("Fit devices that close within " + three(20 * 0.25 / share) + " s,");
        assertThat(caution(FLAME, devices(seconds * 1.002 + " s", seconds * 1.002 + " s"))
                        .measured()
                        .value())
                .isCloseTo(250.5 * limitKg(), within(0.002 * 250 * limitKg()));
        Finding own = caution(
                FLAME, devices("20 s", "10 s") + " ; limits={\"gas-on-temperature\":{\"lower-limit-share\":0.1}}");
        measures(own, grams, 100 * limitKg(), "g");
        assertThat(own.limitSetByUser()).isTrue();
    }

    /** Canadian unit 12 quoting CSA B149.1: 20 s for gas heavier than air, 90 s the longest of any. */
    @Test
    void aSlowDeviceIsToldByItsName() {
        String small = " ; burners[0].heat=\"0.1 kW\" ; burners[1].heat=\"0.1 kW\"";
        silent(FLAME, devices("20 s", "20 s") + small);
        Finding f = caution(FLAME, devices("20 s", "21 s") + small);
        measures(f, 21.0, 20.0, "s");
        assertThat(f.parts()).containsExactly("burner B");
        assertThat(f.message()).isEqualTo("burner B: flame device closes in 21 s; heavier-than-air gas asks for 20 s.");
        assertThat(f.remedy()).isEqualTo("Fit a device that closes within 20 s.");
        String piped =
                " ; supply={\"pressure\":\"11 inH2O\"} ; burners[0].fuel=\"methane\" ; burners[1].fuel=\"methane\"";
        assertThat(caution(FLAME, devices("20 s", "21 s") + small + piped).message())
                .as("methane is lighter than air")
                .isEqualTo("burner B: flame device closes in 21 s; 20 s at most, as for gas heavier than air.");
        Finding unknown = caution(FLAME, "burners[0].flameSafety=true" + small);
        measures(unknown, null, 20.0, "s");
        assertThat(unknown.parts()).containsExactly("burner A");
        assertThat(unknown.message())
                .isEqualTo(
                        "burner A: flame device closes in an unknown time, counted as 90 s; heavier-than-air gas asks for 20 s.");
    }

    /** EN 746-2:2010, 5.2.6.3: below 750 °C a flame is watched. */
    @Test
    void withoutADeviceTheFlameIsWatched() {
        Findings none = check(FLAME, "burners[1].flameSafety=false");
        assertThat(none.notChecked()).isEmpty();
        Finding f = OneRule.only(none, Severity.CAUTION);
        measures(f, null, null, null);
        assertThat(f.parts()).containsExactly("burner B");
        assertThat(f.message())
                .isEqualTo(
                        "burner B: no flame-failure device. Below 750 °C its flame must be watched without a break.");
        assertThat(f.remedy()).startsWith("Fit a device that closes within 20 s, or stand where");
        Findings unstated = check(FLAME, "burners[0].flameSafety=-");
        lacks(unstated, FLAME, Forbids.NOTHING, "burners[0].flameSafety");
        assertThat(OneRule.only(unstated, Severity.CAUTION).message())
                .startsWith("burner A: flame-failure device not stated, counted as none.");
    }

    @Test
    void whatTheFlameLacks() {
        Findings out = check(FLAME, "burners=-");
        assertThat(out.findings()).isEmpty();
        lacks(out, FLAME, Forbids.NOTHING, "burners");
        silent(FLAME, "burners=[]");
        silent(FLAME, devices("20 s", "20 s") + " ; burners[0].fuel=-");
    }

    // ---- what devices let in ----

    @Test
    void theDevicesGasIsAddedUp() {
        Review r = OneRule.plain("burners[0].flameSafety=true ; burners[1].flameSafety={\"closes\":\"5 s\"}");
        DeviceGas gas = DeviceGas.of(r, r.room().unlit().value());
        assertThat(gas.grams()).isCloseTo(1000 * kgPerS(1600) * 95, within(1e-3));
        assertThat(gas.longestS()).isEqualTo(90);
        assertThat(gas.share()).isCloseTo(kgPerS(1600) * 95 / limitKg(), within(1e-3));
        for (String none : new String[] {"burners[1].flameSafety=-", "burners[0].flameSafety=false"}) {
            Review lone = OneRule.plain(none);
            assertThat(DeviceGas.of(lone, lone.room().unlit().value())).isNull();
        }
    }

    /** Gas law, and a limit that falls by 0.0721 % a kelvin over 25 °C (Zabetakis, from memory). */
    @ParameterizedTest
    @ValueSource(doubles = {20, 25, 408, 760})
    void aHotChamberNeedsLess(double celsius) {
        double needs = 293.15 / (273.15 + celsius) * (1 - 0.000721 * Math.max(0, celsius - 25));
        DeviceGas hot = new DeviceGas(3, 0.1, 20).at(celsius);
        assertThat(hot.grams()).isEqualTo(3);
        assertThat(hot.longestS()).isEqualTo(20);
        assertThat(hot.share()).isCloseTo(0.1 / needs, within(1e-12));
    }

    // ---- floor-fire ----

    /** What burns is common knowledge, no source; 71 °C is the New York City fire code's 160 °F. */
    @Test
    void aFloorThatBurnsStops() {
        Finding f = stop(FLOOR, "room.floor=\"Pine boards\"");
        measures(f, null, null, null);
        assertThat(f.parts()).isEmpty();
        assertThat(f.message()).isEqualTo("The floor under the burners is Pine boards: it chars and lights.");
        assertThat(f.remedy()).endsWith("may pass 71 °C (160 °F).");
    }

    @Test
    void anUnknownFloorIsAskedFor() {
        Findings out = check(FLOOR, "room.floor=\"unobtainium\"");
        lacks(out, FLOOR, Forbids.LIGHTING, "room.floor");
        Finding f = OneRule.only(out, Severity.CAUTION);
        measures(f, null, null, null);
        assertThat(f.message()).isEqualTo("Whether the floor under the burners, unobtainium, burns is not known.");
        assertThat(f.remedy()).startsWith("Say in room.floor what stands under the kiln");
        for (String none : new String[] {"room=-", "room.floor=-", "room.floor=\" \""}) {
            lacksAlone(FLOOR, none, "room.floor");
        }
        silent(FLOOR, "room.floor=\"brick on sand\"");
    }

    /** One word that burns is enough, a link alone is nothing, letters of any language are words, figures are none. */
    @ParameterizedTest
    @CsvSource({
        "concrete, SOUND", "CONCRETE 4in, SOUND", "concrete over Plywood, BURNS", "dry peat, BURNS", "redwood, BURNS",
        "flat pad, UNKNOWN", "concrete et béton, UNKNOWN", "12, UNKNOWN", "'-- stone --', SOUND",
                "thick steel plate, SOUND",
        "painted steel, UNKNOWN", "painted oak, BURNS"
    })
    void wordsOfAFloor(String floor, FloorWords.Says says) {
        assertThat(FloorWords.of(floor)).isEqualTo(says);
    }
}
