package portwright.calc.firing.log;

/**
 * What a fallen cone says of the thermocouple.
 *
 * @param cone name
 * @param timeS when it fell
 * @param readingK smoothed reading then
 * @param offsetK to be added to the reading so that the heat work of the record lays the cone down at that moment; positive: the
 *     thermocouple reads low. A cone itself is good to about ±10 K (this project's judgement).
 * @param surelyK the part of the offset that stays wherever the cone fell since the reading before; 0 where that could explain it all
 */
public record ConeOffset(String cone, double timeS, double readingK, double offsetK, double surelyK) {}
