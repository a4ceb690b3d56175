package portwright.layout;

/**
 * How holes mirror each other across an axis of the chamber: the first ones in pairs, one after the other, the rest on the axis.
 *
 * @param pairs how many pairs
 */
record Mirror(Axis axis, int pairs) {
    /** The hole that mirrors one; itself on the axis. */
    int mate(int hole) {
        return hole < 2 * pairs ? hole ^ 1 : hole;
    }

    /** Numbers that say where holes lie: along and across for each pair, along for the rest. */
    double[] start(double[] x, double[] y) {
        double[] p = new double[x.length];
        for (int i = 0; i < p.length; i++) {
            int first = i < 2 * pairs ? i & ~1 : i;
            p[i] = i < 2 * pairs && i % 2 == 1 ? axis.across(x[first], y[first]) : axis.along(x[first], y[first]);
        }
        return p;
    }

    /** Writes the places that numbers from one on say. */
    void place(double[] p, int from, double[] x, double[] y) {
        for (int i = 0; i < x.length; i++) {
            boolean paired = i < 2 * pairs;
            int first = from + (paired ? i & ~1 : i);
            double across = paired ? (i % 2 == 0 ? 1 : -1) * p[first + 1] : 0;
            var at = axis.at(p[first], across);
            x[i] = at.x();
            y[i] = at.y();
        }
    }

    /** The arrangement in words. */
    String family(int holes) {
        if (pairs == 0) {
            return axis.line();
        }
        return holes == 2 ? "as a pair, " + axis.mirroring() : axis.mirroring();
    }
}
