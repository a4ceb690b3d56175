package portwright.app.doc;

import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.form.RuleWords;

/** Why no template leaves the window, in words short enough to stand beside its button. */
public final class PaperHold {
    private PaperHold() {}

    /** The first stop for drilling, its part and where it is mended; empty where no such stop stands. */
    public static String why(Document doc) {
        long stops = doc.result().stops(Forbids.DRILLING);
        return doc.result().findings().stream()
                .filter(f -> f.severity() == Severity.STOP && f.forbids() == Forbids.DRILLING)
                .findFirst()
                .map(f -> words(f, stops))
                .orElse("");
    }

    /** Why no card leaves, empty for null: how many rows of the list it waits for; in the words of the refusal where the list has none. */
    public static String card(String refused, Document doc) {
        if (refused == null) {
            return "";
        }
        long n = Withheld.of(doc).stream()
                .filter(r -> r.what() == Withheld.What.CARD
                        || r.what() == Withheld.What.TEMPLATE && r.path().equals("kiln.elements"))
                .count();
        return n == 0
                ? "Save card waits: " + refused.replaceFirst("^No card: ", "")
                : "Save card waits for " + n + (n == 1 ? " thing: see" : " things: see") + " the list of this step.";
    }

    private static String words(Finding f, long stops) {
        Step at = Step.of(f.rule());
        String part = f.parts().isEmpty() ? "" : " (" + f.parts().get(0) + ")";
        String more = stops == 1 ? "" : ", and " + (stops - 1) + (stops == 2 ? " more stop" : " more stops");
        return "Save PDF waits for a stop: " + RuleWords.head(f.rule()) + part + more + ". Mend it in step "
                + (at.ordinal() + 1) + " " + at.word() + ".";
    }
}
