package portwright.layout;

import java.util.ArrayList;
import java.util.List;

/** Symmetric arrangements of n holes about a middle, each with a few lengths and angles to choose. */
final class Families {
    private Families() {}

    /**
     * One arrangement.
     *
     * @param name in words
     * @param lengths how many of its first parameters are lengths (mm); the rest are angles (rad)
     */
    record Family(String name, int lengths, int angles, Placer placer) {}

    /** Writes the places of all holes. */
    interface Placer {
        void place(double[] p, double[] x, double[] y);
    }

    static List<Family> of(int n, boolean oblong) {
        List<Family> out = new ArrayList<>();
        if (n == 1) {
            out.add(new Family("in the middle", 0, 0, (p, x, y) -> {
                x[0] = 0;
                y[0] = 0;
            }));
            return out;
        }
        if (!oblong && n != 2) {
            out.add(new Family("on a circle", 1, 1, (p, x, y) -> ring(p[0], p[0], p[1], n, x, y)));
        }
        if (oblong && n != 2) {
            out.add(new Family("on an oval", 2, 1, (p, x, y) -> ring(p[0], p[1], p[2], n, x, y)));
        }
        out.add(new Family(n == 2 ? "as a pair across the middle" : "in a row", 1, 1, (p, x, y) -> {
            for (int i = 0; i < n; i++) {
                double s = (i - (n - 1) / 2.0) * p[0] * (n == 2 ? 2 : 1);
                x[i] = s * Math.sin(p[1]);
                y[i] = s * Math.cos(p[1]);
            }
        }));
        if (n >= 4) {
            out.add(new Family("on a circle with one in the middle", 1, 1, (p, x, y) -> {
                ring(p[0], p[0], p[1], n - 1, x, y);
                x[n - 1] = 0;
                y[n - 1] = 0;
            }));
        }
        if (n >= 4 && n % 2 == 0) {
            out.add(new Family("in two rows", 2, 1, (p, x, y) -> {
                for (int i = 0; i < n; i++) {
                    int row = i / 2;
                    double along = (row - (n / 2 - 1) / 2.0) * p[0];
                    double across = (i % 2 == 0 ? -0.5 : 0.5) * p[1];
                    x[i] = along * Math.sin(p[2]) + across * Math.cos(p[2]);
                    y[i] = along * Math.cos(p[2]) - across * Math.sin(p[2]);
                }
            }));
        }
        return out;
    }

    private static void ring(double a, double b, double turn, int n, double[] x, double[] y) {
        for (int i = 0; i < n; i++) {
            double w = turn + 2 * Math.PI * i / n;
            x[i] = a * Math.sin(w);
            y[i] = b * Math.cos(w);
        }
    }
}
