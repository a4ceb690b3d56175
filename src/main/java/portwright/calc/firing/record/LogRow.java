package portwright.calc.firing.record;

/**
 * One good row of a log.
 *
 * @param line line in the file, from 1
 * @param timeS from the first good row, s
 * @param temperatureC as the meter read, °C
 * @param damperShare open share of the flues, 0 to 1; NaN where not noted
 * @param damperMm travel of the plate from shut, mm; NaN where not noted
 * @param gasPa gauge pressure of the gas, Pa; NaN where not noted
 * @param cone a cone seen down, by name; empty where none
 * @param note free text; empty where none
 */
public record LogRow(int line, double timeS, double temperatureC, double damperShare, double damperMm, double gasPa,
        String cone, String note) {}
