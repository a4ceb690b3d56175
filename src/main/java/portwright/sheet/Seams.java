package portwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where one direction of a part is cut into sheets. Windows are all equally wide and overlap by at least the given
 * length; the trim line (seam) lies inside the overlap. Seams dodge the holes and the part's axis where that is possible
 * without one more sheet.
 *
 * @param windows lower end of each window, ascending, mm
 * @param seams trim lines between neighbouring windows, mm
 * @param window width of a window, mm
 */
record Seams(List<Double> windows, List<Double> seams, double window) {
    /** Room wanted between a seam and a hole's edge: its metal hole stays on one sheet too. */
    private static final double CLEAR_MM = 14;

    /** A seam this near to the part's axis, or its words, would be taken for it. */
    private static final double AXIS_MM = 9;

    private static final double AXIS_COST = 10;
    private static final double STEP_MM = 0.5;
    private static final double CUT_COST = 1e6;

    /** A hole's extent in this direction. */
    record Span(double low, double high) {}

    static Seams of(double low, double high, double window, double overlap, List<Span> holes) {
        double length = high - low;
        double pitch = window - overlap;
        int n = length <= window ? 1 : (int) Math.ceil((length - overlap) / pitch - 1e-9);
        if (n == 1) {
            return new Seams(List.of((low + high - window) / 2), List.of(), window);
        }
        double half = overlap / 2;
        double[] seams = best(low, high, window, half, n - 1, holes);
        List<Double> windows = new ArrayList<>();
        List<Double> lines = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double from = i == 0 ? low : seams[i - 1] - half;
            double to = i == n - 1 ? high : seams[i] + half;
            windows.add((from + to - window) / 2);
            if (i < n - 1) {
                lines.add(seams[i]);
            }
        }
        return new Seams(List.copyOf(windows), List.copyOf(lines), window);
    }

    /** Dynamic programme over seam places on a fine grid: least number of cut holes, then the most even sheets. */
    private static double[] best(double low, double high, double window, double half, int count, List<Span> holes) {
        int places = (int) Math.floor((high - low) / STEP_MM) + 1;
        double even = (high - low) / (count + 1);
        double[] price = new double[places];
        for (int p = 0; p < places; p++) {
            double s = low + p * STEP_MM;
            price[p] = Math.abs(s) < AXIS_MM ? AXIS_COST : 0;
            for (Span h : holes) {
                if (s > h.low && s < h.high) {
                    price[p] += CUT_COST;
                } else if (s > h.low - CLEAR_MM && s < h.high + CLEAR_MM) {
                    price[p] += CUT_COST / 1e3;
                }
            }
        }
        double[][] cost = new double[count][places];
        int[][] from = new int[count][places];
        for (int k = 0; k < count; k++) {
            Arrays.fill(cost[k], Double.POSITIVE_INFINITY);
            for (int p = 0; p < places; p++) {
                double s = low + p * STEP_MM;
                double off = s - (low + even * (k + 1));
                double own = price[p] + off * off / 1e4;
                if (k == count - 1 && high - s > window - half) {
                    continue;
                }
                if (k == 0) {
                    if (s - low <= window - half) {
                        cost[0][p] = own;
                    }
                    continue;
                }
                int reach = (int) Math.floor((window - 2 * half) / STEP_MM + 1e-9);
                for (int q = Math.max(0, p - reach); q < p; q++) {
                    if (cost[k - 1][q] + own < cost[k][p]) {
                        cost[k][p] = cost[k - 1][q] + own;
                        from[k][p] = q;
                    }
                }
            }
        }
        int p = 0;
        for (int i = 1; i < places; i++) {
            if (cost[count - 1][i] < cost[count - 1][p]) {
                p = i;
            }
        }
        if (Double.isInfinite(cost[count - 1][p])) {
            double[] plain = new double[count];
            for (int k = 0; k < count; k++) {
                plain[k] = low + even * (k + 1);
            }
            return plain;
        }
        double[] seams = new double[count];
        for (int k = count - 1; k >= 0; k--) {
            seams[k] = low + p * STEP_MM;
            p = from[k][p];
        }
        return seams;
    }

    int count() {
        return windows.size();
    }
}
