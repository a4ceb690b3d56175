package portwright.calc.firing.record;

/**
 * A cone against the meter.
 *
 * @param timeS when it was seen down
 * @param readC meter then
 * @param offsetK what must be added to the whole reading for the cone's heat work to be done just then; above zero: the
 *     meter reads low
 */
public record ConeOffset(String cone, double timeS, double readC, double offsetK) {}
