package portwright.check.rules.geometry;

import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;
import portwright.model.On;

/** Distance of a floor or lid hole to what stands outside the wall: the side of the fitting that faces the kiln is a flat plate. */
final class Outside {
    private Outside() {}

    static double distance(KilnGeometry kiln, Hole h, FittingShape f) {
        Panel p = kiln.panel(f.face().panel());
        Segment box = box(f.shape());
        double w = kiln.thickness(On.WALL) + (Double.isNaN(f.standoff()) ? 0 : f.standoff());
        Segment plate = new Segment(p.plan(box.a().x(), w), p.plan(box.b().x(), w));
        double plan = Math.max(0, plate.distance(h.centre()) - h.drilledRadius());
        double t = kiln.thickness(h.face().on());
        double low = h.face().on() == On.FLOOR ? -t : kiln.height();
        double rise =
                Math.max(0, Math.max(box.a().y() - (low + t), low - box.b().y()));
        return Math.hypot(plan, rise);
    }

    private static Segment box(Shape s) {
        if (s instanceof Shape.Disc d) {
            double r = d.circle().radius();
            return new Segment(
                    d.circle().centre().plus(-r, -r), d.circle().centre().plus(r, r));
        }
        if (s instanceof Shape.Poly p) {
            return p.outline().bounds();
        }
        Shape.Strip strip = (Shape.Strip) s;
        double r = strip.halfWidth();
        Pt low = strip.path().get(0);
        Pt high = low;
        for (Pt q : strip.path()) {
            low = new Pt(Math.min(low.x(), q.x()), Math.min(low.y(), q.y()));
            high = new Pt(Math.max(high.x(), q.x()), Math.max(high.y(), q.y()));
        }
        return new Segment(low.plus(-r, -r), high.plus(r, r));
    }
}
