package portwright.calc.firing.log;

import java.util.List;

/**
 * A log as read.
 *
 * @param rows good rows in time order
 * @param faults rows and cells left out, by line
 * @param remarks how the file was understood
 */
public record FiringLog(List<LogRow> rows, List<LogFault> faults, List<String> remarks) {
    public FiringLog {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
        remarks = List.copyOf(remarks);
    }

    /** Rows with a temperature. */
    public List<LogRow> readings() {
        return rows.stream().filter(r -> r.kelvin() != null).toList();
    }

    /** Rows that tell of a fallen cone, in time order. */
    public List<LogRow> cones() {
        return rows.stream().filter(r -> r.cone() != null).toList();
    }
}
