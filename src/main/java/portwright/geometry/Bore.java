package portwright.geometry;

import portwright.model.On;

/**
 * A hole as it is drilled: a cylinder with flat ends, square to its part, from the hot to the cold face; mm.
 *
 * @param hot centre on the hot face
 * @param axis unit vector from the hot to the cold face
 * @param length thickness of the part
 * @param radius of the bore
 */
public record Bore(Pt3 hot, Pt3 axis, double length, double radius) implements Convex {
    /** The drilled bore of a hole (with oversize). */
    public static Bore of(KilnGeometry kiln, Hole h) {
        double t = kiln.thickness(h.face().on());
        Pt c = h.centre();
        if (h.face().on() == On.WALL) {
            Panel p = kiln.panel(h.face().panel());
            Pt3 hot = p.point(c.x(), c.y(), 0);
            Pt3 cold = p.point(c.x(), c.y(), t);
            return new Bore(hot, new Pt3((cold.x() - hot.x()) / t, (cold.y() - hot.y()) / t, 0), t, h.drilledRadius());
        }
        boolean floor = h.face().on() == On.FLOOR;
        return new Bore(
                new Pt3(c.x(), c.y(), floor ? 0 : kiln.height()), new Pt3(0, 0, floor ? -1 : 1), t, h.drilledRadius());
    }

    @Override
    public Pt3 outermost(Pt3 direction) {
        double s = direction.dot(axis);
        double rx = direction.x() - s * axis.x();
        double ry = direction.y() - s * axis.y();
        double rz = direction.z() - s * axis.z();
        double r = Math.sqrt(rx * rx + ry * ry + rz * rz);
        double k = r == 0 ? 0 : radius / r;
        double t = s > 0 ? length : 0;
        return new Pt3(
                hot.x() + t * axis.x() + k * rx, hot.y() + t * axis.y() + k * ry, hot.z() + t * axis.z() + k * rz);
    }
}
