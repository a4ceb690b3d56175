package portwright.sheet;

import java.util.List;
import java.util.Optional;
import portwright.drawing.Box;
import portwright.drawing.HoleNote;
import portwright.drawing.PartPainter;
import portwright.drawing.Pen;
import portwright.drawing.Traces;
import portwright.geometry.Circle;
import portwright.geometry.Face;
import portwright.geometry.Panel;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.On;

/** One face of one part with its tiles. */
record View(PartPainter painter, Tiling tiling) {
    static View of(PartPainter painter, Frame frame, SheetOptions options) {
        return new View(
                painter,
                new Tiling(
                        painter.bounds(),
                        painter.rim(),
                        painter.sawCircles(),
                        frame.areaWidth() / options.scaleX(),
                        frame.areaHeight() / options.scaleY(),
                        code(painter.face())));
    }

    /** Part and face in two or three signs, before every name of a sheet and mark; U is mirrored. Trimmed sheets of two parts cannot be mixed up. */
    private static String code(Face face) {
        String part = switch (face.on()) {
            case FLOOR -> "F";
            case LID -> "L";
            case WALL -> "W" + face.panel();
        };
        return part + (face.mirrored() ? "U-" : "-");
    }

    Face face() {
        return painter.face();
    }

    /** What stands before every name of its sheets. */
    String code() {
        return code(face());
    }

    /** Head of its sheets. */
    String title() {
        return switch (face().on()) {
            case FLOOR -> face().hot() ? "FLOOR, HOT FACE: seen from above" : "FLOOR, UNDERSIDE: from below, MIRRORED";
            case LID -> face().hot() ? "LID, HOT FACE: from below, MIRRORED" : "LID, TOP: seen from above";
            case WALL ->
                "WALL " + face().panel() + " (" + panel().side() + ")"
                        + (face().hot() ? ", HOT FACE: seen from inside" : ", OUTSIDE: from outside, MIRRORED");
        };
    }

    /** Name in running text. */
    String words() {
        return switch (face().on()) {
            case FLOOR -> face().hot() ? "floor from above" : "floor from below";
            case LID -> face().hot() ? "lid from below" : "lid from above";
            case WALL -> panel().words() + (face().hot() ? " from inside" : " from outside");
        };
    }

    private Panel panel() {
        return painter.kiln().panel(face().panel());
    }

    /** The lid's hinge is the back; only hinges that are known to sit elsewhere say otherwise. */
    private boolean hingeAtBack() {
        List<Fitting> hinges = Optional.ofNullable(
                        painter.kiln().design().kiln().fittings())
                .orElse(List.of())
                .stream()
                .filter(f -> f.kind() == FittingKind.HINGE)
                .toList();
        return hinges.isEmpty()
                || hinges.stream()
                        .anyMatch(h -> h.on() != On.WALL
                                || h.panel() == null
                                || Math.cos(painter.kiln().panel(h.panel()).bearing()) > 0.5);
    }

    /** The same for one sheet: what a tag says of an edge it says only where that edge lies on the sheet. */
    List<String> sides(int panels, Box sheet) {
        List<String> all = sides(panels);
        if (face().on() != On.WALL || face().hot()) {
            return all;
        }
        Box rim = Box.around(painter.rim());
        return List.of(
                sheet.maxY() >= rim.maxY() ? all.get(0) : "TOP",
                all.get(1),
                sheet.minY() <= rim.minY() ? all.get(2) : "BOTTOM",
                all.get(3));
    }

    /** Words at the picture's top, right, bottom and left. */
    List<String> sides(int panels) {
        if (face().on() == On.WALL) {
            int next = face().panel() % panels + 1;
            int before = (face().panel() + panels - 2) % panels + 1;
            return List.of(
                    face().hot() ? "TOP · lid" : "TOP · " + thick(On.LID) + " below the lid's top",
                    painter.kiln().panel(face().hot() ? next : before).words(),
                    face().hot() ? "BOTTOM · floor" : "BOTTOM · " + thick(On.FLOOR) + " above the floor's underside",
                    painter.kiln().panel(face().hot() ? before : next).words());
        }
        boolean m = face().mirrored();
        return List.of(hingeAtBack() ? "BACK · hinge" : "BACK", m ? "LEFT" : "RIGHT", "FRONT", m ? "RIGHT" : "LEFT");
    }

