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
        return of(
                kiln,
                h.face(),
                h.centre(),
                h.drilledRadius(),
                0,
                kiln.thickness(h.face().on()));
    }

    /** A bore through the floor or lid. */
    public static Bore slab(KilnGeometry kiln, On on, Pt centre, double radius) {
        return of(kiln, new Face(on, 0, true), centre, radius, 0, kiln.thickness(on));
    }

    /** The hole by which the ends of an element pass the wall. */
    public static Bore of(KilnGeometry kiln, TailHole t) {
        return of(kiln, t.face(), t.circle().centre(), t.circle().radius(), 0, kiln.thickness(On.WALL));
    }

    /**
     * A cylinder square to a part.
     *
     * @param face the part
     * @param centre in the part's frame, mm
     * @param radius mm
     * @param from where it begins, mm from the hot face into the part
     * @param to where it ends, mm from the hot face
     */
    static Bore of(KilnGeometry kiln, Face face, Pt centre, double radius, double from, double to) {
        if (face.on() == On.WALL) {
            Panel p = kiln.panel(face.panel());
            Pt3 hot = p.point(centre.x(), centre.y(), 0);
            Pt3 in = p.point(centre.x(), centre.y(), 1).minus(hot);
            return new Bore(new Pt3(hot.x() + from * in.x(), hot.y() + from * in.y(), hot.z()), in, to - from, radius);
        }
        boolean floor = face.on() == On.FLOOR;
        double down = floor ? -1 : 1;
        double z = (floor ? 0 : kiln.height()) + down * from;
        return new Bore(new Pt3(centre.x(), centre.y(), z), new Pt3(0, 0, down), to - from, radius);
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
