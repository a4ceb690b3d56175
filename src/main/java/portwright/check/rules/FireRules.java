package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;

/** The fire rules in reading order. */
public final class FireRules {
    private FireRules() {}

    public static List<Rule> list() {
        return List.of();
    }
}
