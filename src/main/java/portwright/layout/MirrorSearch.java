package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** Best places of n holes on one slab that mirror each other across an axis of the chamber: in pairs, and on the axis. Lengths in mm. */
final class MirrorSearch {
    private static final long SEED = 13;
    private static final double LONG_MM = 24;
    private static final double STEP_MM = 6;
    /** Steps along the longer side at most. */
    private static final int MOST_STEPS = 80;

    /** Places of a grid that are weighed in full, and ends of rough climbs that are climbed on. */
    private static final int WEIGHED = 300;

    private static final int KEPT = 3;
    /** Rough climbs of more than two holes, and throws for each start. */
    private static final int CLIMBS = 24;

    private static final int THROWS = 120;
    /** Holes on the axis at most, and arrangements kept of one slab. */
    private static final int ON_AXIS = 2;

    private static final int MOST = 6;

    private final Site site;
    private final int n;
    private final Progress progress;
    private final double step;
    private final double reach;
    private final double[] x;
    private final double[] y;

    MirrorSearch(Site site, int n, Progress progress) {
        this.site = site;
        this.n = n;
        this.progress = progress;
        Segment box = site.kiln.inner().bounds();
        reach = Math.max(box.a().distance(site.kiln.centre()), box.b().distance(site.kiln.centre()));
        step = Math.max(STEP_MM, 2 * reach / MOST_STEPS);
        x = new double[n];
        y = new double[n];
    }

    /** The best of every axis and number of pairs, the widest first. */
    List<Spots> run() {
        if (n == 1 && middleServes(site)) {
            return List.of();
        }
        List<Spots> out = new ArrayList<>();
        for (Axis a : Axis.of(site)) {
            for (int pairs = n / 2; pairs >= 0 && n - 2 * pairs <= ON_AXIS; pairs--) {
                if (!progress.cancelled() && (pairs > 0 || n <= ON_AXIS)) {
                    of(new Mirror(a, pairs), out);
                }
            }
        }
        out.sort(Comparator.comparingDouble(s -> -s.margin()));
        return out.subList(0, Math.min(MOST, out.size()));
    }

    /** Whether the even place of a single hole is the middle: alike to all sides, and no rule speaks there. */
    static boolean middleServes(Site site) {
        Pt m = site.kiln.centre();
        return Twins.repeats(site.kiln.inner(), m) && site.hole(m.x(), m.y()) >= 1;
    }

    private void of(Mirror m, List<Spots> out) {
        Compass.Hill hill = (p, enough) -> at(m, p, enough);
        Best ends = new Best(KEPT, n);
        if (n <= 2) {
            grid(m).forEach(p -> ends.offer(p, p[n]));
        } else {
            SplittableRandom random = new SplittableRandom(SEED);
            List<double[]> pairs = places(new Mirror(m.axis(), 1), 2);
            List<double[]> singles = places(new Mirror(m.axis(), 0), 1);
            for (int k = 0; k < CLIMBS && !progress.cancelled(); k++) {
                double[] p = Compass.highest(
                        THROWS, (q, enough) -> quick(m, q, enough), () -> thrown(m, pairs, singles, random));
                ends.offer(p, Compass.rough(p, LONG_MM, hill, random, progress));
            }
        }
        List<Spots> found = new ArrayList<>();
        for (double[] p : Together.ends(ends, n)) {
            double v = Compass.climb(p, LONG_MM, hill, new SplittableRandom(SEED), progress);
            m.place(p, 0, x, y);
            Spots s = new Spots(m.family(n), m, x.clone(), y.clone(), v);
            if (v > Double.NEGATIVE_INFINITY && found.stream().noneMatch(o -> o.farFrom(s) < site.diameter)) {
                found.add(s);
            }
        }
        found.stream().max(Comparator.comparingDouble(Spots::margin)).ifPresent(out::add);
    }

    private double at(Mirror m, double[] p, double enough) {
        m.place(p, 0, x, y);
        return balanced(m) ? site.margin(x, y, enough) : Double.NEGATIVE_INFINITY;
    }

    private double quick(Mirror m, double[] p, double enough) {
        m.place(p, 0, x, y);
        return balanced(m) ? site.quick(x, y, enough) : Double.NEGATIVE_INFINITY;
    }

    /** Holes at one end of an axis mirror each other and still heat that end alone, holes in a row a stripe. */
    private boolean balanced(Mirror m) {
        return m.wide(x, y) && site.balance(x, y) >= 1;
    }

    private double[] thrown(Mirror m, List<double[]> pairs, List<double[]> singles, SplittableRandom random) {
        double[] p = new double[n];
        for (int i = 0; i < n; i++) {
            boolean paired = i < 2 * m.pairs();
            List<double[]> from = paired ? pairs : singles;
            double[] at = from.get(random.nextInt(from.size()));
            p[i] = at[0];
            if (paired) {
                p[++i] = at[1];
            }
        }
        return p;
    }

    /** The places of a grid for one hole or two that have most room, no two within a hole's width, with their margins. */
    private List<double[]> grid(Mirror m) {
        Best full = new Best(WEIGHED, n);
        for (double[] p : places(m, n)) {
            full.offer(p, at(m, p, full.cut()));
        }
        List<double[]> out = new ArrayList<>();
        for (double[] p : full.rows()) {
            if (out.size() < KEPT
                    && out.stream().noneMatch(o -> Math.hypot(o[0] - p[0], n < 2 ? 0 : o[1] - p[1]) < site.diameter)) {
                out.add(p);
            }
        }
        return out;
    }

    /** One hole, or one pair, or two holes on the axis: the places of a grid with most room by themselves. */
    private List<double[]> places(Mirror m, int holes) {
        double[] px = new double[holes];
        double[] py = new double[holes];
        Best best = new Best(WEIGHED, holes);
        double[] p = new double[holes];
        for (p[0] = -reach; p[0] <= reach; p[0] += step) {
            for (double b = holes == 1 ? 0 : m.pairs() > 0 ? step / 2 : p[0] + site.diameter; b <= reach; b += step) {
                if (holes > 1) {
                    p[1] = b;
                }
                m.place(p, 0, px, py);
                double v = site.hole(px[0], py[0]);
                v = holes > 1 && v > best.cut() ? Math.min(v, site.hole(px[1], py[1])) : v;
                v = holes > 1 && v > best.cut() ? Math.min(v, site.pair(px[0], py[0], px[1], py[1])) : v;
                if (holes < n || site.balance(px, py) >= 1) {
                    best.offer(p, v);
                }
                if (holes == 1) {
                    break;
                }
            }
        }
        return best.rows();
    }
}
