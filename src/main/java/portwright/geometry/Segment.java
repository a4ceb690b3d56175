package portwright.geometry;

/** A straight piece between two points, mm. */
public record Segment(Pt a, Pt b) {
    public double length() {
        return a.distance(b);
    }
}
