package portwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** A closed outline, corners in clockwise order seen from above (unmirrored), the first not repeated; mm. */
public record Outline(List<Pt> points) {
    public Outline {
        points = List.copyOf(points);
    }

    /** Number of corners, and of edges. */
    public int size() {
        return points.size();
    }

    /** Corner i; counts on past the last. */
    public Pt corner(int i) {
        return points.get(Math.floorMod(i, points.size()));
    }

    /** Edge i, from corner i to the next. */
    public Segment edge(int i) {
        return new Segment(corner(i), corner(i + 1));
    }

    /** All edges in order. */
    public List<Segment> edges() {
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            out.add(edge(i));
        }
        return out;
    }

    /** Area, mm²; positive when the corners run clockwise. */
    public double area() {
        Pt o = points.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < size(); i++) {
            Pt p = points.get(i);
            Pt q = points.get(i + 1);
            twice += (q.x() - o.x()) * (p.y() - o.y()) - (p.x() - o.x()) * (q.y() - o.y());
        }
        return twice / 2;
    }

    /** Length of the line round, mm. */
    public double perimeter() {
        return edges().stream().mapToDouble(Segment::length).sum();
    }

    /** Leftmost and rightmost x of the outline at a height y, mm; infinite where it does not reach that height. */
    public double[] across(double y) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Segment s : edges()) {
            double a = s.a().y() - y;
            double b = s.b().y() - y;
            if (a <= 0 != b <= 0) {
                double x = s.a().x() + a / (a - b) * (s.b().x() - s.a().x());
                low = Math.min(low, x);
                high = Math.max(high, x);
            }
        }
        return new double[] {low, high};
    }

    /** Whether p lies inside. */
    public boolean contains(Pt p) {
        boolean in = false;
        for (int i = 0, n = size(); i < n; i++) {
            Pt a = points.get(i);
            Pt b = points.get(i + 1 == n ? 0 : i + 1);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    /** Distance from p to the line round, positive inside and negative outside, mm. */
    public double depth(Pt p) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size(); i++) {
            best = Math.min(best, edge(i).distance(p));
        }
        return contains(p) ? best : -best;
    }

    /** The point of the line round that is nearest to p. */
    public Pt nearest(Pt p) {
        Segment best = edge(0);
        double least = Double.POSITIVE_INFINITY;
        for (Segment e : edges()) {
            double d = e.distance(p);
            if (d < least) {
                least = d;
                best = e;
            }
        }
        return best.nearest(p);
    }

    /** Corners moved outward so that each edge shifts by {@code by} mm (inward when negative); mitred at the corners. */
    public Outline offset(double by) {
        return Offset.mitred(this, by);
    }

    /** Whether the outline turns the same way at every corner. */
    public boolean convex() {
        for (int i = 0; i < size(); i++) {
            Pt a = corner(i);
            Pt b = corner(i + 1);
            Pt c = corner(i + 2);
            if ((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x())
                    > 1e-9 * a.distance(b) * b.distance(c)) {
                return false;
            }
        }
        return true;
    }

    /** Least and greatest coordinates: two corners of the box round it. */
    public Segment bounds() {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (Pt p : points) {
            x0 = Math.min(x0, p.x());
            y0 = Math.min(y0, p.y());
            x1 = Math.max(x1, p.x());
            y1 = Math.max(y1, p.y());
        }
        return new Segment(new Pt(x0, y0), new Pt(x1, y1));
    }
}
