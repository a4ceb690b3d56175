package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/** Small logs made by hand. Temperatures in °C. */
final class Hand {
    static final double Z = 273.15;

    private Hand() {}

    static LogRow reading(int line, double seconds, double celsius) {
        return new LogRow(line, seconds, celsius + Z, null, null, null, null, "");
    }

    static LogRow note(int line, double seconds, String note) {
        return new LogRow(line, seconds, null, null, null, null, null, note);
    }

    static LogRow cone(int line, double seconds, Double celsius, String cone) {
        return new LogRow(line, seconds, celsius == null ? null : celsius + Z, null, null, null, cone, "");
    }

    /** Readings so many seconds apart, from line 1 and time 0. */
    static List<LogRow> every(double seconds, double... celsius) {
        List<LogRow> out = new ArrayList<>();
        for (double c : celsius) {
            out.add(reading(out.size() + 1, out.size() * seconds, c));
        }
        return out;
    }

    static FiringLog log(LogRow... rows) {
        return log(List.of(rows));
    }

    static FiringLog log(List<LogRow> rows) {
        return new FiringLog(rows, List.of(), List.of(), List.of(), Double.NaN, false);
    }
}
