package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.review.Review;
import portwright.source.Source;

/** A flue straight over an inlet with no shelf between is a short circuit. */
public final class FlueOverInlet implements Rule {
    @Override
    public String id() {
        return "flue-over-inlet";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source SOURCE = Source.judgement("gas goes straight from inlet to flue");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        for (Hole in : kiln.holes(On.FLOOR)) {
            for (Hole flue : kiln.holes(On.LID)) {
                if (!in.inlet()
                        || flue.inlet()
                        || kiln.shelves().stream().anyMatch(s -> s.shape().contains(in.centre()))) {
                    continue;
                }
                double off = in.centre().distance(flue.centre());
                double limit = in.diameter() + flue.diameter();
                if (Geo.under(off, limit)) {
                    if (kiln.design().shelves() == null) {
                        out.lacks(this, "shelves");
                        return;
                    }
                    out.add(Geo.finding(this, Severity.CAUTION, limits, null)
                            .source(SOURCE)
                            .parts(in.name(), flue.name())
                            .mm(off, limit)
                            .say(
                                    flue.name() + " stands " + Geo.mm(off) + " off the axis of " + in.name()
                                            + " with no shelf between: gas goes straight out.",
                                    "Set a shelf over " + in.name() + ", or move " + flue.name() + " "
                                            + Geo.both(limit - off) + " farther off the axis of " + in.name() + "."));
                }
            }
        }
    }
}
