package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.review.Review;
import portwright.review.RoomReview;

/**
 * The room in thin air. Pressures of the ICAO standard atmosphere (Doc 7488, table of geometric altitude; from memory): 1013.25 hPa at the sea, 794.95 at
 * 2000 m, 616.40 at 4000 m; all else follows by hand from the ideal gas law, a mole filling 1013.25/p times its volume at the sea.
 */
@Tag("published")
class ThinAirTest {
    private static final String STEPS = "firing.steps=[{\"to\":\"900 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"},"
            + "{\"hold\":\"30 min\",\"heat\":\"both\",\"atmosphere\":\"medium\",\"ports\":\"open\"}]";
    private static final String ROOM = " ; room.ledOutdoors=\"50 %\" ; room.ceiling=\"5 m\" ; room.altitude=";

    private static RoomReview room(int metres, String more) {
        return Review.of(TestDesigns.design(
                        TestDesigns.edit(TestDesigns.studio(), STEPS + ROOM + "\"" + metres + " m\" ; " + more)))
                .room();
    }

    @ParameterizedTest
    @CsvSource({"2000, 794.95", "4000, 616.40"})
    void aMoleFillsMore(int metres, double hPa) {
        double swell = 1013.25 / hPa;
        Percentage near = Percentage.withPercentage(0.1);
        RoomReview sea = room(0, "room.hood=-");
        RoomReview high = room(metres, "room.hood=-");
        // in the open the level asked for counts, so that both burn at one lambda: in a room the rich end of the
        // forecast's band does, which thin air moves
        RoomReview.Co low0 =
                room(0, "room.hood=- ; room.place=\"open-shed\"").co().value();
        RoomReview.Co thin =
                room(metres, "room.hood=- ; room.place=\"open-shed\"").co().value();
        assertThat(thin.madeM3PerS() / low0.madeM3PerS()).isCloseTo(swell, near);
        assertThat(thin.calm().peakPpm() / low0.calm().peakPpm()).isCloseTo(swell, near);
        assertThat(thin.flowForCeilingM3PerS() / low0.flowForCeilingM3PerS()).isCloseTo(swell, near);
        assertThat((0.2095 - high.oxygenShare().value())
                        / (0.2095 - sea.oxygenShare().value()))
                .isCloseTo(swell, near);
        assertThat(sea.unlit().value().limitKg() / high.unlit().value().limitKg())
                .isCloseTo(swell, near);
        assertThat(sea.unlit().value().seconds() / high.unlit().value().seconds())
                .isCloseTo(swell, near);
        // the same heat in air of less density: rise with 1/density, plume with its power of 2/3
        assertThat(high.heat().value().riseK() / sea.heat().value().riseK()).isCloseTo(swell, near);
        RoomReview.CeilingFigures above = high.ceiling().value();
        RoomReview.CeilingFigures low = sea.ceiling().value();
        assertThat((above.ceilingK() - above.roomK()) / (low.ceilingK() - low.roomK()))
                .isCloseTo(Math.pow(swell, 2.0 / 3), near);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "4000, 1.1802"})
    void aHoodDrawsMore(int metres, double times) {
        double sea = room(0, "title=\"x\"").hood().value().neededM3PerS();
        assertThat(room(metres, "title=\"x\"").hood().value().neededM3PerS() / sea)
                .isCloseTo(times, within(0.001));
    }
}
