package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import portwright.geometry.Segment;

/** Places away from the middle from which a search of one slab sets out. Lengths in mm; the random stream has a fixed start. */
final class Scatter {
    private static final long SEED = 7;

    private final Site site;
    private final int n;
    private final Segment box;
    private final double size;

    Scatter(Site site, int n) {
        this.site = site;
        this.n = n;
        box = site.kiln.inner().bounds();
        size = Math.max(box.b().x() - box.a().x(), box.b().y() - box.a().y());
    }

    /** Starts away from the middle: for two holes the best pair of a grid, else holes added one by one where they hurt least. */
    List<double[]> starts(int count) {
        double step = Math.max(size / 36, 10);
        List<double[]> points = new ArrayList<>();
        for (double x = box.a().x() + step / 2; x < box.b().x(); x += step) {
            for (double y = box.a().y() + step / 2; y < box.b().y(); y += step) {
                double m = site.hole(x, y);
                if (m > -1) {
                    points.add(new double[] {x, y, m});
                }
            }
        }
        points.sort(Comparator.comparingDouble(a -> -a[2]));
        List<double[]> out = new ArrayList<>();
        if (points.size() < n) {
            return out;
        }
        if (n == 1) {
            out.add(new double[] {points.get(0)[0], points.get(0)[1]});
            return out;
        }
        if (n == 2) {
            out.addAll(pairs(points, count));
            return out;
        }
        SplittableRandom random = new SplittableRandom(SEED + n);
        for (int c = 0; c < count; c++) {
            double[] first = points.get(random.nextInt(Math.max(1, points.size() / 2)));
            double[] tx = new double[n];
            double[] ty = new double[n];
            tx[0] = first[0];
            ty[0] = first[1];
            for (int i = 1; i < n; i++) {
                double[] next = null;
                double most = Double.NEGATIVE_INFINITY;
                for (double[] q : points) {
                    double m = q[2];
                    for (int j = 0; j < i && m > most; j++) {
                        m = Math.min(m, site.pair(q[0], q[1], tx[j], ty[j]));
                    }
                    if (m > most) {
                        most = m;
                        next = q;
                    }
                }
                tx[i] = next[0];
                ty[i] = next[1];
            }
            double[] p = Arrays.copyOf(tx, 2 * n);
            System.arraycopy(ty, 0, p, n, n);
            out.add(p);
        }
        return out;
    }

    private List<double[]> pairs(List<double[]> points, int count) {
        List<double[]> best = new ArrayList<>();
        double cut = Double.NEGATIVE_INFINITY;
        double[] x = new double[2];
        double[] y = new double[2];
        for (int i = 0; i < points.size() && points.get(i)[2] > cut; i++) {
            for (int j = 0; j < i; j++) {
                x[0] = points.get(i)[0];
                y[0] = points.get(i)[1];
                x[1] = points.get(j)[0];
                y[1] = points.get(j)[1];
                double m = Math.min(points.get(i)[2], Math.min(site.pair(x[0], y[0], x[1], y[1]), site.balance(x, y)));
                if (m > cut) {
                    m = Math.min(m, site.section(x, y));
                    if (m > cut) {
                        best.add(new double[] {x[0], x[1], y[0], y[1], m});
                        best.sort(Comparator.comparingDouble(a -> -a[4]));
                        if (best.size() > count) {
                            best.remove(count);
                            cut = best.get(count - 1)[4];
                        }
                    }
                }
            }
        }
        return best.stream().map(a -> Arrays.copyOf(a, 4)).toList();
    }
}
