package portwright.app.doc;

import java.util.List;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Fields that decide which other fields there are: changing one brings the others along, so that the design stays readable. */
final class Switches {
    private Switches() {}

    static DesignText put(DesignText text, String base, FieldSpec spec, String typed) {
        String path = base.isEmpty() ? spec.key() : base + "." + spec.key();
        String t = typed.strip();
        if (base.equals("kiln.plan")
                && spec.key().equals("shape")
                && !t.equals(text.get(path).orElse(""))) {
            return text.set(
                    base,
                    Templates.fill(text, FormSpec.object("kiln.plan", "", KilnCatalog.planTemplate(t), List.of())));
        }
        if (spec.key().equals("name") && Parts.LISTS.contains(Parts.listOf(base))) {
            return Moves.rename(text, base, t);
        }
        if (base.startsWith("limits")) {
            return limit(text, base, spec, path, typed);
        }
        DesignText out = FieldCodec.put(text, spec, path, typed);
        if (spec.key().equals("on") && base.startsWith("kiln.elements")) {
            return element(out, base, t);
        }
        if (spec.key().equals("height") && base.matches("kiln\\.elements\\[\\d+\\]")) {
            return tails(text, out, base);
        }
        if (spec.key().equals("on")) {
            return t.equals("wall")
                    ? out.has(base + ".panel") ? out : out.set(base + ".panel", "1")
                    : out.remove(base + ".panel");
        }
        if (spec.key().equals("kind") && base.startsWith("kiln.fittings") && !t.equals("thermocouple")) {
            return out.remove(base + ".type").remove(base + ".class");
        }
        if (spec.key().equals("shape") && base.startsWith("shelves")) {
            return shelf(out, base, t);
        }
        if (base.startsWith("burners") && !t.isEmpty()) {
            if (spec.key().equals("heat")) {
                return out.remove(base + ".jet").remove(base + ".heatGross");
            }
            if (spec.key().equals("heatGross")) {
                return out.remove(base + ".jet").remove(base + ".heat");
            }
            if (spec.key().equals("jet")) {
                return out.remove(base + ".heat").remove(base + ".heatGross");
            }
        }
        if (base.startsWith("firing.steps") && !t.isEmpty()) {
            if (spec.key().equals("hold")) {
                return out.remove(base + ".to").remove(base + ".rate");
            }
            if (spec.key().equals("to")) {
                DesignText rise = out.remove(base + ".hold");
                return rise.has(base + ".rate") ? rise : rise.setText(base + ".rate", "full");
            }
        }
        return out;
    }

    /** A rule's single limit becomes an object when a second one joins it; empty objects go. */
    private static DesignText limit(DesignText text, String base, FieldSpec spec, String path, String typed) {
        DesignText t = text;
        if (!base.equals("limits") && t.get(base).isPresent()) {
            String main = LimitTable.load()
                    .main(base.substring("limits.".length()))
                    .map(r -> r.name())
                    .orElse("limit");
            t = t.set(base, "{" + DesignText.text(main) + ": " + t.getJson(base).orElseThrow() + "}");
        }
        t = FieldCodec.put(t, spec, path, typed);
        if (!base.equals("limits") && t.has(base) && t.size(base) == 0) {
            t = t.remove(base);
        }
        return t.has("limits") && t.size("limits") == 0 ? t.remove("limits") : t;
    }

    private static DesignText element(DesignText t, String base, String on) {
        if (on.equals("wall")) {
            return t.remove(base + ".path").remove(base + ".groove.width");
        }
        return t.remove(base + ".height")
                .remove(base + ".panels")
                .remove(base + ".groove.height")
                .remove(base + ".groove.slope");
    }

    /** The tails of a wall element go up and down with it. */
    private static DesignText tails(DesignText was, DesignText is, String base) {
        String height = base + ".height";
        String up = base + ".tails.at[1]";
        String from = was.get(height).orElse("");
        String to = is.get(height).orElse("");
        String tail = is.get(up).orElse("");
        if (tail.equals(from)) {
            return to.isEmpty() || tail.isEmpty() ? is : is.setText(up, to);
        }
        try {
            double mm = mm(tail) + mm(to) - mm(from);
            return is.setText(up, Lengths.typed(mm, Moves.units(is)));
        } catch (QuantityException notBothKnown) {
            return is;
        }
    }

    private static double mm(String length) throws QuantityException {
        return Quantity.parse(length, Kind.LENGTH).mm();
    }

    private static DesignText shelf(DesignText t, String base, String shape) {
        String wide = t.get(base + ".diameter")
                .or(() -> t.get(base + ".acrossFlats"))
                .or(() -> t.get(base + ".width"))
                .orElse(null);
        DesignText s = t;
        for (String key : List.of("diameter", "sides", "acrossFlats", "width", "depth")) {
            s = s.remove(base + "." + key);
        }
        if (wide == null) {
            return s;
        }
        return switch (shape) {
            case "round" -> s.setText(base + ".diameter", wide);
            case "half" -> {
                DesignText h = s.setText(base + ".diameter", wide);
                yield h.has(base + ".turn") ? h : h.setText(base + ".turn", "0 deg");
            }
            case "polygon" -> s.set(base + ".sides", "8").setText(base + ".acrossFlats", wide);
            case "rectangle" -> s.setText(base + ".width", wide).setText(base + ".depth", wide);
            default -> s;
        };
    }
}
