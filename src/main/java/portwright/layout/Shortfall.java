package portwright.layout;

import java.util.List;

/**
 * How far a layout is from passing.
 *
 * @param stops how many stops it has, as the check counts them: one for each rule and each thing or pair of things that it looks at
 * @param depth how far the worst of them is under its limit, on the scale of {@link Scale}: in units of the caution limit; 0 where none is
 * @param all the same of all of them together
 */
record Shortfall(int stops, double depth, double all) implements Comparable<Shortfall> {
    static final Shortfall NONE = new Shortfall(0, 0, 0);

    /** What differs by less is as deep, as when a groove runs straight. */
    private static final double ALIKE = 1e-3;

    /** What some terms of a layout lack. */
    static Shortfall of(List<Term> terms) {
        Shortfall out = NONE;
        List<Term> stops = terms.stream().filter(Term::isStop).toList();
        for (Term t : stops) {
            out = out.and(t.margin());
        }
        long things =
                stops.stream().map(t -> List.of(t.rule(), t.parts())).distinct().count();
        return new Shortfall((int) things, out.depth, out.all);
    }

    /** With one more stop, or none where the margin is none. */
    Shortfall and(double margin) {
        return margin < -1e-9 ? new Shortfall(stops + 1, Math.max(depth, -margin), all - margin) : this;
    }

    Shortfall and(Shortfall o) {
        return new Shortfall(stops + o.stops, Math.max(depth, o.depth), all + o.all);
    }

    /** Whether it has more stops than another, or as many and a deeper one. */
    boolean beyond(Shortfall o) {
        return stops != o.stops ? stops > o.stops : Math.round(depth / ALIKE) > Math.round(o.depth / ALIKE);
    }

    /** Fewer stops first, of as many the less deep, of as deep what lacks less in all. */
    @Override
    public int compareTo(Shortfall o) {
        if (beyond(o)) {
            return 1;
        }
        return o.beyond(this) ? -1 : Long.compare(Math.round(all / ALIKE), Math.round(o.all / ALIKE));
    }
}
