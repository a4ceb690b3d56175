package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.OpenSpell;
import portwright.calc.room.RoomCo;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;

/** The room's CO over time in the forecast. */
class ForecastRoomTest {
    private static final String SHED =
            "{\"place\": \"studio\", \"volume\": \"60 m3\", \"temperature\": \"15 °C\", \"outdoor\": \"10 °C\", \"wind\": \"1.5 m/s\", \"altitude\": \"0 m\", \"openings\": [{\"area\": \"0.1 m2\", \"level\": \"1 m\", \"to\": \"outdoors\", \"free\": \"100 %\"}], \"ventilator\": \"0 m3/h\", \"ledOutdoors\": \"0 %\", \"burntAtFlue\": \"0 %\", \"floor\": \"concrete\", \"ceiling\": \"2.7 m\"}";

    private static Review review(DesignText d) {
        return Review.of(d.read().design());
    }

    private static String text(Review r) {
        return ForecastText.write(r).replaceAll("\\s+", " ");
    }

    @Test
    void eachLevelHasItsTime() throws IOException {
        Review r = review(Starters.find("decagon-23").orElseThrow().set("room", SHED));
        RoomReview.Co co = r.room().co().value();
        assertThat(co.calm().peakPpm()).isGreaterThan(co.ceiling().value());
        assertThat(text(r)).containsPattern("CO over time no wind: highest [0-9]+ ppm at [0-9.]+ h; over [0-9]+ at");
        JsonNode calm =
                new ObjectMapper().readTree(ForecastJson.write(r)).get("roomCo").get("calm");
        assertThat(text(r)).contains("Hours from the first lighting, the minutes with open kiln counted");
        double before = 0;
        for (JsonNode p : calm.get("passes")) {
            double h = p.get("hours").asDouble();
            assertThat(h).isGreaterThanOrEqualTo(before).isPositive();
            before = h;
        }
        assertThat(calm.get("passes").size()).isGreaterThanOrEqualTo(2);
    }

    /** Nothing is told of the time before gas, and what lies between lighting and last gas is all of the forecast's time: steps, clean fire, the open minutes of a relight. */
    @Test
    void itBeginsAtGasOnAndCountsTheOpenMinutes() throws IOException {
        Review r = review(
                Starters.find("decagon-23")
                        .orElseThrow()
                        .set("room", SHED)
                        .set(
                                "firing.steps",
                                "[{\"to\": \"900 °C\", \"rate\": \"full\", \"heat\": \"electric\"}, {\"hold\": \"20 min\", \"heat\": \"both\", \"atmosphere\": \"heavy\"},"
                                        + " {\"hold\": \"10 min\", \"heat\": \"electric\"}, {\"hold\": \"30 min\", \"heat\": \"both\", \"atmosphere\": \"heavy\"}]"));
        FiringRun run = r.firing().forecast().value().nominal();
        RoomReview.Co co = r.room().co().value();
        double lit = run.before(1).orElseThrow().endS() - OpenSpell.cleanSeconds();
        double out = run.steps().get(3).endS();
        double counted =
                co.firing().stream().mapToDouble(RoomCo.Segment::seconds).sum() - co.gasOnS();
        assertThat(counted).isCloseTo(out - lit, within(1.0));
        // 20 and 30 minutes of gas, two clean fires of 5, a hold of 10, and the kiln open for 10 after the first gas
        // and again before the second
        assertThat(counted / 60).isGreaterThanOrEqualTo(90);
        assertThat(r.room().chartCalm().get(0).timeS()).isCloseTo(0, within(1e-6));
        assertThat(r.room().chartCalm().get(0).ppm()).isLessThan(1e-6);
        assertThat(r.room().chartCalm().get(1).ppm()).isPositive();
    }

    @Test
    void whatTheRoomLacksIsNotChecked() {
        DesignText d = Starters.find("decagon-23").orElseThrow();
        assertThat(text(review(d.set("room", SHED).remove("room.volume"))))
                .contains("CO over time not checked: add room.volume");
        assertThat(text(review(d.remove("room.place")))).contains("CO over time not checked: add room.place");
        assertThat(text(review(d))).contains("not computed: no closed room");
    }
}
