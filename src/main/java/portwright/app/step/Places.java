package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
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

    /** The first of a list of upper left corners where a box covers nothing; null where none is. */
    double[] free(List<double[]> corners, double w, double h) {
        return corners.stream()
                .filter(at ->
                        Stream.concat(firm.stream(), soft.stream()).noneMatch(t -> meet(t, at[0] - 4, at[1], w + 8, h)))
                .findFirst()
                .orElse(null);
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

    private static boolean meet(double[] a, double x, double y, double w, double h) {
        return a[0] < x + w && x < a[0] + a[2] && a[1] < y + h && y < a[1] + a[3];
    }
}
