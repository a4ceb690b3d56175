package portwright.check;

import java.util.List;
import portwright.review.BurnerGas;
import portwright.review.Review;

/** Inputs of gas and air that are computed with a usual value where the design gives none: the rules that turn on them then count as not checked. */
public final class UnstatedGas {
    private UnstatedGas() {}

    /** Number of jets: several pass as many times the gas that one does; one is computed. */
    public static void jets(Rule rule, Review review, Findings out) {
        List<String> fields = BurnerGas.unstatedJets(review.design());
        if (!fields.isEmpty()) {
            out.lacks(rule, fields.toArray(String[]::new));
        }
    }

    /** Altitude: in thin air the same gas is more of the air and burns richer; sea level is computed. */
    public static void altitude(Rule rule, Review review, Findings out) {
        if (review.design().room() == null || review.design().room().altitude() == null) {
            out.lacks(rule, "room.altitude");
        }
    }
}
