package portwright.geometry;

import portwright.model.Fitting;

/**
 * A fitting on its part.
 *
 * @param face its part, hot face
 * @param shape in the part's frame
 * @param standoff gap between wall and fitting, mm; NaN when none is given
 */
public record FittingShape(Fitting fitting, Face face, Shape shape, double standoff) {
    public String name() {
        return fitting.name();
    }

    /** Whether it stands outside of the wall. */
    public boolean outside() {
        return !Double.isNaN(standoff)
                || switch (fitting.kind()) {
                    case CONTROL_BOX, TERMINALS, HANDLE, HINGE, LATCH, LEG, STAND_BAR -> true;
                    default -> false;
                };
    }
}
