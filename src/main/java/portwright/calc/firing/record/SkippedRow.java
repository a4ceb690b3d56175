package portwright.calc.firing.record;

/**
 * A row that was left out.
 *
 * @param line line in the file, from 1
 * @param what why, with the text met
 */
public record SkippedRow(int line, String what) {}
