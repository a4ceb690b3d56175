package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Puts rows on one time axis that never goes back: over midnight, over noon on a 12-hour clock, with seconds missing. */
final class Times {
    private static final double DAY = 86400;
    private static final double JUMP = 7200;
    private static final double HOUR = 3600;
    /** Rows of a log lie no farther apart than this, or than twice their usual distance. */
    private static final double CLOSE_S = 600;
    /** So many rows must follow. */
    private static final int RUNS_ON = 3;

    private final boolean elapsed;
    private final List<LogFault> faults;
    private final List<String> remarks;
    /** The first row's time, s since 1970; NaN where not every row has a date. */
    private double startS = Double.NaN;

    Times(boolean elapsed, List<LogFault> faults, List<String> remarks) {
        this.elapsed = elapsed;
        this.faults = faults;
        this.remarks = remarks;
    }

    /**
     * The rows with times from the first one, s; a log with its newest row first is turned round.
     *
     * @throws LogException when more than half of the rows do not follow one another in time
     */
    List<LogRow> order(List<LogRow> written, List<Clock> times) {
        int known = faults.size();
        List<LogRow> rows = new ArrayList<>(written);
        List<Clock> clocks = new ArrayList<>(times);
        if (clocks.stream()
                .anyMatch(c -> c.dated() != clocks.get(0).dated()
                        || c.colon() != clocks.get(0).colon())) {
            remarks.add("times are written in more than one way; each is read as it stands");
        }
        boolean clock = !elapsed
                && clocks.stream().allMatch(Clock::colon)
                && clocks.stream().noneMatch(Clock::dated);
        boolean twelve = clock
                && clocks.stream().noneMatch(Clock::half)
                && clocks.stream().allMatch(c -> c.seconds() >= 3600 && c.seconds() < 13 * 3600);
        double turn = twelve ? DAY / 2 : DAY;
        if (newestFirst(clocks, clock ? turn : Double.POSITIVE_INFINITY)) {
            Collections.reverse(rows);
            Collections.reverse(clocks);
            remarks.add("the newest row stands first: the rows are read from the bottom up");
        }
        List<LogRow> out = new ArrayList<>();
        double add = 0;
        for (int i = 0; i < rows.size(); i++) {
            double t = clocks.get(i).seconds() + add;
            double before = out.isEmpty() ? t : out.get(out.size() - 1).timeS();
            if (clock && strayed(rows, clocks, i, before - add)) {
                int line = rows.get(i).line();
                if (faults.stream().noneMatch(x -> x.skipped() && x.line() == line)) {
                    faults.add(new LogFault(line, true, "its time lies before that of the row above"));
                }
                continue;
            }
            if (clock && before - t > turn / 2 && !forth(out, t)) {
                add += turn;
                t += turn;
                remarks.add("line " + rows.get(i).line() + ": the clock passes "
                        + (twelve ? "noon or midnight" : "midnight"));
            }
            if (t < before && !elapsed && setBack(clocks, i, before - t)) {
                add += HOUR;
                t += HOUR;
                remarks.add(
                        "line " + rows.get(i).line()
                                + ": the times go back by an hour and run on from there. The clock was set back, as at the end of summer time: an hour is added from here on. If it was not, put the times right");
            }
            if (t < before) {
                int last = out.size() - 1;
                if (last > 0
                        && out.get(last - 1).timeS() <= t
                        && before - out.get(last - 1).timeS() > JUMP) {
                    faults.add(new LogFault(out.get(last).line(), true, "its time lies after that of the next row"));
                    out.remove(last);
                } else {
                    faults.add(new LogFault(rows.get(i).line(), true, "its time lies before that of the row above"));
                    continue;
                }
            }
            out.add(rows.get(i).at(t));
        }
        if (out.size() < rows.size() / 2.0) {
            throw new LogException("more than half of the rows do not follow one another in time (the first: line "
                    + faults.get(known).line()
                    + "). Sort the rows by time, and write a date beside the time where the firing lasts over a day");
        }
        if (!out.isEmpty() && clocks.stream().allMatch(Clock::dated)) {
            startS = out.get(0).timeS();
        }
        return spread(out);
    }

