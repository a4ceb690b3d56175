package portwright.data;

import portwright.source.Source;

/**
 * One limit of the rule book, a row of {@code limits.csv}.
 *
 * @param rule rule id
 * @param name limit name within the rule: stop, caution, note, or the rule's own word
 * @param kind a {@code portwright.units.Kind} name, or NUMBER for shares and ratios
 * @param value default, in the base unit of the kind
 * @param safer "up" when a larger limit is the safer one, else "down"
 * @param fixed may move only to the safer side
 * @param min least value a user may set, NaN for none
 * @param max greatest value a user may set, NaN for none
 * @param source where the default comes from
 */
public record LimitRow(String rule, String name, String kind, double value, String safer, boolean fixed, double min, double max, Source source) {}
