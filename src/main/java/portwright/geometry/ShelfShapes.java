package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Place;
import portwright.model.Shelf;
import portwright.units.Quantity;

/** Shelves as shapes, and which fields are missing for them. */
final class ShelfShapes {
    final List<ShelfPlate> plates = new ArrayList<>();
    final List<String> lacks = new ArrayList<>();
    final List<String> postLacks = new ArrayList<>();

    ShelfShapes(List<Shelf> shelves) {
        if (shelves == null) {
            lacks.add("shelves");
            postLacks.add("shelves");
            return;
        }
        for (int i = 0; i < shelves.size(); i++) {
            Shelf s = shelves.get(i);
            String field = "shelves[" + i + "]";
            String missing = missing(s);
            if (missing != null) {
                lacks.add(field + "." + missing);
                postLacks.add(field + "." + missing);
                continue;
            }
            List<Circle> posts = null;
            if (s.posts() == null) {
                postLacks.add(field + ".posts");
            } else if (s.postSize() == null && !s.posts().isEmpty()) {
                postLacks.add(field + ".postSize");
            } else {
                posts = new ArrayList<>();
                for (Place p : s.posts()) {
                    posts.add(new Circle(PlanOutlines.pt(p), s.postSize().mm() / Math.sqrt(2)));
                }
            }
            double bottom = s.height().mm();
            plates.add(new ShelfPlate(
                    s,
                    shape(s),
                    bottom,
                    bottom + (s.thickness() == null ? 0 : s.thickness().mm()),
                    posts));
        }
    }

    private static String missing(Shelf s) {
        if (s.shape() == null) {
            return "shape";
        }
        if (s.height() == null) {
            return "height";
        }
        return switch (s.shape()) {
            case ROUND -> named("diameter", s.diameter());
            case HALF -> s.diameter() == null ? "diameter" : named("turn", s.turn());
            case POLYGON -> s.sides() == null ? "sides" : named("acrossFlats", s.acrossFlats());
            case RECTANGLE -> s.width() == null ? "width" : named("depth", s.depth());
        };
    }

    private static String named(String field, Quantity q) {
        return q == null ? field : null;
    }

    private static Shape shape(Shelf s) {
        Pt at = s.at() == null ? new Pt(0, 0) : PlanOutlines.pt(s.at());
        double turn = PlanOutlines.angle(s.turn());
        return switch (s.shape()) {
            case ROUND -> new Shape.Disc(new Circle(at, s.diameter().mm() / 2));
            case HALF -> new Shape.HalfDisc(at, s.diameter().mm() / 2, turn);
            case POLYGON ->
                new Shape.Poly(new Outline(
                        PlanOutlines.regular(s.sides(), s.acrossFlats().mm(), 0, turn).points().stream()
                                .map(p -> p.plus(at.x(), at.y()))
                                .toList()));
            case RECTANGLE ->
                new Shape.Poly(
                        PlanOutlines.rectangle(at, s.width().mm(), s.depth().mm(), turn));
        };
    }
}
