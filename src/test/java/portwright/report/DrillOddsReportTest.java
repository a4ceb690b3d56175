package portwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.layout.DrillOutlook;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.review.Review;

/** The check tells for each hole how often a drilling by hand is stopped, by which rules, and which mark would be safer. */
class DrillOddsReportTest {
    /** One inlet 1 mm off the stop of a groove behind it, one far from everything. */
    private static Design design() {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(2);
        k.slabElement("row", On.FLOOR, 14, 16, TestKiln.at(-390, 100), TestKiln.at(390, 100));
        return k.inlet("inlet A", -150, 100 - 7 - 25 - 18.5 - 1, 35)
                .inlet("inlet B", 150, -150, 35)
                .build();
    }

    @Test
    void eachHoleByRuleWithItsSafestShift() throws IOException {
        Design d = design();
        CheckResult r = new RuleBook(LimitTable.load()).check(Review.of(d));
        DrillOutlook drill = DrillOutlook.oddsAlone(d, r);
        JsonNode json = new ObjectMapper().readTree(CheckJson.write(r, drill)).get("drillingByHand");
        JsonNode a = json.get("holes").get(0);
        JsonNode b = json.get("holes").get(1);
        assertThat(a.get("hole").asText()).isEqualTo("inlet A");
        assertThat(a.get("stop").asDouble()).isGreaterThan(0.05);
        assertThat(a.get("byRule").get("element-clearance").asDouble())
                .isEqualTo(a.get("stop").asDouble());
        assertThat(a.get("nudge").get("yMm").asDouble()).isNegative();
        assertThat(a.get("nudge").get("stop").asDouble()).isLessThan(0.01);
        assertThat(b.get("stop").asDouble()).isZero();
        assertThat(b.get("nudge").isNull()).isTrue();
        assertThat(json.get("allInside").asDouble()).isCloseTo(1 - a.get("stop").asDouble(), within(1e-9));

        String text = CheckText.write(r, drill, UnitSystem.METRIC, 400, false);
        Matcher line = Pattern.compile(
                        "- inlet A: stopped in ([0-9.]+) of 100, by element-clearance ([0-9.]+); its mark .*([0-9.]+) mm to the front makes that ([0-9.]+)\\.")
                .matcher(text);
        assertThat(line.find()).as(text).isTrue();
        assertThat(Double.parseDouble(line.group(1)))
                .isCloseTo(100 * a.get("stop").asDouble(), within(0.0501));
        assertThat(line.group(2)).isEqualTo(line.group(1));
        assertThat(text).doesNotContain("- inlet B: stopped");
    }

    @Test
    void withoutPortsNothingIsTold() {
        assertThat(DrillOutlook.oddsAlone(TestKiln.polygon(8, "17 in").build(), null))
                .isNull();
    }
}
