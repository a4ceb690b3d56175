package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.units.Display;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Between what a field shows and what the file holds. */
public final class FieldCodec {
    /** Metric lengths from here on are a room's or a mountain's, mm: feet say more than inches. */
    private static final double LONG_MM = 2000;

    /** Electric power is told in kW everywhere. */
    static final String ELECTRIC = "power";

    private FieldCodec() {}

    /** What the field shows; empty when the file has nothing there. */
    public static String show(DesignText text, FieldSpec f, String path) {
        return switch (f.type()) {
            case PLACE -> place(text, path);
            case PLACES -> {
                List<String> lines = new ArrayList<>();
                for (int i = 0; i < text.size(path); i++) {
                    lines.add(place(text, path + "[" + i + "]"));
                }
                yield String.join("\n", lines);
            }
            case WHOLES -> {
                List<String> items = new ArrayList<>();
                for (int i = 0; i < text.size(path); i++) {
                    items.add(text.get(path + "[" + i + "]").orElse(""));
                }
                yield String.join(", ", items);
            }
            case YES_NO ->
                text.get(path)
                        .map(v -> v.equals("true") ? "yes" : v.equals("false") ? "no" : v)
                        .orElse("");
            case FLAME_SAFETY ->
                text.get(path + ".closes")
                        .orElse(text.get(path)
                                .map(v -> v.equals("true") ? "yes" : "no")
                                .orElse(""));
            default -> text.get(path).orElse("");
        };
    }

    private static String place(DesignText text, String path) {
        if (!text.has(path)) {
            return "";
        }
        if (text.has(path + ".radius")) {
            return "r " + text.get(path + ".radius").orElse("") + ", "
                    + text.get(path + ".bearing").orElse("");
        }
        return text.get(path + "[0]").orElse("") + ", " + text.get(path + "[1]").orElse("");
    }

    /** The text with what was typed; empty takes the field away. */
    public static DesignText put(DesignText text, FieldSpec f, String path, String typed) {
        String t = typed.strip();
        if (t.isEmpty()) {
            return remove(text, path);
        }
        return switch (f.type()) {
            case WHOLE, NUMBER -> text.set(path, t.matches("-?\\d+(\\.\\d+)?") ? t : DesignText.text(t));
            case YES_NO -> text.set(path, t.equals("yes") ? "true" : t.equals("no") ? "false" : DesignText.text(t));
            case PLACE -> text.set(path, placeJson(t));
            case PLACES -> {
                List<String> items = new ArrayList<>();
                t.lines().filter(l -> !l.isBlank()).forEach(l -> items.add(placeJson(l.strip())));
                yield text.set(path, "[" + String.join(", ", items) + "]");
            }
            case WHOLES -> {
                List<String> items = new ArrayList<>();
                for (String s : t.split("[,;\\s]+", 0)) {
                    items.add(s.matches("\\d+") ? s : DesignText.text(s));
                }
                yield t.toLowerCase(Locale.ROOT).equals("all")
                        ? text.remove(path)
                        : text.set(path, "[" + String.join(", ", items) + "]");
            }
            case FLAME_SAFETY ->
                t.equals("yes")
                        ? text.set(path, "true")
                        : t.equals("no")
                                ? text.set(path, "false")
                                : text.set(path, "{\"closes\": " + DesignText.text(t) + "}");
            default -> putText(text, path, t);
        };
    }

    private static DesignText putText(DesignText text, String path, String t) {
        if (path.endsWith("[0]") || path.endsWith("[1]")) {
            String list = path.substring(0, path.length() - 3);
            if (!text.has(list)) {
                return text.set(list, "[" + DesignText.text(t) + ", " + DesignText.text(t) + "]");
            }
        }
        return text.setText(path, t);
    }

    private static DesignText remove(DesignText text, String path) {
        if (path.endsWith("[0]") || path.endsWith("[1]")) {
            return text.remove(path.substring(0, path.length() - 3));
        }
        return text.remove(path);
    }

    /** JSON of a point written as {@code 4 in, 2 in} or {@code r 4 in, 90 deg}. */
    public static String placeJson(String typed) {
        int cut = typed.indexOf(',');
        String a = (cut < 0 ? typed : typed.substring(0, cut)).strip();
        String b = cut < 0 ? "" : typed.substring(cut + 1).strip();
        if (a.startsWith("r ")) {
            return "{\"radius\": " + DesignText.text(a.substring(2).strip()) + ", \"bearing\": " + DesignText.text(b)
                    + "}";
        }
        return "[" + DesignText.text(a) + ", " + DesignText.text(b) + "]";
    }

    /** The quantity in the other system, for the field's right end; empty for anything else. */
    public static String aside(FieldSpec f, String typed) {
        boolean electric = f.kind() == Kind.POWER && f.key().equals(ELECTRIC);
        if (f.type() != FieldSpec.Type.QUANTITY || electric || typed.isBlank()) {
            return "";
        }
        try {
            Quantity q = Quantity.parse(typed.strip(), f.kind());
            boolean room = f.kind() == Kind.LENGTH && !Display.inch(q) && Math.abs(q.mm()) >= LONG_MM;
            String other = room ? Display.in(Kind.LENGTH, q.base(), "ft") : Display.other(q);
            return other == null || other.equals(typed.strip()) ? "" : other.replace("-", "−");
        } catch (QuantityException e) {
            return "";
        }
    }
}
