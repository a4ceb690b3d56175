package portwright.data;

import portwright.source.Source;
import portwright.units.Kind;

/**
 * One limit of the rule book, a row of a {@code limits-*.csv} table.
 *
 * @param rule rule id
 * @param name the limit's name within the rule: limit, stop, caution, note, or the rule's own word
 * @param kind what it measures; null for plain numbers (shares, ratios, factors)
 * @param typed default as written in the table
 * @param value default, in the base unit of the kind (lengths mm)
 * @param safer the side to which a change is safer
 * @param fixed whether a design may move it only to the safer side
 * @param min least value a design may set; −∞ for none
 * @param max greatest value a design may set; +∞ for none
 * @param source where the default comes from
 */
public record LimitRow(
        String rule,
        String name,
        Kind kind,
        String typed,
        double value,
        Safer safer,
        boolean fixed,
        double min,
        double max,
        Source source) {
    /** The safer side of a limit. */
    public enum Safer {
        UP,
        DOWN
    }

    /** Whether a user's value is admitted: inside min and max, and on the safer side where the limit is fixed. */
    public boolean admits(double user) {
        boolean side = !fixed || (safer == Safer.UP ? user >= value : user <= value);
        return side && user >= min && user <= max;
    }
}
