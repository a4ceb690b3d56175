package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import portwright.geometry.Segment;

/**
 * Starts of a search of inlets and flues at once: holes thrown at random where each by itself has nearly the room of a layout already known, the best of
 * many throws. Lengths in mm.
 */
final class Thrown {
    private static final int THROWS = 300;
    private static final double LEAST_STEP_MM = 10;
    /** Places along the longer side of the chamber. */
    private static final double ALONG = 36;
    /** How much of the known margin a hole by itself must have, as the climb will move it, and how many places are taken even with less. */
    private static final double NEARLY = 0.8;

    private static final int LEAST = 60;

    private final List<double[]> floor;
    private final List<double[]> lid;
    private final int n;
    private final int m;

    /** @param known margin of the best layout known */
    Thrown(Site floor, int n, Site lid, int m, double known) {
        this.floor = places(floor, known);
        this.lid = places(lid, known);
        this.n = n;
        this.m = m;
    }

    private static List<double[]> places(Site site, double known) {
        Segment box = site.kiln.inner().bounds();
        double w = box.b().x() - box.a().x();
        double d = box.b().y() - box.a().y();
        double step = Math.max(Math.max(w, d) / ALONG, LEAST_STEP_MM);
        List<double[]> all = new ArrayList<>();
        for (double x = box.a().x() + step / 2; x < box.b().x(); x += step) {
            for (double y = box.a().y() + step / 2; y < box.b().y(); y += step) {
                all.add(new double[] {x, y, site.hole(x, y)});
            }
        }
        all.sort(Comparator.comparingDouble(a -> -a[2]));
        double enough = known - (1 - NEARLY) * Math.abs(known);
        int many = (int) all.stream().filter(a -> a[2] > enough).count();
        return all.subList(0, Math.min(all.size(), Math.max(LEAST, many)));
    }

    /** x of the inlets, then their y, then those of the flues. */
    double[] start(Compass.Hill hill, SplittableRandom random) {
        return Compass.highest(THROWS, hill, () -> {
            double[] p = new double[2 * (n + m)];
            put(p, 0, n, floor, random);
            put(p, 2 * n, m, lid, random);
            return p;
        });
    }

    private static void put(double[] p, int from, int n, List<double[]> places, SplittableRandom random) {
        for (int i = 0; i < n; i++) {
            double[] at = places.get(random.nextInt(places.size()));
            p[from + i] = at[0];
            p[from + n + i] = at[1];
        }
    }
}
