package portwright.app.doc;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.file.DesignText;
import portwright.form.FormSpec;
import portwright.model.UnitSystem;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Fresh parts for the forms: fills the blanks of a template. */
public final class Templates {
    private static final Pattern UNIT = Pattern.compile("\\{([^{}|]*)\\|([^{}|]*)\\}");

    private Templates() {}

    /** The template with lengths of the document's system and a name that is still free. */
    public static String fill(DesignText text, FormSpec form) {
        String json = inSystem(text, form.template());
        String stem = switch (form.path()) {
            case "kiln.elements" -> "element";
            case "kiln.fittings" -> "fitting";
            case "shelves" -> "shelf";
            case "ports" -> "inlet";
            case "burners" -> "burner";
            default -> "part";
        };
        return json.replace("{name}", free(text, stem)).replace("{inlet}", freeInlet(text));
    }

    /** A list with a fresh part at its end, with no measure of another. One more burner is like the first. A list of fittings that begins is not complete. */
    public static DesignText append(DesignText text, FormSpec form, String list) {
        DesignText fresh = text.append(list, fill(text, form));
        if (list.equals("kiln.fittings") && text.size(list) == 0) {
            return fresh.set("kiln.fittingsComplete", "false");
        }
        return list.equals("burners") && text.size(list) > 0 ? another(text, fresh) : fresh;
    }

    /** One more burner is like the first, under its own port. */
    private static DesignText another(DesignText text, DesignText fresh) {
        String made = "burners[" + text.size("burners") + "]";
        DesignText t = text.append("burners", text.getJson("burners[0]").orElseThrow());
        for (String own : List.of(".name", ".port")) {
            t = t.setText(made + own, fresh.get(made + own).orElseThrow());
        }
        return t;
    }

    /** One more leg is as thick as the first that is typed. */
    private static DesignText asThick(DesignText text, String item) {
        String list = Parts.listOf(item);
        for (int i = 0; i < text.size(list); i++) {
            String other = list + "[" + i + "]";
            if (!other.equals(item)
                    && text.get(other + ".kind").orElse("").equals("leg")
                    && text.has(other + ".diameter")) {
                return text.setText(
                        item + ".diameter", text.get(other + ".diameter").orElseThrow());
            }
        }
        return text;
    }

    /** A fresh fitting as one of a kind, on the part that such a one sits on as a rule, named after it; the text as it is for no kind. */
    public static DesignText ofKind(DesignText text, String item, String kind) {
        if (kind.isEmpty()) {
            return text;
        }
        String on = switch (kind) {
            case "leg", "stand-bar", "other", "crack" -> "floor";
            case "hinge", "handle", "latch", "vent" -> "lid";
            default -> "wall";
        };
        DesignText t = text.setText(item + ".kind", kind).setText(item + ".on", on);
        t = on.equals("wall") ? t.set(item + ".panel", "1") : t;
        t = kind.equals("leg") ? asThick(t, item) : t;
        return t.setText(item + ".name", free(t.setText(item + ".name", ""), kind.replace('-', ' ')));
    }

    /** How far the last two elements lie apart, mm; NaN where they do not both lie in the wall at a height that is known. */
    private static double spacing(DesignText text) {
        int n = text.size("kiln.elements");
        double apart = n < 2
                ? Double.NaN
                : Math.abs(mm(text, "kiln.elements[" + (n - 1) + "].height")
                        - mm(text, "kiln.elements[" + (n - 2) + "].height"));
        return Double.isFinite(apart) && apart > 0 ? apart : Double.NaN;
    }

    /** The height of a fresh element: one spacing above the highest in the wall; empty where that is not known or not in the chamber. */
    static String above(DesignText text) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < text.size("kiln.elements"); i++) {
            highest = Math.max(highest, mm(text, "kiln.elements[" + i + "].height"));
        }
        double next = highest + spacing(text);
        double top = mm(text, "kiln.height");
        return next < (Double.isInfinite(top) ? Double.POSITIVE_INFINITY : top)
                ? Lengths.typed(next, Moves.units(text))
                : "";
    }

    /** A length that is typed there, mm; −∞ where there is none. */
    private static double mm(DesignText text, String path) {
        return text.get(path).map(v -> Quantity.parse(v, Kind.LENGTH).mm()).orElse(Double.NEGATIVE_INFINITY);
    }

    /** Words with every {@code {inch|metric}} written in the document's system. */
    static String inSystem(DesignText text, String words) {
        boolean inch = Moves.units(text) == UnitSystem.INCH;
        Matcher m = UNIT.matcher(words);
        StringBuilder b = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(b, Matcher.quoteReplacement(m.group(inch ? 1 : 2)));
        }
        return m.appendTail(b).toString();
    }

    /** The first inlet without a burner; where each has one, the first. */
    private static String freeInlet(DesignText text) {
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < text.size("burners"); i++) {
            text.get("burners[" + i + "].port").ifPresent(taken::add);
        }
        String first = null;
        for (int i = 0; i < text.size("ports"); i++) {
            if (text.get("ports[" + i + "].role").orElse("").equals("inlet")) {
                String name = text.get("ports[" + i + "].name").orElse("inlet A");
                if (!taken.contains(name)) {
                    return name;
                }
                first = first == null ? name : first;
            }
        }
        return first == null ? "inlet A" : first;
    }

    /** A name of the stem with the next letter that no part has yet. */
    public static String free(DesignText text, String stem) {
        for (int i = 0; i < 200; i++) {
            String name = stem + " " + (i < 26 ? String.valueOf((char) ('A' + i)) : String.valueOf(i + 1));
            if (Parts.path(text, name) == null) {
                return name;
            }
        }
        return stem + " " + System.nanoTime();
    }
}
