package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.On;

/**
 * Moves floor inlets and lid flues of layouts together. They are found apart; a flue that then lies over an inlet, or a margin that only both can gain,
 * is mended here: even layouts as evenly as they were, and all freely, one hole by one.
 */
final class Together {
    /** What is being done meanwhile, for who waits. */
    static final String WORDS = "inlets and flues moved together";

    static final long SEED = 11;
    static final double LONG_MM = 24;
    /** Layouts of a choice of holes that are moved on, and how many choices that may yet reach the widest margin. */
    private static final int STARTS = 5;

    /** Share of the margin that one even role may cost a free layout. */
    private static final double EVENER = 0.001;

    static final int CHOICES = 5;
    /** Climbs from places about the best, and how far about, mm. */
    private static final int SHAKEN = 6;

    private static final double SHAKE_MM = 50;

    /** Rough climbs of one choice of holes from anywhere: at most, and in all holes that they move; and how many of their ends are climbed on. */
    private static final int SCATTERED = 80;

    private static final int SCATTERED_HOLES = 400;
    static final int KEPT = 3;
    /** Share of the time that the rough climbs take of those of one choice of holes. */
    private static final double THROWN = 0.5;

    private final Sites sites;
    private final Pt middle;
    private final List<ShelfPlate> shelves;
    private final Tender tender;
    private final Progress progress;
    private final Ease ease;
    /** Holes whose places were moved freely. */
    private final Set<Sizes.Choice> freed = new HashSet<>();

    Together(Sites sites, KilnGeometry kiln, Tender tender, Progress progress) {
        this.sites = sites;
        middle = kiln.centre();
        shelves = kiln.shelves();
        this.tender = tender;
        this.progress = progress;
        ease = new Ease(this, sites, shelves, progress);
    }

    /** Further layouts that are better than the ones they come from. */
    List<Combination> better(List<Combination> passing) {
        List<Combination> out = new ArrayList<>();
        even().add(out, passing);
        Map<Sizes.Choice, List<Combination>> choices = choices(floor(passing));
        Combination widest = widest(floor(passing));
        if (widest == null) {
            return out;
        }
        if (!freed.contains(widest.choice())) {
            free(out, choices.get(widest.choice()));
        }
        List<List<Combination>> order = choices.values().stream()
                .filter(l -> !freed.contains(l.get(0).choice()))
                .sorted(Comparator.comparingDouble((List<Combination> l) -> -reach(l)))
                .limit(CHOICES)
                .toList();
        for (List<Combination> one : order) {
            Combination best = out.isEmpty() ? widest : widest(out);
            if (reach(one) > Math.max(widest.margin(), best.margin()) * (1 + SlabSearch.SYMMETRY_WORTH)) {
                free(out, one);
            }
        }
        return out;
    }

    /** What gives the role with more room the most it can have. */
    Ease ease() {
        return ease;
    }

    /** Moves of even layouts as a whole. */
    EvenMoves even() {
        return new EvenMoves(this, ease, middle, progress);
    }

    /** The widest layouts with the holes of one of some, where these were not moved freely yet; empty where they were, or lie in the wall. */
    List<Combination> freer(Combination c, List<Combination> some) {
        List<Combination> out = new ArrayList<>();
        if (!c.inlets().inWall() && !freed.contains(c.choice())) {
            free(out, choices(floor(some)).getOrDefault(c.choice(), List.of(c)));
        }
        return out;
    }

    private static List<Combination> floor(List<Combination> some) {
        return some.stream().filter(c -> !c.inlets().inWall()).toList();
    }

    static Map<Sizes.Choice, List<Combination>> choices(List<Combination> some) {
        Map<Sizes.Choice, List<Combination>> out = new LinkedHashMap<>();
        some.forEach(
                c -> out.computeIfAbsent(c.choice(), k -> new ArrayList<>()).add(c));
        return out;
    }

    private static Combination widest(List<Combination> all) {
        return all.stream().max(Combination.WIDTH).orElse(null);
    }

    /** The best of one choice of holes moved freely, then set out again from places about the best. */
    private void free(List<Combination> out, List<Combination> one) {
        freed.add(one.get(0).choice());
        List<Combination> starts =
                one.stream().sorted(Combination.WIDTH.reversed()).limit(STARTS).toList();
        List<Combination> ends = new ArrayList<>();
        ends.add(starts.get(0));
        for (double[] p : scattered(starts.get(0))) {
            ends.add(free(starts.get(0), p));
        }
        SplittableRandom random = new SplittableRandom(SEED);
        for (int k = 0; k < starts.size() + SHAKEN && !progress.cancelled(); k++) {
            progress.at(THROWN + (1 - THROWN) * k / (starts.size() + SHAKEN), WORDS);
            Combination best = Combination.widest(ends);
            double[] p = join(k < starts.size() ? starts.get(k) : best);
            for (int i = 0; k >= starts.size() && i < p.length; i++) {
                p[i] += SHAKE_MM * random.nextGaussian();
            }
            ends.add(free(best, p));
        }
        add(out, starts.get(0), evener(Combination.widest(ends), one));
    }

