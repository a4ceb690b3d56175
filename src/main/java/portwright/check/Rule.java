package portwright.check;

import java.util.Set;
import portwright.review.Review;

/** One rule of the rule book. */
public interface Rule {
    /** Its name, as in results and in the design's {@code limits}. */
    String id();

    /** What a stop of this rule can forbid; a rule that never stops answers the empty set. */
    Set<Forbids> canForbid();

    /** Reads the review and adds findings, or says what it lacks. */
    void check(Review review, Limits limits, Findings out);
}
