package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Brick;
import portwright.geometry.Hole;
import portwright.geometry.JointPattern;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.review.Review;

/** Brick left on each side of a hole within the brick it sits in. */
public final class OneBrick implements Rule {
    @Override
    public String id() {
        return "one-brick";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        double limit = limits.value(id(), "limit");
        for (Hole h : kiln.holes()) {
            if (h.face().on() == On.WALL) {
                continue;
            }
            JointPattern pattern = kiln.pattern(h.face().on());
            if (pattern == null) {
                out.lacks(this, "kiln." + h.face().on().id() + ".joints");
                continue;
            }
            Brick brick = pattern.brick(h.centre());
            double left = brick.least() - h.drilledRadius();
            if (Geo.under(left, limit)) {
                out.add(Geo.finding(this, Severity.NOTE, limits, "limit")
                        .parts(h.name())
                        .mm(left, limit)
                        .mark(new Mark(h.face(), h.centre(), h.centre()))
                        .say(
                                left < 0
                                        ? h.name() + " cuts a brick joint."
                                        : Geo.mm(left, limit) + " of its brick left beside " + h.name() + "; "
                                                + Geo.mm(limit) + " keeps one brick whole.",
                                left < 0
                                        ? "Cement both bricks at the cut with a thin wash."
                                        : "Drill slowly, and harden the rim with a thin wash."));
            }
        }
    }
}
