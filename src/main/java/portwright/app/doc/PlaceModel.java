package portwright.app.doc;

import java.util.List;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** A place field: two lengths, or radius and bearing, kept as typed. */
public final class PlaceModel {
    private final Document doc;
    private final String path;
    private final boolean wall;

    public PlaceModel(Document doc, String path, boolean wall) {
        this.doc = doc;
        this.path = path;
        this.wall = wall;
    }

    /** Whether nothing is typed yet. */
    public boolean none() {
        return !doc.text().has(path);
    }

    /** Whether it is typed as radius and bearing. */
    public boolean polar() {
        return doc.text().has(path + ".radius");
    }

    /** Whether the other form may be typed. */
    public boolean canTurn() {
        return !wall && point() != null;
    }

    /** Its two fields; one that takes the whole place while there is none, since half a place is none. */
    public List<FieldModel> fields() {
        if (polar()) {
            return List.of(
                    new FieldModel(doc, path, FieldSpec.quantity("radius", "radius", Kind.LENGTH)),
                    new FieldModel(doc, path, FieldSpec.quantity("bearing", "bearing", Kind.ANGLE)));
        }
        String parent = path.substring(0, path.lastIndexOf('.'));
        String key = path.substring(path.lastIndexOf('.') + 1);
        if (none()) {
            String hint = wall ? "right of middle, up" : "to the right, to the back";
            return List.of(new FieldModel(doc, parent, FieldSpec.of(key, "place", FieldSpec.Type.PLACE, hint)));
        }
        return List.of(
                new FieldModel(
                        doc,
                        parent,
                        FieldSpec.quantity(key + "[0]", wall ? "right of the middle" : "to the right", Kind.LENGTH)),
                new FieldModel(
                        doc,
                        parent,
                        FieldSpec.quantity(key + "[1]", wall ? "above the floor" : "to the back", Kind.LENGTH)));
    }

    /** Where a place in the wall lies for a tape, in words: from the corner inside, from the edges outside; empty elsewhere. */
    public String edges() {
        Pt p = wall ? point() : null;
        String panel = doc.text()
                .get(path.substring(0, path.lastIndexOf('.')) + ".panel")
                .orElse("");
        var panels = doc.shapes().geometry().panels();
        if (p == null || !panel.matches("\\d{1,3}") || Integer.parseInt(panel) > panels.size() || panel.equals("0")) {
            return "";
        }
        return WallWords.edges(panels.get(Integer.parseInt(panel) - 1), p.x(), Moves.units(doc.text()));
    }

    private Pt point() {
        DesignText t = doc.text();
        try {
            if (polar()) {
                double r = Quantity.parse(t.get(path + ".radius").orElse(""), Kind.LENGTH)
                        .mm();
                double b = Quantity.parse(t.get(path + ".bearing").orElse(""), Kind.ANGLE)
                        .si();
                return new Pt(r * Math.sin(b), r * Math.cos(b));
            }
            return t.has(path)
                    ? new Pt(
                            Quantity.parse(t.get(path + "[0]").orElse(""), Kind.LENGTH)
                                    .mm(),
                            Quantity.parse(t.get(path + "[1]").orElse(""), Kind.LENGTH)
                                    .mm())
                    : null;
        } catch (QuantityException e) {
            return null;
        }
    }

    /** The place in the other form, in words. */
    public String other() {
        Pt p = point();
        if (p == null) {
            return "";
        }
        var u = Moves.units(doc.text());
        if (polar()) {
            return "Also " + side(p.x(), u, " right", " left") + ", " + side(p.y(), u, " back", " front");
        }
        return "Also radius " + Lengths.shown(Math.hypot(p.x(), p.y()), u) + ", bearing " + Format.plain(bearing(p), 1)
                + "°";
    }

    private static String side(double mm, UnitSystem u, String plus, String minus) {
        return Lengths.shown(Math.abs(mm), u) + (mm < 0 ? minus : plus);
    }

    /** What the other form is called. */
    public String otherForm() {
        return polar() ? "right and back" : "radius and bearing";
    }

    private static double bearing(Pt p) {
        return (Math.toDegrees(Math.atan2(p.x(), p.y())) + 360) % 360;
    }

    /** Types the place in the other form. */
    public void turn() {
        Pt p = point();
        var u = Moves.units(doc.text());
        String json = polar()
                ? "[" + DesignText.text(Lengths.typed(p.x(), u)) + ", " + DesignText.text(Lengths.typed(p.y(), u)) + "]"
                : "{\"radius\": " + DesignText.text(Lengths.typed(Math.hypot(p.x(), p.y()), u)) + ", \"bearing\": "
                        + DesignText.text(Format.plain(bearing(p), 3) + " deg") + "}";
        doc.edit("write place as " + otherForm(), t -> t.set(path, json));
    }
}
