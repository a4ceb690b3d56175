package portwright.layout;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.geometry.Pt;

/** Moves even layouts on as a whole: inlets and flues are turned and widened about the middle, or moved as mirrors, so that they stay even. */
final class EvenMoves {
    /** How many of the best by rank are moved on. */
    private static final int FEW = 3;

    /** Choices of holes and ways to lie evenly that are moved on too. */
    private static final int KINDS = 14;

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
     * Even layouts moved on: the best by rank, and the best of each choice of holes and way to lie evenly that may yet be the widest even one. A flue in the middle may be one:
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
        Map<List<Object>, List<Combination>> kinds = all.stream()
                .collect(Collectors.groupingBy(
                        c -> Arrays.asList(
                                c.choice(), c.inlets().mirror(), c.flues().mirror()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        List<List<Combination>> order = turns(kinds.values().stream()
                .filter(l -> !l.get(0).inlets().inWall() && !first.contains(l.get(0)))
                .sorted(Comparator.comparingDouble((List<Combination> l) -> -Together.reach(l)))
                .toList());
        double most = Stream.concat(all.stream(), out.stream())
                .filter(Combination::even)
                .mapToDouble(Combination::margin)
                .max()
                .orElse(0);
        for (List<Combination> one : order.subList(0, Math.min(KINDS, order.size()))) {
            if (Together.reach(one) > most * (1 + SlabSearch.SYMMETRY_WORTH)) {
                Combination to = even(one.get(0));
                Together.add(out, one.get(0), to);
                most = Math.max(most, to.margin());
            }
        }
    }

    /** What lies about the middle, then the first mirrored ones of every choice of holes, then the second, in their order. */
    private static List<List<Combination>> turns(List<List<Combination>> some) {
        Map<Sizes.Choice, Integer> met = new HashMap<>();
        IdentityHashMap<List<Combination>, Integer> turn = new IdentityHashMap<>();
        some.forEach(l -> {
            Combination c = l.get(0);
            boolean mirrored = c.inlets().mirror() != null || c.flues().mirror() != null;
            turn.put(l, mirrored ? met.merge(c.choice(), 1, Integer::sum) : 0);
        });
        return some.stream().sorted(Comparator.comparing(turn::get)).toList();
    }

    /** Inlets and flues each turned and widened about the middle, or moved as mirrors, where both are even. */
    Combination even(Combination c) {
        return even(c, ANY);
    }

    /** Places that count. */
    interface Allowed {
        boolean at(Spots inlets, Spots flues);
    }

    /** The same among some places; the layout itself where it is not symmetric; null where no climb ends in one that counts. */
    Combination even(Combination c, Allowed asked) {
        if (!c.inlets().kept() || !c.flues().kept() || c.inlets().inWall() || !c.oneAxis()) {
            return c;
        }
        Allowed allowed = c.even() ? (i, o) -> i.wide() && o.wide() && asked.at(i, o) : asked;
        EvenHold in = EvenHold.of(c.inlets(), middle);
        EvenHold out = EvenHold.of(c.flues(), middle);
        int from = in.start().length;
        double[] start = Arrays.copyOf(in.start(), from + out.start().length);
        System.arraycopy(out.start(), 0, start, from, start.length - from);
        Compass.Hill hill = (q, enough) -> {
            Spots inlets = in.at(q, 0);
            Spots flues = out.at(q, from);
            double v = together.room(c, inlets, flues, enough);
            return v > enough && !allowed.at(inlets, flues) ? Double.NEGATIVE_INFINITY : v;
        };
        SplittableRandom random = new SplittableRandom(Together.SEED);
        Best ends = new Best(Together.KEPT, start.length);
        for (int k = 0; k < TURNED && !progress.cancelled(); k++) {
            double[] p = k == 0
                    ? start.clone()
                    : Compass.highest(THROWS, hill, () -> {
                        double[] q = new double[start.length];
                        in.thrown(q, 0, random);
                        out.thrown(q, from, random);
                        return q;
                    });
            ends.offer(p, Compass.rough(p, Together.LONG_MM, hill, random, progress));
        }
        Combination best = asked.at(c.inlets(), c.flues()) ? c : null;
        for (double[] p : Together.ends(ends, start.length)) {
            Compass.climb(p, Together.LONG_MM, hill, new SplittableRandom(Together.SEED), progress);
            Combination to = together.combination(c, in.at(p, 0), out.at(p, from));
            best = to.oneAxis() && allowed.at(to.inlets(), to.flues()) && (best == null || to.room() > best.room())
                    ? to
                    : best;
        }
        return best == null ? null : eased(best, allowed);
    }

    /** The role with more room moved for itself. */
    private Combination eased(Combination c, Allowed allowed) {
        return ease.eased(
                c,
                s -> EvenHold.of(s, middle).start(),
                (s, p) -> EvenHold.of(s, middle).at(p, 0),
                allowed);
    }
}
