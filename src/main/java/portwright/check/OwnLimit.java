package portwright.check;

/**
 * A limit of the rule book that the design sets itself, whether or not anything was found by it.
 *
 * @param rule rule id
 * @param name the limit's name within the rule
 * @param value as typed in the design
 * @param ruleBook what the rule book has
 */
public record OwnLimit(String rule, String name, String value, String ruleBook) {
    /** {@code element-clearance, limit: 30 mm (rule book 25 mm)}. */
    public String words() {
        return rule + ", " + name + ": " + value + " (rule book " + ruleBook + ")";
    }
}
