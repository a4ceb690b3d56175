package portwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import portwright.model.On;

/**
 * Seeks the widest layouts with given holes whose inlets and flues both lie clearly elsewhere than in layouts already shown: an even one, moved as a
 * whole, and one of single places. What lies too near a shown layout, or is one turned or mirrored, counts as no place at all.
 */
final class Elsewhere {
    /** Rough climbs of single places (judgement), from starts no two of which lie nearer along every axis, and out of how many. */
    private static final int CLIMBS = 12;

    private static final double STARTS_ALIKE_MM = 25;
    private static final int PAIRS = 2000;

    /** Ends of rough climbs whose inlets and flues are put together anew. */
    private static final int CROSSED = 12;

    /** Ends of climbs that lie no farther apart along any axis lead to the same place. */
    private static final double ALIKE_MM = 12;

    /** Rounding may carry a hole that far back, mm: two and a half 32nds of an inch along each axis. */
    private static final double ROUNDING_MM = 3;

    /** How far off an end is sought, mm; the nearest that is clear when rounded counts, and the farthest is so without a look. */
    private static final double[] FARTHER_MM = {0.2, 0.8, ROUNDING_MM};

    private final Sites sites;
    private final Together together;
    private final Rounded rounding;
    private final Twins twins;
    private final Progress progress;
    private final Map<Site, List<double[]>> grids = new HashMap<>();

    /** Rounds a layout's places to some that are allowed; the same one always as it was rounded first. */
    interface Rounded {
        Combination of(Combination c, BiPredicate<Spots, Spots> allowed);
    }

    Elsewhere(Sites sites, Together together, Rounded rounding, Twins twins, Progress progress) {
        this.sites = sites;
        this.together = together;
        this.rounding = rounding;
        this.twins = twins;
        this.progress = progress;
    }

    /**
     * Layouts beside those shown that keep enough of the first one's margin; empty where none is found or inlets lie in the wall.
     *
     * @param shown the best first
     * @param known layouts with any holes, the best first, from which even ones set out, and with which free ones are compared
     */
    List<Combination> of(List<Combination> shown, List<Combination> known) {
        Combination first = shown.get(0);
        if (first.inlets().inWall()) {
            return List.of();
        }
        List<Combination> alike = known.stream()
                .filter(c -> c.samePart(first) && c.choice().equals(first.choice()))
                .toList();
        Stream<Combination> even = alike.stream()
                .filter(Combination::even)
                .limit(1)
                .map(c -> together.even().even(c, (in, out) -> clear(c, in, out, shown, ROUNDING_MM)));
        Stream<Combination> free = progress.cancelled() ? Stream.of() : free(first, shown, alike).stream();
        return Stream.concat(even, free)
                .filter(Objects::nonNull)
                .filter(c -> Choosing.keeps(c, first))
                .toList();
    }

    private boolean clear(Combination c, Spots in, Spots out, List<Combination> shown, double fartherMm) {
        Combination at = new Combination(c.choice(), in, out, c.cross(), c.sizes(), 0);
        return shown.stream().allMatch(o -> twins.clear(at, o, fartherMm) && !twins.same(at, o));
    }

