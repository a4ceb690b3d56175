package portwright.calc.firing.record;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A log on an even grid of one minute, smoothed by a moving straight line, with what was last noted of damper and gas.
 *
 * @param celsius smoothed, °C
 * @param damper open share last noted; NaN before the first note
 * @param gasPa gauge pressure last noted; NaN before the first note
 * @param missing inside a gap of more than half an hour
 * @param windowS half width of the smoothing
 */
record Track(double[] celsius, double[] damper, double[] gasPa, boolean[] missing, double windowS) {
    static final double STEP_S = 60;
    private static final double GAP_S = 1800;
    private static final double NARROWEST_S = 360;

    int size() {
        return celsius.length;
    }

    static Track of(FiringLog log, DoubleUnaryOperator shareOfMm) {
        List<LogRow> rows = log.rows();
        int n = (int) Math.floor(log.seconds() / STEP_S) + 1;
        double window = Math.max(NARROWEST_S, 2 * medianSpacing(rows));
        double[] damper = new double[n];
        double[] gas = new double[n];
        boolean[] missing = new boolean[n];
        double[] smooth = new double[n];
        int k = -1;
        double share = Double.NaN;
        double pa = Double.NaN;
        int low = 0;
        int high = 0;
        for (int i = 0; i < n; i++) {
            double t = i * STEP_S;
            while (k + 1 < rows.size() && rows.get(k + 1).timeS() <= t) {
                k++;
                LogRow r = rows.get(k);
                double s = !Double.isNaN(r.damperShare()) ? r.damperShare()
                        : !Double.isNaN(r.damperMm()) && shareOfMm != null ? shareOfMm.applyAsDouble(r.damperMm()) : Double.NaN;
                share = Double.isNaN(s) ? share : s;
                pa = Double.isNaN(r.gasPa()) ? pa : r.gasPa();
            }
            damper[i] = share;
            gas[i] = pa;
            missing[i] = k + 1 < rows.size() && k >= 0 && rows.get(k + 1).timeS() - rows.get(k).timeS() > GAP_S;
            while (low < rows.size() && rows.get(low).timeS() < t - window) {
                low++;
            }
            while (high < rows.size() && rows.get(high).timeS() <= t + window) {
                high++;
            }
            smooth[i] = line(rows, Math.max(0, Math.min(low, Math.max(0, k - 1))), Math.min(rows.size(), Math.max(high, k + 2)), t);
        }
        return new Track(smooth, damper, gas, missing, window);
    }

    private static double medianSpacing(List<LogRow> rows) {
        double[] d = new double[rows.size() - 1];
        for (int i = 0; i < d.length; i++) {
            d[i] = rows.get(i + 1).timeS() - rows.get(i).timeS();
        }
        Arrays.sort(d);
        return d[d.length / 2];
    }

    /** Least-squares line through rows from..to, its value at t. */
    private static double line(List<LogRow> rows, int from, int to, double t) {
        double n = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        int stride = Math.max(1, (to - from) / 200);
        for (int i = from; i < to; i += stride) {
            double x = rows.get(i).timeS() - t;
            double y = rows.get(i).temperatureC();
            n++;
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        double d = n * sxx - sx * sx;
        return d < 1e-6 ? sy / n : (sy * sxx - sx * sxy) / d;
    }

    /** Climb at a minute, K/s, over ten minutes about it. */
    double climb(int i) {
        int a = Math.max(0, i - 5);
        int b = Math.min(size() - 1, i + 5);
        return b == a ? 0 : (celsius[b] - celsius[a]) / ((b - a) * STEP_S);
    }

    Track shifted(double[] byC) {
        double[] c = celsius.clone();
        for (int i = 0; i < c.length; i++) {
            c[i] += byC[i];
        }
        return new Track(c, damper, gasPa, missing, windowS);
    }
}
