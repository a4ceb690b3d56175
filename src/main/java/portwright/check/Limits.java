package portwright.check;

import portwright.source.Source;

/** The limits in force: the rule book's, or the design's own. */
public interface Limits {
    /** Relative tolerance of every comparison with a limit: at the limit a rule passes. */
    double TOLERANCE = 1e-9;

    /** Value in the base unit of its kind (lengths mm). */
    double value(String rule, String name);

    /** Whether the design set it. */
    boolean setByUser(String rule, String name);

    /** Whether an answer is wanted while a hand still drags: remedies are then sought in few directions. */
    default boolean quick() {
        return false;
    }

    /** Where the rule book's value comes from. */
    Source source(String rule, String name);
}
