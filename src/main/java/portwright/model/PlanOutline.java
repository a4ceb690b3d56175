package portwright.model;

import java.util.ArrayList;
import java.util.List;
import portwright.units.Quantity;

/**
 * The plan as plain corners: enough to tell a point on a part from one beside it. Corners run clockwise seen from above, in mm; panel k goes
 * from corner k−1 to corner k of the list (counted from 0, the last panel closes the ring), except that an outline's panel 1 starts at point 1.
 */
public final class PlanOutline {
    private static final double PARALLEL = 1e-12;

    private final double[] x;
    private final double[] y;

    private PlanOutline(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /** The inner outline (hot face of the walls); panel 1 is the side from corner 0 to corner 1. */
    public static PlanOutline of(PlanShape plan) {
        if (plan instanceof PlanShape.PolygonPlan p) {
            return regular(p.sides(), p.acrossFlats().mm(), 0, angle(p.turn()));
        }
        if (plan instanceof PlanShape.OvalPlan p) {
            return regular(p.sides(), p.acrossFlats().mm(), p.stretch().mm(), angle(p.turn()));
        }
        if (plan instanceof PlanShape.RectanglePlan p) {
            double w = p.width().mm() / 2;
            double d = p.depth().mm() / 2;
            return new PlanOutline(new double[] {-w, w, w, -w}, new double[] {d, d, -d, -d}).turned(angle(p.turn()));
        }
        PlanShape.OutlinePlan p = (PlanShape.OutlinePlan) plan;
        return of(
                p.points().stream().mapToDouble(Place::xMm).toArray(),
                p.points().stream().mapToDouble(Place::yMm).toArray());
    }

    /** From corners, clockwise seen from above. */
    public static PlanOutline of(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("as many x as y are needed");
        }
        return new PlanOutline(x.clone(), y.clone());
    }

    /** A regular polygon by its across-flats, panel 1 to the back, cut at x = 0 and drawn apart by {@code stretch}, then turned. */
    public static PlanOutline regular(int sides, double acrossFlats, double stretch, double turn) {
        double radius = acrossFlats / 2 / Math.cos(Math.PI / sides);
        double[] x = new double[sides];
        double[] y = new double[sides];
        for (int k = 0; k < sides; k++) {
            double bearing = (2 * k - 1) * Math.PI / sides;
            x[k] = radius * Math.sin(bearing);
            y[k] = radius * Math.cos(bearing);
            x[k] += Math.signum(x[k]) * stretch / 2;
        }
        return new PlanOutline(x, y).turned(turn);
    }

    private static double angle(Quantity turn) {
        return turn == null ? 0 : turn.si();
    }

