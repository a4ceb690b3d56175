package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.data.SafetyNumber;
import portwright.review.Review;
import portwright.review.RoomReview;

/** A fan or hood has an inlet as large as it needs, so that it does not pull the flue gas back. */
public final class MakeUpAir implements Rule {

    @Override
    public String id() {
        return "make-up-air";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (Boolean.FALSE.equals(review.room().indoors())) {
            return;
        }
        if (!review.room().air().known()) {
            out.lacks(this, review.room().air().lacking());
            return;
        }
        RoomReview.Air air = review.room().air().value();
        double needed = air.fanM3PerS() / SafetyNumber.value("make-up-speed");
        if (Say.under(air.freeAreaM2(), needed)) {
            out.add(Say.caution(
                    this,
                    new Measure(air.freeAreaM2(), "m2"),
                    new Measure(needed, "m2"),
                    "Fan and hood draw " + Say.flow(air.fanM3PerS()) + " through "
                            + Say.told(air.freeAreaM2() * 1e4, "cm²")
                            + " of openings: the room is starved and flue gas is pulled back. Only "
                            + Say.flow(air.countedFanM3PerS()) + " of it count, what comes in at "
                            + Say.n(SafetyNumber.value("make-up-speed")) + " m/s.",
                    "Open " + Say.told((needed - air.freeAreaM2()) * 1e4, "cm²")
                            + " more to outdoors, low and away from the flue.",
                    SafetyNumber.named("make-up-speed").source()));
        }
    }
}
