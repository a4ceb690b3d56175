package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.On;

/** The room that a groove takes out of the brick. */
public sealed interface GrooveSolid {
    /** Name of its element. */
    String name();

    /** The part it is cut into, hot face. */
    Face face();

    /** Depth from the hot face, mm. */
    double depth();

    /** The groove as it covers its part seen square to the hot face, slope included. */
    Shape footprint();

    /** The convex solids that it is made of. */
    List<Convex> solids(KilnGeometry kiln);

    /**
     * A groove along a whole panel, from mitre line to mitre line.
     *
     * @param bottom its floor at the hot face, v in mm
     * @param top its roof, v in mm
     * @param drop how much lower its floor lies at full depth, mm
     */
    record OnWall(String name, Panel panel, double bottom, double top, double depth, double drop)
            implements GrooveSolid {
        @Override
        public Face face() {
            return new Face(On.WALL, panel.number(), true);
        }

        /** Its floor at depth w, v in mm. */
        public double bottomAt(double w) {
            return depth == 0 ? bottom : bottom - drop * w / depth;
        }

        @Override
        public Shape footprint() {
            double l = Math.min(panel.uMin(0), panel.uMin(depth));
            double r = Math.max(panel.uMax(0), panel.uMax(depth));
            double low = Math.min(bottom, bottom - drop);
            return new Shape.Poly(new Outline(List.of(new Pt(l, low), new Pt(l, top), new Pt(r, top), new Pt(r, low))));
        }

        @Override
        public List<Convex> solids(KilnGeometry kiln) {
            List<Pt3> corners = new ArrayList<>();
            for (double w : new double[] {0, depth}) {
                for (double v : new double[] {bottomAt(w), top}) {
                    corners.add(panel.point(panel.uMin(w), v, w));
                    corners.add(panel.point(panel.uMax(w), v, w));
                }
            }
            return List.of(Convex.between(corners));
        }

        /** What is seen of it at the hot face: left, bottom to right, top. */
        public Segment mouth() {
            return new Segment(new Pt(-panel.width() / 2, bottom), new Pt(panel.width() / 2, top));
        }
    }

    /** A groove along a path in the floor or the lid. */
    record OnSlab(String name, On on, Shape.Strip strip, double depth) implements GrooveSolid {
        @Override
        public Face face() {
            return new Face(on, 0, true);
        }

        @Override
        public Shape footprint() {
            return strip;
        }

        @Override
        public List<Convex> solids(KilnGeometry kiln) {
            List<Convex> out = new ArrayList<>();
            for (Segment s : strip.pieces()) {
                out.add(Convex.between(
                        Bore.of(kiln, face(), s.a(), strip.halfWidth(), 0, depth),
                        Bore.of(kiln, face(), s.b(), strip.halfWidth(), 0, depth)));
            }
            return out;
        }
    }
}
