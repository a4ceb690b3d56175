package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A time without readings, too long for a straight line: a relay may have dropped out and come back, or the gas have been off. No finding
 * rests on it.
 *
 * @param fromLine row of the last reading before
 * @param toLine row of the next one
 */
public record Gap(int fromLine, int toLine, double fromS, double toS) {
    /** Longer is a gap in any log: a kiln without power falls by more than any reading's error and may be back within it. */
    static final double LONG_S = 3000;
    /** Longer is a gap in a log that otherwise has a row every minute or few. */
    private static final double SHORT_S = 1200;

    private static final double SPACINGS = 6;

    /** All gaps between readings, in time order. */
    static List<Gap> of(List<LogRow> readings) {
        double[] span = new double[Math.max(0, readings.size() - 1)];
        for (int i = 0; i < span.length; i++) {
            span[i] = readings.get(i + 1).timeS() - readings.get(i).timeS();
        }
        double[] sorted = span.clone();
        Arrays.sort(sorted);
        double usual = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
        double most = Math.min(LONG_S, Math.max(SHORT_S, SPACINGS * usual));
        List<Gap> out = new ArrayList<>();
        for (int i = 0; i < span.length; i++) {
            if (span[i] > most) {
                LogRow a = readings.get(i);
                LogRow b = readings.get(i + 1);
                out.add(new Gap(a.line(), b.line(), a.timeS(), b.timeS()));
            }
        }
        return out;
    }

    /** Its length, s. */
    public double seconds() {
        return toS - fromS;
    }
}
