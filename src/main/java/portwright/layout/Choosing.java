package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Picks the few layouts that are shown: the best, and after it those that differ clearly from each shown before them: inlets and flues both go elsewhere
 * ({@link Twins#clear}), and enough of its margin is left; of these another arrangement comes before the same one in other places. Fewer are shown where there are no such.
 * What stays where the design has it may be the first, so that nothing worse stands there, and is no further choice.
 */
final class Choosing {
    static final int SHOWN = 3;
    /** Share of the first one's margin that a choice keeps, unless no rule cautions it. */
    private static final double WORTH = 0.5;

    /** Share of the drilling that goes elsewhere, over which two layouts differ clearly: neither inlets nor flues do that alone. */
    static final double CLEAR = 0.5;

    private Choosing() {}

    /**
     * Up to three that differ clearly.
     *
     * @param groups every layout of one comes before any of the next; in each the best first
     * @param widest the one with the largest margin, second where it differs clearly or has its inlets in the other part; null where that does not matter
     * @param twins what turned or mirrored is the same layout
     */
    static List<Combination> apart(List<List<Combination>> groups, Combination widest, Twins twins) {
        List<Combination> out = new ArrayList<>();
        if (groups.isEmpty()) {
            return out;
        }
        out.add(groups.get(0).get(0));
        if (widest != null && mayBeSecond(widest, out, twins)) {
            out.add(widest);
        }
        for (List<Combination> group : groups) {
            for (Combination c = clear(group, out, twins);
                    c != null && out.size() < SHOWN;
                    c = clear(group, out, twins)) {
                out.add(c);
            }
        }
        if (out.size() == SHOWN
                && groups.stream().anyMatch(g -> g.contains(out.get(1)) && g.contains(out.get(2)))
                && Combination.WIDTH.compare(out.get(1), out.get(2)) < 0) {
            out.add(1, out.remove(2));
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

    /** Inlets in the other part are a choice whatever the flues. */
    private static boolean mayBeSecond(Combination widest, List<Combination> shown, Twins twins) {
        int n = widest.anew() ? novelty(widest, shown, twins) : 0;
        return n >= Novelty.MOVED.ordinal() || n > Novelty.POOR.ordinal() && !widest.samePart(shown.get(0));
    }

    /**
     * The widest that differs clearly from all shown, or of those that are next to as wide one in another arrangement, then an even one, then the first; null where
     * none differs.
     */
    private static Combination clear(List<Combination> group, List<Combination> shown, Twins twins) {
        List<Combination> clear = group.stream()
                .filter(c -> c.anew() && novelty(c, shown, twins) >= Novelty.MOVED.ordinal())
                .toList();
        Combination widest = clear.stream().max(Combination.WIDTH).orElse(null);
        Combination next = null;
        int most = -1;
        for (Combination c : clear) {
            int n = 2 * novelty(c, shown, twins) + (c.even() ? 1 : 0);
            if (n > most
                    && !Combination.gains(widest.margin(), c.margin())
                    && !Combination.gains(widest.room(), c.room())) {
                most = n;
                next = c;
            }
        }
        return next;
    }

    /** The margin that a further layout keeps: half of the first one's, or 1, from which no rule of places cautions. */
    static double least(double first) {
        return Math.min(1, WORTH * first);
    }

    /** Whether a further layout keeps enough of the first one's margin, and of the room of its places. */
    static boolean keeps(Combination c, Combination first) {
        return c.margin() >= least(first.margin()) && c.room() >= least(first.room());
    }

    /** In what two layouts differ, from nothing that matters to most. */
    enum Novelty {
        TWIN,
        POOR,
        PLACES,
        ARRANGEMENT,
        INLETS,
        MOVED,
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
        boolean clear = twins.clear(c, o, 0);
        if (twins.same(c, o) || !o.clearlyDiffers(c) || !clear && o.evenAndAsGoodAs(c)) {
            return Novelty.TWIN;
        }
        if (!keeps(c, o) || c.choice().clean() != o.choice().clean()) {
            return Novelty.POOR;
        }
        if (clear) {
            return c.sameArrangement(o) ? Novelty.MOVED : Novelty.CLEAR;
        }
        if (c.sameArrangement(o)) {
            return Novelty.PLACES;
        }
        return c.sharesInlets(o) ? Novelty.ARRANGEMENT : Novelty.INLETS;
    }
}
