package portwright.geometry;

import portwright.model.On;

/** The straight line across a slab that loses the largest share of its length to holes and grooves. */
public final class WeakestSection {
    private WeakestSection() {}

    /**
     * A line across a slab.
     *
     * @param angle direction of the line, rad clockwise from the back, 0 ≤ angle &lt; π
     * @param offset signed distance of the line from the frame's origin, positive to the right of its direction, mm
     * @param share of its length that is lost
     * @param across the line from rim to rim
     */
    public record Line(double angle, double offset, double share, Segment across) {}

    static Line of(KilnGeometry kiln, On on) {
        return null;
    }
}
