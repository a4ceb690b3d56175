package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import portwright.review.Review;
import portwright.review.RoomReview;

/** Asking for a clean flame does not make one: too much gas for the flues counts with the CO it makes. */
class RicherThanAskedTest {

    @Test
    void tooMuchGasCountsRichWhateverIsAsked() {
        String clean =
                "room.ledOutdoors=\"0 %\" ; room.hood=- ; firing.steps[1].atmosphere=\"oxidizing\" ; firing.steps[2].atmosphere=\"oxidizing\" ; "
                        + "firing.steps[3].atmosphere=\"oxidizing\"";
        ObjectNode little = TestDesigns.edit(TestDesigns.studio(), clean);
        ObjectNode much = TestDesigns.edit(little, "burners[0].heat=\"9 kW\"");
        RoomReview.Co a = Review.of(TestDesigns.design(little)).room().co().value();
        RoomReview.Co b = Review.of(TestDesigns.design(much)).room().co().value();
        // not the neutral flame that is asked for: the rich end of the forecast's band counts, as for every hazard
        assertThat(a.worstLambda()).isBetween(0.6, 0.97);
        assertThat(b.worstLambda()).isLessThan(a.worstLambda() - 0.1);
        assertThat(b.calm().peakPpm()).isGreaterThan(5 * a.calm().peakPpm());
    }

    /** In the open nothing gathers, and the level asked for stands. */
    @Test
    void inTheOpenTheLevelCounts() {
        String clean =
                "room.place=\"open-shed\" ; firing.steps[1].atmosphere=\"oxidizing\" ; firing.steps[2].atmosphere=\"oxidizing\" ; "
                        + "firing.steps[3].atmosphere=\"oxidizing\"";
        RoomReview.Co a = Review.of(TestDesigns.design(TestDesigns.edit(TestDesigns.studio(), clean)))
                .room()
                .co()
                .value();
        assertThat(a.worstLambda()).isEqualTo(0.98);
    }
}
