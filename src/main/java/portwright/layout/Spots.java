package portwright.layout;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Places of the holes of one role.
 *
 * @param family how they are arranged, in words
 * @param symmetric whether they repeat about the chamber's middle
 * @param panels panel of each, from 1; null on floor and lid
 * @param x right, mm; on a panel along it
 * @param y to the back, mm; on a panel up
 * @param margin least margin of all rules on this slab
 */
record Spots(String family, boolean symmetric, int[] panels, double[] x, double[] y, double margin) {
    /** How holes are named that stay where the design has them. */
    static final String AS_THEY_ARE = "placed as they are";

    /** On floor or lid. */
    Spots(String family, boolean symmetric, double[] x, double[] y, double margin) {
        this(family, symmetric, null, x, y, margin);
    }

    boolean inWall() {
        return panels != null;
    }

    /** Whether they lie evenly round the middle; a row repeats about it but heats in a stripe. */
    boolean even() {
        return symmetric && (x.length < 3 || !family.contains("row"));
    }

    /** The same with its margin found anew. */
    Spots weighed(double margin) {
        return new Spots(family, symmetric, panels, x, y, margin);
    }

    /** The same, named for lying higher in the wall than usual where one does. */
    Spots aboveThird(double thirdMm) {
        return Arrays.stream(y).allMatch(v -> v <= thirdMm)
                ? this
                : new Spots(family + " above its lower third", symmetric, panels, x, y, margin);
    }

    /** Largest distance of a hole from the nearest of another arrangement, mm; infinite when the numbers differ. */
    double farFrom(Spots o) {
        if (o.x.length != x.length || inWall() != o.inWall() || inWall() && !Arrays.equals(panels, o.panels)) {
            return Double.POSITIVE_INFINITY;
        }
        double far = 0;
        for (int i = 0; i < x.length; i++) {
            double near = Double.POSITIVE_INFINITY;
            for (int j = 0; j < x.length; j++) {
                near = Math.min(near, Math.hypot(x[i] - o.x[j], y[i] - o.y[j]));
            }
            far = Math.max(far, near);
        }
        return far;
    }

    /** Share of the holes of two arrangements that have none of the other within a distance, mm; 0 to 1. */
    double elsewhere(Spots o, double withinMm) {
        int shared = Math.min(near(o, withinMm), o.near(this, withinMm));
        return 1 - 2.0 * shared / (x.length + o.x.length);
    }

    /** How many holes have one of another arrangement within a distance. */
    private int near(Spots o, double withinMm) {
        int n = 0;
        for (int i = 0; i < x.length && inWall() == o.inWall(); i++) {
            int k = i;
            boolean met = IntStream.range(0, o.x.length)
                    .anyMatch(j -> (!inWall() || panels[k] == o.panels[j])
                            && Math.hypot(x[k] - o.x[j], y[k] - o.y[j]) < withinMm);
            n += met ? 1 : 0;
        }
        return n;
    }
}
