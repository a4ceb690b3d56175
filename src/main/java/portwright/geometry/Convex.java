package portwright.geometry;

import java.util.List;

/** A convex solid, known by its outermost point in any direction; mm in the kiln's frame. */
@FunctionalInterface
public interface Convex {
    /** The point of the solid that lies farthest in a direction (of any length, not 0). */
    Pt3 outermost(Pt3 direction);

    /** The body between some points. */
    static Convex between(List<Pt3> points) {
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

    /** The body that a solid leaves when it is pushed straight to where another of its form stands: two bores give a slot with round ends. */
    static Convex between(Convex a, Convex b) {
        return g -> {
            Pt3 p = a.outermost(g);
            Pt3 q = b.outermost(g);
            return p.dot(g) >= q.dot(g) ? p : q;
        };
    }
}
