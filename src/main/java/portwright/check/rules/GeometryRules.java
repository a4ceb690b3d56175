package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;

/** The geometry rules in reading order. */
public final class GeometryRules {
    private GeometryRules() {}

    public static List<Rule> list() {
        return List.of();
    }
}
