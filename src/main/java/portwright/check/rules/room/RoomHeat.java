package portwright.check.rules.room;

import java.util.Set;
import portwright.calc.room.RoomAir;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;
import portwright.review.RoomReview;

/** The room does not get too hot to stay in. */
public final class RoomHeat implements Rule {

    private static final double UNBEARABLE_K = 60;

    @Override
    public String id() {
        return "room-heat";
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
        double most = limits.value(id(), "caution");
        if (!review.room().heat().known()) {
            out.lacks(this, review.room().heat().lacking());
            out.add(Say.caution(
                    this,
                    null,
                    new Measure(most, "K"),
                    "How warm the room gets is not known.",
                    "Add " + String.join(", ", review.room().heat().needs()) + ".",
                    limits.source(id(), "caution")));
            return;
        }
        RoomReview.Heat h = review.room().heat().value();
        if (Say.over(h.riseK(), most)) {
            boolean air = h.riseK() < UNBEARABLE_K;
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    air ? new Measure(h.riseK(), "K") : null,
                    new Measure(most, "K"),
                    "The kiln gives the room up to " + Say.told(h.heatW() / 1000, "kW") + ": "
                            + (air
                                    ? Say.n(h.riseK()) + " K warmer in the long run with no wind."
                                    : "with this little air it grows hotter than anyone can bear."),
                    "Give the room "
                            + Say.flow(RoomAir.flowForRise(
                                    h.heatW() * review.room().swell(), most))
                            + " of air; keep plastic and people's way out clear of the heat.",
                    limits.source(id(), "caution"),
                    limits.setByUser(id(), "caution")));
        }
    }
}
