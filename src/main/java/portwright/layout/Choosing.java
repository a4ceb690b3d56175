package portwright.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Picks the few layouts that are shown. The first is the best; after it those of other numbers or another arrangement come before the same arrangement
 * in other places, and where the first two share their inlets, the third has them elsewhere if any does. What leaves little of the first one's margin
 * comes last.
 */
final class Choosing {
    static final int SHOWN = 3;
    /** Share of the first one's margin that a choice keeps, unless no rule cautions it. */
    private static final double WORTH = 0.5;

    private Choosing() {}

    /**
     * Up to three that differ clearly.
     *
     * @param groups every layout of one comes before any of the next; in each the best first
     * @param widest the one with the largest margin, second where its arrangement is another; null where that does not matter
     */
    static List<Combination> apart(List<List<Combination>> groups, Combination widest) {
        List<Combination> out = new ArrayList<>();
        if (groups.isEmpty()) {
            return out;
        }
        out.add(groups.get(0).get(0));
        if (widest != null && novelty(widest, out) >= Novelty.ARRANGEMENT.ordinal()) {
            out.add(widest);
        }
        for (List<Combination> group : groups) {
            for (Combination c = newest(group, out); c != null && out.size() < SHOWN; c = newest(group, out)) {
                out.add(c);
            }
        }
        return out;
    }

    /** The one that offers most beside those shown, the first of several; null where none does. */
    private static Combination newest(List<Combination> group, List<Combination> shown) {
        int enough = (shown.size() > 1 && shareInlets(shown) ? Novelty.INLETS : Novelty.ARRANGEMENT).ordinal();
        Combination next = null;
        int most = Novelty.TWIN.ordinal();
        for (Combination c : group) {
            int n = Math.min(enough, novelty(c, shown));
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
        INLETS
    }

    private static int novelty(Combination c, List<Combination> shown) {
        return shown.stream().mapToInt(o -> novelty(c, o).ordinal()).min().orElseThrow();
    }

    /** What c offers beside a layout that is shown. */
    static Novelty novelty(Combination c, Combination o) {
        if (!o.clearlyDiffers(c) || o.evenAndAsGoodAs(c)) {
            return Novelty.TWIN;
        }
        if (c.margin() < Math.min(1, WORTH * o.margin())
                || c.choice().clean() != o.choice().clean()) {
            return Novelty.POOR;
        }
        if (c.sameArrangement(o)) {
            return Novelty.PLACES;
        }
        return c.sharesInlets(o) ? Novelty.ARRANGEMENT : Novelty.INLETS;
    }

    private static boolean shareInlets(List<Combination> shown) {
        return shown.stream().allMatch(o -> o.sharesInlets(shown.get(0)));
    }
}
