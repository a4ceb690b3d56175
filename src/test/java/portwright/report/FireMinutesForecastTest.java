package portwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import portwright.file.Starters;
import portwright.review.Review;

/** Minutes in each fire of a forecast move smoothly with the damper that the design states. */
class FireMinutesForecastTest {
    private static final double APART_PERCENT = 0.02;
    /** No fire gains or loses a whole row of the samples at once: those lie five minutes apart. */
    private static final double MOST_MINUTES = 4;

    private static Map<String, Double> minutes(double openPercent) throws IOException {
        Review r = Review.of(Starters.find("octagon-17")
                .orElseThrow()
                .set(
                        "firing.steps",
                        "[{\"to\": \"920 °C\", \"rate\": \"full\", \"heat\": \"electric\"},"
                                + " {\"to\": \"1100 °C\", \"rate\": \"100 °C/h\", \"heat\": \"both\", \"ports\": \"open\"}]")
                .set("damper.open", "\"" + openPercent + " %\"")
                .read()
                .design());
        Map<String, Double> out = new TreeMap<>();
        new ObjectMapper()
                .readTree(ForecastJson.write(r))
                .get("minutesInFire")
                .forEach(f -> out.put(f.get("fire").asText(), f.get("minutes").asDouble()));
        return out;
    }

    @Test
    void minutesFollowTheDamper() throws IOException {
        Map<String, Double> before = minutes(44.44);
        assertThat(before.keySet()).hasSizeGreaterThan(2);
        for (int i = 1; i <= 5; i++) {
            double open = 44.44 + i * APART_PERCENT;
            Map<String, Double> now = minutes(open);
            for (String fire : now.keySet()) {
                assertThat(Math.abs(now.get(fire) - before.getOrDefault(fire, 0.0)))
                        .as("%s at %.2f %%: %s after %s", fire, open, now, before)
                        .isLessThan(MOST_MINUTES);
            }
            before = now;
        }
    }
}
