package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.review.LightingLimits;
import portwright.review.LiveElements;
import portwright.review.Review;

/** Template and card of one kiln give one reading and one time for gas to be lit, shut and lit again. 760 °C is from memory of NFPA 86; 800 °C is own judgement; 10 minutes are common practice, no source. */
class LightingOnBothPapersTest {
    private record Papers(String template, String card, CheckResult result, Review review) {}

    private static Papers papers(DesignText t) {
        Review review = Review.of(t.read().design());
        CheckResult result = new RuleBook(LimitTable.load()).check(review);
        LightingLimits limits = LightingLimits.of(review.design(), result.figures());
        CardData card = CardBuilder.of(result, review.design(), CardForecast.of(review));
        return new Papers(
                String.join(
                        "\n",
                        Cautions.byMoment(review.design(), limits).values().stream()
                                .flatMap(List::stream)
                                .toList()),
                String.join(
                        "\n",
                        Stream.of(card.lighting(), card.temperatureFalls(), card.flameOut())
                                .flatMap(List::stream)
                                .toList()),
                result,
                review);
    }

    private static void agree(Papers p, String floor, String meter, long minutes) {
        assertThat(p.card())
                .contains(meter + " on the meter")
                .contains(floor + " at the coldest place")
                .contains("the meter falling to " + meter + ": gas off first")
                .contains("Plate off, " + minutes + " min of air")
                .contains("shut at once, wait " + minutes + " min")
                .contains("Relight after " + minutes + " min, meter over " + meter);
        assertThat(LightingLimits.of(p.review().design(), p.result().figures())
                        .beforePlate(LiveElements.of(p.review().design())))
                .as("the window")
                .contains(
                        "over " + meter + " on the meter: ",
                        "plate off, " + minutes + " min of air",
                        "5 min of clean fire");
        assertThat(p.card()).contains("5 min of clean fire, then set the plate");
        assertThat(p.template())
                .contains("A reading of " + meter + " or more at the coldest place")
                .contains("wait " + minutes + " minutes with the damper plate off")
                .contains("If the reading falls to " + meter + " with gas open, the coldest place may be at " + floor)
                .contains("wait " + minutes + " minutes and five changes")
                .contains("light again over a reading of " + meter + " only")
                .doesNotContain("{");
        assertThat(p.result().findings())
                .filteredOn(f -> f.remedy() != null && f.remedy().contains("relit under"))
                .allSatisfy(f -> assertThat(f.remedy()).contains("relit under " + meter + " on the meter"));
        assertThat(p.result().findings())
                .filteredOn(f -> f.remedy() != null && f.remedy().contains("Set an alarm"))
                .allSatisfy(f -> assertThat(f.remedy()).contains("at a reading of " + meter + " falling"));
    }

    static List<String> gasStarters() {
        return Starters.names().stream()
                .filter(n -> !Starters.find(n).orElseThrow().read().design().allElectric())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("gasStarters")
    void ofEveryStarter(String name) {
        Papers p = papers(Starters.find(name).orElseThrow());
        agree(p, "760 °C (1400 °F)", "800 °C (1472 °F)", p.result().figures().openMinutes());
    }

    /** A limit of the design's own stands on both papers, with the margin over it; holes that purge slowly lengthen the time on both. */
    @Test
    void ofADesignWithItsOwn() {
        DesignText t = Starters.find("octagon-17").orElseThrow();
        agree(
                papers(t.set("limits", "{\"gas-off-temperature\": {\"stop\": \"800 °C\"}}")),
                "800 °C (1472 °F)",
                "840 °C (1544 °F)",
                10);
        agree(
                papers(t.set("limits", "{\"gas-on-temperature\": {\"caution\": \"850 °C\"}}")),
                "760 °C (1400 °F)",
                "850 °C (1562 °F)",
                10);
        DesignText narrow = t;
        for (int i = 0; i < t.read().design().ports().size(); i++) {
            narrow = narrow.setText("ports[" + i + "].diameter", "14 mm");
        }
        Papers p = papers(narrow);
        long minutes = p.result().figures().openMinutes();
        assertThat(minutes).isGreaterThan(10);
        agree(p, "760 °C (1400 °F)", "800 °C (1472 °F)", minutes);
        assertThat(LightingLimits.meter(p.review().design())).isCloseTo(800, within(1e-9));
    }
}
