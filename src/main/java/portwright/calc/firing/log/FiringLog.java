package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import portwright.calc.draft.DamperPlate;
import portwright.data.Cones;

/**
 * A log as read.
 *
 * @param rows good rows in time order
 * @param faults rows and cells left out, by line
 * @param remarks how the file was understood
 * @param dead when the thermocouple told nothing
 * @param startS when the first row was written, s since 1970 by the log's own clock; NaN without a date
 * @param scaleDoubted whether the header may name the wrong temperature scale, so that nothing is to be read from the temperatures
 */
public record FiringLog(
        List<LogRow> rows,
        List<LogFault> faults,
        List<String> remarks,
        List<DeadSpell> dead,
        double startS,
        boolean scaleDoubted) {
    static final double ONE_LOOK_S = 1200;
    private static final double COOLED_K = 15;
    private static final double AT_PEAK_K = 4;
    /** What a rule at a hot kiln is read to. */
    private static final double READ_M = 0.002;

    public FiringLog {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
        remarks = List.copyOf(remarks);
        dead = List.copyOf(dead);
    }

    /**
     * The same log with every travel of the damper turned into the open share that the plate leaves of the flues.
     *
     * @param plate null for a kiln without flues: then the travels stay unused, and a remark says so
     */
    public FiringLog withShares(DamperPlate plate) {
        if (rows.stream().noneMatch(r -> r.damperM() != null)) {
            return this;
        }
        List<String> said = new ArrayList<>(remarks);
        if (plate == null) {
            said.add("the damper is noted as travel of the plate, but the design has no flue; the column is not used");
            return new FiringLog(
                    rows.stream().map(r -> r.damper(null)).toList(), faults, said, dead, startS, scaleDoubted);
        }
        said.add(String.format(
                Locale.ROOT,
                "the damper is noted as travel of the plate; it counts from all shut, all open is %.0f mm",
                plate.fullTravel() * 1000));
        beyond(plate).ifPresent(said::add);
        return new FiringLog(
                rows.stream()
                        .map(r -> r.damperM() == null ? r : r.damper(plate.openShare(r.damperM())))
                        .toList(),
                faults,
                said,
                dead,
                startS,
                scaleDoubted);
    }

    /** What is said of rows that note the plate farther out than all open. */
    private Optional<String> beyond(DamperPlate plate) {
        List<LogRow> far = rows.stream()
                .filter(r -> r.damperM() != null && r.damperM() > plate.fullTravel() + READ_M)
                .toList();
        return far.stream()
                .max(Comparator.comparingDouble(LogRow::damperM))
                .map(r -> String.format(
                        Locale.ROOT,
                        "the plate is noted past all open %s, at %.0f mm in line %d: it counts as open. Measure its travel from all shut",
                        far.size() == 1 ? "once" : far.size() + " times",
                        r.damperM() * 1000,
                        r.line()));
    }

    /** Cells of the gas column in which something stands that is not understood. */
    public int gasUnread() {
        return (int) faults.stream().filter(LogFault::gas).count();
    }

    /** Lines of the file of which something is used. */
    public long linesUsed() {
        return rows.stream().mapToInt(LogRow::line).distinct().count();
    }

    /** Lines that are left out whole. */
    public long linesSkipped() {
        return faults.stream()
                .filter(LogFault::skipped)
                .mapToInt(LogFault::line)
                .distinct()
                .count();
    }

    /** From the first row to the last, s. */
    double lengthS() {
        return rows.get(rows.size() - 1).timeS();
    }

    /** Whether another log tells the very same, row by row, whatever stands between the rows. */
    boolean sameRows(FiringLog other) {
        if (rows.size() != other.rows.size() || Double.compare(startS, other.startS) != 0) {
            return false;
        }
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).onLine(0).equals(other.rows.get(i).onLine(0))) {
                return false;
            }
        }
        return true;
    }

    /** Rows with a temperature. */
    public List<LogRow> readings() {
        return rows.stream().filter(r -> r.kelvin() != null).toList();
    }

    /**
     * The earliest time at which the cone noted in a row may have fallen, s: the reading before the look at which it was seen. Cones in rows one
     * below the other were seen at one look, unless more than 20 minutes lie between them. Of several in one row all but the last to fall may have
     * lain since the look before. A cone noted while the kiln cools fell by the time of its peak. The row's own time where
     * nothing is read before it.
     */
    public double before(LogRow row) {
        int at = 0;
        while (rows.get(at) != row) {
            at++;
        }
        int look = at;
        while (look > 0
                && rows.get(look - 1).cone() != null
                && rows.get(look).timeS() - rows.get(look - 1).timeS() <= ONE_LOOK_S) {
            look--;
        }
        if (belowAnother(at)) {
            int seen = at;
            while (seen > 0 && (rows.get(seen).cone() == null || rows.get(seen).line() == row.line())) {
                seen--;
            }
            return rows.get(seen).timeS();
        }
        double before = Double.NaN;
        double peak = Double.NEGATIVE_INFINITY;
        double now = Double.NaN;
        for (int i = 0; i <= at; i++) {
            Double k = rows.get(i).kelvin();
            if (k != null) {
                before = i < look ? rows.get(i).timeS() : before;
                peak = Math.max(peak, k);
                now = k;
            }
        }
        if (Double.isNaN(before)) {
            return row.timeS();
        }
        if (now < peak - COOLED_K) {
            for (int i = at; i >= 0; i--) {
                Double k = rows.get(i).kelvin();
                if (k != null && k > peak - AT_PEAK_K) {
                    return Math.min(before, rows.get(i).timeS());
                }
            }
        }
        return before;
    }

    /** Whether a later falling cone was noted in the very same row. */
    private boolean belowAnother(int at) {
        List<String> row = rows.stream()
                .filter(r -> r.line() == rows.get(at).line() && r.cone() != null)
                .map(LogRow::cone)
                .toList();
        Cones table = row.size() < 2 ? null : Cones.load();
        return table != null
                && row.stream()
                        .anyMatch(c -> table.find(c).orElseThrow().ss60()
                                > table.find(rows.get(at).cone()).orElseThrow().ss60());
    }

    /** Times without readings that are too long to be bridged. */
    public List<Gap> gaps() {
        return Gap.of(readings());
    }

    /** Rows that tell of a fallen cone, in time order. */
    public List<LogRow> cones() {
        return rows.stream().filter(r -> r.cone() != null).toList();
    }
}
