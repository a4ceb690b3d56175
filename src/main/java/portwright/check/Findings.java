package portwright.check;

import java.util.ArrayList;
import java.util.List;

/** Collects what the rules say. */
public final class Findings {
    private final List<Finding> findings = new ArrayList<>();
    private final List<NotChecked> notChecked = new ArrayList<>();

    public void add(Finding finding) {
        findings.add(finding);
    }

    public void lacks(Rule rule, String... needs) {
        if (rule.canForbid().isEmpty()) {
            lacksFigure(rule, needs);
        }
        for (Forbids f : rule.canForbid()) {
            notChecked(rule, f, needs);
        }
    }

    /** A figure of a rule that forbids nothing by itself lacks input; the rule's own checks are done. */
    public void lacksFigure(Rule rule, String... needs) {
        notChecked(rule, Forbids.NOTHING, needs);
    }

    /** The rule cannot be checked for a cause other than a field that lacks; the fields are those that bear on it. */
    public void unproven(Rule rule, String cause, String... fields) {
        for (Forbids f : rule.canForbid()) {
            add(new NotChecked(rule.id(), List.of(fields), f, cause));
        }
    }

    private void notChecked(Rule rule, Forbids forbids, String... needs) {
        add(new NotChecked(rule.id(), List.of(needs), forbids));
    }

    private void add(NotChecked n) {
        if (!notChecked.contains(n)) {
            notChecked.add(n);
        }
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    public List<NotChecked> notChecked() {
        return List.copyOf(notChecked);
    }
}
