package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;
import portwright.sheet.CardForecast;

/** No two steps tell different fires with one setting of the plate and say nothing of it. */
class ClosePlatesTest {
    private static Review review(String starter, int step, String first, String second) {
        DesignText d = Starters.find(starter).orElseThrow();
        d = d.setText("firing.steps[" + step + "].atmosphere", first)
                .setText("firing.steps[" + (step + 1) + "].atmosphere", second);
        return Review.of(d.read().design());
    }

    private static String text(Review r) {
        return ForecastText.write(r).replaceAll("\\s+", " ");
    }

    /** Light and neutral are neighbours; on the small hexagon's flues less than a millimetre of plate lies between them. */
    @Test
    void lessThanAMillimetreIsSaid() throws IOException {
        Review r = review("hexagon-27cm", 1, "light", "neutral");
        ClosePlates p = ClosePlates.of(r).get(0);
        double share =
                r.fire().level(AtmosphereLevel.named("light"), p.kelvin()).openMid();
        assertThat(p.firstMm()).isCloseTo(r.fire().plate().travelFor(share) * 1000, within(1e-9));
        assertThat(p.apartMm())
                .isCloseTo(Math.abs(p.firstMm() - p.secondMm()), within(1e-9))
                .isLessThan(1);
        assertThat(text(r))
                .contains("For light (step 2) and neutral (step 3) the plate stands", "Only flame and meter");
        assertThat(new ObjectMapper()
                        .readTree(ForecastJson.write(r))
                        .get("platesTooClose")
                        .get(0)
                        .get("stepIndexes")
                        .toString())
                .isEqualTo("[" + ClosePlates.of(r).get(0).first().step() + ","
                        + ClosePlates.of(r).get(0).second().step() + "]");
        assertThat(CardForecast.of(r).close()).startsWith("Too close to set by hand");
    }

    @Test
    void whatCanBeSetApartIsNotCommentedOn() {
        Review r = review("decagon-23", 2, "heavy", "neutral");
        assertThat(ClosePlates.of(r)).isEmpty();
        assertThat(ClosePlates.of(review("decagon-23", 2, "light", "light"))).isEmpty();
    }

    /** Every starter and pair of levels: the same figure for two fires never stands alone. */
    @ParameterizedTest
    @ValueSource(strings = {"decagon-23", "front-loader-18", "six-corner-55cm"})
    void theSameFigureNeverStandsAlone(String starter) {
        List<String> levels = List.of("neutral", "light", "medium", "heavy");
        for (String a : levels) {
            for (String b : levels) {
                Review r = review(starter, 2, a, b);
                List<StepPlate> plates = StepPlate.of(r);
                boolean same = plates.get(2).words().equals(plates.get(3).words())
                        && plates.get(2).stand() == StepPlate.Stand.SET;
                if (same && !a.equals(b)) {
                    assertThat(text(r)).as("%s then %s", a, b).containsAnyOf("the plate stands", "The plate stands at");
                }
            }
        }
    }
}
