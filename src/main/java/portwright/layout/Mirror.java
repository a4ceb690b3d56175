package portwright.layout;

import java.util.Arrays;

/**
 * How holes mirror each other across an axis of the chamber: the first ones in pairs, one after the other, the rest on the axis.
 *
 * @param pairs how many pairs
 */
record Mirror(Axis axis, int pairs) {
    /** Three holes or more narrower than this share of their length, in a chamber as wide as long, heat a stripe of it (judgement). */
    private static final double STRIPE = 0.48;

    /** Kept while places are sought, so that rounding them to a tape makes no stripe. */
    private static final double WIDE = 0.5;

    /** Whether three holes or more lie so near one line that they heat a stripe of the chamber. */
    boolean stripe(double[] x, double[] y) {
        return slim(x, y) < STRIPE * axis.slim();
    }

    /** Whether they lie a little wider than that, as they are sought. */
    boolean wide(double[] x, double[] y) {
        return slim(x, y) >= WIDE * axis.slim();
    }

    /** How far holes lie about their middle across the line along which they lie most, over that along it; 1 for two holes. */
    private static double slim(double[] x, double[] y) {
        if (x.length < 3) {
            return 1;
        }
        double xx = 0;
        double yy = 0;
        double xy = 0;
        double mx = Arrays.stream(x).average().orElseThrow();
        double my = Arrays.stream(y).average().orElseThrow();
        for (int i = 0; i < x.length; i++) {
            xx += (x[i] - mx) * (x[i] - mx);
            yy += (y[i] - my) * (y[i] - my);
            xy += (x[i] - mx) * (y[i] - my);
        }
        double mean = (xx + yy) / 2;
        double off = Math.hypot((xx - yy) / 2, xy);
        return Math.sqrt(Math.max(0, mean - off) / (mean + off));
    }

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
