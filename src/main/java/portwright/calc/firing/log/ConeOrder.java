package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.data.Cones;

/**
 * Fallen cones against one another: a cone falls once, and the softer one first. A cone that is noted again is counted when it was noted first; of
 * two that stand the wrong way round at different looks nobody knows which is wrong, and neither is used.
 */
final class ConeOrder {
    private ConeOrder() {}

    /** Rows in time order without the cones that cannot be so, each of which is told in the faults. */
    static List<LogRow> checked(List<LogRow> rows, List<LogFault> faults) {
        Cones table = Cones.load();
        List<LogRow> out = new ArrayList<>(rows);
        List<Integer> seen = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            LogRow r = rows.get(i);
            if (r.cone() == null) {
                continue;
            }
            int again = -1;
            int harder = -1;
            for (int k : seen) {
                again = rows.get(k).cone().equals(r.cone()) ? k : again;
                boolean later = r.timeS() - rows.get(k).timeS() > FiringLog.ONE_LOOK_S;
                harder = later && heat(table, rows.get(k)) > heat(table, r) ? k : harder;
            }
            if (again >= 0) {
                fault(faults, r, "is noted down in line " + rows.get(again).line() + " already; the first time counts");
                out.set(i, r.withoutCone());
                continue;
            }
            seen.add(i);
            if (harder >= 0) {
                LogRow h = rows.get(harder);
                fault(
                        faults,
                        r,
                        "is noted after cone " + h.cone() + " (line " + h.line()
                                + "), which needs more heat: one of the two is a slip, and neither is used");
                out.set(i, r.withoutCone());
                out.set(harder, h.withoutCone());
            }
        }
        return out;
    }

    private static double heat(Cones table, LogRow row) {
        return table.find(row.cone()).orElseThrow().ss60();
    }

    private static void fault(List<LogFault> faults, LogRow row, String what) {
        faults.add(new LogFault(row.line(), false, "cone " + row.cone() + " " + what));
    }
}
