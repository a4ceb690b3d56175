package portwright.geometry;

/** Least gap between a shelf and the wall. */
public final class ShelfGap {
    private ShelfGap() {}

    /** Least distance of a shelf's edge to the inner outline, negative where it would cut the wall, mm. */
    public static double toWall(ShelfPlate plate, Outline inner) {
        Shape s = plate.shape();
        if (s instanceof Shape.Disc d) {
            return inner.depth(d.circle().centre()) - d.circle().radius();
        }
        if (s instanceof Shape.Poly p) {
            double gap = Double.POSITIVE_INFINITY;
            for (Pt c : p.outline().points()) {
                gap = Math.min(gap, inner.depth(c));
            }
            for (Pt c : inner.points()) {
                gap = Math.min(gap, s.distance(c));
            }
            return gap;
        }
        Shape.HalfDisc h = (Shape.HalfDisc) s;
        double gap =
                Math.min(inner.depth(h.straight().a()), inner.depth(h.straight().b()));
        // the round side is nearest to an edge where it faces it squarely
        for (Segment e : inner.edges()) {
            double nx = (e.a().y() - e.b().y()) / e.length();
            double ny = (e.b().x() - e.a().x()) / e.length();
            if (nx * Math.sin(h.bearing()) + ny * Math.cos(h.bearing()) >= 0) {
                gap = Math.min(gap, inner.depth(h.centre().plus(h.radius() * nx, h.radius() * ny)));
            }
        }
        for (Pt c : inner.points()) {
            gap = Math.min(gap, s.distance(c));
        }
        return gap;
    }
}
