package portwright.layout;

import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * Climbs by random steps that learn which way they gain ({@link Strides}), until they are too short to matter (0.01 mm). Kinks, where no step along an
 * axis gains, are crept along.
 */
final class Compass {
    private static final double SHORT_MM = 0.01;
    /** Where a rough climb ends. */
    private static final double ROUGH_MM = 1;

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
            double first = k == 0 ? longMm : Math.min(longMm, AGAIN_MM);
            double v = once(p, best, first, SHORT_MM, hill, random, progress);
            gains = v > best + WORTH * Math.abs(best);
            best = v;
        }
        return best;
    }

    /** Moves p uphill roughly, to tell which of many starts lead high; gives the height reached. */
    static double rough(double[] p, double longMm, Hill hill, SplittableRandom random, Progress progress) {
        double from = hill.at(p, Double.NEGATIVE_INFINITY);
        return once(p, from, longMm, ROUGH_MM, hill, random, progress);
    }

    /** The highest of so many throws. */
    static double[] highest(int many, Hill hill, Supplier<double[]> thrown) {
        double[] best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < many; k++) {
            double[] p = thrown.get();
            double v = hill.at(p, most);
            if (best == null || v > most) {
                most = v;
                best = p;
            }
        }
        return best;
    }

    private static double once(
            double[] p,
            double from,
            double longMm,
            double shortMm,
            Hill hill,
            SplittableRandom random,
            Progress progress) {
        double best = from;
        double[] q = new double[p.length];
        Strides strides = new Strides(p.length, longMm);
        while (strides.length() > shortMm && !progress.cancelled()) {
            strides.step(p, q, random);
            double v = hill.at(q, best);
            boolean gained = v > best + 1e-12;
            if (gained) {
                best = v;
                System.arraycopy(q, 0, p, 0, q.length);
            }
            strides.learn(gained);
        }
        return best;
    }
}
