package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.model.RoomPlace;
import portwright.review.Review;
import portwright.review.RoomReview;

/** Ceiling or roof over the flues stays cool enough. */
public final class AboveFlue implements Rule {
    private static final String OPEN_SKY =
            "write none as the ceiling under Room where only sky is over the flues; what hangs there (eaves, awning, branch) by its height";

    @Override
    public String id() {
        return "above-flue";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        boolean none = review.design().room() != null && review.design().room().noCeiling();
        if (none && review.room().place() == RoomPlace.OUTDOORS) {
            return;
        }
        if (none) {
            out.lacks(this, "room.place");
            return;
        }
        if (review.design().room() != null
                && review.room().place() == RoomPlace.OUTDOORS
                && review.design().room().ceiling() == null) {
            out.unproven(this, OPEN_SKY, "room.ceiling");
            return;
        }
        double clear = limits.value(id(), "clear") / 1000;
        if (!review.room().ceiling().known()) {
            out.lacks(this, review.room().ceiling().lacking());
            if (review.room().headroom().known()) {
                heatUnknown(review.room().headroom().value(), clear, limits, out);
            }
            return;
        }
        Unstated.roomTemperature(this, review, out);
        UnstatedGas.altitude(this, review, out);
        RoomReview.CeilingFigures c = review.room().ceiling().value();
        double most = limits.value(id(), "stop");
        RoomReview.Headroom above = review.room().headroom().value();
        boolean hot = Say.over(c.ceilingK(), most);
        boolean near = near(above, clear);
        if (!hot && !near) {
            return;
        }
        String plume = "The plume of up to " + Say.told(c.heatW() / 1000, "kW") + " reaches ceiling or roof, "
                + (near ? nearWords(above, clear) : Say.told(above.heightM(), "m")) + " above the flues, at "
                + (hot ? Say.justOver(Say.celsius(c.ceilingK()), Say.celsius(most)) : Say.celsius(c.ceilingK()));
        String limit = hot ? "stop" : "clear";
        out.add(Say.finding(
                this,
                Severity.STOP,
                hot ? new Measure(Say.toC(c.ceilingK()), "°C") : new Measure(above.heightM(), "m"),
                hot ? new Measure(Say.toC(most), "°C") : new Measure(clear, "m"),
                plume + (hot ? "; wood chars over " + Say.celsius(most) + "." : "."),
                "Keep " + Say.told(above.carriedOff() ? c.heightNeededM() : Math.max(clear, c.heightNeededM()), "m")
                        + " open above the flues, hang a hood that leads outdoors, as strong and wide as hood-capture asks for, and add it to room.hood, or fire outdoors.",
                limits.source(id(), limit),
                limits.setByUser(id(), limit)));
    }

    private static boolean near(RoomReview.Headroom above, double clear) {
        return !above.carriedOff() && Say.under(above.heightM(), clear);
    }

    private static String nearWords(RoomReview.Headroom above, double clear) {
        return Say.justUnder(Say.told(above.heightM(), "m"), Say.told(clear, "m"));
    }

    /** What can be told without knowing how much burns. */
    private void heatUnknown(RoomReview.Headroom above, double clear, Limits limits, Findings out) {
        if (near(above, clear)) {
            out.add(Say.finding(
                    this,
                    Severity.STOP,
                    new Measure(above.heightM(), "m"),
                    new Measure(clear, "m"),
                    "Ceiling or roof is " + nearWords(above, clear)
                            + " above the flues; how hot the plume is there is not known.",
                    "Keep at least " + Say.told(clear, "m")
                            + " open above the flues, hang a hood that leads outdoors and add it to room.hood, or fire outdoors.",
                    limits.source(id(), "clear"),
                    limits.setByUser(id(), "clear")));
        }
    }
}
