package portwright.check.rules.geometry;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
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

/**
 * A brick joint beside a hole: the hole keeps off it by brick thick enough to stay, or cuts it so deep that a hole that wanders cuts it still. Between
 * the two a drilling leaves a sliver that falls out.
 */
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
                Beside joint = worst(kiln, limits, pattern, h);
                if (joint != null) {
                    out.add(Geo.finding(this, Severity.CAUTION, limits, joint.cuts() ? "cut" : "limit")
                            .parts(h.name(), on.id() + " joint")
                            .mm(joint.leftMm(), joint.limitMm())
                            .mark(new Mark(h.face(), h.centre(), joint.joint().nearest(h.centre())))
                            .say(joint.words(h.name()), remedy(kiln, limits, pattern, h)));
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

    /**
     * A joint too near the rim of a hole.
     *
     * @param cuts whether the hole reaches it
     * @param leftMm brick left to it, or how far the hole reaches beyond it, mm
     * @param limitMm the least that this should be, mm
     * @param lackMm least move that frees the hole of it, mm
     */
    private record Beside(Segment joint, boolean cuts, double leftMm, double limitMm, double lackMm) {
        String words(String hole) {
            return cuts
                    ? hole + (leftMm < 0.05 ? " only touches" : " reaches only " + Geo.mm(leftMm) + " over")
                            + " a brick joint: a saw that wanders leaves a thin sliver there."
                    : Geo.mm(leftMm) + " of brick would stand between " + hole + " and a brick joint.";
        }
    }

    /** How the hole lies to a joint, or null where it lies well: the largest hole counts for brick left, the one drilled to size for a cut. */
    private static Beside beside(Segment joint, Hole h, double sliver, double cut) {
        double off = joint.distance(h.centre());
        double least = Math.min(cut, h.diameter() / 4);
        double left = off - h.drilledRadius();
        double cuts = h.diameter() / 2 - off;
        if (!Geo.under(left, sliver) || !Geo.under(cuts, least)) {
            return null;
        }
        double lack = Math.min(sliver - left, least - cuts);
        return Geo.over(left, 0)
                ? new Beside(joint, false, left, sliver, lack)
                : new Beside(joint, true, Math.max(0, cuts), least, lack);
    }

    /** The joint that lies worst to a hole, in units of its limit; null where all lie well. */
    private static Beside worst(KilnGeometry kiln, Limits limits, JointPattern pattern, Hole h) {
        double sliver = limits.value("joint-sliver", "limit");
        double cut = limits.value("joint-sliver", "cut");
        return pattern.near(kiln.slab(h.face().on()), h.centre(), h.drilledRadius() + sliver + 1).stream()
                .map(j -> beside(j, h, sliver, cut))
                .filter(Objects::nonNull)
                .min(Comparator.comparingDouble(b -> b.leftMm() / b.limitMm()))
                .orElse(null);
    }

    /** Onto the joint or off it, whichever is nearer. */
    private static String remedy(KilnGeometry kiln, Limits limits, JointPattern pattern, Hole hole) {
        String move = Move.of(kiln, limits, hole, h -> {
            Beside joint = worst(kiln, limits, pattern, h);
            return joint == null ? 0 : joint.lackMm();
        });
        return move == null
                ? "Slide the brick pattern, or choose another diameter."
                : "M" + move.substring(1) + ", so that it cuts well into the joint or leaves enough brick.";
    }
}
