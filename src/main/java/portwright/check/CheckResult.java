package portwright.check;

import java.util.List;
import portwright.review.Assumed;
import portwright.review.Figures;

/** What the rule book says of a design: verdicts, findings worst first, what was not checked, what was assumed, figures. */
public record CheckResult(
        String title,
        Verdict drilling,
        Verdict lighting,
        List<Finding> findings,
        List<NotChecked> notChecked,
        List<Assumed> assumed,
        Figures figures) {
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

    /** Number of cautions that count for a purpose. */
    public long cautions(Forbids purpose) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.CAUTION && f.bearsOn(purpose))
                .count();
    }
}
