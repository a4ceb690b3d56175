package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What stands on a chart already, so that words dodge it. */
final class Places {
    private static final double CURVE_PX = 5;

    private final List<double[]> firm = new ArrayList<>();
    private final List<double[]> soft = new ArrayList<>();

    /** Words or a sign: nothing goes over it. */
    void name(double x, double y, double w, double h) {
        firm.add(new double[] {x, y, w, h});
    }

    /** A point of a curve: words go over it only where there is no other place. */
    void curve(double x, double y) {
        soft.add(new double[] {x - CURVE_PX, y - CURVE_PX, 2 * CURVE_PX, 2 * CURVE_PX});
    }

    /** A stretch of a curve. */
    void line(double x0, double y0, double x1, double y1) {
        int parts = (int) Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / CURVE_PX));
        for (int i = 0; i <= parts; i++) {
            curve(x0 + (x1 - x0) * i / parts, y0 + (y1 - y0) * i / parts);
        }
    }

    /** The first of a list of upper left corners where a box covers nothing; null where none is. */
    double[] free(List<double[]> corners, double w, double h) {
        return corners.stream()
                .filter(at ->
                        Stream.concat(firm.stream(), soft.stream()).noneMatch(t -> meet(t, at[0] - 4, at[1], w + 8, h)))
                .findFirst()
                .orElse(null);
    }

    /** Whether a straight stroke runs over words or a sign. */
    boolean strikes(double x0, double y0, double x1, double y1) {
        int parts = (int) Math.ceil(Math.hypot(x1 - x0, y1 - y0) / CURVE_PX);
        return IntStream.rangeClosed(0, parts).anyMatch(i -> {
            double x = x0 + (x1 - x0) * i / Math.max(1, parts);
            double y = y0 + (y1 - y0) * i / Math.max(1, parts);
            return firm.stream().anyMatch(t -> meet(t, x, y, 0, 0));
        });
    }

    /** The first of a list of upper left corners where a box is free; else the first that only covers a curve; null where none is. */
    double[] first(double[][] corners, double w, double h) {
        double[] second = null;
        for (double[] at : corners) {
            if (firm.stream().noneMatch(t -> meet(t, at[0] - 4, at[1], w + 8, h))) {
                if (soft.stream().noneMatch(t -> meet(t, at[0] - 4, at[1], w + 8, h))) {
                    return at;
                }
                second = second == null ? at : second;
            }
        }
        return second;
    }

    /**
     * Moves heights that go downwards apart by at least {@code step}, as little as that takes, up and down alike.
     *
     * @param heights px, in their order; changed in place
     * @param top least height, px, kept where all fit under it
     * @param bottom greatest height, px
     */
    static void spread(double[] heights, double step, double top, double bottom) {
        int n = heights.length;
        double[] mean = new double[n];
        int[] size = new int[n];
        int blocks = 0;
        for (int i = 0; i < n; i++) {
            mean[blocks] = heights[i] - i * step;
            size[blocks++] = 1;
            while (blocks > 1 && mean[blocks - 1] < mean[blocks - 2]) {
                int both = size[blocks - 2] + size[blocks - 1];
                mean[blocks - 2] = (mean[blocks - 2] * size[blocks - 2] + mean[blocks - 1] * size[blocks - 1]) / both;
                size[blocks - 2] = both;
                blocks--;
            }
        }
        int i = 0;
        for (int b = 0; b < blocks; b++) {
            for (int k = 0; k < size[b]; k++, i++) {
                double highest = bottom - (n - 1) * step;
                heights[i] = Math.max(top, Math.min(highest, mean[b])) + i * step;
            }
        }
    }

    private static boolean meet(double[] a, double x, double y, double w, double h) {
        return a[0] < x + w && x < a[0] + a[2] && a[1] < y + h && y < a[1] + a[3];
    }
}
