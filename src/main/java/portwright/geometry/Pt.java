package portwright.geometry;

/** A point in a part's plan, mm. */
public record Pt(double x, double y) {
    /** Shifted. */
    public Pt plus(double dx, double dy) {
        return new Pt(x + dx, y + dy);
    }

    /** Distance, mm. */
    public double distance(Pt o) {
        return Math.hypot(x - o.x, y - o.y);
    }

    /** Seen from the other side: x' = −x. */
    public Pt mirrored() {
        return new Pt(-x, y);
    }

    /** Turned about the origin, rad clockwise seen from above. */
    public Pt turned(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Pt(x * c + y * s, y * c - x * s);
    }

    /** The point at a distance from this one towards another; towards the right when the two coincide. */
    public Pt towards(Pt o, double distance) {
        double d = distance(o);
        return d == 0 ? plus(distance, 0) : plus((o.x - x) / d * distance, (o.y - y) / d * distance);
    }
}
