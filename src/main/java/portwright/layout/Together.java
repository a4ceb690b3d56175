package portwright.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import portwright.geometry.ShelfPlate;
import portwright.model.On;

/**
 * Moves floor inlets and lid flues of one layout together. They are found apart; a flue that then lies over an inlet, or a margin that only both can
 * gain, is mended here.
 */
final class Together {
    private static final long SEED = 11;

    private final Sites sites;
    private final List<ShelfPlate> shelves;
    private final Tender tender;
    private final Progress progress;

    Together(Sites sites, List<ShelfPlate> shelves, Tender tender, Progress progress) {
        this.sites = sites;
        this.shelves = shelves;
        this.tender = tender;
        this.progress = progress;
    }

    /** A layout that is better by more than a free arrangement must be; empty where there is none near, or inlets lie in the wall. */
    Optional<Combination> better(Combination c) {
        if (c.inlets().inWall() || c.margin() >= c.sizes()) {
            return Optional.empty();
        }
        Sizes.Choice choice = c.choice();
        Site floor = sites.slab(On.FLOOR, choice.inletMm());
        Site lid = sites.slab(On.LID, choice.flueMm());
        int n = choice.inlets();
        int m = choice.flues();
        double[] p = new double[2 * (n + m)];
        System.arraycopy(c.inlets().x(), 0, p, 0, n);
        System.arraycopy(c.inlets().y(), 0, p, n, n);
        System.arraycopy(c.flues().x(), 0, p, 2 * n, m);
        System.arraycopy(c.flues().y(), 0, p, 2 * n + m, m);
        double reached = Compass.climb(
                p,
                (q, enough) -> {
                    Spots in = spots(q, 0, n, 0);
                    Spots out = spots(q, 2 * n, m, 0);
                    double v = Math.min(c.sizes(), Combination.cross(choice, in, out, shelves));
                    if (v > enough) {
                        v = Math.min(v, floor.margin(in.x(), in.y(), enough));
                    }
                    return v > enough ? Math.min(v, lid.margin(out.x(), out.y(), enough)) : v;
                },
                new SplittableRandom(SEED),
                progress);
        if (reached <= c.margin() + SlabSearch.SYMMETRY_WORTH * Math.abs(c.margin())) {
            return Optional.empty();
        }
        Spots in = spots(p, 0, n, 0);
        in = spots(p, 0, n, floor.margin(in.x(), in.y(), Double.NEGATIVE_INFINITY));
        Spots out = spots(p, 2 * n, m, 0);
        out = spots(p, 2 * n, m, lid.margin(out.x(), out.y(), Double.NEGATIVE_INFINITY));
        return Optional.of(new Combination(
                choice,
                in,
                out,
                Combination.cross(choice, in, out, shelves),
                c.sizes(),
                tender.pairs(On.FLOOR, in, choice.inletMm()) + tender.pairs(On.LID, out, choice.flueMm())));
    }

    private static Spots spots(double[] p, int from, int n, double margin) {
        return new Spots(
                n == 1 ? "where it has most room" : "placed one by one",
                false,
                Arrays.copyOfRange(p, from, from + n),
                Arrays.copyOfRange(p, from + n, from + 2 * n),
                margin);
    }
}
