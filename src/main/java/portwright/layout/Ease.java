package portwright.layout;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.function.Function;
import portwright.geometry.ShelfPlate;
import portwright.model.On;

/** Gives the role that does not hold a layout's places down the most room it can have ({@link Combination#ease()}); the other stays. Lengths in mm. */
final class Ease {
    private final Together together;
    private final Sites sites;
    private final List<ShelfPlate> shelves;
    private final Progress progress;

    Ease(Together together, Sites sites, List<ShelfPlate> shelves, Progress progress) {
        this.together = together;
        this.sites = sites;
        this.shelves = shelves;
        this.progress = progress;
    }

    /**
     * The same with more room for that role; the layout itself where none is found.
     *
     * @param start numbers that leave the role's holes where they are
     * @param at the role's holes by such numbers
     */
    Combination eased(
            Combination c,
            Function<Spots, double[]> start,
            BiFunction<Spots, double[], Spots> at,
            EvenMoves.Allowed allowed) {
        boolean lid = c.inlets().margin() <= c.flues().margin();
        Spots from = lid ? c.flues() : c.inlets();
        Site site = lid
                ? sites.slab(On.LID, c.choice().flueMm())
                : sites.slab(On.FLOOR, c.choice().inletMm());
        Compass.Hill hill = (q, enough) -> {
            Spots s = at.apply(from, q);
            Spots in = lid ? c.inlets() : s;
            Spots out = lid ? s : c.flues();
            double v = Combination.cross(c.choice(), in, out, shelves);
            v = v > enough ? Math.min(v, site.margin(s.x(), s.y(), enough)) : v;
            return v > enough && !allowed.at(in, out) ? Double.NEGATIVE_INFINITY : v;
        };
        double[] p = start.apply(from);
        Compass.climb(p, Together.LONG_MM, hill, new SplittableRandom(Together.SEED), progress);
        Spots moved = at.apply(from, p);
        Combination to = lid ? together.combination(c, c.inlets(), moved) : together.combination(c, moved, c.flues());
        return to.room() >= c.room() && allowed.at(to.inlets(), to.flues()) ? to : c;
    }

    /** Each hole of that role moved for itself. */
    Combination free(Combination c, EvenMoves.Allowed allowed) {
        return eased(c, Ease::join, (s, p) -> Together.spots(p, 0, s.x().length), allowed);
    }

    /** x of all holes, then their y. */
    private static double[] join(Spots s) {
        double[] p = new double[2 * s.x().length];
        System.arraycopy(s.x(), 0, p, 0, s.x().length);
        System.arraycopy(s.y(), 0, p, s.x().length, s.x().length);
        return p;
    }
}
