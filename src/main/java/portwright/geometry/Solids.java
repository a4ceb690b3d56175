package portwright.geometry;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Shortest distances of convex solids through the brick. The difference of two convex solids is convex, and the shortest distance is how near
 * it comes to the origin (method of Gilbert, Johnson and Keerthi, 1988). Each step gives a distance that is reached and, from the plane square
 * to it, one that is surely not undercut; the search ends when the two agree.
 */
public final class Solids {
    /** The search ends when the distance is enclosed so closely, mm. */
    private static final double CLOSE_MM = 1e-10;

    /** How closely a distance is enclosed where rounding ends the search, mm. */
    private static final double ENCLOSED_MM = 1e-7;

    private static final int STEPS = 500;

    private Solids() {}

    /** Distance of a solid to the nearest of some, mm; 0 where they meet. Beyond the reach only some distance that is surely not undercut. */
    public static double distance(Convex a, List<Convex> others, double reach) {
        double best = Double.POSITIVE_INFINITY;
        for (Convex b : others) {
            best = Math.min(best, distance(a, b, Math.min(reach, best)));
        }
        return best;
    }

    /** Distance of two convex solids, mm; 0 where they meet. */
    public static double distance(Convex a, Convex b) {
        return distance(a, b, Double.POSITIVE_INFINITY);
    }

    /**
     * Distance of two convex solids, mm; 0 where they meet. It is enclosed within 1e-7 mm; should the search ever end before that, the distance
     * that is surely not undercut. The same is given as soon as that is beyond the reach.
     */
    public static double distance(Convex a, Convex b, double reach) {
        Simplex simplex = new Simplex(difference(a, b, new Pt3(0, 0, 1)));
        double sure = 0;
        for (int i = 0; i < STEPS; i++) {
            Pt3 v = simplex.nearest();
            double reached = Math.sqrt(v.dot(v));
            if (reached < CLOSE_MM) {
                return 0;
            }
            Pt3 w = difference(a, b, v);
            sure = Math.max(sure, v.dot(w) / reached);
            if (sure > reach) {
                return sure;
            }
            if (reached - sure <= CLOSE_MM) {
                return reached;
            }
            if (!simplex.add(w)) {
                return reached - sure <= ENCLOSED_MM ? reached : sure;
            }
        }
        return sure;
    }

    /** The point of a − b that lies farthest against a direction. */
    private static Pt3 difference(Convex a, Convex b, Pt3 direction) {
        Pt3 back = new Pt3(-direction.x(), -direction.y(), -direction.z());
        return a.outermost(back).minus(b.outermost(direction));
    }

    /** Least value of a convex function between two ends. */
    static double least(double from, double to, DoubleUnaryOperator f) {
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
