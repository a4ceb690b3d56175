package portwright.layout;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import portwright.geometry.KilnGeometry;

/**
 * Seeded drillings of a whole kiln. Each strays every hole for itself and the measured elements once for all. For each hole and draw: centre x, y, tilt
 * shift x, y (of the whole thickness), growth of the radius; then one x, y of the measured elements; all mm.
 */
final class Drillings {
    private static final long SEED = 20260102;
    /** Where a shifted mark stops in each of so many first drillings, all count as stopped: with 99 in 100 sure fewer than 1 in 200 do not (0.995^1000). */
    private static final int HOPELESS = 1000;

    private final List<DrilledHole> holes;
    private final double[][] random;

    Drillings(KilnGeometry kiln, DrillError error, List<DrilledHole> holes, int draws) {
        this.holes = holes;
        SplittableRandom r = new SplittableRandom(SEED);
        random = new double[holes.size() * 5 + 2][draws];
        for (int i = 0; i < draws; i++) {
            for (int h = 0; h < holes.size(); h++) {
                double t = error.tiltSigma(kiln.thickness(holes.get(h).port().on()));
                random[5 * h][i] = error.centreSigma() * r.nextGaussian();
                random[5 * h + 1][i] = error.centreSigma() * r.nextGaussian();
                random[5 * h + 2][i] = t * r.nextGaussian();
                random[5 * h + 3][i] = t * r.nextGaussian();
                random[5 * h + 4][i] = error.oversizeMm() / 2 * r.nextDouble();
            }
            random[5 * holes.size()][i] = error.measureSigma() * r.nextGaussian();
            random[5 * holes.size() + 1][i] = error.measureSigma() * r.nextGaussian();
        }
    }

    int count() {
        return random[0].length;
    }

    /**
     * Number of drillings that stop with the mark shifted.
     *
     * @param sections how far the weakest section lets the hole move all round, mm
     * @param mx shift to the right, mm
     * @param my to the back, in walls up, mm
     * @param counts takes the number by rule; null where that is not asked
     * @param stopped takes each drilling that stops; null where that is not asked
     */
    int stops(DrilledHole h, double[] sections, double mx, double my, Map<String, Integer> counts, BitSet stopped) {
        int me = holes.indexOf(h);
        double[] cx = random[5 * me];
        double[] cy = random[5 * me + 1];
        double[] tx = random[5 * me + 2];
        double[] ty = random[5 * me + 3];
        double[] grow = random[5 * me + 4];
        double[] gx = random[5 * holes.size()];
        double[] gy = random[5 * holes.size() + 1];
        double nominal = h.radius() - h.diameter() / 2;
        Obstacle[] near = h.near().stream()
                .sorted(Comparator.comparingDouble(o -> o.gap().at(h.x() + mx, h.y() + my) - o.stop()))
                .toArray(Obstacle[]::new);
        // what stops most drillings is asked first
        int[] others = IntStream.range(0, holes.size())
                .filter(k -> k != me && holes.get(k).samePart(h) && spare(h, holes.get(k), 0, 0) < DrilledHole.REACH)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> spare(h, holes.get(k), mx, my)))
                .mapToInt(k -> k)
                .toArray();
        boolean weak = Arrays.stream(sections).min().orElse(0) < Wander.MOST_MM;
        int total = 0;
        for (int i = 0; i < cx.length; i++) {
            if (i == HOPELESS && total == i && counts == null && stopped == null) {
                return cx.length;
            }
            boolean stop = false;
            Set<String> broken = null;
            double x = h.x() + mx + cx[i];
            double y = h.y() + my + cy[i];
            for (int k = 0; k < others.length && !stop; k++) {
                if (meets(h, others[k], x, y, i, grow[i], tx[i], ty[i])) {
                    stop = true;
                    broken = note(broken, "port-spacing", counts);
                }
            }
            for (int k = 0; k < near.length && (counts != null || !stop); k++) {
                if (breaks(
                        near[k],
                        x,
                        y,
                        tx[i],
                        ty[i],
                        grow[i] - nominal,
                        near[k].moves() ? gx[i] : 0,
                        near[k].moves() ? gy[i] : 0)) {
                    stop = true;
                    broken = note(broken, near[k].rule(), counts);
                }
            }
            if (weak
                    && (counts != null || !stop)
                    && SectionRoom.leaves(sections, x - h.x(), y - h.y(), Wander.MOST_MM)) {
                stop = true;
                note(broken, "weakest-section", counts);
            }
            total += stop ? 1 : 0;
            if (stop && stopped != null) {
                stopped.set(i);
            }
        }
        return total;
    }

    /** Counts each rule once a drilling. */
    private static Set<String> note(Set<String> broken, String rule, Map<String, Integer> counts) {
        if (counts == null) {
            return null;
        }
        Set<String> now = broken == null ? new HashSet<>() : broken;
        if (now.add(rule)) {
            counts.merge(rule, 1, Integer::sum);
        }
        return now;
    }

    /** The bore against an obstacle, at both faces of the slab where it lies within the slab, else at the one face. */
    private static boolean breaks(
            Obstacle o, double x, double y, double tx, double ty, double wider, double gx, double gy) {
        double limit = o.stop() + (o.grows() ? wider : 0);
        boolean within = o.to() > o.from();
        return (within || o.from() < 1) && o.gap().at(x + tx - gx, y + ty - gy) < limit
                || (within || o.from() == 1) && o.gap().at(x - gx, y - gy) < limit;
    }

    private static double spare(DrilledHole h, DrilledHole o, double mx, double my) {
        return Math.hypot(h.x() + mx - o.x(), h.y() + my - o.y()) - h.apart(o);
    }

    private boolean meets(DrilledHole h, int it, double x, double y, int i, double grow, double tx, double ty) {
        DrilledHole o = holes.get(it);
        double dx = x - o.x() - random[5 * it][i];
        double dy = y - o.y() - random[5 * it + 1][i];
        double limit = (h.diameter() + o.diameter()) / 2
                + grow
                + random[5 * it + 4][i]
                + Math.max(h.spacingStop(), o.spacingStop());
        double ex = dx + tx - random[5 * it + 2][i];
        double ey = dy + ty - random[5 * it + 3][i];
        return dx * dx + dy * dy < limit * limit || ex * ex + ey * ey < limit * limit;
    }
}
