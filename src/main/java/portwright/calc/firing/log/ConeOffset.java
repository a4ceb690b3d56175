package portwright.calc.firing.log;

/**
 * What a fallen cone says of the thermocouple.
 *
 * @param cone name
 * @param timeS when it fell
 * @param readingK smoothed reading then
 * @param offsetK to be added to the reading so that the heat work of the record lays the cone down at that moment; positive: the
 *     thermocouple reads low. A cone itself is good to about ±10 K (this project's judgement).
 */
public record ConeOffset(String cone, double timeS, double readingK, double offsetK) {}
