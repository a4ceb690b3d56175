package portwright.check.rules.fire;

import java.util.ArrayList;
import java.util.List;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.review.FireReview;
import portwright.review.Review;

/** What the fire's rules need in common. */
final class Needs {
    private Needs() {}

    /** Says what is missing for gas and steps; true when the rule can end here, also when no gas is asked for. */
    static boolean missing(Rule rule, Review review, Findings out) {
        FireReview fire = review.fire();
        if (fire.kiln().known() && fire.asked().known()) {
            return fire.settings().isEmpty();
        }
        List<String> needs = new ArrayList<>(fire.kiln().needs());
        needs.addAll(fire.asked().needs());
        out.lacks(rule, needs.toArray(String[]::new));
        return true;
    }

    /** Open share of a gas step that asks no level: where the damper is not stated either, it is computed open and the rule counts as not checked. */
    static void damper(Rule rule, Review review, Findings out) {
        if (review.fire().damperUnstated()) {
            out.lacks(rule, "damper.open");
        }
    }
}
