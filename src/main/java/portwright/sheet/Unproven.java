package portwright.sheet;

import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.Verdict;
import portwright.check.rules.Unknowns;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.report.VerdictLine;

/** What every paper to drill from says where rules against drilling could not be checked. */
final class Unproven {
    /** On sheets with little room. */
    static final String SHORT = "not all checked: see sheet 1";

    private Unproven() {}

    static boolean drilling(CheckResult r) {
        return r.drilling() == Verdict.INCOMPLETE;
    }

    /** Which rules against drilling were not checked, and what to state for them; empty where the verdict is another. */
    static String which(CheckResult r) {
        String words = !drilling(r)
                ? ""
                : FieldNames.inWords(RuleWords.inWords(Unknowns.words(r.notChecked().stream()
                        .filter(n -> n.forbids() == Forbids.DRILLING)
                        .toList())));
        return words.isEmpty() ? "" : "N" + words.substring(1) + ".";
    }

    /** Verdict and what was not checked in one breath; empty where the verdict is another. */
    static String sentence(CheckResult r) {
        return drilling(r) ? (VerdictLine.drilling(r) + " " + which(r)).strip() : "";
    }
}
