package portwright.geometry;

import java.util.List;

/** A convex solid, known by its outermost point in any direction; mm in the kiln's frame. */
@FunctionalInterface
public interface Convex {
    /** The point of the solid that lies farthest in a direction (of any length, not 0). */
    Pt3 outermost(Pt3 direction);

    /** The body between some points. */
    static Convex of(List<Pt3> points) {
        List<Pt3> corners = List.copyOf(points);
        return g -> {
            Pt3 best = corners.get(0);
            double far = best.dot(g);
            for (int i = 1; i < corners.size(); i++) {
                double d = corners.get(i).dot(g);
                if (d > far) {
                    far = d;
                    best = corners.get(i);
                }
            }
            return best;
        };
    }

    /**
     * An upright slot with round ends.
     *
     * @param middle its middle line in plan
     * @param halfWidth half its width, mm
     * @param z0 its lower end, mm
     * @param z1 its upper end, mm
     */
    static Convex slot(Segment middle, double halfWidth, double z0, double z1) {
        return g -> {
            Pt a = middle.a();
            Pt b = middle.b();
            Pt end = (b.x() - a.x()) * g.x() + (b.y() - a.y()) * g.y() > 0 ? b : a;
            double flat = Math.hypot(g.x(), g.y());
            double k = flat == 0 ? 0 : halfWidth / flat;
            return new Pt3(end.x() + k * g.x(), end.y() + k * g.y(), g.z() > 0 ? z1 : z0);
        };
    }
}
