package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.check.rules.room.HotSteps.GAS;
import static portwright.check.rules.room.HotSteps.at;
import static portwright.check.rules.room.HotSteps.electric;
import static portwright.check.rules.room.HotSteps.error;
import static portwright.check.rules.room.HotSteps.measures;
import static portwright.check.rules.room.HotSteps.placed;
import static portwright.check.rules.room.HotSteps.steady;
import static portwright.check.rules.room.HotSteps.step;
import static portwright.check.rules.room.HotSteps.steps;
import static portwright.check.rules.room.HotSteps.told;
import static portwright.check.rules.room.HotSteps.under;
import static portwright.check.rules.room.OneRule.celsius;
import static portwright.check.rules.room.OneRule.check;
import static portwright.check.rules.room.OneRule.review;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;

/**
 * What the rules on gas and heat tell, and where they begin to tell it. Steps stand without a forecast, or with chambers placed by hand. 760 °C is from
 * memory of NFPA 86; 800 °C is own judgement; the probe is type K of the standard class: 0.75 % of the reading (ASTM E230) and 10 K of drift (common
 * practice, no source).
 */
class GasOffSaidTest {
    private static final Rule OFF = new GasOffTemperature();
    private static final String UNKNOWN_WALLS =
            "How long the walls stay over 750 °C (1382 °F) when all heat stops cannot be computed";

    /** Without a forecast the walls' hour is told beside it, as a caution of its own. */
    private static List<Finding> off(Findings out) {
        return off(out, 800);
    }

    private static List<Finding> off(Findings out, long alarmC) {
        List<Finding> all = out.findings();
        Finding walls = all.get(all.size() - 1);
        assertThat(walls.severity()).isEqualTo(Severity.CAUTION);
        assertThat(walls.message()).startsWith(UNKNOWN_WALLS).endsWith("count on less than 60 min.");
        assertThat(walls.measured()).isNull();
        assertThat(walls.limit().value()).isEqualTo(60);
        assertThat(walls.limit().unit()).isEqualTo("min");
        assertThat(walls.remedy()).contains("at a reading of " + celsius(alarmC) + " falling");
        assertThat(out.notChecked()).extracting(n -> n.needs()).containsOnly(List.of("firing.load"));
        assertThat(out.notChecked()).extracting(n -> n.forbids()).containsExactly(Forbids.LIGHTING, Forbids.NOTHING);
        return all.subList(0, all.size() - 1);
    }

    private static String cooling(String to) {
        return "{\"to\":\"" + to
                + "\",\"rate\":\"100 °C/h\",\"heat\":\"both\",\"elements\":\"controller\",\"ports\":\"open\",\"atmosphere\":\"light\"}";
    }

    @ParameterizedTest
    @ValueSource(doubles = {775.7, 775.9})
    void gasBurnsInAFallingChamber(double to) {
        List<Finding> all = off(check(OFF, steps(electric("900 °C"), cooling(to + " °C"))));
        if (to > 775.8) {
            assertThat(all).isEmpty();
            return;
        }
        Finding f = all.get(0);
        assertThat(all).hasSize(1);
        assertThat(f.severity()).isEqualTo(Severity.STOP);
        measures(f, to - error(to), 760);
        assertThat(f.limitSetByUser()).isFalse();
        assertThat(f.message())
                .isEqualTo("Step 2 burns gas at " + told(to) + "; with the probe's error the chamber may be at "
                        + under(to - error(to), 760) + ", under " + celsius(760) + ".");
        assertThat(f.remedy())
                .startsWith("Shut gas while the reading is still at " + told(760 + error(to)) + " or more");
        List<Finding> own = off(
                check(
                        OFF,
                        steps(electric("900 °C"), cooling("850 °C"))
                                + " ; limits={\"gas-off-temperature\":{\"stop\":\"900 °C\"}}"),
                940);
        measures(own.get(0), 850 - error(850), 900);
        assertThat(own.get(0).limitSetByUser()).isTrue();
    }

