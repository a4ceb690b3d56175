package portwright.check.rules.geometry;

import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;

/** Distance of a wall hole's centre to the edges of its panel: mitre lines at both faces, floor and lid. */
final class PanelEdges {
    private PanelEdges() {}

    /** Least distance of the bore's axis to an edge, positive inside, mm. */
    static double distance(KilnGeometry kiln, Hole h) {
        Pt c = h.centre();
        return Math.min(
                Math.min(c.x() - left(kiln, h), right(kiln, h) - c.x()), Math.min(c.y(), kiln.height() - c.y()));
    }

    /** The place on the nearest edge, in (u, v). */
    static Pt nearest(KilnGeometry kiln, Hole h) {
        Pt c = h.centre();
        double d = distance(kiln, h);
        if (d == c.x() - left(kiln, h)) {
            return new Pt(left(kiln, h), c.y());
        }
        if (d == right(kiln, h) - c.x()) {
            return new Pt(right(kiln, h), c.y());
        }
        return new Pt(c.x(), d == c.y() ? 0 : kiln.height());
    }

    private static double left(KilnGeometry kiln, Hole h) {
        Panel p = kiln.panel(h.face().panel());
        return Math.max(p.uMin(0), p.uMin(p.thickness()));
    }

    private static double right(KilnGeometry kiln, Hole h) {
        Panel p = kiln.panel(h.face().panel());
        return Math.min(p.uMax(0), p.uMax(p.thickness()));
    }
}
