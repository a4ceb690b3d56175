package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/**
 * The best places of the holes of one role on its slab, sorted by how much of each shown layout they leave: many throws onto a grid whose places were
 * weighed before, the last hole mostly where it balances the others; one hole is tried at each place. Lengths in mm; the random stream has a fixed
 * start.
 */
final class Afresh {
    private static final int THROWS = 20_000;
    /** How often the last hole balances the others. */
    private static final double BALANCED = 0.8;

    private static final double ALONG = 200;
    private static final double LEAST_STEP_MM = 3;
    /** Places taken even with less than the margin asked for. */
    private static final int LEAST = 60;
    /** Kept of each kind by all margins but the weakest section; of these weighed by that too, and kept. */
    private static final int QUICK = 800;

    private static final int WEIGHED = 60;
    private static final int KEPT = 40;
    /** No two of them lie nearer. */
    private static final double ALIKE_MM = 12;

    private final Site site;
    private final List<double[]> grid;
    private final int n;
    private final Pt middle;
    private final List<Spots> shown;
    private final double[] withinMm;
    private final Map<List<Double>, Best> quick = new LinkedHashMap<>();
    private final double[] x;
    private final double[] y;

    /**
     * @param grid places of the slab ({@link #grid})
     * @param shown places of the same role in the layouts shown
     * @param withinMm distance within which a hole counts as standing where one of each of these does
     */
    Afresh(Site site, List<double[]> grid, int n, List<Spots> shown, double[] withinMm) {
        this.grid = grid;
        this.site = site;
        this.n = n;
        this.shown = shown;
        this.withinMm = withinMm;
        middle = site.kiln.centre();
        x = new double[n];
        y = new double[n];
    }

    /** The best by the shares of each shown layout that they leave ({@link Spots#elsewhere}); every margin weighed. */
    Map<List<Double>, List<Spots>> best(double least) {
        List<double[]> places = places(least);
        SplittableRandom random = new SplittableRandom(Together.SEED);
        int throwsMade = n == 1 ? places.size() : THROWS;
        for (int k = 0; k < throwsMade; k++) {
            double m = n == 1 ? Math.min(put(0, places.get(k)), site.balance(x, y)) : thrown(places, random);
            if (m > least / 2) {
                offer(m);
            }
        }
        Map<List<Double>, List<Spots>> out = new LinkedHashMap<>();
        quick.forEach((left, best) -> out.put(left, weighed(best)));
        return out;
    }

    /** Every place of a grid over a slab with the margin of one hole there, the widest first. */
    static List<double[]> grid(Site site) {
        Segment box = site.kiln.inner().bounds();
        double w = box.b().x() - box.a().x();
        double d = box.b().y() - box.a().y();
        double step = Math.max(Math.max(w, d) / ALONG, LEAST_STEP_MM);
        List<double[]> all = new ArrayList<>();
        for (double px = box.a().x() + step / 2; px < box.b().x(); px += step) {
            for (double py = box.a().y() + step / 2; py < box.b().y(); py += step) {
                all.add(new double[] {px, py, site.hole(px, py)});
            }
        }
        all.sort(Comparator.comparingDouble(a -> -a[2]));
        return all;
    }

    private List<double[]> places(double least) {
        int many = (int) grid.stream().filter(a -> a[2] > least).count();
        return grid.subList(0, Math.min(grid.size(), Math.max(LEAST, many)));
    }

    private double put(int i, double[] place) {
        x[i] = place[0];
        y[i] = place[1];
        return place[2];
    }

    private double thrown(List<double[]> places, SplittableRandom random) {
        boolean balanced = random.nextDouble() < BALANCED;
        double m = Scale.FREE;
        double sumX = n * middle.x();
        double sumY = n * middle.y();
        for (int i = 0; i < n - 1; i++) {
            m = Math.min(m, put(i, places.get(random.nextInt(places.size()))));
            sumX -= x[i];
            sumY -= y[i];
        }
        m = Math.min(
                m,
                balanced
                        ? put(n - 1, new double[] {sumX, sumY, site.hole(sumX, sumY)})
                        : put(n - 1, places.get(random.nextInt(places.size()))));
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                m = Math.min(m, site.pair(x[i], y[i], x[j], y[j]));
            }
        }
        return balanced ? m : Math.min(m, site.balance(x, y));
    }

    private void offer(double m) {
        Spots s = new Spots("", false, x, y, m);
        List<Double> left = IntStream.range(0, shown.size())
                .mapToObj(k -> s.elsewhere(shown.get(k), withinMm[k]))
                .toList();
        double[] p = new double[2 * n];
        System.arraycopy(x, 0, p, 0, n);
        System.arraycopy(y, 0, p, n, n);
        quick.computeIfAbsent(left, k -> new Best(QUICK, 2 * n)).offer(p, m);
    }

    private List<Spots> weighed(Best best) {
        List<Spots> all = new ArrayList<>();
        for (double[] p : best.rows()) {
            Spots s = Together.spots(p, 0, n);
            if (all.size() < WEIGHED && all.stream().noneMatch(o -> o.farFrom(s) < ALIKE_MM)) {
                all.add(s.weighed(site.sectionAbove(s.x(), s.y(), Double.NEGATIVE_INFINITY, p[2 * n])));
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(s -> -s.margin()))
                .limit(KEPT)
                .toList();
    }
}
