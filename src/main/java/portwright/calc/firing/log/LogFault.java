package portwright.calc.firing.log;

/**
 * Something in a log that is not used.
 *
 * @param line from 1
 * @param skipped true when the whole row is left out, false when only one cell is
 * @param reason what is wrong and what to write instead
 */
public record LogFault(int line, boolean skipped, String reason) {
    /** How the reason of a cell of the gas column begins. */
    static final String GAS = "gas pressure";

    /** Whether it is a cell of the gas column. */
    boolean gas() {
        return !skipped && reason.startsWith(GAS);
    }
}
