package portwright.app.doc;

import java.util.function.Supplier;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.model.On;

/** Words that stand under a field as long as it is shown: what follows from it, or what it still lacks. */
public final class UnderField {
    private UnderField() {}

    /** The words, asked for anew with every change; null for a field without any. */
    public static Supplier<String> of(Document doc, String at, FieldSpec f) {
        if (f.key().equals("overhang")) {
            On on = at.equals("kiln.lid") ? On.LID : On.FLOOR;
            return () -> SlabWords.of(doc, on);
        }
        if (f.key().equals("at") && at.startsWith("kiln.fittings")) {
            return () -> fitting(doc.text(), at);
        }
        if (f.key().equals("height") && at.matches("kiln\\.elements\\[\\d+\\]")) {
            return () -> doc.text().has(at + ".height")
                    ? ""
                    : "Not measured yet: until it is typed the board does not show the element, and no clearance to it is checked.";
        }
        if (f.key().equals("path") && at.matches("kiln\\.elements\\[\\d+\\]")) {
            return () -> doc.text().has(at + ".path")
                    ? ""
                    : "Not measured yet: until its points are typed the board does not show the element, and no clearance to it is checked.";
        }
        if (f.key().equals("at") && at.endsWith(".tails")) {
            return () -> tails(doc.text(), at);
        }
        if (f.key().equals("at") && at.startsWith("shelves")) {
            return () -> shelf(doc.text(), at);
        }
        return f.key().equals("depth") && at.endsWith(".groove") ? () -> groove(doc.text(), at) : null;
    }

    private static String tails(DesignText t, String at) {
        return t.has(at + ".panel") && t.has(at + ".at") && t.has(at + ".diameter")
                ? ""
                : "Not measured yet: until panel, place and hole are typed the board does not show the tails, and no clearance to them is checked.";
    }

    private static String shelf(DesignText t, String at) {
        boolean sized = switch (t.get(at + ".shape").orElse("")) {
            case "polygon" -> t.has(at + ".sides") && t.has(at + ".acrossFlats");
            case "rectangle" -> t.has(at + ".width") && t.has(at + ".depth");
            case "half" -> t.has(at + ".diameter") && t.has(at + ".turn");
            default -> t.has(at + ".diameter");
        };
        return sized && t.has(at + ".height")
                ? ""
                : "Not measured yet: until its size and height are typed the board does not show the shelf, and nothing about it is checked.";
    }

    private static String fitting(DesignText t, String at) {
        boolean placed = t.has(at + ".at");
        boolean sized = t.has(at + ".diameter") || t.has(at + ".size");
        if (t.has(at + ".path") || placed && sized) {
            return "";
        }
        String lacks = placed
                ? "its diameter, or its width and depth, is typed"
                : sized ? "its place is typed" : "its place is typed, and its diameter, or its width and depth,";
        return "Not measured yet: until " + lacks + " the board does not show it, and no room to it is checked.";
    }

    private static String groove(DesignText t, String at) {
        boolean wall = t.get(at.replaceAll("\\.groove$", ".on")).orElse("wall").equals("wall");
        String across = wall ? "height" : "width";
        boolean lacks = !t.has(at + "." + across) || !t.has(at + ".depth");
        return lacks
                ? "Until " + across + " and depth are typed the board shows "
                        + (wall ? "a dashed line for the element" : "no groove")
                        + ", and no clearance to it is checked."
                : "";
    }
}
