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
            notChecked.add(new NotChecked(rule.id(), List.of(needs), Forbids.NOTHING));
        }
        for (Forbids f : rule.canForbid()) {
            notChecked.add(new NotChecked(rule.id(), List.of(needs), f));
        }
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    public List<NotChecked> notChecked() {
        return List.copyOf(notChecked);
    }
}
