package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/**
 * Best places of n holes on one slab: a grid over symmetric families, the best refined; then free places from the best of these and from scattered
 * starts. The random stream has a fixed start: the same design gives the same answer.
 */
final class SlabSearch {
    private static final long SEED = 7;
    /** A free arrangement replaces a symmetric one when it is better by more than this share. */
    static final double SYMMETRY_WORTH = 0.005;

    /** Difference of the two widths, as a share, from which a chamber counts as oblong; a regular hexagon differs by 0.134. */
    private static final double OBLONG = 0.15;

    private final Site site;
    private final int n;
    private final Pt middle;
    private final Segment box;
    private final double size;
    private final Progress progress;
    private final double[] tx;
    private final double[] ty;

    SlabSearch(Site site, int n, Progress progress) {
        this.site = site;
        this.n = n;
        this.progress = progress;
        middle = site.kiln.centre();
        box = site.kiln.inner().bounds();
        size = Math.max(box.b().x() - box.a().x(), box.b().y() - box.a().y());
        tx = new double[n];
        ty = new double[n];
    }

    /** Arrangements, best first; the first is the best found. */
    List<Spots> run() {
        List<Spots> out = new ArrayList<>();
        double w = box.b().x() - box.a().x();
        double d = box.b().y() - box.a().y();
        boolean oblong = Math.abs(w - d) > OBLONG * size;
        for (Families.Family f : Families.of(n, oblong)) {
            out.addAll(family(f));
            if (progress.cancelled()) {
                break;
            }
        }
        free(out);
        out.sort(Comparator.comparingDouble(
                (Spots s) -> -(s.margin() + (s.symmetric() ? SYMMETRY_WORTH * Math.abs(s.margin()) : 0))));
        return out;
    }

    private List<Spots> family(Families.Family f) {
        int k = f.lengths() + f.angles();
        double step = n > 6 ? 12 : 8;
        int lengths = Math.max(1, (int) (size / 2 / step));
        int turns = n > 6 ? 12 : 24;
        int total = 1;
        for (int i = 0; i < k; i++) {
            total *= i < f.lengths() ? lengths : turns;
        }
        double[] p = new double[k];
        List<double[]> grid = new ArrayList<>();
        for (int c = 0; c < total; c++) {
            int rest = c;
            for (int i = 0; i < k; i++) {
                int m = i < f.lengths() ? lengths : turns;
                p[i] = i < f.lengths()
                        ? (rest % m + 1) * step
                        : (rest % m) * Math.PI * (n == 2 || f.lengths() == 2 ? 1 : 2) / turns;
                rest /= m;
            }
            put(f, p);
            double[] row = Arrays.copyOf(p, k + 1);
            row[k] = site.quick(tx, ty, Double.NEGATIVE_INFINITY);
            grid.add(row);
        }
        grid.sort(Comparator.comparingDouble(a -> -a[k]));
        List<double[]> best = new ArrayList<>();
        double cut = Double.NEGATIVE_INFINITY;
        for (double[] row : grid.subList(0, Math.min(grid.size(), 400))) {
            if (row[k] <= cut) {
                break;
            }
            put(f, row);
            row[k] = site.margin(tx, ty, cut);
            best.add(row);
            if (best.size() >= 24) {
                best.sort(Comparator.comparingDouble(a -> -a[k]));
                cut = best.get(Math.min(best.size(), 12) - 1)[k];
            }
        }
        best.sort(Comparator.comparingDouble(a -> -a[k]));
        List<Spots> out = new ArrayList<>();
        for (double[] row : best) {
            put(f, row);
            Spots raw = spots(f.name(), true, row[k]);
            if (out.size() < 3 && out.stream().noneMatch(o -> o.farFrom(raw) < site.diameter)) {
                double m = refine(row, f);
                put(f, row);
                Spots s = spots(f.name(), true, m);
                if (out.stream().noneMatch(o -> o.farFrom(s) < 1)) {
                    out.add(s);
                }
            }
        }
        return out;
    }

    private void put(Families.Family f, double[] p) {
        f.placer().place(p, tx, ty);
        for (int i = 0; i < n; i++) {
            tx[i] += middle.x();
            ty[i] += middle.y();
        }
    }

    private Spots spots(String name, boolean symmetric, double margin) {
        return new Spots(name, symmetric, tx.clone(), ty.clone(), margin);
    }

    private double refine(double[] p, Families.Family f) {
        int k = f.lengths() + f.angles();
        double best = value(p, f, Double.NEGATIVE_INFINITY);
        for (double step = 6; step > 0.02; step /= 2) {
            boolean moved = true;
            for (int round = 0; moved && round < 12; round++) {
                moved = false;
                for (int i = 0; i < k; i++) {
                    double by = i < f.lengths() ? step : step / 100;
                    for (int sign = -1; sign <= 1; sign += 2) {
                        p[i] += sign * by;
                        double v = value(p, f, best);
                        if (v > best + 1e-12) {
                            best = v;
                            moved = true;
                        } else {
                            p[i] -= sign * by;
                        }
                    }
                }
            }
        }
        return best;
    }

    private double value(double[] p, Families.Family f, double enough) {
        for (int i = 0; i < f.lengths(); i++) {
            if (p[i] <= 0) {
                return Double.NEGATIVE_INFINITY;
            }
        }
        put(f, p);
        return site.margin(tx, ty, enough);
    }

    private void free(List<Spots> out) {
        List<double[]> starts = new ArrayList<>();
        List<Spots> sorted = new ArrayList<>(out);
        sorted.sort(Comparator.comparingDouble(s -> -s.margin()));
        int take = n > 8 ? 1 : n > 4 ? 2 : 3;
        for (Spots s : sorted.subList(0, Math.min(take, sorted.size()))) {
            starts.add(join(s.x(), s.y()));
        }
        starts.addAll(scattered(take));
        SplittableRandom random = new SplittableRandom(SEED);
        Spots best = null;
        double known =
                sorted.isEmpty() ? Double.NEGATIVE_INFINITY : sorted.get(0).margin();
        for (double[] p : starts) {
            if (progress.cancelled()) {
                return;
            }
            double m = Compass.climb(p, this::at, random, progress);
            if (best == null || m > best.margin()) {
                split(p);
                best = spots(n == 1 ? "where it has most room" : "placed one by one", false, m);
            }
        }
        if (best != null && best.margin() > known + SYMMETRY_WORTH * Math.abs(known) || best != null && out.isEmpty()) {
            out.add(best);
        }
    }

    private double[] join(double[] x, double[] y) {
        double[] p = new double[2 * n];
        System.arraycopy(x, 0, p, 0, n);
        System.arraycopy(y, 0, p, n, n);
        return p;
    }

    private void split(double[] p) {
        System.arraycopy(p, 0, tx, 0, n);
        System.arraycopy(p, n, ty, 0, n);
    }

    private double at(double[] p, double enough) {
        split(p);
        return site.margin(tx, ty, enough);
    }

    /** Starts away from the middle: for two holes the best pair of a grid, else holes added one by one where they hurt least. */
    private List<double[]> scattered(int count) {
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
            split(new double[2 * n]);
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
            out.add(join(tx, ty));
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
