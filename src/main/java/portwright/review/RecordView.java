package portwright.review;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.Sample;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogRow;

/**
 * One moment of a record beside the forecast. A record that begins warm is laid where the forecast passes its first reading.
 *
 * @param hours from the first reading
 * @param measuredC reading; null beyond the record
 * @param forecastC nominal forecast; null beyond its end
 * @param lowC brick conducting 20 % more; null beyond its end
 * @param highC brick conducting 20 % less; null beyond its end
 */
public record RecordView(double hours, Double measuredC, Double forecastC, Double lowC, Double highC) {
    private static final double EVERY_S = 300;
    private static final double WARM_K = 50;

    /** Every five minutes, to the end of the longer of record and forecast. */
    static List<RecordView> of(FiringLog log, Forecast f) {
        List<LogRow> rows = log.readings();
        double first = rows.get(0).timeS();
        double shift = shiftS(log, f);
        double end =
                Math.max(rows.get(rows.size() - 1).timeS() - first, f.nominal().endS() - shift);
        List<RecordView> out = new ArrayList<>();
        int i = 0;
        for (double t = 0; t <= end + 1e-6; t += EVERY_S) {
            while (i + 1 < rows.size() && rows.get(i + 1).timeS() - first <= t) {
                i++;
            }
            out.add(new RecordView(
                    t / 3600,
                    measured(rows, i, first + t),
                    at(f.nominal(), t + shift),
                    at(f.slow(), t + shift),
                    at(f.quick(), t + shift)));
        }
        return out;
    }

    /** How long the forecast has run where the record begins, s; 0 for one that begins cold. */
    public static double shiftS(FiringLog log, Forecast f) {
        double firstK = log.readings().get(0).kelvin();
        double shift = firstK > f.nominal().samples().get(0).chamberK() + WARM_K
                ? f.nominal().timeAtK(firstK)
                : 0;
        return Double.isNaN(shift) ? 0 : shift;
    }

    private static Double measured(List<LogRow> rows, int i, double t) {
        LogRow a = rows.get(i);
        if (i + 1 >= rows.size()) {
            return t - a.timeS() < EVERY_S ? a.kelvin() - ZERO_C : null;
        }
        LogRow b = rows.get(i + 1);
        double span = b.timeS() - a.timeS();
        return a.kelvin() - ZERO_C + (span > 0 ? (b.kelvin() - a.kelvin()) * (t - a.timeS()) / span : 0);
    }

    private static Double at(FiringRun run, double t) {
        List<Sample> s = run.samples();
        if (t > run.endS() || t < 0) {
            return null;
        }
        int lo = 0;
        int hi = s.size() - 1;
        while (hi - lo > 1) {
            int mid = (lo + hi) / 2;
            if (s.get(mid).timeS() <= t) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        double span = s.get(hi).timeS() - s.get(lo).timeS();
        double f = span > 0 ? (t - s.get(lo).timeS()) / span : 0;
        return s.get(lo).chamberK() + f * (s.get(hi).chamberK() - s.get(lo).chamberK()) - ZERO_C;
    }
}
