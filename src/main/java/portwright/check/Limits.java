package portwright.check;

import portwright.source.Source;

/** The limits in force: the rule book's, or the design's own. */
public interface Limits {
    /** Value in the base unit of its kind (lengths mm). */
    double value(String rule, String name);

    /** Whether the design set it. */
    boolean setByUser(String rule, String name);

    /** Where the rule book's value comes from. */
    Source source(String rule, String name);
}
