package portwright.app.doc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook.Section;

/** Joins the fresh answer of the shapes with the last answer of everything else, while that is being computed anew. */
final class Merge {
    private static final Set<String> SHAPE_RULES =
            Section.GEOMETRY.rules().stream().map(Rule::id).collect(Collectors.toSet());

    private Merge() {}

    static CheckResult of(CheckResult shapes, CheckResult last) {
        List<Finding> findings = new ArrayList<>(shapes.findings());
        last.findings().stream().filter(f -> !SHAPE_RULES.contains(f.rule())).forEach(findings::add);
        findings.sort(Comparator.comparing(Finding::severity));
        List<NotChecked> open = new ArrayList<>(shapes.notChecked());
        last.notChecked().stream().filter(n -> !SHAPE_RULES.contains(n.rule())).forEach(open::add);
        return new CheckResult(
                shapes.title(),
                verdict(Forbids.DRILLING, findings, open, last.drilling()),
                verdict(Forbids.LIGHTING, findings, open, last.lighting()),
                findings,
                open,
                last.assumed(),
                last.figures(),
                shapes.ownLimits());
    }

    private static Verdict verdict(Forbids purpose, List<Finding> findings, List<NotChecked> open, Verdict before) {
        if (findings.stream().anyMatch(f -> f.severity() == Severity.STOP && f.forbids() == purpose)) {
            return Verdict.STOP;
        }
        if (open.stream().anyMatch(n -> n.forbids() == purpose)) {
            return Verdict.INCOMPLETE;
        }
        return before == Verdict.STOP
                ? Verdict.INCOMPLETE
                : findings.stream().anyMatch(f -> f.severity() == Severity.CAUTION && f.forbids() != other(purpose))
                        ? Verdict.CAUTION
                        : Verdict.CLEAR;
    }

    private static Forbids other(Forbids purpose) {
        return purpose == Forbids.DRILLING ? Forbids.LIGHTING : Forbids.DRILLING;
    }
}