    /** The best of some climbs, from holes thrown elsewhere or anywhere and from what is known; those that end clear. */
    private List<Combination> free(Combination c, List<Combination> shown, List<Combination> known) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        Compass.Hill hill = hill(c, shown, FARTHER_MM[0]);
        Best ends = new Best(CROSSED, 2 * (n + m));
        known.stream()
                .filter(o -> clear(o, o.inlets(), o.flues(), shown, FARTHER_MM[0]))
                .sorted(Combination.WIDTH.reversed())
                .limit(Together.KEPT)
                .forEach(o -> ends.offer(Together.join(o), o.room()));
        for (double[] p : afresh(c, shown, hill)) {
            if (!progress.cancelled()) {
                ends.offer(p, Compass.rough(p, Together.LONG_MM, hill, new SplittableRandom(Together.SEED), progress));
            }
        }
        List<Combination> out = new ArrayList<>();
        for (double[] p : crossed(Together.ends(ends, 2 * (n + m)), n, m, hill)) {
            Combination best = null;
            for (int k = 0; k < FARTHER_MM.length && best == null; k++) {
                Combination at = climbed(c, p, shown, FARTHER_MM[k]);
                best = at != null && (FARTHER_MM[k] == ROUNDING_MM || roundsClear(at, shown)) ? at : null;
            }
            out.add(best);
        }
        out.removeIf(Objects::isNull);
        return out;
    }

    /** Places to climb from: the best inlets of a grid with the best flues that together leave enough of each shown layout. */
    private List<double[]> afresh(Combination c, List<Combination> shown, Compass.Hill hill) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        Map<List<Double>, List<Spots>> in = afresh(c, shown, On.FLOOR, n, Sizes.Choice::inletMm, Combination::inlets);
        Map<List<Double>, List<Spots>> out = afresh(c, shown, On.LID, m, Sizes.Choice::flueMm, Combination::flues);
        Best best = new Best(PAIRS, 2 * (n + m));
        in.forEach((left, inlets) -> out.forEach((gone, flues) -> {
            if (IntStream.range(0, shown.size()).allMatch(k -> (left.get(k) + gone.get(k)) / 2 > Choosing.CLEAR)) {
                for (Spots a : inlets) {
                    for (Spots b : flues) {
                        double v = Math.min(a.margin(), b.margin());
                        if (v > best.cut()) {
                            Combination at = new Combination(c.choice(), a, b, 0, 0, 0);
                            best.offer(Together.join(at), Math.min(v, together.cross(at)));
                        }
                    }
                }
            }
        }));
        List<double[]> starts = new ArrayList<>();
        for (double[] p : Together.ends(best, 2 * (n + m))) {
            if (starts.size() < CLIMBS
                    && starts.stream().noneMatch(o -> alike(o, p, STARTS_ALIKE_MM))
                    && hill.at(p, Double.NEGATIVE_INFINITY) > Double.NEGATIVE_INFINITY) {
                starts.add(p);
            }
        }
        return starts;
    }

    /** The best places of one role's holes by what they leave of each shown layout. */
    private Map<List<Double>, List<Spots>> afresh(
            Combination c,
            List<Combination> shown,
            On on,
            int holes,
            ToDoubleFunction<Sizes.Choice> diameter,
            Function<Combination, Spots> role) {
        double d = diameter.applyAsDouble(c.choice());
        Site site = sites.slab(on, d);
        double[] withinMm = shown.stream()
                .mapToDouble(o -> FARTHER_MM[0] + Math.max(d, diameter.applyAsDouble(o.choice())))
                .toArray();
        List<double[]> grid = grids.computeIfAbsent(site, Afresh::grid);
        return new Afresh(site, grid, holes, shown.stream().map(role).toList(), withinMm)
                .best(Choosing.least(c.room()));
    }

    private Compass.Hill hill(Combination c, List<Combination> shown, double fartherMm) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        return (q, enough) -> {
            Spots in = Together.spots(q, 0, n);
            Spots out = Together.spots(q, 2 * n, m);
            double v = together.room(c, in, out, enough);
            return v > enough && !clear(c, in, out, shown, fartherMm) ? Double.NEGATIVE_INFINITY : v;
        };
    }

    private boolean roundsClear(Combination c, List<Combination> shown) {
        Combination r = rounding.of(c, (in, out) -> clear(c, in, out, shown, 0));
        return clear(r, r.inlets(), r.flues(), shown, 0);
    }

    /** The best of some places, and of the inlets of one with the flues of another, no two of them nearly alike. */
    private static List<double[]> crossed(List<double[]> some, int n, int m, Compass.Hill hill) {
        Best best = new Best(CROSSED * CROSSED, 2 * (n + m));
        for (double[] a : some) {
            for (double[] b : some) {
                double[] p = b.clone();
                System.arraycopy(a, 0, p, 0, 2 * n);
                best.offer(p, hill.at(p, best.cut()));
            }
        }
        List<double[]> out = new ArrayList<>();
        for (double[] p : Together.ends(best, 2 * (n + m))) {
            if (out.size() < Together.KEPT && out.stream().noneMatch(o -> alike(o, p, ALIKE_MM))) {
                out.add(p);
            }
        }
        return out;
    }

    private static boolean alike(double[] a, double[] b, double withinMm) {
        return IntStream.range(0, a.length).allMatch(i -> Math.abs(a[i] - b[i]) < withinMm);
    }

    /** Climbs on from places as in {@link Together#join}; null where they do not end clear. */
    private Combination climbed(Combination c, double[] p, List<Combination> shown, double fartherMm) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        SplittableRandom random = new SplittableRandom(Together.SEED);
        double[] q = p.clone();
        Compass.climb(q, Together.LONG_MM, hill(c, shown, fartherMm), random, progress);
        Spots in = Together.spots(q, 0, n);
        Spots out = Together.spots(q, 2 * n, m);
        return !clear(c, in, out, shown, fartherMm)
                ? null
                : together.ease().free(together.combination(c, in, out), (a, b) -> clear(c, a, b, shown, fartherMm));
    }
}
