package portwright.app.doc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.check.Verdict;

/** Which findings a step shows, and in which order: those of the chosen part first, the worst first. */
public final class FindingOrder {
    private static final Set<Step> AFTER_GEOMETRY = EnumSet.of(Step.GAS, Step.ROOM, Step.FIRING);

    /** Rules that forbid nothing and caution where their input is missing. */
    private static final Set<String> SAY_WHAT_LACKS = Set.of("vent-fan", "thermocouple-range");

    private FindingOrder() {}

    /** Findings of a step; Paper shows all of them. */
    public static List<Finding> of(Document doc, Step step) {
        List<Finding> out = new ArrayList<>(doc.result().findings().stream()
                .filter(f -> step == Step.PAPER || Step.of(f.rule()) == step)
                .toList());
        String chosen = step == Step.PORTS ? doc.selected() : null;
        out.sort(Comparator.<Finding>comparingInt(
                        f -> chosen != null && f.parts().contains(chosen) ? 0 : 1)
                .thenComparing(Finding::severity));
        return out;
    }

    /** Rules of a step that lack input, each once. */
    public static List<NotChecked> open(Document doc, Step step) {
        List<NotChecked> out = new ArrayList<>();
        for (NotChecked n : doc.result().notChecked()) {
            if ((step == Step.PAPER || Step.of(n.rule()) == step)
                    && !said(doc.result(), n.rule())
                    && out.stream().noneMatch(o -> o.rule().equals(n.rule()))) {
                out.add(n);
            }
        }
        return out;
    }

    /** How many things the tiles of the steps show as open, in words; empty for none. */
    static String unchecked(Document doc) {
        int rules = 0;
        int fields = 0;
        for (Step s : Step.values()) {
            if (s != Step.PAPER) {
                StepCount c = count(doc, s);
                rules += c.notChecked();
                fields += c.open() - c.notChecked();
            }
        }
        return rules + fields == 0
                ? ""
                : rules
                        + fields
                        + (fields == 0 ? " not checked" : rules == 0 ? " not filled in" : " not checked or filled in");
    }

    /** Whether the check has ended for the design as it stands, so that a step without findings has none. */
    public static boolean known(Document doc) {
        return !doc.checking() && !doc.waiting() && !doc.stopped() && doc.fault() == null;
    }

    /** Without a hole there is nothing that the Ports step could call clear. */
    private static boolean holeless(Document doc, Step step) {
        return step == Step.PORTS && doc.design().ports().isEmpty();
    }

    /** Whether a finding of the rule says already what it lacks and what it counts in its place. */
    private static boolean said(CheckResult r, String rule) {
        return SAY_WHAT_LACKS.contains(rule)
                && r.findings().stream().anyMatch(f -> f.rule().equals(rule));
    }

    /** What the step's tile shows; a step that has not been checked yet never shows clear. Paper: the rows of {@link Withheld}. */
    public static StepCount count(Document doc, Step step) {
        CheckResult r = doc.result();
        int unread = doc.unread().of(step).size();
        int borrowed = doc.borrowed().count(step, doc.dragging());
        if (step == Step.PAPER) {
            List<Withheld.Row> rows = Withheld.of(doc);
            int stopped = Withheld.stops(rows);
            int open = rows.size() - stopped;
            boolean more = r.drilling() == Verdict.INCOMPLETE || doc.waiting() || doc.stopped();
            return new StepCount(stopped, 0, Math.max(more ? 1 : 0, open), unread, borrowed, 0);
        }
        int stops = 0;
        int cautions = 0;
        for (Finding f : r.findings()) {
            if (Step.of(f.rule()) == step) {
                stops += f.severity() == Severity.STOP ? 1 : 0;
                cautions += f.severity() == Severity.CAUTION ? 1 : 0;
            }
        }
        boolean later = (doc.waiting() || doc.stopped()) && AFTER_GEOMETRY.contains(step);
        return new StepCount(
                stops,
                cautions,
                Math.max(later ? 1 : 0, open(doc, step).size()),
                unread,
                borrowed,
                Math.max(
                        holeless(doc, step) ? 1 : 0, Withheld.missing(doc, step).size()));
    }
}
