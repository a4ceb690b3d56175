package portwright.geometry;

/** Least gap between a shelf and the wall. */
public final class ShelfGap {
    /** Steps along the round side of a half shelf; its sagitta is below a micrometre for any kiln. */
    private static final int STEPS = 2000;

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
        for (int i = 0; i <= STEPS; i++) {
            double b = h.bearing() - Math.PI / 2 + Math.PI * i / STEPS;
            gap = Math.min(gap, inner.depth(h.centre().plus(h.radius() * Math.sin(b), h.radius() * Math.cos(b))));
        }
        for (Pt c : inner.points()) {
            gap = Math.min(gap, s.distance(c));
        }
        return gap;
    }
}
