package portwright.geometry;

import java.util.List;
import portwright.model.On;

/**
 * The middle line of a heating coil.
 *
 * @param name name of its element
 * @param pieces straight pieces; on walls one a panel, {@code panels} in the same order (empty on slabs)
 * @param radius half the coil's outer diameter, mm
 * @param wide whether it takes more room than its groove: thicker than that is wide or deep, or the groove is not known
 */
public record CoilRun(String name, On on, List<Integer> panels, List<Segment3> pieces, double radius, boolean wide) {
    public CoilRun {
        panels = List.copyOf(panels);
        pieces = List.copyOf(pieces);
    }

    /** One straight piece of it as a solid with round ends. */
    public Convex solid(int piece) {
        Segment3 s = pieces.get(piece);
        Convex line = Convex.between(List.of(s.a(), s.b()));
        return g -> {
            Pt3 end = line.outermost(g);
            double k = radius / Math.sqrt(g.dot(g));
            return new Pt3(end.x() + k * g.x(), end.y() + k * g.y(), end.z() + k * g.z());
        };
    }
}
