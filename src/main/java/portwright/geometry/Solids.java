package portwright.geometry;

import java.util.function.UnaryOperator;
import portwright.model.On;

/**
 * Shortest distances of solids through the brick. Both solids are convex and each gives its nearest point to any point; stepping to and fro
 * between the two nearest points closes in on the shortest distance.
 */
public final class Solids {
    private static final int STEPS = 4000;

    private Solids() {}

    /** Distance of two bores; 0 where they meet. */
    public static double distance(Bore a, Bore b) {
        return distance(a::project, b::project, middle(a));
    }

    /** Distance of a bore to a groove; 0 where they meet. */
    public static double distance(Bore bore, GrooveSolid groove, KilnGeometry kiln) {
        if (groove instanceof GrooveSolid.OnSlab slab) {
            double z0 = slab.on() == On.FLOOR ? -slab.depth() : kiln.height();
            double z1 = z0 + slab.depth();
            double best = Double.POSITIVE_INFINITY;
            for (Segment s : slab.strip().pieces()) {
                best = Math.min(
                        best,
                        distance(bore::project, p -> stadium(p, s, slab.strip().halfWidth(), z0, z1), middle(bore)));
            }
            return best;
        }
        GrooveSolid.OnWall wall = (GrooveSolid.OnWall) groove;
        return least(0, wall.depth(), w -> distance(bore::project, p -> slice(p, wall, w), middle(bore)));
    }

    private static Pt3 middle(Bore b) {
        return new Pt3(
                b.hot().x() + b.axis().x() * b.length() / 2,
                b.hot().y() + b.axis().y() * b.length() / 2,
                b.hot().z() + b.axis().z() * b.length() / 2);
    }

    private static double distance(UnaryOperator<Pt3> a, UnaryOperator<Pt3> b, Pt3 start) {
        Pt3 p = start;
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < STEPS; i++) {
            Pt3 q = b.apply(p);
            p = a.apply(q);
            double d = p.distance(q);
            if (last - d < 1e-13 * (1 + d) || d < 1e-12) {
                return d < 1e-12 ? 0 : d;
            }
            last = d;
        }
        return last;
    }

    /** Nearest point of an upright slot with round ends. */
    private static Pt3 stadium(Pt3 p, Segment s, double halfWidth, double z0, double z1) {
        Pt plan = p.plan();
        Pt n = s.nearest(plan);
        double d = n.distance(plan);
        Pt q = d > halfWidth ? n.towards(plan, halfWidth) : plan;
        return new Pt3(q.x(), q.y(), Math.max(z0, Math.min(z1, p.z())));
    }

    /** Nearest point of the groove's rectangle at depth w. */
    private static Pt3 slice(Pt3 p, GrooveSolid.OnWall g, double w) {
        Pt local = g.panel().local(p.plan());
        double u = Math.max(g.panel().uMin(w), Math.min(g.panel().uMax(w), local.x()));
        double v = Math.max(g.bottomAt(w), Math.min(g.top(), p.z()));
        return g.panel().point(u, v, w);
    }

    /** Least value of a convex function between two ends. */
    static double least(double from, double to, java.util.function.DoubleUnaryOperator f) {
        double g = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        double best = Math.min(f.applyAsDouble(a), f.applyAsDouble(b));
        double x1 = b - g * (b - a);
        double x2 = a + g * (b - a);
        double f1 = f.applyAsDouble(x1);
        double f2 = f.applyAsDouble(x2);
        for (int i = 0; i < 60 && b - a > 1e-9; i++) {
            if (f1 <= f2) {
                b = x2;
                x2 = x1;
                f2 = f1;
                x1 = b - g * (b - a);
                f1 = f.applyAsDouble(x1);
            } else {
                a = x1;
                x1 = x2;
                f1 = f2;
                x2 = a + g * (b - a);
                f2 = f.applyAsDouble(x2);
            }
        }
        return Math.min(best, Math.min(f1, f2));
    }
}
