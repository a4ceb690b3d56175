package portwright.geometry;

/** The brick of a slab that a point lies in: its four corners, and the point's distances to its four sides (left, right, below, above; before turning). */
public record Brick(Outline outline, double left, double right, double below, double above) {
    /** Least distance to a side, mm. */
    public double least() {
        return Math.min(Math.min(left, right), Math.min(below, above));
    }
}
