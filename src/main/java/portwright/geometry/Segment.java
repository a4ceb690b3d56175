package portwright.geometry;

/** A straight piece between two points, mm. */
public record Segment(Pt a, Pt b) {
    /** Length, mm. */
    public double length() {
        return a.distance(b);
    }

    /** The point of the piece nearest to p. */
    public Pt nearest(Pt p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double len2 = dx * dx + dy * dy;
        if (len2 == 0) {
            return a;
        }
        double t = ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / len2;
        return t <= 0 ? a : t >= 1 ? b : new Pt(a.x() + t * dx, a.y() + t * dy);
    }

    /** Shortest distance to p, mm; from the cross product where the foot lies within, so that no digits are lost. */
    public double distance(Pt p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double len2 = dx * dx + dy * dy;
        double px = p.x() - a.x();
        double py = p.y() - a.y();
        double t = px * dx + py * dy;
        if (t <= 0 || len2 == 0) {
            return Math.hypot(px, py);
        }
        return t >= len2 ? p.distance(b) : Math.abs(dx * py - dy * px) / Math.sqrt(len2);
    }
}
