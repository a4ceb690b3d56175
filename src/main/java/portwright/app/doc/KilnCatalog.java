package portwright.app.doc;

import static portwright.app.doc.FieldSpec.choice;
import static portwright.app.doc.FieldSpec.loose;
import static portwright.app.doc.FieldSpec.place;
import static portwright.app.doc.FieldSpec.quantity;
import static portwright.app.doc.FieldSpec.text;
import static portwright.app.doc.FieldSpec.word;
import static portwright.app.doc.FieldSpec.yes;

import java.util.List;
import portwright.app.doc.FieldSpec.Type;
import portwright.model.Bond;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.ShelfShape;
import portwright.units.Kind;

/** The fields that describe the kiln and its shelves, grouped as the forms show them. */
public final class KilnCatalog {
    private KilnCatalog() {}

    public static FormSpec plan() {
        return FormSpec.object(
                "kiln.plan",
                "Inside plan",
                null,
                List.of(
                        choice("shape", "shape", List.of("polygon", "rectangle", "oval", "outline")),
                        FieldSpec.of("sides", "sides", Type.WHOLE, "e.g. 8"),
                        quantity("acrossFlats", "across flats", Kind.LENGTH),
                        quantity("stretch", "stretch", Kind.LENGTH),
                        quantity("width", "width", Kind.LENGTH),
                        quantity("depth", "depth", Kind.LENGTH),
                        quantity("turn", "turn", Kind.ANGLE),
                        FieldSpec.of("points", "points", Type.PLACES, "x, y a line")));
    }

    /** Which plan fields belong to a shape. */
    public static List<String> planFields(String shape) {
        return switch (shape) {
            case "polygon" -> List.of("shape", "sides", "acrossFlats", "turn");
            case "rectangle" -> List.of("shape", "width", "depth", "turn");
            case "oval" -> List.of("shape", "sides", "acrossFlats", "stretch", "turn");
            default -> List.of("shape", "points");
        };
    }

    /** A fresh plan of a shape. */
    public static String planTemplate(String shape) {
        return switch (shape) {
            case "polygon" ->
                "{\"shape\": \"polygon\", \"sides\": 8, \"acrossFlats\": \"{17 in|430 mm}\", \"turn\": \"0 deg\"}";
            case "rectangle" ->
                "{\"shape\": \"rectangle\", \"width\": \"{18 in|450 mm}\", \"depth\": \"{18 in|450 mm}\"}";
            case "oval" ->
                "{\"shape\": \"oval\", \"sides\": 10, \"acrossFlats\": \"{23 in|580 mm}\", \"stretch\": \"{9 in|230 mm}\"}";
            default ->
                "{\"shape\": \"outline\", \"points\": [[\"{-9 in|-230 mm}\", \"{9 in|230 mm}\"], [\"{9 in|230 mm}\", \"{9 in|230 mm}\"], [\"{9 in|230 mm}\", \"{-9 in|-230 mm}\"], [\"{-9 in|-230 mm}\", \"{-9 in|-230 mm}\"]]}";
        };
    }

    public static FormSpec chamber() {
        return FormSpec.object(
                "kiln",
                "Chamber and power",
                null,
                List.of(
                        quantity("height", "height", Kind.LENGTH),
                        quantity("stand.height", "stand height", Kind.LENGTH),
                        quantity("power", "electric power", Kind.POWER),
                        FieldSpec.of("lossFactor", "loss factor", Type.NUMBER, "e.g. 1.25"),
                        quantity("elementRise", "element resistance rise", Kind.SHARE),
                        quantity("leakArea", "leak area", Kind.AREA)));
    }

    public static FormSpec wall() {
        return FormSpec.object(
                "kiln.wall",
                "Wall",
                null,
                List.of(quantity("thickness", "thickness", Kind.LENGTH), loose("brick", "brick", "e.g. ifb-23")));
    }

    public static FormSpec slab(String which) {
        return FormSpec.object(
                "kiln." + which,
                which.equals("floor") ? "Floor" : "Lid",
                null,
                List.of(
                        quantity("thickness", "thickness", Kind.LENGTH), loose("brick", "brick", "e.g. ifb-23"),
                        quantity("overhang", "beyond the wall's outer face", Kind.LENGTH), yes("pan", "metal pan")),
                FormSpec.object(
                        "joints",
                        "Brick joints",
                        "{\"brickLength\": \"{9 in|230 mm}\", \"row\": \"{4 1/2 in|115 mm}\", \"bond\": \"half\", \"turn\": \"0 deg\", \"offset\": [\"{0 in|0 mm}\", \"{0 in|0 mm}\"]}",
                        List.of(
                                quantity("brickLength", "brick length", Kind.LENGTH),
                                quantity("row", "row", Kind.LENGTH),
                                word("bond", "bond", Bond.class),
                                quantity("turn", "turn", Kind.ANGLE),
                                FieldSpec.of("offset", "a crossing", Type.PLACE, ""))));
    }

