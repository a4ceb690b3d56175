package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Picks the few layouts that are shown. The first is the best; after it those of other numbers or another arrangement come first that differ clearly:
 * inlets and flues both go elsewhere, by more than half in the mean ({@link Combination#elsewhere}); then those with other inlets, with which burners,
 * flames and stand go; then those with other flues; last the same arrangement in other places. What leaves little of the first one's margin comes last.
 */
final class Choosing {
    static final int SHOWN = 3;
    /** Share of the first one's margin that a choice keeps, unless no rule cautions it. */
    private static final double WORTH = 0.5;

    /** Share of the drilling that goes elsewhere, over which two layouts differ clearly: neither inlets nor flues do that alone. */
    private static final double CLEAR = 0.5;

    private Choosing() {}

    /**
     * Up to three that differ clearly.
     *
     * @param groups every layout of one comes before any of the next; in each the best first
     * @param widest the one with the largest margin, second where its arrangement is another; null where that does not matter
     * @param twins what turned or mirrored is the same layout
     */
    static List<Combination> apart(List<List<Combination>> groups, Combination widest, Twins twins) {
        List<Combination> out = new ArrayList<>();
        if (groups.isEmpty()) {
            return out;
        }
        out.add(groups.get(0).get(0));
        if (widest != null && novelty(widest, out, twins) >= Novelty.ARRANGEMENT.ordinal()) {
            out.add(widest);
        }
        for (List<Combination> group : groups) {
            for (Combination c = newest(group, out, twins);
                    c != null && out.size() < SHOWN;
                    c = newest(group, out, twins)) {
                out.add(c);
            }
        }
        return out;
    }

    /** Those with the fewest stops first, of as many those in the floor before those in the wall; in each group the best first. */
    static List<List<Combination>> groups(Stream<Combination> some, Function<Combination, Stops> stops) {
        Comparator<Combination> order =
                Comparator.comparing(stops).thenComparing(c -> c.inlets().inWall());
        return some
                .sorted(Comparator.comparingDouble(c -> -c.rank()))
                .collect(Collectors.groupingBy(c -> c, () -> new TreeMap<>(order), Collectors.toList()))
                .values()
                .stream()
                .toList();
    }

    /** The one that offers most beside those shown, the first of several; null where none does. */
    private static Combination newest(List<Combination> group, List<Combination> shown, Twins twins) {
        Combination next = null;
        int most = Novelty.TWIN.ordinal();
        for (Combination c : group) {
            int n = novelty(c, shown, twins);
            if (n > most) {
                most = n;
                next = c;
            }
        }
        return next;
    }

    /** In what two layouts differ, from nothing that matters to most. */
    enum Novelty {
        TWIN,
        POOR,
        PLACES,
        ARRANGEMENT,
        INLETS,
        CLEAR
    }

    private static int novelty(Combination c, List<Combination> shown, Twins twins) {
        return shown.stream()
                .mapToInt(o -> novelty(c, o, twins).ordinal())
                .min()
                .orElseThrow();
    }

    /** What c offers beside a layout that is shown. */
    static Novelty novelty(Combination c, Combination o, Twins twins) {
        if (twins.same(c, o) || !o.clearlyDiffers(c) || o.evenAndAsGoodAs(c)) {
            return Novelty.TWIN;
        }
        if (c.margin() < Math.min(1, WORTH * o.margin())
                || c.choice().clean() != o.choice().clean()) {
            return Novelty.POOR;
        }
        if (c.sameArrangement(o)) {
            return Novelty.PLACES;
        }
        if (c.elsewhere(o) > CLEAR) {
            return Novelty.CLEAR;
        }
        return c.sharesInlets(o) ? Novelty.ARRANGEMENT : Novelty.INLETS;
    }
}
