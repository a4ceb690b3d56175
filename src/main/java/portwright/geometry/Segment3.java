package portwright.geometry;

/** A straight piece in the kiln, mm. */
public record Segment3(Pt3 a, Pt3 b) {
    /** Length, mm. */
    public double length() {
        return a.distance(b);
    }
}
