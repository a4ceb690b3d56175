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
        assertThat(a.worstLambda()).isEqualTo(0.98);
        assertThat(b.worstLambda()).isLessThan(0.8);
        assertThat(b.calm().peakPpm()).isGreaterThan(10 * a.calm().peakPpm());
    }
}
