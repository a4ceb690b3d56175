package portwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Mitred offset of an outline. Corner by corner in plain arithmetic, which keeps every digit; where that would fold over itself (a recess
 * narrower than twice the wall) the general buffer of the geometry library closes the recess.
 */
final class Offset {
    /** Sharpest mitre that the buffer draws out; sharper corners than any kiln's. */
    private static final double MITRE_LIMIT = 20;

    private Offset() {}

    static Outline mitred(Outline o, double by) {
        if (by == 0) {
            return o;
        }
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < o.size(); i++) {
            out.add(corner(o.corner(i - 1), o.corner(i), o.corner(i + 1), by));
        }
        Outline plain = new Outline(out);
        if (keepsItsEdges(o, plain) && (o.convex() || polygon(plain).isValid())) {
            return plain;
        }
        return buffered(o, by);
    }

    /** The corner b between a and c, moved so that both its edges shift outward (to the left of travel) by the given amount. */
    static Pt corner(Pt a, Pt b, Pt c, double by) {
        double l1 = a.distance(b);
        double l2 = b.distance(c);
        double n1x = -(b.y() - a.y()) / l1;
        double n1y = (b.x() - a.x()) / l1;
        double n2x = -(c.y() - b.y()) / l2;
        double n2y = (c.x() - b.x()) / l2;
        double k = by / (1 + n1x * n2x + n1y * n2y);
        return b.plus(k * (n1x + n2x), k * (n1y + n2y));
    }

    private static boolean keepsItsEdges(Outline o, Outline moved) {
        for (int i = 0; i < o.size(); i++) {
            Segment was = o.edge(i);
            Segment is = moved.edge(i);
            double along = (was.b().x() - was.a().x()) * (is.b().x() - is.a().x())
                    + (was.b().y() - was.a().y()) * (is.b().y() - is.a().y());
            if (!(along > 0)) {
                return false;
            }
        }
        return true;
    }

    private static Outline buffered(Outline o, double by) {
        BufferParameters how =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        Geometry g = BufferOp.bufferOp(polygon(o), by, how);
        Polygon largest = null;
        for (int i = 0; i < g.getNumGeometries(); i++) {
            if (g.getGeometryN(i) instanceof Polygon p && (largest == null || p.getArea() > largest.getArea())) {
                largest = p;
            }
        }
        if (largest == null || largest.isEmpty()) {
            throw new IllegalArgumentException(
                    "an outline shrinks to nothing when its edges move inward by " + -by + " mm");
        }
        Coordinate[] ring = largest.getExteriorRing().getCoordinates();
        List<Pt> pts = new ArrayList<>();
        Arrays.stream(ring, 0, ring.length - 1).forEach(c -> pts.add(new Pt(c.x, c.y)));
        if (Orientation.isCCW(ring)) {
            java.util.Collections.reverse(pts);
        }
        return new Outline(pts);
    }

    static Polygon polygon(Outline o) {
        Coordinate[] c = new Coordinate[o.size() + 1];
        for (int i = 0; i <= o.size(); i++) {
            c[i] = new Coordinate(o.corner(i).x(), o.corner(i).y());
        }
        return new GeometryFactory().createPolygon(c);
    }
}
