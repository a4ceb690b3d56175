package portwright.check.rules.room;

import portwright.check.Findings;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.data.SafetyNumber;
import portwright.model.LedBy;
import portwright.review.LedOutdoors;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.units.Quantity;

/** What is said of the stated share of flue gas led outdoors, by a hood or by a pipe. */
final class LedShare {
    private LedShare() {}

    /** A share led outdoors beyond what lid cracks leave: counted as far as a hood reaches, and said. */
    static void check(Rule rule, Review review, RoomReview.Co co, Findings out) {
        Quantity given = review.design().room().ledOutdoors();
        double most = LedOutdoors.mostWithoutHood();
        boolean hangs = review.room().hood().known();
        boolean pipe = review.design().room().ledBy() == LedBy.PIPE;
        double caught = hangs ? review.room().hood().value().capturedShare() : 0;
        if (given != null
                && hangs
                && Say.under(caught, SafetyNumber.value("hood-capture"))
                && Say.over(given.share(), caught)) {
            out.add(Say.caution(
                    rule,
                    new Measure(given.share(), "1"),
                    new Measure(caught, "1"),
                    "The hood is counted to catch " + Say.n(caught * 100)
                            + (pipe
                                    ? " % of the flue gas: more than that goes outdoors only through the stated pipe on the flues; what neither takes spills into the room."
                                    : " % of the flue gas: the stated share led outdoors, " + Say.n(given.share() * 100)
                                            + " %, counts as no more."),
                    "Make the hood as strong and wide as hood-capture asks for"
                            + (pipe ? "." : "; a tight pipe on the flues is stated by room.ledBy."),
                    SafetyNumber.named("hood-capture").source()));
            if (!pipe) {
                return;
            }
        }
        if (given == null || !Say.over(given.share(), most)) {
            return;
        }
        boolean capped = Say.under(co.ledShare(), given.share());
        out.add(Say.caution(
                rule,
                new Measure(given.share(), "1"),
                new Measure(most, "1"),
                "The cracks of the lid alone carry up to " + Say.n(SafetyNumber.value("lid-leak-share") * 100)
                        + " % of the gas past any pipe: the stated share led outdoors, " + Say.n(given.share() * 100)
                        + " %, "
                        + (capped
                                ? "counts as " + Say.n(co.ledShare() * 100) + " %."
                                : "is taken as stated since the hood over the lid is strong and wide enough."),
                (capped ? "Hang a hood over the whole lid, as strong and wide as hood-capture asks for. " : "")
                        + "Prove it with a CO meter at head height through the first firing.",
                SafetyNumber.named("lid-leak-share").source()));
    }
}
