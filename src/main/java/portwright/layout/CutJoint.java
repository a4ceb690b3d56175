package portwright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import portwright.geometry.Hole;
import portwright.geometry.JointPattern;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.Joints;
import portwright.model.On;
import portwright.units.Format;

/**
 * A brick joint that a hole drilled to size cuts: there the mark lies on two bricks.
 *
 * @param hole its name
 * @param sides on which sides of the hole the two bricks lie, seen from above
 * @param overMm how far the rim reaches over the joint, mm
 * @param stated whether the design says where the joints lie; else usual values are taken
 */
public record CutJoint(String hole, String sides, double overMm, boolean stated) {
    private static final String[] SIDES = {
        "front and back", "front left and back right", "left and right", "back left and front right"
    };

    /** Less is a touch, mm. */
    private static final double TOUCH_MM = 0.05;

    /** All of floor and lid, in the order of the holes; walls show no joints. */
    public static List<CutJoint> of(Design design) {
        KilnGeometry kiln = KilnGeometry.of(design);
        List<CutJoint> out = new ArrayList<>();
        for (Hole h : kiln.holes()) {
            JointPattern pattern =
                    h.face().on() == On.WALL ? null : kiln.pattern(h.face().on());
            if (pattern != null) {
                double r = h.diameter() / 2;
                Map<String, Double> bySides = new LinkedHashMap<>();
                for (Segment j : pattern.near(kiln.slab(h.face().on()), h.centre(), r)) {
                    double over = r - j.distance(h.centre());
                    if (over >= TOUCH_MM) {
                        bySides.merge(sides(j), over, Math::max);
                    }
                }
                boolean stated = stated(kiln.slabOf(h.face().on()).joints());
                bySides.forEach((s, over) -> out.add(new CutJoint(h.name(), s, over, stated)));
            }
        }
        return out;
    }

    private static boolean stated(Joints j) {
        return j.bond() != null && j.turn() != null && j.offset() != null;
    }

    private static String sides(Segment joint) {
        Pt a = joint.a();
        Pt b = joint.b();
        double across = Math.atan2(b.y() - a.y(), -(b.x() - a.x()));
        return SIDES[Math.floorMod(Math.round(across / (Math.PI / 4)), SIDES.length)];
    }

    /** A sentence for each hole that cuts a joint: which, how far, and what to do. */
    public static List<String> words(Design design) {
        return of(design).stream()
                .collect(Collectors.groupingBy(CutJoint::hole, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(CutJoint::sentence)
                .toList();
    }

    private static String sentence(List<CutJoint> cuts) {
        return cuts.get(0).hole() + " cuts the "
                + cuts.stream()
                        .map(c -> "joint between the bricks at its " + c.sides() + ", " + Format.plain(c.overMm(), 1)
                                + " mm over it")
                        .collect(Collectors.joining(", and the "))
                + ": mark and saw across " + (cuts.size() == 1 ? "both bricks." : "all of them.")
                + (cuts.get(0).stated() ? "" : " The file does not say where the joints lie: look before marking.");
    }
}
