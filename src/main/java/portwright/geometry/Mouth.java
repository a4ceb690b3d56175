package portwright.geometry;

import portwright.model.On;

/** Where flame and flue gas leave the kiln, and how near a thing on its outside stands. mm. */
public final class Mouth {
    private Mouth() {}

    /** Middle of the cold end of a hole with this place on this part. */
    public static Pt3 of(KilnGeometry kiln, On on, int panel, Pt at) {
        return outside(kiln, on, panel, at, kiln.thickness(on));
    }

    /** Where a mouth lies, seen from above from the chamber's centre: rad clockwise from the back. */
    public static double bearing(KilnGeometry kiln, On on, int panel, Pt at) {
        Pt mouth = of(kiln, on, panel, at).plan();
        Pt c = kiln.centre();
        return Math.atan2(mouth.x() - c.x(), mouth.y() - c.y());
    }

    /** From a mouth to the nearest point of a fitting on the cold side, at its stand-off. */
    public static double gap(KilnGeometry kiln, FittingShape f, Pt3 mouth) {
        double depth = kiln.thickness(f.face().on()) + (Double.isNaN(f.standoff()) ? 0 : f.standoff());
        Pt local = f.face().on() == On.WALL
                ? new Pt(kiln.panel(f.face().panel()).local(mouth.plan()).x(), mouth.z())
                : mouth.plan();
        Pt nearest = f.shape().contains(local) ? local : f.shape().nearest(local);
        return outside(kiln, f.face().on(), f.face().panel(), nearest, depth).distance(mouth);
    }

    private static Pt3 outside(KilnGeometry kiln, On on, int panel, Pt at, double depth) {
        return switch (on) {
            case FLOOR -> new Pt3(at.x(), at.y(), -depth);
            case LID -> new Pt3(at.x(), at.y(), kiln.height() + depth);
            case WALL -> kiln.panel(panel).point(at.x(), at.y(), depth);
        };
    }
}