    /** Turned clockwise about the origin, rad. */
    public PlanOutline turned(double turn) {
        if (turn == 0) {
            return this;
        }
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        double[] tx = new double[x.length];
        double[] ty = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            tx[i] = x[i] * c + y[i] * s;
            ty[i] = -x[i] * s + y[i] * c;
        }
        return new PlanOutline(tx, ty);
    }

    /** Moved by (dx, dy). */
    public PlanOutline moved(double dx, double dy) {
        double[] mx = new double[x.length];
        double[] my = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            mx[i] = x[i] + dx;
            my[i] = y[i] + dy;
        }
        return new PlanOutline(mx, my);
    }

    /** Number of corners, and of panels. */
    public int size() {
        return x.length;
    }

    /** x of corner i from 0, mm. */
    public double x(int i) {
        return x[Math.floorMod(i, x.length)];
    }

    /** y of corner i from 0, mm. */
    public double y(int i) {
        return y[Math.floorMod(i, y.length)];
    }

    /** Inside width of panel k from 1, mm. */
    public double panelWidth(int k) {
        return Math.hypot(x(k) - x(k - 1), y(k) - y(k - 1));
    }

    /** Area, mm²; negative when the corners run anticlockwise. */
    public double area() {
        double twice = 0;
        for (int i = 0; i < x.length; i++) {
            twice += x(i + 1) * y(i) - x(i) * y(i + 1);
        }
        return twice / 2;
    }

    /** Every side moved outward by {@code by} (inward when negative), corners mitred. */
    public PlanOutline grown(double by) {
        int n = x.length;
        double[] gx = new double[n];
        double[] gy = new double[n];
        for (int i = 0; i < n; i++) {
            double ax = x(i) - x(i - 1);
            double ay = y(i) - y(i - 1);
            double bx = x(i + 1) - x(i);
            double by2 = y(i + 1) - y(i);
            double la = Math.hypot(ax, ay);
            double lb = Math.hypot(bx, by2);
            double nax = -ay / la;
            double nay = ax / la;
            double nbx = -by2 / lb;
            double nby = bx / lb;
            double cosine = 1 + nax * nbx + nay * nby;
            double f = by / (Math.abs(cosine) < PARALLEL ? 1 : cosine);
            gx[i] = x[i] + f * (nax + nbx);
            gy[i] = y[i] + f * (nay + nby);
        }
        return new PlanOutline(gx, gy);
    }

    /** Whether the point lies inside or on the outline. */
    public boolean contains(double px, double py) {
        if (distanceToRim(px, py) <= 1e-9 * (1 + Math.abs(px) + Math.abs(py))) {
            return true;
        }
        boolean inside = false;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            if ((y[i] > py) != (y[j] > py) && px < (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i]) + x[i]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Least distance of a point to the outline, mm. */
    public double distanceToRim(double px, double py) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            least = Math.min(least, distance(px, py, x(i), y(i), x(i + 1), y(i + 1)));
        }
        return least;
    }

    private static double distance(double px, double py, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double l2 = dx * dx + dy * dy;
        double t = l2 == 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / l2));
        return Math.hypot(px - ax - t * dx, py - ay - t * dy);
    }

    /** Whether another outline lies wholly inside, touching nowhere. */
    public boolean holds(PlanOutline other) {
        for (int i = 0; i < other.size(); i++) {
            if (!contains(other.x(i), other.y(i)) || distanceToRim(other.x(i), other.y(i)) < 1e-9) {
                return false;
            }
            for (int j = 0; j < size(); j++) {
                if (meet(other, i, this, j)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The first two sides (counted from 1) that cross or touch without being neighbours, or that fold back on each other; null for a plain ring. */
    public int[] crossing() {
        int n = x.length;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean neighbours = j == i + 1 || i == 0 && j == n - 1;
                if (neighbours ? folds(j == i + 1 ? i : j) : meet(this, i, this, j)) {
                    return new int[] {i + 1, j + 1};
                }
            }
        }
        return null;
    }

    private boolean folds(int i) {
        double ax = x(i + 1) - x(i);
        double ay = y(i + 1) - y(i);
        double bx = x(i + 2) - x(i + 1);
        double by = y(i + 2) - y(i + 1);
        double cross = ax * by - ay * bx;
        return Math.abs(cross) <= PARALLEL * Math.hypot(ax, ay) * Math.hypot(bx, by) && ax * bx + ay * by < 0;
    }

    private static boolean meet(PlanOutline a, int i, PlanOutline b, int j) {
        double d1 = side(a, i, b.x(j), b.y(j));
        double d2 = side(a, i, b.x(j + 1), b.y(j + 1));
        double d3 = side(b, j, a.x(i), a.y(i));
        double d4 = side(b, j, a.x(i + 1), a.y(i + 1));
        if (d1 * d2 < 0 && d3 * d4 < 0) {
            return true;
        }
        return d1 == 0 && between(a, i, b.x(j), b.y(j))
                || d2 == 0 && between(a, i, b.x(j + 1), b.y(j + 1))
                || d3 == 0 && between(b, j, a.x(i), a.y(i))
                || d4 == 0 && between(b, j, a.x(i + 1), a.y(i + 1));
    }

    private static double side(PlanOutline o, int i, double px, double py) {
        return (o.x(i + 1) - o.x(i)) * (py - o.y(i)) - (o.y(i + 1) - o.y(i)) * (px - o.x(i));
    }

    private static boolean between(PlanOutline o, int i, double px, double py) {
        return px >= Math.min(o.x(i), o.x(i + 1))
                && px <= Math.max(o.x(i), o.x(i + 1))
                && py >= Math.min(o.y(i), o.y(i + 1))
                && py <= Math.max(o.y(i), o.y(i + 1));
    }

    /** Width of the outline across the direction in which it is narrowest, mm. */
    public double narrowest() {
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            double dx = x(i + 1) - x(i);
            double dy = y(i + 1) - y(i);
            double l = Math.hypot(dx, dy);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < x.length; k++) {
                double s = (x[k] * dy - y[k] * dx) / l;
                low = Math.min(low, s);
                high = Math.max(high, s);
            }
            widths.add(high - low);
        }
        return widths.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }
}
