package portwright.check.rules.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.model.Hood;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.source.Source;

/** A declared hood is wide and strong enough for its height. */
public final class HoodCapture implements Rule {

    private static final Source SOURCE =
            Source.memory("ACGIH Industrial Ventilation", "", "canopy hoods over hot processes");

    @Override
    public String id() {
        return "hood-capture";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Hood hood =
                review.design().room() == null ? null : review.design().room().hood();
        if (hood == null || Boolean.FALSE.equals(review.room().indoors())) {
            return;
        }
        if (!review.room().hood().known()) {
            List<String> needs = new ArrayList<>();
            if (hood.flow() == null || hood.diameter() == null || hood.height() == null) {
                needs.addAll(List.of("room.hood.flow", "room.hood.diameter", "room.hood.height"));
            }
            needs.addAll(review.room().air().needs());
            out.lacks(this, needs.toArray(String[]::new));
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    "What the hood catches is not known; it counts for nothing.",
                    "Add " + String.join(", ", needs) + ".",
                    SOURCE));
            return;
        }
        RoomReview.HoodFigures h = review.room().hood().value();
        if (Say.under(h.flowM3PerS(), h.neededM3PerS())) {
            out.add(Say.caution(
                    this,
                    new Measure(h.flowM3PerS() * 3600, "m3/h"),
                    new Measure(h.neededM3PerS() * 3600, "m3/h"),
                    "The hood draws " + Say.flow(h.flowM3PerS())
                            + (Say.under(h.flowM3PerS(), h.plateM3PerS())
                                    ? " (its plate says " + Say.flow(h.plateM3PerS())
                                            + ", but the openings to outdoors let no more in)"
                                    : "")
                            + "; at its height it needs "
                            + Say.flow(h.neededM3PerS()) + ". It is counted to catch " + Say.n(h.capturedShare() * 100)
                            + " % of the flue gas.",
                    "Raise the flow to " + Say.flow(h.neededM3PerS()) + ", or bring the hood closer to the lid"
                            + (Say.under(h.flowM3PerS(), h.plateM3PerS())
                                    ? ", and open as much to outdoors as make-up-air asks for."
                                    : "."),
                    SOURCE));
        }
        if (Say.under(h.diameterM(), h.neededDiameterM())) {
            out.add(Say.caution(
                    this,
                    new Measure(h.diameterM() * 1000, "mm"),
                    new Measure(h.neededDiameterM() * 1000, "mm"),
                    "The hood is " + Say.told(h.diameterM(), "m") + " wide; at its height it needs "
                            + Say.told(h.neededDiameterM(), "m") + ".",
                    "Widen it to " + Say.told(h.neededDiameterM(), "m") + ", or hang it lower.",
                    SOURCE));
        }
    }
}
