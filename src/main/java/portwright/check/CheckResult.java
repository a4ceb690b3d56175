package portwright.check;

import java.util.List;
import portwright.review.Assumed;
import portwright.review.Figures;

/** What the rule book says of a design: verdicts, findings worst first, what was not checked, what was assumed, figures, the design's own limits. */
public record CheckResult(
        String title,
        Verdict drilling,
        Verdict lighting,
        List<Finding> findings,
        List<NotChecked> notChecked,
        List<Assumed> assumed,
        Figures figures,
        List<OwnLimit> ownLimits) {
    /** A result by the rule book's own limits. */
    public CheckResult(
            String title,
            Verdict drilling,
            Verdict lighting,
            List<Finding> findings,
            List<NotChecked> notChecked,
            List<Assumed> assumed,
            Figures figures) {
        this(title, drilling, lighting, findings, notChecked, assumed, figures, List.of());
    }

    /** Number of findings of a severity. */
    public long count(Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }

    /** Number of stops that forbid a purpose. */
    public long stops(Forbids purpose) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.STOP && f.forbids() == purpose)
                .count();
    }

    /** Number of rules that could forbid a purpose and were not wholly checked. */
    public long unchecked(Forbids purpose) {
        return notChecked.stream()
                .filter(n -> n.forbids() == purpose)
                .map(NotChecked::rule)
                .distinct()
                .count();
    }

    /** Number of rules that were not wholly checked, each once, however much of it lacks. */
    public long unchecked() {
        return notChecked.stream().map(NotChecked::rule).distinct().count();
    }

    /** Whether what is not known may take more of a slab than the weakest sections count. */
    public boolean openSections() {
        return notChecked.stream().anyMatch(n -> n.rule().equals("weakest-section"));
    }

    /** Number of cautions that count for a purpose. */
    public long cautions(Forbids purpose) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.CAUTION && f.bearsOn(purpose))
                .count();
    }
}
