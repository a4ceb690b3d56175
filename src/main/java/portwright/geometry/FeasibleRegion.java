package portwright.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Where the centre of a hole may lie: outlines moved inward, less every obstacle moved outward. Straight edges are exact but for {@link #chordError};
 * arcs stand as chords, always on the side that keeps more brick. The part that does not change while a hole is dragged is made once; what changes
 * (other holes) is taken away from it.
 */
public final class FeasibleRegion {
    /** Chords a quarter turn. */
    private static final int QUARTER = 24;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Geometry region;

    private FeasibleRegion(Geometry region) {
        this.region = region;
    }

    /** An obstacle and how far the centre keeps from its edge, mm. */
    public record Keep(Shape shape, double mm) {}

    /** An outline and how far inside it the centre keeps, mm. */
    public record Within(Outline outline, double mm) {}

    /**
     * A piece of the region.
     *
     * @param outer its rim, clockwise
     * @param holes forbidden places within
     */
    public record Piece(Outline outer, List<Outline> holes) {
        public Piece {
            holes = List.copyOf(holes);
        }
    }

    /** How far the drawn line of an arc of this radius may lie on the careful side of the true one, mm. */
    public static double chordError(double radiusMm) {
        return radiusMm * (1 / Math.cos(Math.PI / (4 * QUARTER)) - 1);
    }

    /** The region inside all outlines and clear of all obstacles. */
    public static FeasibleRegion of(List<Within> outlines, List<Keep> obstacles) {
        Geometry g = null;
        for (Within w : outlines) {
            Geometry in = buffer(Offset.polygon(w.outline()), -careful(w.mm()));
            g = g == null ? in : g.intersection(in);
        }
        return new FeasibleRegion(g == null ? FACTORY.createPolygon() : g).without(obstacles);
    }

    /** What is left of it clear of more obstacles. */
    public FeasibleRegion without(List<Keep> obstacles) {
        if (region.isEmpty() || obstacles.isEmpty()) {
            return this;
        }
        STRtree index = new STRtree();
        for (Keep k : obstacles) {
            Geometry grown = grown(k);
            if (grown != null && grown.getEnvelopeInternal().intersects(region.getEnvelopeInternal())) {
                index.insert(grown.getEnvelopeInternal(), grown);
            }
        }
        Geometry left = region;
        @SuppressWarnings("unchecked")
        List<Geometry> near = index.query(region.getEnvelopeInternal());
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(region);
        List<Geometry> biting = near.stream().filter(prepared::intersects).toList();
        if (!biting.isEmpty()) {
            left = left.difference(UnaryUnionOp.union(biting));
        }
        return new FeasibleRegion(left);
    }

    /** The part of it that lies inside a disc, half disc or polygon, as far from its edge at least. */
    public FeasibleRegion inside(Shape shape, double mm) {
        if (shape instanceof Shape.Disc d) {
            Pt c = d.circle().centre();
            double left = Math.max(0, d.circle().radius() - mm);
            return new FeasibleRegion(region.intersection(
                    FACTORY.createPoint(new Coordinate(c.x(), c.y())).buffer(left, QUARTER)));
        }
        Outline outline = shape instanceof Shape.HalfDisc h ? rim(h, h.radius()) : ((Shape.Poly) shape).outline();
        return new FeasibleRegion(region.intersection(buffer(Offset.polygon(outline), -careful(mm))));
    }

    /** What is in either. */
    public FeasibleRegion or(FeasibleRegion other) {
        return new FeasibleRegion(region.union(other.region));
    }

    private static double careful(double mm) {
        return mm / Math.cos(Math.PI / (4 * QUARTER));
    }

    private static Geometry buffer(Geometry g, double by) {
        return BufferOp.bufferOp(g, by, new BufferParameters(QUARTER));
    }

    private static Geometry grown(Keep k) {
        if (Double.isNaN(k.mm())) {
            return null;
        }
        if (k.shape() instanceof Shape.Disc d) {
            return disc(d.circle().centre(), d.circle().radius() + k.mm());
        }
        if (k.shape() instanceof Shape.Poly p) {
            Geometry poly = Offset.polygon(p.outline());
            return k.mm() == 0 ? poly : buffer(poly, careful(k.mm()));
        }
        if (k.shape() instanceof Shape.Strip s) {
            double by = careful(s.halfWidth() + k.mm());
            if (s.path().size() == 1) {
                return disc(s.path().get(0), s.halfWidth() + k.mm());
            }
            Coordinate[] c =
                    s.path().stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
            return buffer(FACTORY.createLineString(c), by);
        }
        Shape.HalfDisc h = (Shape.HalfDisc) k.shape();
        return buffer(Offset.polygon(rim(h, careful(h.radius()))), careful(k.mm()));
    }

    /** A half disc of another radius in straight pieces. */
    private static Outline rim(Shape.HalfDisc h, double radius) {
        List<Pt> rim = new ArrayList<>();
        for (int i = 0; i <= 2 * QUARTER; i++) {
            double a = h.bearing() - Math.PI / 2 + Math.PI * i / (2 * QUARTER);
            rim.add(h.centre().plus(radius * Math.sin(a), radius * Math.cos(a)));
        }
        return new Outline(rim);
    }

    private static Geometry disc(Pt centre, double radius) {
        return buffer(FACTORY.createPoint(new Coordinate(centre.x(), centre.y())), careful(radius));
    }

    /** Whether a centre may lie at a point. */
    public boolean contains(Pt p) {
        return region.intersects(FACTORY.createPoint(new Coordinate(p.x(), p.y())));
    }

    /** Its area, mm². */
    public double area() {
        return region.getArea();
    }

    /** Its pieces as plain polygons, largest first. */
    public List<Piece> pieces() {
        List<Piece> out = new ArrayList<>();
        for (int i = 0; i < region.getNumGeometries(); i++) {
            if (region.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
                List<Outline> holes = new ArrayList<>();
                for (int k = 0; k < p.getNumInteriorRing(); k++) {
                    holes.add(outline(p.getInteriorRingN(k)));
                }
                out.add(new Piece(outline(p.getExteriorRing()), holes));
            }
        }
        out.sort((a, b) -> Double.compare(b.outer().area(), a.outer().area()));
        return out;
    }

    private static Outline outline(LinearRing ring) {
        Coordinate[] c = ring.getCoordinates();
        List<Pt> pts = new ArrayList<>();
        for (int i = 0; i + 1 < c.length; i++) {
            pts.add(new Pt(c[i].x, c[i].y));
        }
        if (Orientation.isCCW(c)) {
            Collections.reverse(pts);
        }
        return new Outline(pts);
    }
}
