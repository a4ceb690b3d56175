package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.units.Celsius;

/**
 * Readings that no kiln can have had: off the line of the readings before and after them, out and back faster than brick and load can cool and
 * heat. A bad contact, a relay's pulse or a slip of the pen, not the chamber. A fall that lasts is left as it is.
 *
 * <p>Limits are this project's judgement. A reading that stands alone is wild when the way up to it, or back up from it, is steeper than any
 * brick kiln climbs: 1000 °C/h near room temperature, 300 °C/h from 1000 °C on; or when it lies, between two that climb, nearly as cold as the coldest. The skin of brick and ware, which follows power within minutes,
 * stays below 15 °C. Several wild readings in a row must jump out and back four times as fast, so that power which goes and comes again is
 * never taken for them; so must a first or last reading.
 */
final class Spikes {
    private static final double LEAST_K = 15;
    private static final double NOISES = 8;
    /** No thermocouple is noisier; more is wild readings. */
    private static final double MOST_NOISE_K = 6;

    private static final double COLD_K = 473.15;
    private static final double COLD_K_PER_S = 1000 / 3600.0;
    private static final double HOT_K = 1000 + Celsius.ZERO_C;
    private static final double HOT_K_PER_S = 300 / 3600.0;
    private static final double STEEPEST_K_PER_S = 600 / 3600.0;
    static final double RUN_LEAST_K = 60;
    static final double RUN_FASTER = 4;
    private static final double RUN_S = 1800;
    /** What is left of the height over the coldest reading where one dips that far. */
    private static final double DIPS_TO = 0.25;

    private static final int RUN_MOST = 400;
    private static final int PASSES = 4;

    private final List<LogRow> rows;
    private final List<LogFault> faults;
    private final double noiseK;
    private final double coldestK;

    private Spikes(List<LogRow> rows, List<LogFault> faults) {
        this.rows = rows;
        this.faults = faults;
        noiseK = noise(rows);
        coldestK = rows.stream()
                .filter(r -> r.kelvin() != null)
                .mapToDouble(LogRow::kelvin)
                .min()
                .orElse(0);
    }

    /** The rows without wild readings; each is told in the faults. A row that tells something else as well keeps that. */
    static List<LogRow> leftOut(List<LogRow> rows, List<LogFault> faults) {
        List<LogRow> left = rows;
        for (int pass = 0; pass < PASSES; pass++) {
            List<LogRow> next = new Spikes(left, faults).pass();
            if (next.equals(left)) {
                return next;
            }
            left = next;
        }
        return left;
    }

    private List<LogRow> pass() {
        List<LogRow> r = rows.stream().filter(x -> x.kelvin() != null).toList();
        boolean[] wild = new boolean[r.size()];
        int before = -1;
        int i = 0;
        while (i < r.size()) {
            int n = r.size() < 4 ? 0 : run(r, before, i);
            for (int k = i; k < i + n; k++) {
                wild[k] = true;
                faults.add(new LogFault(r.get(k).line(), !r.get(k).tells(), reason(r, before, k, i + n)));
            }
            i += n;
            if (n == 0) {
                before = i++;
            }
        }
        List<LogRow> out = new ArrayList<>(rows.size());
        int k = 0;
        for (LogRow x : rows) {
            boolean bad = x.kelvin() != null && wild[k++];
            if (!bad) {
                out.add(x);
            } else if (x.tells()) {
                out.add(x.withoutReading());
            }
        }
        return out;
    }

    /** How many readings from one on are wild; {@code before} is the last good one, −1 for none. */
    private int run(List<LogRow> r, int before, int i) {
        int last = r.size() - 1;
        if (i == last) {
            return before > 0 && alone(r.get(i), r.get(before), r.get(before - 1)) ? 1 : 0;
        }
        if (before < 0) {
            return i + 2 <= last && alone(r.get(i), r.get(i + 1), r.get(i + 2)) ? 1 : 0;
        }
        double out = off(r, before, before - 1, i);
        if (Math.abs(out) <= leastK() || Math.abs(bend(r.get(before), r.get(i), r.get(i + 1))) <= leastK()) {
            return 0;
        }
        double back = off(r, i + 1, i + 2, i);
        if (out * back > 0
                && Math.abs(back) > leastK()
                && (steep(r.get(out > 0 ? before : i + 1), r.get(i), 1)
                        || dips(r.get(before), r.get(i), r.get(i + 1)))) {
            return 1;
        }
        if (!jump(r.get(before), r.get(i))) {
            return 0;
        }
        for (int n = 1;
                n <= RUN_MOST
                        && i + n <= last
                        && r.get(i + n).timeS() - r.get(before).timeS() < RUN_S;
                n++) {
            int in = i + n - 1;
            int next = i + n;
            double change = r.get(next).kelvin() - r.get(in).kelvin();
            double line = off(r, before, before - 1, next);
            if (change * out < 0 && jump(r.get(in), r.get(next)) && Math.abs(line) < Math.abs(out) / 2) {
                return n;
            }
        }
        return 0;
    }

