package portwright.layout;

import java.util.SplittableRandom;

/** Climbs along the axes and along random directions, from long steps (24 mm) to short ones (0.05 mm). */
final class Compass {
    private static final double LONG_MM = 24;
    private static final double SHORT_MM = 0.03;
    private static final int ROUNDS = 6;

    private Compass() {}

    /** What is climbed. */
    interface Hill {
        /** Height at a place; whatever is not above {@code enough} may be answered roughly. */
        double at(double[] p, double enough);
    }

    /** Moves p uphill; gives the height reached. */
    static double climb(double[] p, Hill hill, SplittableRandom random, Progress progress) {
        double best = hill.at(p, Double.NEGATIVE_INFINITY);
        int m = p.length;
        double[] q = new double[m];
        int extra = Math.min(24, 4 * m);
        for (double step = LONG_MM; step > SHORT_MM; step /= 2) {
            boolean moved = true;
            for (int round = 0; moved && round < ROUNDS && !progress.cancelled(); round++) {
                moved = false;
                for (int k = 0; k < 2 * m + extra; k++) {
                    System.arraycopy(p, 0, q, 0, m);
                    if (k < 2 * m) {
                        q[k / 2] += k % 2 == 0 ? step : -step;
                    } else {
                        for (int i = 0; i < m; i++) {
                            q[i] += step * (2 * random.nextDouble() - 1);
                        }
                    }
                    double v = hill.at(q, best);
                    if (v > best + 1e-12) {
                        best = v;
                        System.arraycopy(q, 0, p, 0, m);
                        moved = true;
                    }
                }
            }
        }
        return best;
    }
}
