package portwright.calc.draft;

/**
 * A 5 to 95 % range.
 *
 * @param low may be absent (null) when the low end lies among states that have no such figure
 * @param high likewise
 */
public record Range(Double low, Double high) {}
