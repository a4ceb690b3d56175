package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.check.rules.room.OneRule.caution;
import static portwright.check.rules.room.OneRule.check;
import static portwright.check.rules.room.OneRule.lacks;
import static portwright.check.rules.room.OneRule.lacksAlone;
import static portwright.check.rules.room.OneRule.numbers;
import static portwright.check.rules.room.OneRule.only;
import static portwright.check.rules.room.OneRule.silent;
import static portwright.check.rules.room.OneRule.stop;
import static portwright.check.rules.room.OneRule.three;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.Severity;

/** What the rules on probe, things near flame and what hangs above the flues tell, and where they begin to tell it. */
class OverFlueSaidTest {
    private static final Rule PROBE = new ThermocoupleRange();
    private static final Rule NEAR = new NearFlame();
    private static final Rule ABOVE = new AboveFlue();

    // ---- thermocouple-range ----

    private static String probe(String type, String place) {
        return "kiln.fittings=[{\"name\":\"probe\",\"kind\":\"thermocouple\",\"class\":\"standard\"," + place
                + ",\"diameter\":\"1/4 in\"" + (type == null ? "" : ",\"type\":\"" + type + "\"") + "}]";
    }

    private static String wall(String height) {
        return "\"on\":\"wall\",\"panel\":3,\"at\":[\"0 in\",\"" + height + "\"]";
    }

    private static String firing(String to, String atmosphere) {
        return " ; firing.steps=[{\"to\":\"" + to + "\",\"rate\":\"60 °C/h\",\"heat\":\"both\",\"ports\":\"open\""
                + (atmosphere == null ? "" : ",\"atmosphere\":\"" + atmosphere + "\"") + "}]";
    }

    private static void unmeasured(Finding f) {
        assertThat(f.measured()).isNull();
        assertThat(f.limit()).isNull();
    }

    /** NIST Monograph 175 as the rule names it; 1150 °C from memory. */
    @ParameterizedTest
    @CsvSource({
        "K, 1150 °C, oxidizing, ",
        "K, 1150 °C, neutral, ",
        "K, 1151 °C, oxidizing, up to 1150 °C (2104 °F)",
        "N, 1000 °C, light, in reducing gas",
        "K, 1000 °C, , in reducing gas",
        "N, 1300 °C, heavy, in reducing gas up to 1300 °C (2372 °F)",
        "S, 1300 °C, oxidizing, "
    })
    void basePairsDrift(String type, String to, String atmosphere, String said) {
        Findings out = check(PROBE, probe(type, wall("2 in")) + firing(to, atmosphere));
        assertThat(out.notChecked()).isEmpty();
        if (said == null) {
            assertThat(out.findings()).isEmpty();
            return;
        }
        Finding f = only(out, Severity.CAUTION);
        assertThat(f.parts()).containsExactly("probe");
        assertThat(f.limitSetByUser()).isFalse();
        if (said.contains("up to")) {
            assertThat(f.measured().value()).isCloseTo(Double.parseDouble(to.split(" ", -1)[0]), within(1e-9));
            assertThat(f.measured().unit()).isEqualTo("°C");
            assertThat(f.limit().value()).isCloseTo(1150, within(1e-9));
        } else {
            unmeasured(f);
        }
        assertThat(f.message())
                .isEqualTo(
                        "probe: type " + type + " " + said + " drifts and reads low: the kiln is hotter than shown.");
    }

    @Test
    void theOwnersLimitOfTheProbe() {
        Finding f = caution(
                PROBE,
                probe("K", wall("2 in")) + firing("1100 °C", "oxidizing")
                        + " ; limits={\"thermocouple-range\":{\"caution\":\"1000 °C\"}}");
        assertThat(f.limitSetByUser()).isTrue();
        assertThat(f.limit().value()).isCloseTo(1000, within(1e-9));
    }

    @Test
    void anUnstatedTypeIsCountedAsK() {
        Findings out = check(PROBE, "kiln.fittings[0].type=-" + firing("1000 °C", "light"));
        lacks(out, PROBE, Forbids.NOTHING, "kiln.fittings[0].type");
        assertThat(only(out, Severity.CAUTION).message())
                .startsWith("thermocouple: type K (counted, none is stated) in reducing gas drifts");
    }

    /** Noble pairs in reducing gas: from memory of the ASTM manual. */
    @Test
    void noblePairsAreSpoiled() {
        Finding f = caution(PROBE, probe("S", wall("2 in")) + firing("1000 °C", "light"));
        unmeasured(f);
        assertThat(f.parts()).containsExactly("probe");
        assertThat(f.message()).isEqualTo("probe: type S is spoiled by reducing gas and metal vapour when bare.");
    }