    /** Whether a row alone goes back in time, or with others that cannot be readings, while the ones around it run on: no midnight. */
    private static boolean strayed(List<LogRow> rows, List<Clock> clocks, int i, double before) {
        if (!(clocks.get(i).seconds() < before)) {
            return false;
        }
        int next = i + 1;
        while (next < rows.size() && (rows.get(next).line() == rows.get(i).line() || impossible(rows.get(next)))) {
            next++;
        }
        if (next == rows.size()) {
            return impossible(rows.get(i));
        }
        double on = clocks.get(next).seconds() - before;
        return on >= 0 && on <= JUMP;
    }

    private static boolean impossible(LogRow r) {
        return r.kelvin() != null && r.kelvin().isInfinite();
    }

    /** Of a time that lies half a turn before the last row: whether that row alone lies ahead, and the time follows the one before it. */
    private static boolean forth(List<LogRow> out, double t) {
        int last = out.size() - 1;
        return last > 0
                && t >= out.get(last - 1).timeS()
                && t - out.get(last - 1).timeS() <= JUMP;
    }

    /** When the first row was written, s since 1970; NaN without dates. Known after {@link #order}. */
    double startS() {
        return startS;
    }

    /** Whether the clock was set back an hour before a row: with the hour added this row and those behind it follow as closely as rows do here. */
    private static boolean setBack(List<Clock> clocks, int i, double back) {
        double[] apart = new double[clocks.size() - 1];
        for (int k = 0; k < apart.length; k++) {
            apart[k] = clocks.get(k + 1).seconds() - clocks.get(k).seconds();
        }
        double close = Math.max(
                CLOSE_S,
                2 * Followed.median(java.util.Arrays.stream(apart).boxed().toList()));
        boolean runsOn = i + RUNS_ON < clocks.size();
        for (int k = i; runsOn && k < i + RUNS_ON; k++) {
            runsOn = apart[k] >= 0 && apart[k] <= close;
        }
        return runsOn && back <= HOUR && HOUR - back <= close && close < HOUR / 2;
    }

    /** Whether more rows go back in time than forth, the short way round a clock. */
    private static boolean newestFirst(List<Clock> clocks, double turn) {
        int back = 0;
        for (int i = 0; i + 1 < clocks.size(); i++) {
            double d = clocks.get(i + 1).seconds() - clocks.get(i).seconds();
            d = d > turn / 2 ? d - turn : d < -turn / 2 ? d + turn : d;
            back += (int) Math.signum(d);
        }
        return back < 0;
    }

    /** Rows that share one time (seconds missing) are spread evenly up to the next one. */
    private List<LogRow> spread(List<LogRow> rows) {
        List<LogRow> out = new ArrayList<>(rows.size());
        double zero = rows.isEmpty() ? 0 : rows.get(0).timeS();
        int shared = 0;
        for (int i = 0; i < rows.size(); ) {
            int j = i;
            while (j < rows.size() && rows.get(j).timeS() == rows.get(i).timeS()) {
                j++;
            }
            double gap = j < rows.size()
                    ? Math.min(60, rows.get(j).timeS() - rows.get(i).timeS())
                    : 60;
            int lines = (int) rows.subList(i, j).stream()
                    .mapToInt(LogRow::line)
                    .distinct()
                    .count();
            int nth = 0;
            for (int k = i; k < j; k++) {
                nth += k > i && rows.get(k).line() != rows.get(k - 1).line() ? 1 : 0;
                out.add(rows.get(k).at(rows.get(k).timeS() - zero + gap * nth / lines));
            }
            shared += lines - 1;
            i = j;
        }
        if (shared > 0) {
            remarks.add(
                    shared
                            + (shared == 1 ? " row shares" : " rows share")
                            + " the time of the row above (seconds missing, or several readings a second): spread up to the next time");
        }
        return out;
    }
}
