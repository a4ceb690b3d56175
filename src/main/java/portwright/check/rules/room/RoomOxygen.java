package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;

/** The burners leave enough oxygen in the room. */
public final class RoomOxygen implements Rule {

    @Override
    public String id() {
        return "room-oxygen";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Boolean indoors = review.room().indoors();
        if (Boolean.FALSE.equals(indoors)) {
            return;
        }
        if (indoors == null) {
            out.lacks(this, "room.place");
            return;
        }
        if (!review.room().oxygenShare().known()) {
            out.lacks(this, review.room().oxygenShare().lacking());
            return;
        }
        double pct = review.room().oxygenShare().value() * 100;
        double least = limits.value(id(), "stop");
        if (Say.under(pct, least)) {
            double flow = review.room().air().value().calmM3PerS() * (20.95 - pct) / (20.95 - least);
            out.add(Say.finding(this, Severity.STOP, new Measure(pct, "%"), new Measure(least, "%"), "Oxygen in the room falls to " + Say.n(pct)
                    + " % with no wind; under " + Say.n(least) + " % the air counts as dangerous at once.",
                    "Give the room at least " + Say.flow(flow) + " of fresh air, or fire outdoors.", limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
        }
    }
}
