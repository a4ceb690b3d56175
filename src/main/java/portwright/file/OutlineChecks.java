package portwright.file;

import portwright.model.PlanOutline;
import portwright.model.PlanShape;

/** A free outline must be a plain ring, clockwise seen from above. */
final class OutlineChecks {
    private static final double LEAST_SIDE_MM = 1;
    private static final String POINTS = "kiln.plan.points";

    private OutlineChecks() {}

    /** Whether the plan can be used; otherwise a fault is noted. */
    static boolean plain(PlanShape plan, Faults faults) {
        if (!(plan instanceof PlanShape.OutlinePlan outline)) {
            return true;
        }
        if (faults.gaps(POINTS)) {
            return false;
        }
        int n = outline.points().size();
        if (n < 3) {
            faults.at(POINTS, "an outline has at least three points; here are " + n + ".");
            return false;
        }
        PlanOutline ring = PlanOutline.of(plan);
        for (int k = 1; k <= n; k++) {
            if (ring.panelWidth(k) < LEAST_SIDE_MM) {
                faults.at(
                        FieldPath.item(POINTS, k % n),
                        "points " + k + " and " + (k % n + 1) + " are less than 1 mm apart."
                                + (k == n
                                        ? " The last point is not the first again: the outline closes by itself."
                                        : ""));
                return false;
            }
        }
        int[] crossing = ring.crossing();
        if (crossing != null) {
            faults.at(
                    POINTS,
                    "the side from point " + crossing[0] + " meets the side from point " + crossing[1]
                            + ". Give the corners in order round the chamber.");
            return false;
        }
        if (ring.area() < 0) {
            faults.at(
                    POINTS, "the points run anticlockwise. Give them clockwise seen from above (reverse their order).");
            return false;
        }
        return true;
    }
}