    /** Where a step opens gas in the cold and climbs, that is the matter of gas-on-temperature; a later one that burns on cold counts. */
    @Test
    void onlyAFallCountsInAStepThatOpensGas() {
        assertThat(off(check(OFF, steps(electric("700 °C"), cooling("900 °C")))))
                .isEmpty();
        assertThat(off(check(OFF, steps(electric("700 °C"), GAS)))).isEmpty();
        List<Finding> all = off(check(OFF, steps(electric("700 °C"), GAS, GAS)));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).message()).startsWith("Step 3 burns gas at " + celsius(700) + ";");
        List<Finding> after =
                off(check(OFF, steps(electric("900 °C"), GAS, cooling("700 °C"), electric("900 °C"), GAS)));
        assertThat(after)
                .extracting(f -> f.message())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("Step 3 burns gas at");
    }

    @Test
    void whatTheForecastMakesOfAFall() {
        List<Finding> dip = off(placed(OFF, step(1, true, 900, 950, at(900, 890, 950, 700), at(900, 880, 950, 690))));
        assertThat(dip).hasSize(1);
        measures(dip.get(0), 700 - error(700), 760);
        assertThat(dip.get(0).message())
                .startsWith("Step 2 burns gas at " + celsius(700) + " by the forecast (the steps say " + celsius(900)
                        + ");");
        List<Finding> fall = off(placed(OFF, step(1, true, 900, 850, at(900, 900, 700, 700), steady(700))));
        assertThat(fall.get(0).message()).contains("(the steps say " + celsius(850) + ")");
        List<Finding> on = off(placed(
                OFF,
                step(1, true, 900, 950, steady(900), steady(900)),
                step(2, true, 950, 980, at(950, 950, 700, 700), steady(700))));
        assertThat(on.get(0).message()).contains("(the steps say " + celsius(950) + ")");
    }

    @Test
    void theColdEndOfAFall() {
        assertThat(off(placed(OFF, step(1, true, 900, 950, steady(900), at(900, 900, 776, 776)))))
                .isEmpty();
        List<Finding> all = off(placed(OFF, step(1, true, 900, 950, at(900, 900, 820, 820), at(900, 900, 770, 770))));
        assertThat(all).hasSize(1);
        Finding f = all.get(0);
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        measures(f, 770 - error(770), 760);
        assertThat(f.message())
                .isEqualTo("Where the brick conducts 20 % more than tabled, step 2 may burn gas in a chamber of "
                        + under(770 - error(770), 760) + " (probe's error counted), under " + celsius(760) + ".");
        assertThat(f.remedy()).contains("shut gas at " + told(760 + error(820)) + " falling");
        assertThat(off(placed(OFF, step(1, true, 700, 950, at(700, 700, 950, 700), at(690, 690, 950, 690)))))
                .isEmpty();
    }

    /** Gas lit in a kiln at its room's 15 °C: the walls are not hot to begin with, and no law lets a minute of fire make them so. */
    @Test
    void wallsThatWereNeverHot() {
        Review r = review(TestDesigns.outdoors(), steps(GAS.replace("10 min", "1 min")));
        Findings out = check(OFF, r);
        Finding f = out.findings().get(out.findings().size() - 1);
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        assertThat(f.measured().value()).isEqualTo(0);
        assertThat(f.measured().unit()).isEqualTo("min");
        assertThat(f.limit().value()).isEqualTo(60);
        assertThat(f.message())
                .startsWith("If gas and elements stop together while gas burns, the walls are at " + celsius(15)
                        + ", not over 750 °C (1382 °F) with ports open");
        assertThat(out.notChecked()).isEmpty();
    }

    /** From the 900 °C that the steps hold; how long it takes is that of the computed cooling, and less than its hour. */
    @Test
    void wallsThatFallWithinTheHour() {
        Review r = review(
                TestDesigns.outdoors(),
                "kiln.power=\"14 kW\" ; "
                        + steps(electric("900 °C").replace("100 °C/h", "full"), GAS.replace("10 min", "1 min")));
        Findings out = check(OFF, r);
        assertThat(out.notChecked()).isEmpty();
        Finding f = OneRule.only(out, Severity.CAUTION);
        double minutes = f.measured().value();
        assertThat(minutes).isBetween(1.0, 60.0);
        assertThat(minutes * 60)
                .isEqualTo(r.firing().heatStop().value().orElseThrow().seconds());
        List<Double> n = OneRule.numbers(f.message());
        assertThat(f.message()).startsWith("If gas and elements stop together while gas burns, the walls fall from ");
        assertThat(n.get(0)).isBetween(870.0, 901.0);
        assertThat(n.get(2)).isEqualTo(750);
        assertThat(n.get(4)).isCloseTo(minutes >= 2 ? minutes : minutes * 60, within(0.5));
        assertThat(f.remedy()).contains("at a reading of " + celsius(800) + " falling");
    }
}