    private String thick(On slab) {
        return painter.kiln().slabOf(slab).thickness().typed();
    }

    /** Sentences on sheets left out and on holes that a seam cuts. */
    List<String> remarks() {
        List<String> out = new java.util.ArrayList<>();
        List<Tile> blank = tiling.blanks();
        if (!blank.isEmpty()) {
            out.add("Blank sheets of " + words() + " left out: "
                    + String.join(", ", blank.stream().map(Tile::name).toList()) + ".");
        }
        out.addAll(cuts());
        return out;
    }

    /** Sentences on the holes that lie on a sheet, whole or in part; on the outer face with the hole in the metal. */
    List<String> holesOn(Tile tile) {
        List<HoleNote> holes = painter.holes();
        List<Circle> circles = face().hot() ? painter.sawCircles() : painter.cutCircles();
        List<String> out = new java.util.ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            Circle c = circles.get(i);
            String hole = "Hole " + holes.get(i).number();
            Circle sawn = painter.sawCircles().get(i);
            boolean metal = c.radius() > sawn.radius() && (whole(sawn, tile) || !reaches(sawn, tile.window()));
            if (whole(c, tile)) {
                out.add(hole + " lies whole on this sheet.");
            } else if (reaches(c, tile.window())) {
                String other = tiling.printed().stream()
                        .filter(t -> whole(c, t))
                        .min(java.util.Comparator.comparing(t -> !t.kept().contains(c.centre())))
                        .map(t -> " it is whole on " + t.cell() + ".")
                        .orElse(" no sheet holds it whole, so join the sheets before you mark it.");
                out.add("The edge of this sheet cuts " + (metal ? "the metal hole round " : "")
                        + hole.toLowerCase(java.util.Locale.ROOT) + ":" + other);
            }
        }
        return out;
    }

    private static Box around(Circle c) {
        double r = c.radius();
        return new Box(
                c.centre().x() - r,
                c.centre().y() - r,
                c.centre().x() + r,
                c.centre().y() + r);
    }

    private static boolean reaches(Circle c, Box b) {
        double x = Math.max(b.minX(), Math.min(b.maxX(), c.centre().x()));
        double y = Math.max(b.minY(), Math.min(b.maxY(), c.centre().y()));
        return Math.hypot(c.centre().x() - x, c.centre().y() - y) < c.radius();
    }

    private static boolean whole(Circle c, Tile t) {
        return t.window().contains(around(c));
    }

    /** Whether no line of the drawing runs over what is kept of a sheet, as in the middle of a large slab; it is printed all the same, see {@link #bare(Pen)}. */
    boolean bare(Tile tile, Pen sizes) {
        Traces traces = new Traces(sizes, tile.kept());
        painter.lines(traces, tile.kept());
        return traces.none();
    }

    /**
     * Why sheets without any line of the kiln are printed; empty where there are none. Left out, they would leave a gap across which nothing
     * holds the sheets round it: their places would then hang on one more seam each way.
     */
    List<String> bare(Pen sizes) {
        List<String> bare = tiling.printed().stream()
                .filter(t -> bare(t, sizes))
                .map(Tile::name)
                .toList();
        return bare.isEmpty()
                ? List.of()
                : List.of("No line of the kiln lies between the trim lines of " + String.join(", ", bare) + ": join "
                        + (bare.size() == 1 ? "it" : "them")
                        + " all the same, so that the sheets beside keep their places.");
    }

    /** Sentences on holes that a seam cuts. */
    List<String> cuts() {
        List<HoleNote> holes = painter.holes();
        List<Circle> circles = painter.sawCircles();
        List<String> out = new java.util.ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            List<String> seams = tiling.cutsThrough(circles.get(i));
            if (!seams.isEmpty()) {
                out.add("Hole " + holes.get(i).number() + " (" + words() + ") falls on the seam "
                        + String.join(" and ", seams) + ": match the marks there with care.");
            }
        }
        return out;
    }
}
