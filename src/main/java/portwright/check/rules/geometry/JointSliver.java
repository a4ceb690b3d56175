package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.JointPattern;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.model.Joints;
import portwright.model.On;
import portwright.review.Review;

/** Brick between a hole and a joint that it does not cut: none, or thick enough to stay. */
public final class JointSliver implements Rule {
    @Override
    public String id() {
        return "joint-sliver";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        double limit = limits.value(id(), "limit");
        for (On on : List.of(On.FLOOR, On.LID)) {
            List<Hole> holes = kiln.holes(on);
            JointPattern pattern = kiln.pattern(on);
            if (!holes.isEmpty() && pattern == null) {
                out.lacks(this, "kiln." + on.id() + ".joints");
                continue;
            }
            if (!holes.isEmpty()) {
                unstated(kiln.slabOf(on).joints(), "kiln." + on.id() + ".joints", out);
            }
            for (Hole h : holes) {
                Segment joint = nearest(kiln, pattern, h, limit);
                if (joint != null) {
                    double least = joint.distance(h.centre()) - h.drilledRadius();
                    out.add(Geo.finding(this, Severity.CAUTION, limits, "limit")
                            .parts(h.name(), on.id() + " joint")
                            .mm(least, limit)
                            .mark(new Mark(h.face(), h.centre(), joint.nearest(h.centre())))
                            .say(
                                    Geo.mm(least) + " of brick would stand between " + h.name() + " and a brick joint.",
                                    remedy(kiln, limits, pattern, h, limit)));
                }
            }
        }
    }

    /** Where the joints lie is drawn from usual values where it is not stated; that proves nothing. */
    private void unstated(Joints joints, String field, Findings out) {
        if (joints.bond() == null) {
            out.lacks(this, field + ".bond");
        }
        if (joints.turn() == null) {
            out.lacks(this, field + ".turn");
        }
        if (joints.offset() == null) {
            out.lacks(this, field + ".offset");
        }
    }

    /** The joint that leaves the thinnest sliver, or null. */
    private static Segment nearest(KilnGeometry kiln, JointPattern pattern, Hole h, double limit) {
        double least = Double.POSITIVE_INFINITY;
        Segment at = null;
        for (Segment joint : pattern.near(kiln.slab(h.face().on()), h.centre(), h.drilledRadius() + limit + 1)) {
            double left = joint.distance(h.centre()) - h.drilledRadius();
            if (Geo.over(left, 0) && Geo.under(left, limit) && left < least) {
                least = left;
                at = joint;
            }
        }
        return at;
    }

    /** Onto the joint or off it, whichever is nearer. */
    private static String remedy(KilnGeometry kiln, Limits limits, JointPattern pattern, Hole hole, double limit) {
        String move = Move.of(kiln, limits, hole, h -> {
            Segment joint = nearest(kiln, pattern, h, limit);
            double left = joint == null ? 0 : joint.distance(h.centre()) - h.drilledRadius();
            return Math.min(left, limit - left);
        });
        return move == null
                ? "Slide the brick pattern, or choose another diameter."
                : "M" + move.substring(1) + ", so that it cuts the joint or leaves enough brick.";
    }
}
