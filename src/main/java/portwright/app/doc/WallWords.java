package portwright.app.doc;

import portwright.geometry.Panel;
import portwright.model.UnitSystem;

/** Places in a wall panel as a tape finds them: inside from the chamber's corner, outside from the wall's edges, as on the sheets. */
public final class WallWords {
    private WallWords() {}

    /** {@code u} right of the panel's middle seen from inside, mm. */
    public static String edges(Panel p, double u, UnitSystem units) {
        return "Inside " + Lengths.shown(u + p.width() / 2, units) + " from the left corner of " + p.words() + ". "
                + outside(p, u, units) + ".";
    }

    /** From the edges seen from outside, where left and right change places. */
    public static String outside(Panel p, double u, UnitSystem units) {
        double left = p.uMax(p.thickness()) - u;
        double right = u - p.uMin(p.thickness());
        return "Outside " + Lengths.shown(left, units) + " from the left edge, " + Lengths.shown(right, units)
                + " from the right";
    }
}
