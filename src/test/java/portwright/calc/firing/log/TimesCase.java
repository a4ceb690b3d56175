package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/** Rows in lines 2, 3, 4 and on, as behind a header, put on one time axis. */
abstract class TimesCase {
    static final String ABOVE = "its time lies before that of the row above";
    static final String NEXT = "its time lies after that of the next row";

    final List<LogFault> faults = new ArrayList<>();
    final List<String> remarks = new ArrayList<>();
    double startS;

    List<LogRow> order(boolean elapsed, List<LogRow> rows, String... clocks) {
        Times t = new Times(elapsed, faults, remarks);
        List<LogRow> out = t.order(
                rows, List.of(clocks).stream().map(c -> Clock.read(c, null, 60)).toList());
        startS = t.startS();
        return out;
    }

    static List<LogRow> rows(int n) {
        List<LogRow> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            rows.add(Hand.reading(i + 2, 0, 500));
        }
        return rows;
    }

    List<Double> minutes(String... clocks) {
        return minutes(order(false, rows(clocks.length), clocks));
    }

    static List<Double> minutes(List<LogRow> rows) {
        return rows.stream().map(r -> r.timeS() / 60).toList();
    }
}
