package portwright.app.doc;

import java.util.Optional;
import portwright.geometry.Circle;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.On;

/** Which part lies under a point of a picture. Ports first, then what is smallest. */
public final class Hits {
    /** A part under the pointer. */
    public record Hit(String name, Face face, boolean movable) {}

    private Hits() {}

    /** The part at a point of the picture, within a reach in mm. */
    public static Optional<Hit> at(Plot plot, Pt picture, double reach) {
        Face face = plot.faceAt(picture);
        if (face == null) {
            return Optional.empty();
        }
        Pt p = plot.toPart(face, picture);
        KilnGeometry k = plot.kiln();
        Hit best = null;
        double least = reach;
        for (Hole h : k.holes()) {
            double d = h.centre().distance(p) - h.diameter() / 2;
            if (h.face().samePart(face) && d < least) {
                least = Math.max(d, -1e9);
                best = new Hit(h.name(), h.face(), true);
            }
        }
        if (best != null) {
            return Optional.of(best);
        }
        least = reach / 2;
        for (FittingShape f : k.fittings()) {
            if (f.face().samePart(face)) {
                double d = f.shape().distance(p);
                if (d < least) {
                    least = d;
                    best = new Hit(f.name(), f.face(), f.fitting().at() != null);
                }
            }
        }
        if (best != null) {
            return Optional.of(best);
        }
        for (GrooveSolid g : k.grooves()) {
            if (g.face().samePart(face) && g.footprint().distance(p) < least) {
                least = g.footprint().distance(p);
                best = new Hit(g.name(), g.face(), false);
            }
        }
        if (best == null && face.on() == On.FLOOR) {
            best = shelf(k, p, face, reach / 2);
        }
        return Optional.ofNullable(best);
    }

    private static Hit shelf(KilnGeometry k, Pt p, Face face, double reach) {
        for (ShelfPlate s : k.shelves()) {
            if (s.posts() != null) {
                for (Circle c : s.posts()) {
                    if (c.centre().distance(p) < c.radius()) {
                        return new Hit(s.name(), face, false);
                    }
                }
            }
            if (s.shape().distance(p) <= 0 && s.shape().distance(p) > -reach) {
                return new Hit(s.name(), face, false);
            }
        }
        return null;
    }
}
