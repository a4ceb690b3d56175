package portwright.app.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.sheet.UnknownElements;

/** What template and firing card wait for, a row for each thing that somebody has to mend or fill in, each once. The tile of the Paper step counts these rows. */
public final class Withheld {
    /** What is held back by a row. */
    public enum What {
        TEMPLATE("The template waits for"),
        CARD("The firing card waits for"),
        DRILLING("Drilling is not proven without");

        private final String head;

        What(String head) {
            this.head = head;
        }

        /** What stands over its rows. */
        public String head() {
            return head;
        }
    }

    /**
     * One thing.
     *
     * @param words its name in the forms, or the heading of the stop
     * @param why the rules that ask for it
     * @param path the field that it leads to; empty where there is none
     * @param rule the rule that leads to a step where no field does
     * @param stop the finding that it leads to; null for a field
     */
    public record Row(What what, String words, String why, String path, String rule, Finding stop) {}

    private Withheld() {}

    /** All rows: of the template, of the card, of what is not proven for the drill; stops before fields. */
    public static List<Row> of(Document doc) {
        List<Row> out = new ArrayList<>();
        Map<String, Row> fields = new LinkedHashMap<>();
        stops(out, doc, What.TEMPLATE, Forbids.DRILLING);
        if (doc.design().kiln().elements() == null) {
            put(fields, What.TEMPLATE, "kiln.elements", "element-groove", "say of them, or that there are none");
        }
        UnknownElements.fields(doc.result())
                .forEach(f -> put(fields, What.TEMPLATE, f, "element-clearance", RuleWords.head("element-clearance")));
        if (doc.design().ports().isEmpty()) {
            put(fields, What.TEMPLATE, "ports", "port-overlap", "a template shows holes");
        }
        out.addAll(fields.values());
        stops(out, doc, What.CARD, Forbids.LIGHTING);
        List<Row> card = fields(fields, doc, What.CARD, n -> n.forbids() == Forbids.LIGHTING);
        out.addAll(card);
        out.addAll(fields(fields, doc, What.DRILLING, n -> n.forbids() == Forbids.DRILLING));
        return out;
    }

    private static void stops(List<Row> out, Document doc, What what, Forbids forbids) {
        doc.result().findings().stream()
                .filter(f -> f.severity() == Severity.STOP && f.forbids() == forbids)
                .forEach(f -> out.add(new Row(
                        what,
                        RuleWords.head(f.rule()) + (f.parts().isEmpty() ? "" : ": " + String.join(", ", f.parts())),
                        f.message(),
                        "",
                        f.rule(),
                        f)));
    }

    /** Fields that rules lack and no earlier row asks for. */
    private static List<Row> fields(Map<String, Row> known, Document doc, What what, Predicate<NotChecked> which) {
        List<String> before = List.copyOf(known.keySet());
        for (NotChecked n : doc.result().notChecked()) {
            if (!which.test(n)) {
                continue;
            }
            if (!n.cause().isEmpty() || n.needs().isEmpty()) {
                String path = n.needs().isEmpty() ? "" : n.needs().get(0);
                known.putIfAbsent(
                        n.rule() + path,
                        new Row(what, FieldNames.lacking(n), RuleWords.head(n.rule()), path, n.rule(), null));
                continue;
            }
            n.needs().forEach(need -> put(known, what, need, n.rule(), RuleWords.head(n.rule())));
        }
        return known.entrySet().stream()
                .filter(e -> !before.contains(e.getKey()))
                .map(Map.Entry::getValue)
                .sorted((a, b) -> Step.ofField(a.path(), a.rule()).compareTo(Step.ofField(b.path(), b.rule())))
                .toList();
    }

    private static void put(Map<String, Row> rows, What what, String need, String rule, String why) {
        int end = need.indexOf(" (");
        String path = end < 0 ? need : need.substring(0, end);
        Row old = rows.get(path);
        rows.put(
                path,
                old == null
                        ? new Row(what, FieldNames.of(need), why, path, rule, null)
                        : new Row(
                                old.what(),
                                old.words(),
                                old.why().contains(why) ? old.why() : old.why() + "; " + why,
                                path,
                                old.rule(),
                                null));
    }

    /** Fields of a step that some rule lacks, whichever step shows that rule. */
    public static List<Row> missing(Document doc, Step step) {
        Map<String, Row> all = new LinkedHashMap<>();
        return fields(all, doc, What.CARD, n -> n.cause().isEmpty()).stream()
                .filter(r -> !r.path().isEmpty() && Step.ofField(r.path(), r.rule()) == step)
                .toList();
    }

    /** How many rows are stops. */
    static int stops(List<Row> rows) {
        return (int) rows.stream().filter(r -> r.stop() != null).count();
    }
}
