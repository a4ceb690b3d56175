package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Fitting;
import portwright.model.Kiln;
import portwright.model.On;

/** Fittings as shapes on their parts, and which fields are missing for them. */
final class FittingShapes {
    final List<FittingShape> shapes = new ArrayList<>();
    final List<String> lacks = new ArrayList<>();

    FittingShapes(Kiln kiln) {
        List<Fitting> fittings = kiln.fittings();
        if (fittings == null) {
            lacks.add("kiln.fittings");
            return;
        }
        if (kiln.fittingsOpen()) {
            lacks.add("kiln.fittingsComplete");
        }
        for (int i = 0; i < fittings.size(); i++) {
            Fitting f = fittings.get(i);
            String field = "kiln.fittings[" + i + "]";
            Shape shape = shape(f);
            if (shape == null) {
                lacks.add(field + (f.at() == null ? ".at" : ".diameter"));
            } else if (f.on() == On.WALL && f.panel() == null) {
                lacks.add(field + ".panel");
            } else {
                Face face = new Face(f.on(), f.on() == On.WALL ? f.panel() : 0, true);
                shapes.add(new FittingShape(
                        f,
                        face,
                        shape,
                        f.standoff() == null ? Double.NaN : f.standoff().mm()));
            }
        }
    }

    private static Shape shape(Fitting f) {
        if (f.path() != null && !f.path().isEmpty()) {
            return new Shape.Strip(
                    f.path().stream().map(PlanOutlines::pt).toList(),
                    f.diameter() == null ? 0 : f.diameter().mm() / 2);
        }
        if (f.at() == null) {
            return null;
        }
        Pt at = PlanOutlines.pt(f.at());
        if (f.size() != null) {
            return new Shape.Poly(PlanOutlines.rectangle(
                    at, f.size().width().mm(), f.size().depth().mm(), PlanOutlines.angle(f.turn())));
        }
        return f.diameter() == null
                ? null
                : new Shape.Disc(new Circle(at, f.diameter().mm() / 2));
    }
}
