package portwright.layout;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;

/**
 * Where a mark would be safe: the shortest move of it that brings the share of drillings that stop to what is aimed at; where none does within
 * {@link #REACH_MM}, the move with the fewest stops there. Sought on rings, at most 4 mm apart on each, the best then followed to where no step gains;
 * lengths are found to about 0.2 mm. Told in tenths of a millimetre along both axes, and judged as told.
 *
 * @param x to the right, mm
 * @param y to the back, in walls up, mm
 * @param stop share of drillings that stop with the mark so moved, 0 to 1
 */
record Nudge(double x, double y, double stop) {
    /** Longest move that is looked at, mm: what lies a drill's wander farther off is still known there. */
    static final double REACH_MM = 20;

    private static final double RING_MM = 2;
    /** From here on a ring has bearings between the others too, mm. */
    private static final double WIDE_MM = 10;

    /** Steps by which the safest move is followed, mm: the longest and the shortest. */
    private static final double LONG_MM = 4;

    private static final double SHORT_MM = 0.5;
    private static final double TOLD_MM = 0.1;
    /** Bearings of a ring, those along the axes first: they are kept unless another saves what a rule shows. */
    private static final double[] BEARINGS = {
        0, 90, 180, 270, 45, 135, 225, 315, 22.5, 67.5, 112.5, 157.5, 202.5, 247.5, 292.5, 337.5
    };

    /**
     * @param share drillings that stop, of all, with the mark moved so far to the right and to the back
     * @param start the same with the mark where it is
     * @param aim share that is safe enough
     */
    static Nudge of(DoubleBinaryOperator share, double start, double aim) {
        Nudge least = new Nudge(0, 0, start);
        if (start <= aim) {
            return least;
        }
        for (double ring = RING_MM; ring <= REACH_MM; ring += RING_MM) {
            double far = Double.POSITIVE_INFINITY;
            double way = 0;
            for (double bearing : bearings(ring)) {
                Nudge there = at(share, bearing, ring);
                least = there.stop < least.stop ? there : least;
                if (there.stop <= aim) {
                    double first = from(share, bearing, ring - RING_MM, ring, aim);
                    if (first < far - TOLD_MM) {
                        far = first;
                        way = bearing;
                    }
                }
            }
            if (far < Double.POSITIVE_INFINITY) {
                return told(share, shorter(share, way, far, ring - RING_MM, aim), aim);
            }
        }
        Nudge safest = followed(share, least);
        if (safest.stop > aim) {
            return safest;
        }
        double way = Math.toDegrees(Math.atan2(safest.x, safest.y));
        double first = from(share, way, 0, Math.hypot(safest.x, safest.y), aim);
        Nudge shortest = told(share, shorter(share, way, first, 0, aim), aim);
        return shortest.stop <= aim ? shortest : safest;
    }

    private static Nudge at(DoubleBinaryOperator share, double bearing, double far) {
        return at(share, far * Math.sin(Math.toRadians(bearing)), far * Math.cos(Math.toRadians(bearing)), TOLD_MM);
    }

    private static Nudge at(DoubleBinaryOperator share, double x, double y, double step) {
        double rx = Math.round(x / step) * step;
        double ry = Math.round(y / step) * step;
        return new Nudge(rx, ry, share.applyAsDouble(rx, ry));
    }

    private static double exact(DoubleBinaryOperator share, double bearing, double far) {
        return share.applyAsDouble(far * Math.sin(Math.toRadians(bearing)), far * Math.cos(Math.toRadians(bearing)));
    }

    /** How far along a bearing the aim is first met, between a place that misses it and one that meets it. */
    private static double from(DoubleBinaryOperator share, double bearing, double misses, double meets, double aim) {
        double low = misses;
        double high = meets;
        while (high - low > TOLD_MM / 4) {
            double middle = (low + high) / 2;
            if (exact(share, bearing, middle) <= aim) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** Bearing and length of a shorter move beside one that meets the aim. */
    private static double[] shorter(DoubleBinaryOperator share, double bearing, double far, double misses, double aim) {
        double[] best = {bearing, far};
        for (double turn = 11.25; turn > 1; turn /= 2) {
            for (int side = -1; side <= 1; side += 2) {
                double b = best[0] + side * turn;
                if (best[1] - TOLD_MM > misses && exact(share, b, best[1] - TOLD_MM) <= aim) {
                    best = new double[] {b, from(share, b, misses, best[1] - TOLD_MM, aim)};
                }
            }
        }
        return best;
    }

    /** In tenths of a millimetre, as little longer as still meets the aim. */
    private static Nudge told(DoubleBinaryOperator share, double[] move, double aim) {
        Nudge n = at(share, move[0], move[1]);
        for (double more = TOLD_MM / 2; n.stop > aim && more < RING_MM; more += TOLD_MM / 2) {
            n = at(share, move[0], move[1] + more);
        }
        return n;
    }

    private static double[] bearings(double ring) {
        double between = 360.0 / BEARINGS.length / 2;
        return ring < WIDE_MM
                ? BEARINGS
                : DoubleStream.concat(
                                Arrays.stream(BEARINGS), Arrays.stream(BEARINGS).map(b -> b + between))
                        .toArray();
    }

    /** The move that is followed from one by ever shorter steps, as long as fewer drillings stop. */
    private static Nudge followed(DoubleBinaryOperator share, Nudge from) {
        Nudge best = from;
        for (double step = LONG_MM; step >= SHORT_MM; ) {
            Nudge about = best;
            for (int k = 0; k < 16; k++) {
                double x = about.x + step * Math.sin(k * Math.PI / 8);
                double y = about.y + step * Math.cos(k * Math.PI / 8);
                if (Math.hypot(x, y) <= REACH_MM - TOLD_MM) {
                    Nudge n = at(share, x, y, TOLD_MM);
                    best = n.stop < best.stop ? n : best;
                }
            }
            step = best == about ? step / 2 : step;
        }
        return best;
    }
}
