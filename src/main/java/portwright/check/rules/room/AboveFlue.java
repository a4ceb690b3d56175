package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.RoomPlace;
import portwright.review.Review;
import portwright.review.RoomReview;

/** Ceiling or roof over the flues stays cool enough. */
public final class AboveFlue implements Rule {

    @Override
    public String id() {
        return "above-flue";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        boolean roof = review.design().room() != null && review.design().room().ceiling() != null;
        if (review.room().place() == RoomPlace.OUTDOORS && !roof) {
            return;
        }
        double most = limits.value(id(), "caution");
        Measure limit = new Measure(Say.toC(most), "°C");
        if (!review.room().ceiling().known()) {
            out.lacks(this, review.room().ceiling().lacking());
            out.add(Say.caution(
                    this,
                    null,
                    limit,
                    "How hot ceiling or roof over the flues gets is not known.",
                    "Add " + String.join(", ", review.room().ceiling().needs())
                            + "; keep 2 m open above the flues, or hang a hood.",
                    limits.source(id(), "caution")));
            return;
        }
        Unstated.roomTemperature(this, review, out);
        RoomReview.CeilingFigures c = review.room().ceiling().value();
        if (Say.over(c.ceilingK(), most)) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    new Measure(Say.toC(c.ceilingK()), "°C"),
                    limit,
                    "The plume of up to " + Say.n(c.heatW() / 1000) + " kW reaches the ceiling, " + Say.n(c.heightM())
                            + " m above the flues, at " + Say.celsius(c.ceilingK()) + ".",
                    "Keep " + Say.n(c.heightNeededM())
                            + " m clear above the flues, or hang a hood or a steel sheet with an air gap between.",
                    limits.source(id(), "caution"),
                    limits.setByUser(id(), "caution")));
        }
    }
}
