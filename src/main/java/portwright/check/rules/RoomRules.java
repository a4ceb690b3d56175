package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;

/** The room rules in reading order. */
public final class RoomRules {
    private RoomRules() {}

    public static List<Rule> list() {
        return List.of();
    }
}
