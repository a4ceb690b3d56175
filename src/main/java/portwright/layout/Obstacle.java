package portwright.layout;

import java.util.Set;
import portwright.geometry.Shape;

/**
 * Something that a hole keeps away from.
 *
 * @param rule id of the rule
 * @param part its name in findings
 * @param stop least clearance, mm; NaN where the rule has no stop
 * @param caution clearance below which the rule cautions, mm
 * @param gap clearance of the hole's edge by the place of its centre
 * @param from share of the slab's thickness from the hot face where the obstacle begins; a drill is judged at both faces beside whatever lies within the
 *     slab, at the hot face alone where this and the next are 0, at the cold face where they are 1
 * @param to share where it ends
 * @param moves whether its place was measured on the kiln and may be wrong
 * @param shape as it lies in plan
 * @param keep distance that the centre keeps from the shape at the stop limit, mm
 */
record Obstacle(
        String rule,
        String part,
        double stop,
        double caution,
        Gap gap,
        double from,
        double to,
        boolean moves,
        Shape shape,
        double keep) {
    private static final Set<String> TYPED =
            Set.of("post-in-flame", "burner-room", "flame-on-element", "flame-on-fitting", "shelf-over-inlet");

    /** Clearance of a hole by the place of its centre, mm. Changes by no more than the centre moves. */
    interface Gap {
        double at(double x, double y);
    }

    /** Whether the clearance shrinks when the hole is drilled wider; flames, burners and shelves are judged by the typed hole. */
    boolean grows() {
        return !TYPED.contains(rule);
    }

    double margin(double clearance) {
        return Scale.atLeast(clearance, stop, caution);
    }
}
