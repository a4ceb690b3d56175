package portwright.calc.firing.log;

/**
 * A time in which the thermocouple told nothing of the kiln.
 *
 * @param fromLine first row
 * @param toLine last row
 * @param kelvin what it showed; NaN for blank or open
 */
public record DeadSpell(int fromLine, int toLine, double fromS, double toS, double kelvin) {}
