package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import portwright.model.On;

/**
 * Seeks the widest layout with given holes whose inlets and flues both lie clearly elsewhere than in layouts already shown: an even one, moved as a whole,
 * else one of single places. What lies too near a shown layout, or is one turned or mirrored, counts as no place at all.
 */
final class Elsewhere {
    /** Rough climbs of single places (judgement). */
    private static final int CLIMBS = 12;

    /** Rounding may carry a hole that far back, mm: two and a half 32nds of an inch along each axis. */
    private static final double ROUNDING_MM = 3;

    private final Sites sites;
    private final Together together;
    private final EvenMoves even;
    private final Twins twins;
    private final Progress progress;

    Elsewhere(Sites sites, Together together, EvenMoves even, Twins twins, Progress progress) {
        this.sites = sites;
        this.together = together;
        this.even = even;
        this.twins = twins;
        this.progress = progress;
    }

    /**
     * A layout beside those shown that keeps enough of the first one's margin; empty where none is found or inlets lie in the wall.
     *
     * @param shown the best first
     * @param known layouts with any holes, the best first, from which even ones set out
     */
    List<Combination> of(List<Combination> shown, List<Combination> known) {
        Combination first = shown.get(0);
        if (first.inlets().inWall()) {
            return List.of();
        }
        List<Combination> starts = known.stream()
                .filter(c -> c.samePart(first) && c.choice().equals(first.choice()))
                .toList();
        Combination found = starts.stream()
                .filter(Combination::even)
                .limit(1)
                .map(c -> even.even(c, (in, out) -> clear(c, in, out, shown)))
                .filter(c -> c != null && Choosing.keeps(c, first))
                .findFirst()
                .orElse(null);
        if (found == null && !progress.cancelled()) {
            found = free(first, shown);
        }
        return found == null || !Choosing.keeps(found, first) ? List.of() : List.of(found);
    }

    private boolean clear(Combination c, Spots in, Spots out, List<Combination> shown) {
        Combination at = new Combination(c.choice(), in, out, c.cross(), c.sizes(), 0);
        return shown.stream().allMatch(o -> at.elsewhere(o, ROUNDING_MM) > Choosing.CLEAR && !twins.same(at, o));
    }

    /** The best of some climbs from holes thrown anywhere; null where no throw lies clear. */
    private Combination free(Combination c, List<Combination> shown) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        Compass.Hill hill = (q, enough) -> {
            Spots in = Together.spots(q, 0, n);
            Spots out = Together.spots(q, 2 * n, m);
            double v = together.room(c, in, out, enough);
            return v > enough && !clear(c, in, out, shown) ? Double.NEGATIVE_INFINITY : v;
        };
        SplittableRandom random = new SplittableRandom(Together.SEED);
        Thrown thrown = new Thrown(
                sites.slab(On.FLOOR, c.choice().inletMm()),
                n,
                sites.slab(On.LID, c.choice().flueMm()),
                m,
                Choosing.least(c.room()));
        Best ends = new Best(Together.KEPT, 2 * (n + m));
        for (int k = 0; k < CLIMBS && !progress.cancelled(); k++) {
            double[] p = thrown.start(hill, random);
            ends.offer(p, Compass.rough(p, Together.LONG_MM, hill, random, progress));
        }
        List<Combination> out = new ArrayList<>();
        for (double[] p : Together.ends(ends, 2 * (n + m))) {
            Compass.climb(p, Together.LONG_MM, hill, new SplittableRandom(Together.SEED), progress);
            Spots in = Together.spots(p, 0, n);
            Spots flues = Together.spots(p, 2 * n, m);
            if (clear(c, in, flues, shown)) {
                out.add(together.ease().free(together.combination(c, in, flues), (a, b) -> clear(c, a, b, shown)));
            }
        }
        return Combination.widest(out);
    }
}
