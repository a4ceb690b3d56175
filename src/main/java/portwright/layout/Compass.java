package portwright.layout;

import java.util.SplittableRandom;

/**
 * Climbs by random steps: of all numbers or of some, longer after a gain, shorter after a failure, until they are too short to matter (0.01 mm). Kinks,
 * where no step along an axis gains, are crept along.
 */
final class Compass {
    private static final double SHORT_MM = 0.01;
    private static final double LONGER = 1.5;
    private static final double SHORTER = 0.975;
    /** After a climb others set out from its end with shorter steps, while they gain; mm. */
    private static final double AGAIN_MM = 6;

    private static final int CLIMBS = 4;
    /** Gain of a climb, as a share, from which another is made. */
    private static final double WORTH = 1e-3;

    private Compass() {}

    /** What is climbed. */
    interface Hill {
        /** Height at a place; whatever is not above {@code enough} may be answered roughly. */
        double at(double[] p, double enough);
    }

    /** Moves p uphill, with first steps of some length in mm; gives the height reached. */
    static double climb(double[] p, double longMm, Hill hill, SplittableRandom random, Progress progress) {
        double best = hill.at(p, Double.NEGATIVE_INFINITY);
        boolean gains = true;
        for (int k = 0; k < CLIMBS && gains; k++) {
            double v = once(p, best, k == 0 ? longMm : Math.min(longMm, AGAIN_MM), hill, random, progress);
            gains = v > best + WORTH * Math.abs(best);
            best = v;
        }
        return best;
    }

    private static double once(
            double[] p, double from, double longMm, Hill hill, SplittableRandom random, Progress progress) {
        double best = from;
        double[] q = new double[p.length];
        for (double step = longMm; step > SHORT_MM && !progress.cancelled(); ) {
            boolean some = random.nextBoolean();
            for (int i = 0; i < q.length; i++) {
                q[i] = p[i] + (some && random.nextInt(q.length) >= 2 ? 0 : step * random.nextGaussian());
            }
            double v = hill.at(q, best);
            if (v > best + 1e-12) {
                best = v;
                System.arraycopy(q, 0, p, 0, q.length);
                step *= LONGER;
            } else {
                step *= SHORTER;
            }
        }
        return best;
    }
}
