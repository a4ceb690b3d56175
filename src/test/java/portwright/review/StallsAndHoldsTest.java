package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.firing.Forecast;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;
import portwright.sheet.CardBuilder;
import portwright.sheet.CardForecast;

/** Ends of climbs that lie close are told as one, and a hold that does not end where it is to hold is told by one rule in text, JSON and card. */
class StallsAndHoldsTest {
    private static Review review(String power, String steps) throws IOException {
        return Review.of(DesignFile.read(Path.of("src/test/resources/designs/common-practice-190-litres.json"))
                .document()
                .setText("kiln.power", power)
                .set("firing.steps", steps)
                .read()
                .design());
    }

    private static String text(Review r) {
        return ForecastText.write(r).replaceAll("\\s+", " ");
    }

    private static String card(Review r) {
        return CardBuilder.of(new RuleBook(LimitTable.load()).check(r), r.design(), CardForecast.of(r))
                .steps()
                .toString();
    }

    private static String climb(int share) {
        return "[{\"to\": \"907 °C\", \"rate\": \"115 °C/h\", \"heat\": \"electric\"}, {\"to\": \"cone 6\", \"rate\": \"full\","
                + " \"heat\": \"both\", \"elements\": \"" + share
                + " %\", \"ports\": \"open\", \"atmosphere\": \"heavy\"}]";
    }

    @Test
    void closeStallsAreOne() throws IOException {
        Review close = review("6.5 kW", climb(66));
        Forecast f = close.firing().forecast().value();
        assertThat(Math.abs(f.stallAllK() - f.stallElectricK())).isBetween(0.2, 5.0);
        assertThat(text(close))
                .containsPattern(
                        "climb ends at 10[0-9][0-9]( to 10[0-9][0-9])? °C( \\([^)]*\\))?, by electricity alone with ports plugged and with gas as the steps ask ");
        assertThat(text(review("6.5 kW", climb(75))))
                .containsPattern(
                        "climb ends at 10[0-9][0-9] °C( \\([^)]*\\))? by electricity alone with ports plugged, 10[0-9][0-9] °C( \\([^)]*\\))? with gas as the steps ask");
    }

    /** Six hours at a share of the elements that gives less than the walls lose; and a hold after open ports that has not the power to climb all the way back. */
    @ParameterizedTest
    @CsvSource({"false, does not keep", "true, 'climbs back, but not to'"})
    void aHoldThatSagsIsToldAlike(boolean back, String words) throws IOException {
        String first = "[{\"to\": \"1000 °C\", \"rate\": \"115 °C/h\", \"heat\": \"electric\"}, ";
        Review r = back
                ? review(
                        "8 kW",
                        first
                                + "{\"to\": \"1010 °C\", \"rate\": \"full\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"heavy\"},"
                                + " {\"hold\": \"5 min\", \"heat\": \"electric\"}]")
                : review("8 kW", first + "{\"hold\": \"6 h\", \"heat\": \"electric\", \"elements\": \"30 %\"}]");
        var rows = r.firing().rows(r.fire());
        StepRow hold = rows.get(rows.size() - 1);
        assertThat(hold.sags()).as("%s", hold).isTrue();
        assertThat(hold.reached()).isFalse();
        assertThat(r.firing().forecast().value().nominal().reached()).isTrue();
        assertThat(text(r)).contains(words + " the " + Math.round(hold.holdC()) + " °C that it was to hold");
        assertThat(card(r)).contains("The forecast: the hold " + words + " it, it ends at " + Math.round(hold.endC()));
        JsonNode step =
                new ObjectMapper().readTree(ForecastJson.write(r)).get("steps").get(rows.size() - 1);
        assertThat(step.get("reached").asBoolean()).isFalse();
        assertThat(step.get("ending").asText()).isEqualTo("SAGS");
        assertThat(step.get("holdC").asDouble()).isGreaterThan(step.get("endC").asDouble() + 10);
    }

    @Test
    void aHoldThatKeepsIsReached() throws IOException {
        Review r = review(
                "11.5 kW",
                "[{\"to\": \"1000 °C\", \"rate\": \"115 °C/h\", \"heat\": \"electric\"}, {\"hold\": \"30 min\", \"heat\": \"electric\"}]");
        StepRow hold = r.firing().rows(r.fire()).get(1);
        assertThat(hold.reached()).isTrue();
        assertThat(hold.sags()).isFalse();
        assertThat(text(r)).doesNotContain("was to hold");
        assertThat(card(r)).doesNotContain("The forecast: the hold");
    }
}
