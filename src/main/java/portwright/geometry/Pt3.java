package portwright.geometry;

/** A point in the kiln: x to the right, y to the back, z up from the hot face of the floor; mm. */
public record Pt3(double x, double y, double z) {
    /** Its place in plan. */
    public Pt plan() {
        return new Pt(x, y);
    }

    /** The way from another point to this one. */
    public Pt3 minus(Pt3 o) {
        return new Pt3(x - o.x, y - o.y, z - o.z);
    }

    /** Scalar product of the two as vectors. */
    public double dot(Pt3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    /** Distance, mm. */
    public double distance(Pt3 o) {
        return Math.sqrt((x - o.x) * (x - o.x) + (y - o.y) * (y - o.y) + (z - o.z) * (z - o.z));
    }

    /** The point at a share of the way to another. */
    public Pt3 between(Pt3 o, double share) {
        return new Pt3(x + (o.x - x) * share, y + (o.y - y) * share, z + (o.z - z) * share);
    }
}