    /** Without steps reduction is counted, and nothing is claimed of the top. */
    @Test
    void withoutStepsTheProbeMayStandInReducingGas() {
        Finding k = caution(PROBE, probe("K", wall("2 in")) + " ; firing.steps=-");
        unmeasured(k);
        assertThat(k.message()).contains("type K in reducing gas drifts");
        assertThat(caution(PROBE, probe("R", wall("2 in")) + " ; firing.steps=-")
                        .message())
                .contains("type R is spoiled");
    }

    /** A third of 18 in is 6 in, 152.4 mm. EN 746-2:2010, note to 5.2.6.3: the monitor stands at the coldest point. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"6 in|true", "6.1 in|false", "17 in|false", "floor|true", "lid|false", "none|false"})
    void theProbeStandsLow(String place, boolean low) {
        String at = switch (place) {
            case "floor" -> "\"on\":\"floor\",\"at\":[\"0 in\",\"0 in\"]";
            case "lid" -> "\"on\":\"lid\",\"at\":[\"0 in\",\"0 in\"]";
            case "none" -> "\"on\":\"wall\",\"panel\":3";
            default -> wall(place);
        };
        String edits = probe("K", at) + firing("1000 °C", "oxidizing");
        if (low) {
            silent(PROBE, edits);
            return;
        }
        Finding f = caution(PROBE, edits);
        unmeasured(f);
        assertThat(f.parts()).containsExactly("probe");
        assertThat(f.message()).startsWith("probe: stands above the lower third of the chamber");
        assertThat(f.remedy()).contains("at most 152 mm (6 in) above the floor");
        silent(
                PROBE,
                probe("K", at)
                        + " ; burners=[] ; firing.steps=[{\"to\":\"1000 °C\",\"rate\":\"60 °C/h\",\"heat\":\"electric\"}]");
    }

    @Test
    void withoutFittingsNeitherTypeNorPlaceIsKnown() {
        Findings out = check(PROBE, "kiln.fittings=-");
        lacks(out, PROBE, Forbids.NOTHING, "kiln.fittings");
        Finding f = only(out, Severity.CAUTION);
        unmeasured(f);
        assertThat(f.message()).isEqualTo("Fittings are not stated: neither the probe's type nor its place is known.");
        silent(PROBE, "kiln.fittings=[]");
    }

    // ---- near-flame ----

    /** A handle under the floor, at the bore of inlet B (4 in right of the middle, 1 3/8 in wide) or beside it. */
    private static String handle(String x, String standoff) {
        return "kiln.fittings=[{\"name\":\"grip\",\"kind\":\"handle\",\"on\":\"floor\",\"at\":[\"" + x
                + "\",\"0 in\"],\"diameter\":\"1 in\",\"standoff\":\"" + standoff + "\"}]";
    }

    /** From the bore's edge 300 mm: common practice, no source. Half the bore is 17.4625 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"317.4", "317.5", "267.4625"})
    void whatHangsUnderAPort(String standoff) {
        double gap = Double.parseDouble(standoff) - 17.4625;
        if (gap > 300) {
            silent(NEAR, handle("4 in", standoff + " mm"));
            return;
        }
        Finding f = caution(NEAR, handle("4 in", standoff + " mm"));
        assertThat(f.parts()).containsExactly("inlet B", "grip");
        assertThat(f.measured().value()).isCloseTo(gap, within(1e-6));
        assertThat(f.measured().unit()).isEqualTo("mm");
        assertThat(f.limit().value()).isEqualTo(300);
        assertThat(f.limitSetByUser()).isFalse();
        assertThat(f.message())
                .startsWith("grip is " + (gap > 299 ? "just under 300 mm (" : "250 mm ("))
                .endsWith(" from the mouth of inlet B: flame and flue gas reach it.");
        assertThat(f.remedy())
                .startsWith("Move grip " + (gap > 299 ? "1 mm (" : "50 mm ("))
                .contains(" further, or put a steel shield");
    }

    /** Beside: 8 in - 4 in - 1/2 in - 11/16 in is 2 13/16 in from B, 8 in more from A. On the bore itself nothing is left. */
    @Test
    void whatStandsBesideAPort() {
        List<Finding> both = check(NEAR, handle("8 in", "0 mm")).findings();
        assertThat(both).extracting(f -> f.parts().get(0)).containsExactly("inlet A", "inlet B");
        assertThat(both.get(0).measured().value()).isCloseTo(10.8125 * 25.4, within(1e-6));
        assertThat(both.get(1).measured().value()).isCloseTo(2.8125 * 25.4, within(1e-6));
        assertThat(both.get(1).message()).contains("grip is 71.4 mm (2 13/16 in) from");
        assertThat(both.get(1).remedy()).startsWith("Move grip 229 mm (");
        Finding on = check(NEAR, handle("4 in", "0 mm")).findings().get(1);
        assertThat(on.measured().value()).isEqualTo(0);
        assertThat(on.message()).startsWith("grip is 0 mm (0 in) from the mouth of inlet B");
        assertThat(on.remedy()).startsWith("Move grip 300 mm (");
        Finding own = caution(NEAR, handle("4 in", "400 mm") + " ; limits={\"near-flame\":{\"caution\":\"400 mm\"}}");
        assertThat(own.limitSetByUser()).isTrue();
    }

