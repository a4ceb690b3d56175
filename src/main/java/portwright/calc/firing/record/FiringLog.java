package portwright.calc.firing.record;

import java.util.List;

/**
 * A firing as logged.
 *
 * @param rows good rows in time order
 * @param skipped rows left out, each with its line and reason
 * @param fahrenheit the log is in °F (rows here are in °C)
 * @param clock times were times of day
 * @param scaleFrom how the scale was known: heading, cells, or the values themselves
 */
public record FiringLog(List<LogRow> rows, List<SkippedRow> skipped, boolean fahrenheit, boolean clock, String scaleFrom) {
    public FiringLog {
        rows = List.copyOf(rows);
        skipped = List.copyOf(skipped);
    }

    public double seconds() {
        return rows.get(rows.size() - 1).timeS();
    }

    public double topC() {
        return rows.stream().mapToDouble(LogRow::temperatureC).max().orElseThrow();
    }

    public boolean hasDamper() {
        return rows.stream().anyMatch(r -> !Double.isNaN(r.damperShare()) || !Double.isNaN(r.damperMm()));
    }

    public boolean hasGas() {
        return rows.stream().anyMatch(r -> !Double.isNaN(r.gasPa()));
    }
}
