package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;
import portwright.file.Starters;
import portwright.report.ForecastJson;

/** The table that a forecast writes, read as a record of the same design: a firing that went as planned. */
class ForecastRoundTripTest {
    @ParameterizedTest
    @ValueSource(strings = {"decagon-23", "hexagon-27cm", "octagon-17", "front-loader-18", "oval-23"})
    void readsAsPlanned(String starter) {
        Review review = Review.of(Starters.find(starter).orElseThrow().read().design());
        String csv = ForecastJson.csv(review);
        FiringLog log = LogParser.parse(csv);
        RecordResult r = RecordResult.of(RecordReview.caseOf(review, log));
        assertThat(log.faults()).isEmpty();
        assertThat(r.reached()).isTrue();
        assertThat(r.findings()).isEmpty();
        assertThat(r.spells()).isEmpty();
        double forecastKg = review.firing().forecast().value().nominal().fuelKg();
        assertThat(r.gasKg()).isCloseTo(forecastKg, within(0.06 * forecastKg));
        String[] rows = csv.split("\n");
        String early = String.join("\n", java.util.Arrays.copyOf(rows, rows.length - 12));
        assertThat(RecordResult.of(RecordReview.caseOf(review, LogParser.parse(early)))
                        .reached())
                .as("an hour less")
                .isFalse();
    }
}