    @Test
    void onlyWhatIsTenderCounts() {
        silent(NEAR, handle("4 in", "0 mm").replace("handle", "leg"));
        silent(NEAR, "kiln.fittings=[]");
        assertThat(check(NEAR, handle("8 in", "0 mm").replace("handle", "terminals"))
                        .findings())
                .hasSize(2);
        assertThat(check(NEAR, handle("8 in", "0 mm").replace("handle", "control-box"))
                        .findings())
                .hasSize(2);
    }

    @Test
    void whatNearFlameLacks() {
        Findings out = check(NEAR, "kiln.fittings=-");
        lacks(out, NEAR, Forbids.NOTHING, "kiln.fittings");
        Finding f = only(out, Severity.CAUTION);
        assertThat(f.measured()).isNull();
        assertThat(f.limit().value()).isEqualTo(300);
        assertThat(f.remedy()).startsWith("Keep controller, cord, hose and handles 300 mm (");
        Findings shapeless = check(NEAR, handle("4 in", "0 mm").replace(",\"diameter\":\"1 in\"", ""));
        assertThat(shapeless.findings()).isEmpty();
        assertThat(shapeless.notChecked()).singleElement().satisfies(n -> {
            assertThat(n.forbids()).isEqualTo(Forbids.NOTHING);
            assertThat(n.needs()).isNotEmpty().allMatch(x -> x.startsWith("kiln.fittings[0]"));
        });
    }

    // ---- above-flue ----

    /** Stand 9 in, floor, chamber and lid 23 in together. */
    private static final double FLUE_M = 32 * 0.0254;

    /** No hood, nothing led off. */
    private static String ceiling(double above) {
        return "room.hood=- ; room.ledOutdoors=\"0 %\" ; room.ceiling=\"" + (FLUE_M + above) + " m\"";
    }

    /** Heskestad 9.1 (T/(g cp² rho²))^(1/3) Q^(2/3) z^(-5/3), from memory; hotter than Alpert's 16.9 at any height. Q in kW, air of 15 °C. */
    private static double riseK(double kw, double z) {
        return 9.1
                * Math.cbrt(288.15 / (9.80665 * 1.006 * 1.006 * 1.44))
                * Math.pow(kw, 2.0 / 3)
                * Math.pow(z, -5.0 / 3);
    }

    private static double heightM(double kw) {
        return Math.pow(riseK(kw, 1) / 56, 0.6);
    }

    /** 1.6 kW twice and elements of 5.5 kW. Two metres are common practice, no source; 71 °C is the New York City fire code's 160 °F. */
    @ParameterizedTest
    @ValueSource(doubles = {2.001, 1.999, 1.5, 1.43})
    void whatHangsAboveTheFlues(double above) {
        if (above > 2) {
            silent(ABOVE, ceiling(above));
            return;
        }
        boolean hot = above < heightM(8.7);
        assertThat(hot).isEqualTo(above < 1.5);
        Finding f = stop(ABOVE, ceiling(above));
        double at = 15 + riseK(8.7, above);
        assertThat(f.measured().value()).isCloseTo(hot ? at : above, within(hot ? 0.01 : 1e-6));
        assertThat(f.measured().unit()).isEqualTo(hot ? "°C" : "m");
        assertThat(f.limit().value()).isCloseTo(hot ? 71 : 2, within(1e-9));
        assertThat(f.limit().unit()).isEqualTo(hot ? "°C" : "m");
        assertThat(f.limitSetByUser()).isFalse();
        assertThat(f.message())
                .startsWith("The plume of up to 8.7 kW (29700 Btu/h) reaches ceiling or roof, "
                        + (above == 1.999 ? "just under 2" : three(above)) + " m (")
                .contains(" above the flues, at " + Math.round(at) + " °C (")
                .matches(m -> m.endsWith("wood chars over 71 °C (160 °F).") == hot);
        assertThat(f.remedy()).startsWith("Keep 2 m (6.56 ft) open above the flues");
    }

