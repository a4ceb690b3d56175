package portwright.layout;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import portwright.geometry.Pt;

/** Moves even layouts on as a whole: inlets and flues are turned and widened about the middle, so that they stay even. */
final class EvenMoves {
    /** How many of the best by rank are moved on. */
    private static final int FEW = 3;

    /** Rough climbs of an even layout as a whole, the first from where it lies, the others turned and widened. */
    private static final int TURNED = 60;

    private static final int THROWS = 40;

    /** Every place counts. */
    static final Allowed ANY = (inlets, flues) -> true;

    private final Together together;
    private final Ease ease;
    private final Pt middle;
    private final Progress progress;

    EvenMoves(Together together, Ease ease, Pt middle, Progress progress) {
        this.together = together;
        this.ease = ease;
        this.middle = middle;
        this.progress = progress;
    }

    /**
     * Even layouts moved on: the best by rank, and the best of each choice of holes that may yet be the widest even one. A flue in the middle may be one:
     * inlets that were found without it lie too near it until both are moved.
     */
    void add(List<Combination> out, List<Combination> passing) {
        List<Combination> first =
                passing.stream().filter(c -> !c.inlets().inWall()).limit(FEW).toList();
        first.forEach(c -> Together.add(out, c, even(c)));
        List<Combination> all = passing.stream()
                .filter(c -> c.even()
                        && c.choice().clean() == passing.get(0).choice().clean())
                .toList();
        List<List<Combination>> order = Together.choices(all).values().stream()
                .filter(l -> !l.get(0).inlets().inWall() && !first.contains(l.get(0)))
                .sorted(Comparator.comparingDouble((List<Combination> l) -> -Together.reach(l)))
                .toList();
        double most = Stream.concat(all.stream(), out.stream())
                .filter(Combination::even)
                .mapToDouble(Combination::margin)
                .max()
                .orElse(0);
        for (List<Combination> one : order.subList(0, Math.min(Together.CHOICES, order.size()))) {
            if (Together.reach(one) > most * (1 + SlabSearch.SYMMETRY_WORTH)) {
                Combination to = even(one.get(0));
                Together.add(out, one.get(0), to);
                most = Math.max(most, to.margin());
            }
        }
    }

    /** Inlets and flues each turned and widened about the middle, where both are symmetric. */
    Combination even(Combination c) {
        return even(c, ANY);
    }

    /** Places that count. */
    interface Allowed {
        boolean at(Spots inlets, Spots flues);
    }

    /** The same among some places; the layout itself where it is not symmetric; null where no climb ends in one that counts. */
    Combination even(Combination c, Allowed allowed) {
        if (!c.inlets().symmetric() || !c.flues().symmetric()) {
            return c;
        }
        double in = reach(c.inlets());
        double out = reach(c.flues());
        Compass.Hill hill = (q, enough) -> {
            Spots inlets = turned(c.inlets(), q[0] / in, q[1] / in);
            Spots flues = turned(c.flues(), q[2] / out, q[3] / out);
            double v = together.room(c, inlets, flues, enough);
            return v > enough && !allowed.at(inlets, flues) ? Double.NEGATIVE_INFINITY : v;
        };
        SplittableRandom random = new SplittableRandom(Together.SEED);
        Best ends = new Best(Together.KEPT, 4);
        for (int k = 0; k < TURNED && !progress.cancelled(); k++) {
            double[] p = k == 0 ? new double[] {in, 0, out, 0} : turned(in, out, hill, random);
            ends.offer(p, Compass.rough(p, Together.LONG_MM, hill, random, progress));
        }
        Combination best = allowed.at(c.inlets(), c.flues()) ? c : null;
        for (double[] p : Together.ends(ends, 4)) {
            Compass.climb(p, Together.LONG_MM, hill, new SplittableRandom(Together.SEED), progress);
            Combination to = together.combination(
                    c, turned(c.inlets(), p[0] / in, p[1] / in), turned(c.flues(), p[2] / out, p[3] / out));
            best = allowed.at(to.inlets(), to.flues()) && (best == null || to.room() > best.room()) ? to : best;
        }
        return best == null ? null : eased(best, allowed);
    }

    /** The role with more room turned and widened for itself. */
    private Combination eased(Combination c, Allowed allowed) {
        return ease.eased(
                c, s -> new double[] {reach(s), 0}, (s, p) -> turned(s, p[0] / reach(s), p[1] / reach(s)), allowed);
    }

    /** The best of some throws: inlets and flues turned by any angle and widened or drawn in by up to half. */
    private static double[] turned(double in, double out, Compass.Hill hill, SplittableRandom random) {
        return Compass.highest(THROWS, hill, () -> {
            double[] p = new double[4];
            for (int i = 0; i < p.length; i += 2) {
                double r = (i == 0 ? in : out) * (0.5 + random.nextDouble());
                double w = 2 * Math.PI * random.nextDouble();
                p[i] = r * Math.cos(w);
                p[i + 1] = r * Math.sin(w);
            }
            return p;
        });
    }

    /** Largest distance from the middle, mm. */
    private double reach(Spots s) {
        double most = 1;
        for (int i = 0; i < s.x().length; i++) {
            most = Math.max(most, Math.hypot(s.x()[i] - middle.x(), s.y()[i] - middle.y()));
        }
        return most;
    }

    private Spots turned(Spots s, double along, double across) {
        double[] x = new double[s.x().length];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double dx = s.x()[i] - middle.x();
            double dy = s.y()[i] - middle.y();
            x[i] = middle.x() + along * dx - across * dy;
            y[i] = middle.y() + along * dy + across * dx;
        }
        return new Spots(s.family(), true, x, y, 0);
    }
}
