package portwright.app.doc;

import portwright.file.DesignText;

/** Doubling of parts that have no place on a plan: an element goes on above the others. */
public final class Copies {
    private static final String ELEMENTS = "kiln.elements";

    private Copies() {}

    /** Doubles the chosen part, which has no place, and chooses the copy; answers why that cannot be, empty when it is done. */
    public static String unplaced(Document doc, boolean twice) {
        String path = doc.selected() == null ? null : Parts.path(doc.text(), doc.selected());
        String why = refusal(doc.text(), path, twice);
        if (why.isEmpty()) {
            String name = nextName(doc.text(), doc.selected());
            if (doc.edit("duplicate " + doc.selected(), t -> element(t, path, name))
                    .isEmpty()) {
                doc.select(name);
            }
        }
        return why;
    }

    /**
     * Why a part without a place on the board cannot be doubled or mirrored, and what to do instead; empty when {@link #element} doubles it.
     *
     * @param path of the chosen part; null when none is chosen
     * @param twice whether it is to be doubled, not mirrored
     */
    static String refusal(DesignText text, String path, boolean twice) {
        String verb = twice ? "duplicate" : "mirror";
        if (path == null) {
            return "Choose a part first, then " + verb + " it.";
        }
        String name = text.get(path + ".name").orElse("");
        if (path.startsWith("kiln.fittings") && !text.has(path + ".at")) {
            return name + " has no place yet. Type it, then " + verb + " it.";
        }
        boolean element = path.startsWith(ELEMENTS);
        if (!element) {
            return "Only ports, fittings" + (twice ? " and elements" : "") + " can be "
                    + (twice ? "duplicated." : "mirrored.")
                    + (twice ? " Use Add in its list." : "");
        }
        if (!twice) {
            return "An element is not mirrored.";
        }
        if (!text.get(path + ".on").orElse("").equals("wall")) {
            return name + " lies in the " + text.get(path + ".on").orElse("slab")
                    + ": add the next and type its points.";
        }
        return Templates.above(text).isEmpty()
                ? "Where the element after " + name
                        + " lies is not known: it takes the heights of the last two, and room"
                        + " above them. Use Add and type its height."
                : "";
    }

    /** The part's name with the next free letter. */
    public static String nextName(DesignText text, String name) {
        String stem = name.replaceAll(" ?([A-Z]|\\d+)$", "");
        return Templates.free(text, stem.isEmpty() ? "part" : stem);
    }

    /** A copy of an element in the wall at the end of the list, one spacing above the highest, without the tails of the other. */
    static DesignText element(DesignText text, String path, String name) {
        DesignText t = text.append(ELEMENTS, text.getJson(path).orElseThrow());
        String made = ELEMENTS + "[" + text.size(ELEMENTS) + "]";
        t = t.setText(made + ".name", name).setText(made + ".height", Templates.above(text));
        return t.has(made + ".tails") ? t.remove(made + ".tails") : t;
    }
}
