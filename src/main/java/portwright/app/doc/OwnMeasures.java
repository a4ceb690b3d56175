package portwright.app.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.file.DesignText;
import portwright.file.Problem;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.model.UnitSystem;

/**
 * The measures of a kiln that is none of the starters, typed one by one. What is wrong is what the file's reader says of it; nothing that was
 * not typed gets into the design.
 */
public final class OwnMeasures {
    /** Plans that a form of plain fields can ask for; corners one by one are typed in the Kiln step. */
    public static final List<String> SHAPES = List.of("polygon", "rectangle", "oval");

    private static final String PLAN = "kiln.plan";
    private static final String SHAPE = "shape";
    private static final String TURN = "turn";
    private static final String POWER = "kiln.power";

    private final Map<String, String> typed = new LinkedHashMap<>();
    private String shape = SHAPES.get(0);
    private UnitSystem units;

    /**
     * One measure that is asked for.
     *
     * @param path in the design
     * @param label in words
     * @param needed whether no design goes without it
     */
    public record Ask(String path, String label, FieldSpec spec, boolean needed) {}

    /**
     * What came of all measures together.
     *
     * @param text the design; null where something is missing or wrong
     * @param wrong what is wrong, by path; empty path for what is wrong with none of them alone
     */
    public record Made(DesignText text, Map<String, String> wrong) {}

    /** @param units in which figures are shown and bare numbers are taken */
    public OwnMeasures(UnitSystem units) {
        this.units = units;
    }

    public String shape() {
        return shape;
    }

    /** Chooses the plan; what was typed for another one is kept for the way back. */
    public void shape(String word) {
        if (!SHAPES.contains(word)) {
            throw new IllegalArgumentException("no plan of plain measures: " + word);
        }
        shape = word;
    }

    public UnitSystem units() {
        return units;
    }

    public void units(UnitSystem system) {
        units = system;
    }

    /** What is asked for, in reading order. */
    public List<Ask> asks() {
        List<Ask> out = new ArrayList<>();
        List<String> plan = KilnCatalog.planFields(shape);
        for (FieldSpec f : KilnCatalog.plan().fields()) {
            if (plan.contains(f.key()) && !f.key().equals(SHAPE) && !f.key().equals(TURN)) {
                out.add(new Ask(PLAN + "." + f.key(), f.label() + inside(f), f, true));
            }
        }
        FormSpec chamber = KilnCatalog.chamber();
        out.add(ask(chamber, "height", "height inside", true));
        out.add(ask(KilnCatalog.wall(), "thickness", "wall thickness", true));
        out.add(ask(KilnCatalog.slab("floor"), "thickness", "floor thickness", true));
        out.add(ask(KilnCatalog.slab("lid"), "thickness", "lid thickness", true));
        out.add(ask(chamber, "power", "electric power", false));
        return out;
    }

    private static String inside(FieldSpec f) {
        return f.type() == FieldSpec.Type.QUANTITY && !f.key().equals("stretch") ? " inside" : "";
    }

    private static Ask ask(FormSpec form, String key, String label, boolean needed) {
        FieldSpec spec = form.fields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
        return new Ask(form.path() + "." + key, label, spec, needed);
    }

    /** The wanted form, for an empty field. */
    public String hint(Ask ask) {
        return Templates.inSystem(text(""), ask.spec().hint());
    }

    /** What stands in a field. */
    public String typed(Ask ask) {
        return typed.getOrDefault(ask.path(), "");
    }

    /** What is typed in the other system; empty while it cannot be read. */
    public String aside(Ask ask) {
        return FieldCodec.aside(ask.spec(), typed(ask));
    }

    /** Takes what was typed, a bare length in the window's unit; answers what is wrong with it by itself, else null. */
    public String put(Ask ask, String words) {
        typed.put(
                ask.path(),
                ShortForms.full(text(""), ask.spec(), ask.path(), words).strip());
        return typed(ask).isEmpty() ? null : wrong(text("kiln").read().problems(), ask);
    }

    private static String wrong(List<Problem> problems, Ask ask) {
        return problems.stream()
                .filter(p -> p.path().equals(ask.path()))
                .map(Problem::message)
                .findFirst()
                .orElse(null);
    }

    /** The design of all measures: no port, elements and fittings unknown, the rest as typed. */
    public Made make(String title) {
        Map<String, String> wrong = new LinkedHashMap<>();
        DesignText text = text(title.strip());
        List<Problem> problems = text.read().problems();
        for (Ask ask : asks()) {
            String why = typed(ask).isEmpty()
                    ? ask.needed() ? "Missing. Measure it, then write it here, " + hint(ask) + "." : null
                    : wrong(problems, ask);
            if (why != null) {
                wrong.put(ask.path(), why);
            }
        }
        if (wrong.isEmpty() && !problems.isEmpty()) {
            wrong.put("", problems.get(0).path() + ": " + problems.get(0).message());
        }
        return new Made(wrong.isEmpty() ? text : null, wrong);
    }

    private DesignText text(String title) {
        DesignText t = DesignText.read("{\"portwright\": 1, \"title\": " + DesignText.text(title) + ", \"units\": \""
                        + units.id() + "\", \"kiln\": {\"plan\": {\"shape\": \"" + shape + "\"}}}")
                .document();
        for (Ask ask : asks()) {
            t = typed(ask).isEmpty() ? t : FieldCodec.put(t, ask.spec(), ask.path(), typed(ask));
        }
        return t.set("ports", "[]");
    }

    /** What a field is for, where its name does not say it; else empty. */
    public String remark(Ask ask) {
        return ask.path().equals(POWER) ? "As on its plate; volts times amps gives watts. It may stay empty." : "";
    }
}
