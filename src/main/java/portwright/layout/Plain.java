package portwright.layout;

import java.util.List;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.geometry.Shape;

/** Distances in plain arrays, for the inner loops. */
final class Plain {
    private Plain() {}

    /** Signed depth inside an outline (negative outside). */
    static Obstacle.Gap depth(Outline o, double less) {
        int n = o.size();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = o.corner(i).x();
            y[i] = o.corner(i).y();
        }
        return (px, py) -> {
            double best = Double.POSITIVE_INFINITY;
            boolean in = false;
            for (int i = 0, j = n - 1; i < n; j = i++) {
                best = Math.min(best, square(x[j], y[j], x[i], y[i], px, py));
                if (y[i] > py != y[j] > py && px < (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i]) + x[i]) {
                    in = !in;
                }
            }
            double d = Math.sqrt(best);
            return (in ? d : -d) - less;
        };
    }

    /** Distance to a shape, less a length. */
    static Obstacle.Gap gap(Shape shape, double less) {
        if (shape instanceof Shape.Disc d) {
            double cx = d.circle().centre().x();
            double cy = d.circle().centre().y();
            double r = d.circle().radius() + less;
            return (x, y) -> Math.sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy)) - r;
        }
        if (shape instanceof Shape.Poly p) {
            Obstacle.Gap depth = depth(p.outline(), 0);
            return (x, y) -> -depth.at(x, y) - less;
        }
        if (shape instanceof Shape.Strip s) {
            return strip(s.path(), s.halfWidth() + less);
        }
        return (x, y) -> shape.distance(new Pt(x, y)) - less;
    }

    private static Obstacle.Gap strip(List<Pt> path, double less) {
        int n = path.size();
        double[] px = path.stream().mapToDouble(Pt::x).toArray();
        double[] py = path.stream().mapToDouble(Pt::y).toArray();
        return (x, y) -> {
            double best = n == 1 ? (x - px[0]) * (x - px[0]) + (y - py[0]) * (y - py[0]) : Double.POSITIVE_INFINITY;
            for (int i = 0; i + 1 < n; i++) {
                best = Math.min(best, square(px[i], py[i], px[i + 1], py[i + 1], x, y));
            }
            return Math.sqrt(best) - less;
        };
    }

    /** Square of the distance from p to a piece. */
    static double square(double ax, double ay, double bx, double by, double px, double py) {
        double dx = bx - ax;
        double dy = by - ay;
        double qx = px - ax;
        double qy = py - ay;
        double l = dx * dx + dy * dy;
        double t = l == 0 ? 0 : Math.max(0, Math.min(1, (qx * dx + qy * dy) / l));
        double ex = qx - t * dx;
        double ey = qy - t * dy;
        return ex * ex + ey * ey;
    }
}
