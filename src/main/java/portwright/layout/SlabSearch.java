package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/**
 * Best places of n holes on one slab: a grid over symmetric families, the best refined; mirrored ones; then free places from the best of these and from scattered
 * starts. The random stream has a fixed start: the same design gives the same answer.
 */
final class SlabSearch {
    private static final long SEED = 7;
    private static final double LONG_MM = 24;
    /** A free arrangement replaces a symmetric one when it is better by more than this share. */
    static final double SYMMETRY_WORTH = 0.005;

    /** Difference of the two widths, as a share, from which a chamber counts as oblong; a regular hexagon differs by 0.134. */
    private static final double OBLONG = 0.15;

    /** Places of the grid that are looked at closer, and of those the ones that are kept. */
    private static final int MOST_TRIED = 400;

    private static final int KEPT = 12;

    /** Starts from the grid where no place passes, for one hole; for more as many fewer. */
    private static final int NEAREST = 12;

    /** Ends of climbs differ by less where they come as near, as when a groove runs straight; then the better balance decides. */
    private static final double ALIKE = 1e-3;

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
        if (!out.isEmpty() && CentreRegion.nowhere(site)) {
            nearest(out);
        } else {
            mirrored(out);
            free(out);
        }
        out.sort(Comparator.comparingDouble(
                (Spots s) -> -(s.margin() + (s.kept() ? SYMMETRY_WORTH * Math.abs(s.margin()) : 0))));
        return out;
    }

    /** Mirrored ones beside those about the middle; in a chamber that mirrors itself only what it repeats with counts as even about the middle. */
    private void mirrored(List<Spots> out) {
        List<Spots> mirrored = new MirrorSearch(site, n, progress).run();
        if (!mirrored.isEmpty()) {
            out.replaceAll(s -> Twins.repeats(site.kiln.inner(), middle, s) ? s : s.loose());
            out.addAll(mirrored);
        }
    }

    /** Even arrangements alone, for where no place of the other role passes anyway. */
    List<Spots> even() {
        List<Spots> out = new ArrayList<>();
        for (Families.Family f : Families.of(n, false)) {
            out.addAll(family(f));
        }
        out.sort(Comparator.comparingDouble((Spots s) -> -s.margin()));
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
        Best grid = new Best(MOST_TRIED, k);
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
            grid.offer(p, site.quick(tx, ty, grid.cut()));
        }
        Best fewer = new Best(KEPT, k);
        for (double[] row : grid.rows()) {
            if (row[k] <= fewer.cut()) {
                break;
            }
            put(f, row);
            fewer.offer(row, site.margin(tx, ty, fewer.cut()));
        }
        List<double[]> best = fewer.rows();
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

    /** Where no place passes: climbs from the best even one and from the best places of a grid, to tell what comes nearest. */
    private void nearest(List<Spots> out) {
        Spots even = out.stream().max(Comparator.comparingDouble(Spots::margin)).orElseThrow();
        List<double[]> starts = new ArrayList<>(new Scatter(site, n, progress).nearest(Math.max(2, NEAREST / n)));
        starts.add(join(even.x(), even.y()));
        List<Spots> ends = new ArrayList<>();
        for (double[] p : starts) {
            double m = Compass.climb(p, LONG_MM, this::at, new SplittableRandom(SEED), progress);
            split(p);
            ends.add(spots(n == 1 ? "where it has most room" : "placed one by one", false, m));
        }
        double most = ends.stream().mapToDouble(Spots::margin).max().orElseThrow();
        ends.stream()
                .filter(s -> s.margin() > most - ALIKE)
                .max(Comparator.comparingDouble(s -> site.balance(s.x(), s.y())))
                .ifPresent(out::add);
    }

    private void free(List<Spots> out) {
        List<double[]> starts = new ArrayList<>();
        List<Spots> sorted = new ArrayList<>(out);
        sorted.sort(Comparator.comparingDouble(s -> -s.margin()));
        int take = n > 8 ? 1 : n > 4 ? 2 : 3;
        Scatter scatter = new Scatter(site, n, progress);
        for (Spots s : sorted.subList(0, Math.min(take, sorted.size()))) {
            starts.add(join(s.x(), s.y()));
            starts.add(scatter.settled(starts.get(starts.size() - 1)));
        }
        starts.addAll(scatter.starts(take));
        SplittableRandom random = new SplittableRandom(SEED);
        Spots best = null;
        double even =
                sorted.isEmpty() ? Double.NEGATIVE_INFINITY : sorted.get(0).margin();
        for (double[] p : starts) {
            if (progress.cancelled()) {
                return;
            }
            double m = Compass.climb(p, LONG_MM, this::at, random, progress);
            if (best == null || m > best.margin()) {
                split(p);
                best = spots(n == 1 ? "where it has most room" : "placed one by one", false, m);
            }
        }
        if (best != null && best.margin() > even + SYMMETRY_WORTH * Math.abs(even) || best != null && out.isEmpty()) {
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
}