    /** Whether a reading lies most of the way back to the coldest of the log, between two that climb: no kiln cools so far so soon. */
    private boolean dips(LogRow a, LogRow x, LogRow b) {
        return b.kelvin() > a.kelvin()
                && b.timeS() - a.timeS() < 2 * RUN_S
                && x.kelvin() - coldestK < DIPS_TO * (a.kelvin() - coldestK);
    }

    /** Height of a reading over the straight line between its neighbours, K: one on it is not out and back, however the log bends before and behind. */
    private static double bend(LogRow a, LogRow x, LogRow b) {
        double dt = b.timeS() - a.timeS();
        return x.kelvin() - a.kelvin() - (b.kelvin() - a.kelvin()) * (x.timeS() - a.timeS()) / dt;
    }

    /** The first or last reading, which has neighbours on one side only; where it stands closer to the farther one by half, the nearer is the slip. */
    private boolean alone(LogRow x, LogRow near, LogRow far) {
        double off = x.kelvin() - near.kelvin() - slope(near, far) * (x.timeS() - near.timeS());
        boolean nearSlips = Math.abs(x.kelvin() - far.kelvin()) <= Math.abs(x.kelvin() - near.kelvin()) / 2;
        return Math.abs(off) > RUN_LEAST_K && !nearSlips && jump(near, x);
    }

    /** Whether two readings lie farther apart than any kiln climbs or falls, by far. */
    private boolean jump(LogRow a, LogRow b) {
        return Math.abs(a.kelvin() - b.kelvin()) > Math.max(RUN_LEAST_K, leastK()) && steep(a, b, RUN_FASTER);
    }

    /** Whether the way between two readings is so many times steeper than a kiln climbs at the good one's temperature. */
    static boolean steep(LogRow good, LogRow wild, double times) {
        double f = Math.max(0, Math.min(1, (good.kelvin() - COLD_K) / (HOT_K - COLD_K)));
        double most = COLD_K_PER_S + f * (HOT_K_PER_S - COLD_K_PER_S);
        return Math.abs(good.kelvin() - wild.kelvin()) > times * most * Math.abs(good.timeS() - wild.timeS());
    }

    /** Height of a reading over the line through another one, with the slope that the log has beyond that. */
    private static double off(List<LogRow> r, int near, int far, int i) {
        double slope = far < 0 || far >= r.size() ? 0 : slope(r.get(near), r.get(far));
        return r.get(i).kelvin()
                - r.get(near).kelvin()
                - slope * (r.get(i).timeS() - r.get(near).timeS());
    }

    private static double slope(LogRow a, LogRow b) {
        double dt = b.timeS() - a.timeS();
        return Math.max(-STEEPEST_K_PER_S, Math.min(STEEPEST_K_PER_S, (b.kelvin() - a.kelvin()) / dt));
    }

    /** How far a reading must stand off before it is looked at, K. */
    private double leastK() {
        return Math.max(LEAST_K, NOISES * noiseK);
    }

    /** Standard deviation of one reading, from its height over its neighbours (median, so that wild ones do not count). */
    static double noise(List<LogRow> rows) {
        double[] k = rows.stream()
                .filter(r -> r.kelvin() != null)
                .mapToDouble(LogRow::kelvin)
                .toArray();
        if (k.length < 3) {
            return 0;
        }
        double[] d = new double[k.length - 2];
        for (int i = 0; i < d.length; i++) {
            d[i] = Math.abs(k[i] - 2 * k[i + 1] + k[i + 2]);
        }
        Arrays.sort(d);
        return Math.min(MOST_NOISE_K, 1.4826 * d[d.length / 2] / Math.sqrt(6));
    }

    private static String reason(List<LogRow> r, int before, int k, int next) {
        boolean between = before >= 0 && next < r.size();
        String there = between
                ? "between " + c(r.get(before)) + " and " + c(r.get(next))
                : "beside " + c(r.get(before >= 0 ? before : next));
        double near = Math.max(
                before >= 0 ? r.get(k).timeS() - r.get(before).timeS() : 0,
                next < r.size() ? r.get(next).timeS() - r.get(k).timeS() : 0);
        return "implausible: " + c(r.get(k)) + " °C " + there + " °C within " + minutes(near)
                + "; no brick kiln falls and rises so fast. A bad contact or a slip; left out of the reckoning";
    }

    private static String minutes(double seconds) {
        return seconds < 90 ? Math.round(seconds) + " s" : Math.round(seconds / 60) + " min";
    }

    private static long c(LogRow r) {
        return Math.round(r.kelvin() - Celsius.ZERO_C);
    }
}
