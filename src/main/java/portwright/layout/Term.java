package portwright.layout;

import java.util.List;

/**
 * One rule's margin for one hole or pair.
 *
 * @param rule id in the rule book
 * @param parts the hole first, then the obstacle
 * @param measured value
 * @param stop limit of the stop; NaN where the rule has none
 * @param caution limit of the caution
 * @param unit of the three
 * @param margin below 0 a stop, 1 at the caution limit (see {@link Proposal#margin()})
 */
public record Term(
        String rule, List<String> parts, double measured, double stop, double caution, String unit, double margin) {
    public Term {
        parts = List.copyOf(parts);
    }

    /** Whether the limit of the stop is broken. */
    public boolean isStop() {
        return margin < -1e-9;
    }
}
