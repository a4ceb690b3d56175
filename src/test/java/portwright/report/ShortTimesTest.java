package portwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.file.Starters;
import portwright.review.Review;

/** What lasts less than the unit that it is told in. */
class ShortTimesTest {
    @Test
    void lessThanAMinuteInAFire() {
        assertThat(new FireHours.Row("oxidizing", 0.2, Double.NaN, Double.NaN, true).words())
                .isEqualTo("oxidizing under 1 min until it is given up");
        assertThat(new FireHours.Row("oxidizing", 0.6, 0.6, 0.6, false).words()).isEqualTo("oxidizing 1 min");
    }

    /** All the flue gas into a small closed room: over the lowest limit within minutes, which are told as minutes. */
    @Test
    void lessThanAnHourToALimit() {
        Review r = Review.of(Starters.find("octagon-17")
                .orElseThrow()
                .setText("room.place", "studio")
                .setText("room.building", "detached")
                .setText("room.ceiling", "3 m")
                .setText("room.wind", "0 m/s")
                .setText("room.volume", "60 m3")
                .setText("room.temperature", "15 °C")
                .set(
                        "room.openings",
                        "[{\"area\": \"1 m2\", \"level\": \"1 m\", \"height\": \"1 m\", \"to\": \"outdoors\"},"
                                + " {\"area\": \"1 m2\", \"level\": \"2.5 m\", \"height\": \"1 m\", \"to\": \"outdoors\"}]")
                .set("room.coAlarm", "true")
                .setText("room.ledOutdoors", "0 %")
                .setText("room.burntAtFlue", "0 %")
                .setText("room.ventilator", "2000 m3/h")
                .read()
                .design());
        assertThat(ForecastText.write(r).replaceAll("\\s+", " "))
                .containsPattern("no wind: highest [0-9]+ ppm at [0-9]+ min; over 20 at [1-9] min, ")
                .doesNotContain(" at 0 h");
    }
}
