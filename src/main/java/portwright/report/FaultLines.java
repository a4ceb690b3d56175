package portwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.calc.firing.log.LogFault;

/** Rows and cells of a log that are left out, for people: many of one cause are told by the first few, their number and what is likely behind them. */
public final class FaultLines {
    /** So many of one cause stand line by line before they are counted. */
    private static final int OF_A_KIND = 5;

    private static final int MOST_KINDS = 12;

    private FaultLines() {}

    /**
     * Kinds in the order of their first line; within a kind the lines in theirs.
     *
     * @param all where every line is listed, as "; --json lists all"
     */
    public static List<String> of(List<LogFault> faults, String all) {
        Map<String, List<LogFault>> kinds = new LinkedHashMap<>();
        faults.forEach(
                f -> kinds.computeIfAbsent(kind(f), k -> new ArrayList<>()).add(f));
        List<String> out = new ArrayList<>();
        kinds.values().stream().limit(MOST_KINDS).forEach(same -> {
            boolean counted = same.size() > OF_A_KIND + 1;
            same.stream()
                    .limit(counted ? OF_A_KIND : same.size())
                    .map(RecordText::fault)
                    .forEach(out::add);
            if (counted) {
                out.add("and " + (same.size() - OF_A_KIND) + " more lines like it, to line "
                        + same.get(same.size() - 1).line() + likely(same.get(0)) + all);
            }
        });
        if (kinds.size() > MOST_KINDS) {
            out.add(kinds.values().stream()
                            .skip(MOST_KINDS)
                            .mapToInt(List::size)
                            .sum()
                    + " more of other kinds" + all);
        }
        return out;
    }

    /** The reason without what each line says for itself. */
    private static String kind(LogFault f) {
        return f.skipped() + f.reason().replaceAll("\"[^\"]*\"", "\"\"").replaceAll("-?\\d+([.,:]\\d+)*", "0");
    }

    private static String likely(LogFault f) {
        String r = f.reason();
        return r.contains("above 1500 °C")
                ? "; most likely degrees Fahrenheit in a column named °C: name it temp °F"
                : r.contains("thermocouple open")
                        ? "; most likely a broken or loose thermocouple wire"
                        : r.contains("that of the row above") || r.contains("that of the next row")
                                ? "; most likely two logs in one file, or a clock that was set while it ran"
                                : r.endsWith("is no time; write 14:05, 2:05 PM or 1.5 h")
                                        ? "; most likely words or a date in the time column"
                                        : "";
    }
}
