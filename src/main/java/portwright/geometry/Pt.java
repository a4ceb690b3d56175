package portwright.geometry;

/** A point in a part's plan, mm. */
public record Pt(double x, double y) {
    public Pt plus(double dx, double dy) {
        return new Pt(x + dx, y + dy);
    }

    public double distance(Pt o) {
        return Math.hypot(x - o.x, y - o.y);
    }

    /** Seen from the other side: x' = −x. */
    public Pt mirrored() {
        return new Pt(-x, y);
    }
}