    public static FormSpec elements() {
        return FormSpec.list(
                "kiln.elements",
                "Elements",
                "{\"name\": \"{name}\", \"on\": \"wall\", \"height\": \"{3 in|75 mm}\", \"groove\": {\"height\": \"{5/8 in|16 mm}\", \"depth\": \"{3/4 in|19 mm}\"}, \"coil\": \"{1/2 in|12 mm}\"}",
                List.of(
                        text("name", "name"),
                        word("on", "in the", On.class),
                        quantity("height", "height", Kind.LENGTH),
                        FieldSpec.of("panels", "panels", Type.WHOLES, "all, or 1, 2, 3"),
                        FieldSpec.of("path", "path", Type.PLACES, "x, y a line"),
                        quantity("coil", "coil", Kind.LENGTH)),
                FormSpec.object(
                        "groove",
                        "Groove",
                        "{\"depth\": \"{3/4 in|19 mm}\"}",
                        List.of(
                                quantity("height", "height", Kind.LENGTH),
                                quantity("width", "width", Kind.LENGTH),
                                quantity("depth", "depth", Kind.LENGTH),
                                quantity("slope", "slope", Kind.ANGLE))),
                FormSpec.object(
                        "tails",
                        "Tails",
                        "{\"panel\": 1, \"at\": [\"{0 in|0 mm}\", \"{height}\"], \"diameter\": \"{1/2 in|12 mm}\"}",
                        List.of(
                                FieldSpec.of("panel", "panel", Type.WHOLE, "e.g. 1"),
                                place("place"),
                                quantity("diameter", "hole", Kind.LENGTH))));
    }

    public static FormSpec fittings() {
        return FormSpec.list(
                "kiln.fittings",
                "Fittings",
                "{\"name\": \"{name}\", \"kind\": \"leg\", \"on\": \"floor\", \"at\": [\"{0 in|0 mm}\", \"{-6 in|-150 mm}\"], \"diameter\": \"{2 in|50 mm}\"}",
                List.of(
                        text("name", "name"),
                        word("kind", "kind", FittingKind.class),
                        word("on", "on the", On.class),
                        FieldSpec.of("panel", "panel", Type.WHOLE, "e.g. 3"),
                        place("place"),
                        quantity("diameter", "diameter", Kind.LENGTH),
                        quantity("size[0]", "width", Kind.LENGTH),
                        quantity("size[1]", "depth", Kind.LENGTH),
                        quantity("turn", "turn", Kind.ANGLE),
                        FieldSpec.of("path", "path", Type.PLACES, "x, y a line"),
                        quantity("standoff", "stand-off", Kind.LENGTH),
                        quantity("reach", "reach", Kind.LENGTH),
                        quantity("clear", "own clearance", Kind.LENGTH),
                        loose("type", "type", "e.g. K"),
                        loose("class", "class", "standard or special")));
    }

    public static FormSpec shelves() {
        return FormSpec.list(
                "shelves",
                "Shelves",
                "{\"name\": \"{name}\", \"shape\": \"round\", \"diameter\": \"{7 in|180 mm}\", \"height\": \"{3 in|75 mm}\", \"thickness\": \"{5/8 in|16 mm}\", \"at\": [\"{0 in|0 mm}\", \"{0 in|0 mm}\"]}",
                List.of(
                        text("name", "name"),
                        word("shape", "shape", ShelfShape.class),
                        quantity("diameter", "diameter", Kind.LENGTH),
                        FieldSpec.of("sides", "sides", Type.WHOLE, "e.g. 8"),
                        quantity("acrossFlats", "across flats", Kind.LENGTH),
                        quantity("width", "width", Kind.LENGTH),
                        quantity("depth", "depth", Kind.LENGTH),
                        quantity("turn", "turn", Kind.ANGLE),
                        quantity("height", "height", Kind.LENGTH),
                        quantity("thickness", "thickness", Kind.LENGTH),
                        place("centre"),
                        FieldSpec.of("posts", "posts", Type.PLACES, "x, y or r {6 in|150 mm}, 90 deg"),
                        quantity("postSize", "post size", Kind.LENGTH)));
    }
}