    @Test
    void aTouchTooHotIsNotToldAsTheLimit() {
        assertThat(stop(ABOVE, ceiling(heightM(8.7) * 0.999)).message())
                .contains("at just over 71 °C (160 °F); wood chars over 71 °C (160 °F).");
    }

    /** The stronger the fire the higher the need: 30 kW more heat than two metres bear. */
    @Test
    void aStrongFireNeedsMoreThanTwoMetres() {
        String strong = ceiling(2.2) + " ; burners[0].heat=\"14 kW\" ; burners[1].heat=\"14 kW\"";
        Finding f = stop(ABOVE, strong);
        assertThat(heightM(33.5)).isGreaterThan(2.3);
        assertThat(f.measured().value()).isCloseTo(15 + riseK(33.5, 2.2), within(0.02));
        assertThat(f.remedy()).startsWith("Keep " + three(heightM(33.5)) + " m (");
        Finding own = stop(ABOVE, ceiling(2.2) + " ; limits={\"above-flue\":{\"stop\":\"42 °C\"}}");
        assertThat(own.limit().value()).isCloseTo(42, within(1e-9));
        assertThat(own.limitSetByUser()).isTrue();
        Finding clear = stop(ABOVE, ceiling(2.2) + " ; limits={\"above-flue\":{\"clear\":\"2.5 m\"}}");
        assertThat(clear.limit().value()).isCloseTo(2.5, within(1e-9));
        assertThat(clear.limitSetByUser()).isTrue();
        assertThat(clear.remedy()).startsWith("Keep 2.5 m (8.2 ft)");
    }

    /** A hood that is large enough takes nine tenths (common practice, no source) and more where it leads off more; the open height then is not asked for. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 0.5})
    void underAHoodTheHeatAloneCounts(double above) {
        String hood =
                "room.ledOutdoors=\"0 %\" ; room.hood={\"flow\":\"5000 m3/h\",\"diameter\":\"2 m\",\"height\":\"0.4 m\"} ; room.ceiling=\""
                        + (FLUE_M + above) + " m\"";
        boolean hot = above < heightM(0.87);
        assertThat(hot).isEqualTo(above < 0.55);
        if (!hot) {
            silent(ABOVE, hood);
            return;
        }
        Finding f = stop(ABOVE, hood);
        assertThat(f.measured().value()).isCloseTo(15 + riseK(0.87, above), within(0.01));
        assertThat(f.message()).startsWith("The plume of up to 0.87 kW (");
        assertThat(f.remedy()).startsWith("Keep " + three(heightM(0.87)) + " m (");
    }

    @Test
    void whatTheCeilingLacks() {
        silent(ABOVE, "");
        lacksAlone(ABOVE, "room.place=-", "room.place");
        assertThat(check(ABOVE, "room.ceiling=-").notChecked()).singleElement().satisfies(n -> {
            assertThat(n.needs()).containsExactly("room.ceiling");
            assertThat(n.forbids()).isEqualTo(Forbids.LIGHTING);
            assertThat(n.cause()).contains("none", "only sky");
        });
        lacksAlone(ABOVE, ceiling(3) + " ; kiln.stand=-", "kiln.stand.height");
        lacksAlone(ABOVE, ceiling(3) + " ; room.temperature=-", "room.temperature");
        lacksAlone(ABOVE, ceiling(3) + " ; room.altitude=-", "room.altitude");
        lacksAlone(ABOVE, ceiling(3) + " ; kiln.power=-", "kiln.power");
        lacksAlone(ABOVE, ceiling(2.001) + " ; burners=-", "burners");
        lacksAlone(ABOVE, "room=-", "room.ceiling");
    }

    /** How near it hangs is known without the heat. */
    @Test
    void nearWithoutTheHeat() {
        Findings out = check(ABOVE, ceiling(1.999) + " ; kiln.power=-");
        lacks(out, ABOVE, Forbids.LIGHTING, "kiln.power");
        Finding f = only(out, Severity.STOP);
        assertThat(f.measured().value()).isCloseTo(1.999, within(1e-6));
        assertThat(f.measured().unit()).isEqualTo("m");
        assertThat(f.limit().value()).isCloseTo(2, within(1e-9));
        assertThat(f.message())
                .startsWith(
                        "Ceiling or roof is just under 2 m (6.56 ft) above the flues; how hot the plume is there is not known.");
        assertThat(f.remedy()).startsWith("Keep at least 2 m (6.56 ft) open above the flues");
        assertThat(numbers(f.remedy()).get(0)).isEqualTo(2);
    }
}
