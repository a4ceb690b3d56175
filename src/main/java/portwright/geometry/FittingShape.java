package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Fitting;
import portwright.model.FittingKind;

/**
 * A fitting on its part.
 *
 * @param face its part, hot face
 * @param shape in the part's frame
 * @param standoff gap between wall and fitting, mm; NaN when none is given
 */
public record FittingShape(Fitting fitting, Face face, Shape shape, double standoff) {
    public String name() {
        return fitting.name();
    }

    /** Whether it stands outside of the wall. */
    public boolean outside() {
        return !Double.isNaN(standoff)
                || switch (fitting.kind()) {
                    case CONTROL_BOX, TERMINALS, HANDLE, HINGE, LATCH, LEG, STAND_BAR -> true;
                    default -> false;
                };
    }

    /** Whether it is a hole through its part. */
    public boolean open() {
        return fitting.kind() == FittingKind.VENT || fitting.kind() == FittingKind.SPYHOLE;
    }

    /** The slot with round ends that holds its shape; a disc is a slot without length. */
    public Shape.Strip slot() {
        if (shape instanceof Shape.Strip s) {
            return s;
        }
        if (shape instanceof Shape.Disc d) {
            return new Shape.Strip(List.of(d.circle().centre()), d.circle().radius());
        }
        Outline o = ((Shape.Poly) shape).outline();
        Segment side = o.edge(0);
        Segment next = o.edge(1);
        boolean along = side.length() >= next.length();
        Segment first = along ? next : side;
        Segment last = along ? o.edge(3) : o.edge(2);
        return new Shape.Strip(List.of(middle(first), middle(last)), Math.min(side.length(), next.length()) / 2);
    }

    /** The convex solids that it takes up: through its part where it goes through, else a flat plate where its near side stands. */
    public List<Convex> solids(KilnGeometry kiln) {
        double t = kiln.thickness(face.on());
        double from = outside() ? t + (Double.isNaN(standoff) ? 0 : standoff) : 0;
        double to = Math.max(t, from);
        List<Convex> out = new ArrayList<>();
        if (shape instanceof Shape.Poly p) {
            List<Convex> edges = new ArrayList<>();
            for (Pt c : p.outline().points()) {
                edges.add(Bore.of(kiln, face, c, 0, from, to));
            }
            out.add(edges.stream().reduce(Convex::between).orElseThrow());
            return out;
        }
        Shape.Strip s = slot();
        for (Segment piece : s.pieces()) {
            Convex a = Bore.of(kiln, face, piece.a(), s.halfWidth(), from, to);
            out.add(
                    piece.length() == 0
                            ? a
                            : Convex.between(a, Bore.of(kiln, face, piece.b(), s.halfWidth(), from, to)));
        }
        return out;
    }

    private static Pt middle(Segment s) {
        return new Pt((s.a().x() + s.b().x()) / 2, (s.a().y() + s.b().y()) / 2);
    }
}
