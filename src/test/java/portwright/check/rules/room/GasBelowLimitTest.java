package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.review.Review;
import portwright.review.StepTime;

/** Gas is judged by the chamber that the forecast reaches, and counted for as long as the forecast takes, not by what a step wishes. */
class GasBelowLimitTest {
    private static final String CLIMB = "{\"to\":\"900 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"}";

    private static ObjectNode steps(String steps) {
        return TestDesigns.edit(TestDesigns.outdoors(), "firing.steps=[" + steps + "]");
    }

    private static Review review(ObjectNode d) {
        return Review.of(TestDesigns.design(d));
    }

    private static List<Finding> of(Review r, String rule) {
        CheckResult c = new RuleBook(LimitTable.load()).check(r, Set.of(RuleBook.Section.ROOM));
        return c.findings().stream().filter(f -> f.rule().equals(rule)).toList();
    }

    /** Without heat a kiln stays as cold as its room (the second law; no source needed), whatever the step says; so it is with the elements at 0 %. */
    @Test
    void aStepWithoutHeatLiftsNothing() {
        for (String heat : List.of("\"none\"", "\"electric\",\"elements\":\"0 %\"")) {
            Review r = review(steps("{\"to\":\"900 °C\",\"rate\":\"100 °C/h\",\"heat\":" + heat
                    + "},{\"hold\":\"30 min\",\"heat\":\"gas\",\"ports\":\"open\",\"atmosphere\":\"heavy\"}"));
            assertThat(of(r, "gas-on-temperature"))
                    .filteredOn(f -> f.severity() == Severity.STOP)
                    .singleElement()
                    .satisfies(f -> assertThat(f.measured().value()).isLessThan(21));
        }
    }

    /** The first law holds for the kiln that is too weak: what 0.6 kW holds against its losses is far below 760 °C. */
    @Test
    void aStalledClimbCountsWhereItEnds() {
        Review r = review(TestDesigns.edit(TestDesigns.outdoors(), "kiln.power=\"0.6 kW\""));
        double ends = r.firing().forecast().value().nominal().topK() - 273.15;
        StepTime gas = r.supply().steps().value().get(1);
        assertThat(gas.startC()).isCloseTo(900, within(1e-9));
        assertThat(gas.cold().startC()).isCloseTo(ends, within(0.01));
        assertThat(of(r, "gas-on-temperature")).anyMatch(f -> f.severity() == Severity.STOP);
    }

    /** Each opening of gas counts, not the first alone: six hours without heat are between the two. */
    @Test
    void everyOpeningOfGasCounts() {
        String gas = "{\"hold\":\"30 min\",\"heat\":\"both\",\"ports\":\"open\",\"atmosphere\":\"light\"}";
        Review r = review(steps(CLIMB + "," + gas + ",{\"hold\":\"6 h\",\"heat\":\"none\"}," + gas));
        assertThat(of(r, "gas-on-temperature"))
                .filteredOn(f -> f.severity() == Severity.STOP)
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("step 4"));
        Review kept = review(steps(CLIMB + "," + gas + ",{\"hold\":\"6 h\",\"heat\":\"electric\"}," + gas));
        assertThat(of(kept, "gas-on-temperature")).isEmpty();
    }

    /** Between the nominal forecast and its cold end stands a caution: the design power is a little over what the slow brick needs. */
    @Test
    @Tag("regression")
    void theColdEndOfTheBandCautions() {
        String edit =
                "kiln.power=\"3.08 kW\" ; firing.steps=[{\"to\":\"860 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"},"
                        + "{\"hold\":\"30 min\",\"heat\":\"both\",\"ports\":\"open\",\"atmosphere\":\"light\"}]";
        Review r = review(TestDesigns.edit(TestDesigns.outdoors(), edit));
        assertThat(r.firing().forecast().value().nominal().steps().get(0).reached())
                .isTrue();
        assertThat(r.firing().forecast().value().slow().steps().get(0).reached())
                .isFalse();
        assertThat(of(r, "gas-on-temperature")).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.CAUTION);
            assertThat(f.message()).contains("20 % more");
        });
    }

    @Test
    void withoutAForecastAnOpeningIsNotChecked() {
        CheckResult r = TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), "firing.load=-"));
        assertThat(TestDesigns.lacking(r))
                .anyMatch(
                        n -> n.rule().equals("gas-on-temperature") && n.needs().contains("firing.load"));
        assertThat(r.lighting()).isEqualTo(Verdict.INCOMPLETE);
    }

    /** 320 K at 1000 °C/h would take 19 min; no kiln of this kind does that. The gas is that of the real climb, the same as at full power. */
    @Test
    void anImpossibleRateBurnsNoLessGas() {
        String step =
                ",{\"to\":\"1220 °C\",\"rate\":\"%s\",\"heat\":\"both\",\"atmosphere\":\"medium\",\"ports\":\"open\"}";
        StepTime rated = review(steps(CLIMB + step.formatted("1000 °C/h")))
                .supply()
                .steps()
                .value()
                .get(1);
        StepTime full = review(steps(CLIMB + step.formatted("full")))
                .supply()
                .steps()
                .value()
                .get(1);
        assertThat(rated.seconds())
                .isGreaterThan(320.0 / 1000 * 3600)
                .isCloseTo(full.seconds(), within(30.0)); // one time step
        StepTime slow = review(steps(CLIMB + step.formatted("40 °C/h")))
                .supply()
                .steps()
                .value()
                .get(1);
        assertThat(slow.seconds()).isGreaterThanOrEqualTo(320.0 / 40 * 3600 * (1 - 1e-9));
    }
}
