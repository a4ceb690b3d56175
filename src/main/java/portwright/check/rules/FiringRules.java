package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;
import portwright.check.rules.firing.BrickHeat;
import portwright.check.rules.firing.ElementAtmosphere;
import portwright.check.rules.firing.FiringReach;

/** The firing rules in reading order. */
public final class FiringRules {
    private FiringRules() {}

    public static List<Rule> list() {
        return List.of(new FiringReach(), new BrickHeat(), new ElementAtmosphere());
    }
}
