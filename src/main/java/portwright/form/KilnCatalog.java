package portwright.form;

import static portwright.form.FieldSpec.choice;
import static portwright.form.FieldSpec.loose;
import static portwright.form.FieldSpec.place;
import static portwright.form.FieldSpec.quantity;
import static portwright.form.FieldSpec.text;
import static portwright.form.FieldSpec.word;
import static portwright.form.FieldSpec.yes;

import java.util.List;
import portwright.form.FieldSpec.Type;
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
                        quantity("acrossFlats", "across flats", Kind.LENGTH, "{17 1/2 in|445 mm}"),
                        quantity("stretch", "stretch", Kind.LENGTH, "{9 in|230 mm}"),
                        quantity("width", "width", Kind.LENGTH, "{18 in|450 mm}"),
                        quantity("depth", "depth", Kind.LENGTH, "{18 in|450 mm}"),
                        quantity("turn", "turn", Kind.ANGLE, "0 deg"),
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
                        quantity("height", "height", Kind.LENGTH, "{18 in|450 mm}"),
                        quantity("stand.height", "stand height", Kind.LENGTH, "{8 in|200 mm}"),
                        quantity("power", "electric power", Kind.POWER, "4.8 kW"),
                        FieldSpec.of("lossFactor", "loss factor", Type.NUMBER, "e.g. 1.25"),
                        quantity("elementRise", "element resistance rise", Kind.SHARE, "10 %"),
                        quantity("leakArea", "leak area", Kind.AREA, "{0.8 in2|5 cm2}")));
    }

    public static FormSpec wall() {
        return FormSpec.object(
                "kiln.wall",
                "Wall",
                null,
                List.of(
                        quantity("thickness", "thickness", Kind.LENGTH, "{2 1/2 in|64 mm}"),
                        loose("brick", "brick", "e.g. ifb-23")));
    }

    public static FormSpec slab(String which) {
        return FormSpec.object(
                "kiln." + which,
                which.equals("floor") ? "Floor" : "Lid",
                null,
                List.of(
                        quantity("thickness", "thickness", Kind.LENGTH, "{2 1/2 in|64 mm}"),
                                loose("brick", "brick", "e.g. ifb-23"),
                        quantity("overhang", "beyond the wall's outer face", Kind.LENGTH, "{1/2 in|12 mm}"),
                                yes("pan", "metal pan")),
                FormSpec.object(
                        "joints",
                        "Brick joints",
                        "{}",
                        List.of(
                                quantity("brickLength", "brick length", Kind.LENGTH, "{9 in|230 mm}"),
                                quantity("row", "row", Kind.LENGTH, "{4 1/2 in|115 mm}"),
                                word("bond", "bond", Bond.class),
                                quantity("turn", "turn", Kind.ANGLE, "0 deg"),
                                FieldSpec.of("offset", "a crossing", Type.PLACE, ""))));
    }

    public static FormSpec elements() {
        return FormSpec.list(
                "kiln.elements",
                "Elements",
                "{\"name\": \"{name}\", \"on\": \"wall\"}",
                List.of(
                        text("name", "name"),
                        word("on", "in the", On.class),
                        quantity("height", "height", Kind.LENGTH, "{3 in|75 mm}"),
                        FieldSpec.of("panels", "panels", Type.WHOLES, "all, or 1, 2, 3"),
                        FieldSpec.of("path", "path", Type.PLACES, "x, y a line"),
                        quantity("coil", "coil", Kind.LENGTH, "{1/2 in|12 mm}")),
                FormSpec.object(
                        "groove",
                        "Groove",
                        "{}",
                        List.of(
                                quantity("height", "height", Kind.LENGTH, "{5/8 in|16 mm}"),
                                quantity("width", "width", Kind.LENGTH, "{5/8 in|16 mm}"),
                                quantity("depth", "depth", Kind.LENGTH, "{3/4 in|19 mm}"),
                                quantity("slope", "slope", Kind.ANGLE, "10 deg"))),
                FormSpec.object(
                        "tails",
                        "Tails",
                        "{}",
                        List.of(
                                FieldSpec.of("panel", "panel", Type.WHOLE, "e.g. 1"),
                                place("place"),
                                quantity("diameter", "hole", Kind.LENGTH, "{1/2 in|12 mm}"))));
    }

    public static FormSpec fittings() {
        return FormSpec.list(
                "kiln.fittings",
                "Fittings",
                "{\"name\": \"{name}\", \"kind\": \"leg\", \"on\": \"floor\"}",
                List.of(
                        word("kind", "kind", FittingKind.class),
                        text("name", "name"),
                        word("on", "on the", On.class),
                        FieldSpec.of("panel", "panel", Type.WHOLE, "e.g. 3"),
                        place("place"),
                        quantity("diameter", "diameter", Kind.LENGTH, "{1/2 in|12 mm}"),
                        quantity("size[0]", "width", Kind.LENGTH, "{6 in|150 mm}"),
                        quantity("size[1]", "depth", Kind.LENGTH, "{4 in|100 mm}"),
                        quantity("turn", "turn", Kind.ANGLE, "0 deg"),
                        FieldSpec.of("path", "path", Type.PLACES, "x, y a line"),
                        quantity("standoff", "stand-off", Kind.LENGTH, "{1 in|25 mm}"),
                        quantity("reach", "reach", Kind.LENGTH, "{1 in|25 mm}"),
                        quantity("clear", "own clearance", Kind.LENGTH, "{2 in|50 mm}"),
                        loose("type", "type", "e.g. K"),
                        loose("class", "class", "standard or special")));
    }

    /** What is said of the list of fittings as a whole. */
    public static FormSpec fittingsWhole() {
        return FormSpec.object("kiln", "Fittings", null, List.of(yes("fittingsComplete", "list complete")));
    }

    public static FormSpec shelves() {
        return FormSpec.list(
                "shelves",
                "Shelves",
                "{\"name\": \"{name}\", \"shape\": \"round\"}",
                List.of(
                        text("name", "name"),
                        word("shape", "shape", ShelfShape.class),
                        quantity("diameter", "diameter", Kind.LENGTH, "{15 in|380 mm}"),
                        FieldSpec.of("sides", "sides", Type.WHOLE, "e.g. 8"),
                        quantity("acrossFlats", "across flats", Kind.LENGTH, "{15 in|380 mm}"),
                        quantity("width", "width", Kind.LENGTH, "{16 in|400 mm}"),
                        quantity("depth", "depth", Kind.LENGTH, "{12 in|300 mm}"),
                        quantity("turn", "turn", Kind.ANGLE, "0 deg"),
                        quantity("height", "height", Kind.LENGTH, "{3 in|75 mm}"),
                        quantity("thickness", "thickness", Kind.LENGTH, "{5/8 in|16 mm}"),
                        place("centre"),
                        FieldSpec.of("posts", "posts", Type.PLACES, "x, y or r {6 in|150 mm}, 90 deg"),
                        quantity("postSize", "post size", Kind.LENGTH, "{1 1/2 in|40 mm}")));
    }
}
