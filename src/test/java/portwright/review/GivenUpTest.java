package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.check.Finding;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;
import portwright.sheet.CardForecast;

/** A chamber that falls when gas alone is to go on where electricity led: one end temperature in all words. */
class GivenUpTest {
    private static Review gasAlone() {
        DesignText d = Starters.find("front-loader-18").orElseThrow();
        return Review.of(d.setText("firing.steps[2].heat", "gas")
                .setText("firing.steps[3].heat", "gas")
                .read()
                .design());
    }

    @Test
    void oneEndTemperature() throws IOException {
        Review review = gasAlone();
        FiringRun run = review.firing().forecast().value().nominal();
        assertThat(run.last().ending()).isEqualTo(Ending.FALLS);
        assertThat(run.topK()).as("1700 °F").isCloseTo(1200.0, within(1.0));
        assertThat(run.endK()).isLessThan(run.topK() - 20);
        String end = Math.round(run.endK() - 273.15) + " °C";
        String text = ForecastText.write(review).replaceAll("\\s+", " ");
        assertThat(text)
                .contains("NOT REACHED: the chamber falls instead of climbing and is given up at " + end)
                .contains("h the chamber falls instead of climbing and is given up at " + end)
                .contains("given up at " + end + " (" + Math.round((run.endK() - 273.15) * 1.8 + 32) + " °F), no price")
                .contains("where the chamber would fall to in the end, with gas as step 3 asks")
                .doesNotContain("the climb ends at " + end)
                .doesNotContain("between 927 and 927");
        assertThat(ForecastText.line(review)).contains(end);
        JsonNode up = new ObjectMapper().readTree(ForecastJson.write(review)).get("givenUp");
        assertThat(up.get("endC").asDouble()).isCloseTo(run.endK() - 273.15, within(1e-6));
        assertThat(CardForecast.of(review).missed().get(2)).contains("the chamber falls", end);
        assertThat(new RuleBook(LimitTable.load()).check(review).findings())
                .filteredOn(f -> f.rule().equals("firing-reach"))
                .extracting(Finding::message)
                .allMatch(m -> m.contains("the chamber falls") && m.contains(end));
    }
}
