package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;

/** The firing rules in reading order. */
public final class FiringRules {
    private FiringRules() {}

    public static List<Rule> list() {
        return List.of();
    }
}