    /** The same with its flues, or its inlets, where an even arrangement has them, a single one in the middle, if that costs next to nothing. */
    Combination evener(Combination c, List<Combination> one) {
        double enough = c.room() - EVENER * Math.abs(c.room());
        Combination best = c;
        for (Combination o : one) {
            Combination a = o.flues().even() && !c.flues().even() ? combination(c, c.inlets(), o.flues()) : c;
            Combination b = o.inlets().even() && !c.inlets().even() ? combination(c, o.inlets(), c.flues()) : c;
            for (Combination to : List.of(a, b)) {
                if (to.room() >= enough && to.rank() > best.rank()) {
                    best = to;
                }
            }
        }
        return best;
    }

    /** The best of many rough climbs that set out anywhere in the chamber. */
    private List<double[]> scattered(Combination c) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        Compass.Hill hill = (q, enough) -> room(c, spots(q, 0, n), spots(q, 2 * n, m), enough);
        SplittableRandom random = new SplittableRandom(SEED);
        Thrown thrown = new Thrown(
                sites.slab(On.FLOOR, c.choice().inletMm()),
                n,
                sites.slab(On.LID, c.choice().flueMm()),
                m,
                c.room());
        Best ends = new Best(KEPT, 2 * (n + m));
        int most = Math.min(SCATTERED, SCATTERED_HOLES / (n + m));
        for (int k = 0; k < most && !progress.cancelled(); k++) {
            progress.at(THROWN * k / most, WORDS);
            double[] p = thrown.start(hill, random);
            ends.offer(p, Compass.rough(p, LONG_MM, hill, random, progress));
        }
        return ends(ends, 2 * (n + m));
    }

    static List<double[]> ends(Best best, int width) {
        return best.rows().stream().map(r -> Arrays.copyOf(r, width)).toList();
    }

    /** The most that inlets and flues reach when found apart. */
    static double reach(List<Combination> one) {
        double in = one.stream().mapToDouble(c -> c.inlets().margin()).max().orElse(0);
        double out = one.stream().mapToDouble(c -> c.flues().margin()).max().orElse(0);
        return Math.min(one.get(0).sizes(), Math.min(in, out));
    }

    static void add(List<Combination> out, Combination from, Combination to) {
        if (to.gainsOn(from) || to.easier(from)) {
            out.add(to);
        }
    }

    /** Each hole for itself, from places as in {@link #join}. */
    private Combination free(Combination c, double[] p) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        Compass.climb(
                p,
                LONG_MM,
                (q, enough) -> room(c, spots(q, 0, n), spots(q, 2 * n, m), enough),
                new SplittableRandom(SEED),
                progress);
        return ease.free(combination(c, spots(p, 0, n), spots(p, 2 * n, m)), EvenMoves.ANY);
    }

    /** x of the inlets, then their y, then those of the flues. */
    static double[] join(Combination c) {
        int n = c.choice().inlets();
        int m = c.choice().flues();
        double[] p = new double[2 * (n + m)];
        System.arraycopy(c.inlets().x(), 0, p, 0, n);
        System.arraycopy(c.inlets().y(), 0, p, n, n);
        System.arraycopy(c.flues().x(), 0, p, 2 * n, m);
        System.arraycopy(c.flues().y(), 0, p, 2 * n + m, m);
        return p;
    }

    static Spots spots(double[] p, int from, int n) {
        return new Spots(
                n == 1 ? "where it has most room" : "placed one by one",
                false,
                Arrays.copyOfRange(p, from, from + n),
                Arrays.copyOfRange(p, from + n, from + 2 * n),
                0);
    }

    /** {@link Combination#room()} of a choice's holes at other places; whatever is not above {@code enough} may be answered roughly. */
    double room(Combination c, Spots in, Spots out, double enough) {
        double v = Combination.cross(c.choice(), in, out, shelves);
        if (v > enough) {
            double d = c.choice().inletMm();
            v = Math.min(
                    v,
                    in.inWall()
                            ? sites.wall(d).margin(in)
                            : sites.slab(On.FLOOR, d).margin(in.x(), in.y(), enough));
        }
        return v > enough ? Math.min(v, sites.slab(On.LID, c.choice().flueMm()).margin(out.x(), out.y(), enough)) : v;
    }

    /** What the flues' distance from the inlets' axes gives. */
    double cross(Combination c) {
        return Combination.cross(c.choice(), c.inlets(), c.flues(), shelves);
    }

    /** The same with ease where room does not tell ({@link Combination#places}). */
    double places(Combination c, Spots in, Spots out, double enough) {
        double v = room(c, in, out, enough - Combination.MOST_EASE);
        if (v <= enough - Combination.MOST_EASE) {
            return v;
        }
        Combination to = combination(c, in, out);
        return Combination.places(to.inlets().margin(), to.flues().margin(), to.cross());
    }

    /** The same choice of holes at other places, weighed anew. */
    Combination combination(Combination c, Spots in, Spots out) {
        Sizes.Choice choice = c.choice();
        Spots inlets = in.inWall()
                ? in.weighed(sites.wall(choice.inletMm()).margin(in))
                : weighed(sites.slab(On.FLOOR, choice.inletMm()), in);
        Spots flues = weighed(sites.slab(On.LID, choice.flueMm()), out);
        return new Combination(
                choice,
                inlets,
                flues,
                Combination.cross(choice, inlets, flues, shelves),
                c.sizes(),
                tender.pairs(On.FLOOR, inlets, choice.inletMm()) + tender.pairs(On.LID, flues, choice.flueMm()));
    }

    private static Spots weighed(Site site, Spots s) {
        return s.weighed(site.margin(s.x(), s.y(), Double.NEGATIVE_INFINITY));
    }
}
