package portwright.calc.firing.log;

/**
 * One good row of a log.
 *
 * @param line in the file, from 1
 * @param timeS from the first good row, s
 * @param kelvin reading of the thermocouple, K; null in a row that only tells of a cone, damper or gas or carries a note
 * @param damperShare open share of the flues, 0 to 1; null where the log does not say
 * @param damperM travel of the plate from all shut, m; null where the log gives the share or nothing
 * @param gasPa gauge pressure of the gas, Pa; null where the log does not say
 * @param cone that went down; null for none
 * @param note free text; empty for none
 */
public record LogRow(
        int line,
        double timeS,
        Double kelvin,
        Double damperShare,
        Double damperM,
        Double gasPa,
        String cone,
        String note) {
    /** Whether the row tells anything beside its reading. */
    boolean tells() {
        return cone != null || !note.isEmpty() || damperShare != null || damperM != null || gasPa != null;
    }

    LogRow onLine(int other) {
        return new LogRow(other, timeS, kelvin, damperShare, damperM, gasPa, cone, note);
    }

    LogRow withoutCone() {
        return new LogRow(line, timeS, kelvin, damperShare, damperM, gasPa, null, note);
    }

    LogRow at(double seconds) {
        return new LogRow(line, seconds, kelvin, damperShare, damperM, gasPa, cone, note);
    }

    LogRow withoutReading() {
        return reading(null);
    }

    LogRow reading(Double k) {
        return new LogRow(line, timeS, k, damperShare, damperM, gasPa, cone, note);
    }

    LogRow damper(Double share) {
        return new LogRow(line, timeS, kelvin, share, null, gasPa, cone, note);
    }
}
