package portwright.geometry;

import java.util.List;
import portwright.model.On;

/**
 * The envelope of the flame of one inlet: a free jet from the hole's rim along the hole's axis, cut off at the first shelf above its axis; the
 * part that passes the shelf's edge goes on. A wall inlet's flame runs to the first surface.
 *
 * @param hole the inlet
 * @param origin centre of the hole on the hot face
 * @param axis unit vector into the chamber
 * @param reach how far it goes along the axis, mm
 * @param halfAngle of the free jet, rad
 * @param shelf the shelf that cuts it off; null for none
 */
public record Flame(Hole hole, Pt3 origin, Pt3 axis, double reach, double halfAngle, ShelfPlate shelf) {
    /** Half angle of a free jet (IFRF Combustion File on the isothermal free jet: cone angle about 22°), rad. */
    public static final double HALF_ANGLE = Math.toRadians(11);

    /** The flame of an inlet. */
    public static Flame of(KilnGeometry kiln, Hole h, double halfAngle) {
        Pt c = h.centre();
        if (h.face().on() == On.WALL) {
            Panel p = kiln.panel(h.face().panel());
            Pt3 origin = p.point(c.x(), c.y(), 0);
            Pt inward =
                    new Pt(p.plan(c.x(), -1).x() - origin.x(), p.plan(c.x(), -1).y() - origin.y());
            return new Flame(
                    h,
                    origin,
                    new Pt3(inward.x(), inward.y(), 0),
                    across(kiln, origin.plan(), inward),
                    halfAngle,
                    null);
        }
        boolean lid = h.face().on() == On.LID;
        Pt3 origin = new Pt3(c.x(), c.y(), lid ? kiln.height() : 0);
        ShelfPlate shelf = lid ? null : firstShelf(kiln.shelves(), c);
        double reach = kiln.height();
        if (shelf != null && !passes(shelf, c, h.diameter() / 2 + shelf.bottom() * Math.tan(halfAngle))) {
            reach = shelf.bottom();
        }
        return new Flame(h, origin, new Pt3(0, 0, lid ? -1 : 1), reach, halfAngle, shelf);
    }

    private static ShelfPlate firstShelf(List<ShelfPlate> shelves, Pt c) {
        ShelfPlate first = null;
        for (ShelfPlate s : shelves) {
            if (s.shape().contains(c) && (first == null || s.bottom() < first.bottom())) {
                first = s;
            }
        }
        return first;
    }

    private static boolean passes(ShelfPlate s, Pt c, double radius) {
        return radius > -s.shape().distance(c);
    }

    private static double across(KilnGeometry kiln, Pt from, Pt dir) {
        Outline in = kiln.inner();
        Segment b = in.bounds();
        double far = 2 * b.a().distance(b.b());
        double least = far;
        for (Segment e : in.edges()) {
            double ex = e.b().x() - e.a().x();
            double ey = e.b().y() - e.a().y();
            double det = dir.x() * ey - dir.y() * ex;
            if (Math.abs(det) < 1e-12) {
                continue;
            }
            double ax = e.a().x() - from.x();
            double ay = e.a().y() - from.y();
            double s = (ax * ey - ay * ex) / det;
            double t = (ax * dir.y() - ay * dir.x()) / det;
            if (s > 1e-6 && t >= 0 && t <= 1) {
                least = Math.min(least, s);
            }
        }
        return least;
    }

    /** Radius at a distance along the axis, mm. */
    public double radius(double along) {
        return hole.diameter() / 2 + along * Math.tan(halfAngle);
    }

    /** Distance of a point to the envelope, 0 inside, mm. */
    public double distance(Pt3 p) {
        double dx = p.x() - origin.x();
        double dy = p.y() - origin.y();
        double dz = p.z() - origin.z();
        double s = dx * axis.x() + dy * axis.y() + dz * axis.z();
        double rho = Math.sqrt(Math.max(0, dx * dx + dy * dy + dz * dz - s * s));
        if (s < 0) {
            return Math.hypot(s, Math.max(0, rho - hole.diameter() / 2));
        }
        if (s <= reach && rho <= radius(s)) {
            return 0;
        }
        Segment side = new Segment(new Pt(0, hole.diameter() / 2), new Pt(reach, radius(reach)));
        double toSide = side.distance(new Pt(s, rho));
        return s > reach && rho <= radius(reach) ? s - reach : toSide;
    }

    /**
     * Shortest distance of a straight piece to the envelope, mm; the envelope is convex, so the distance along the piece has one valley. Beyond
     * the reach only some distance that is surely not undercut.
     */
    public double distance(Segment3 piece, double reach) {
        double sure = distance(piece.a().between(piece.b(), 0.5)) - piece.length() / 2;
        return sure > reach ? sure : Solids.least(0, 1, t -> distance(piece.a().between(piece.b(), t)));
    }
}
