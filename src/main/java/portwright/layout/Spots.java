package portwright.layout;

import java.util.Arrays;
import java.util.stream.IntStream;
import portwright.geometry.Pt;

/**
 * Places of the holes of one role.
 *
 * @param family how they are arranged, in words
 * @param turn whether they repeat about the chamber's middle
 * @param panels panel of each, from 1; null on floor and lid
 * @param mirror how they mirror each other; null where they do not, or repeat about the middle
 * @param x right, mm; on a panel along it
 * @param y to the back, mm; on a panel up
 * @param margin least margin of all rules on this slab
 */
record Spots(String family, Turn turn, int[] panels, Mirror mirror, double[] x, double[] y, double margin) {
    /** How holes are named that stay where the design has them. */
    static final String AS_THEY_ARE = "placed as they are";

    /** How holes repeat when turned about the middle: not at all, in a chamber that mirrors itself but does not repeat with them, or so that they are even. */
    enum Turn {
        NONE,
        LOOSE,
        WHOLE
    }

    /** On floor or lid. */
    Spots(String family, boolean symmetric, double[] x, double[] y, double margin) {
        this(family, symmetric, null, x, y, margin);
    }

    /** In mirror pairs, or on an axis, of floor or lid. */
    Spots(String family, Mirror mirror, double[] x, double[] y, double margin) {
        this(family, Turn.NONE, null, mirror, x, y, margin);
    }

    /** In the wall. */
    Spots(String family, boolean symmetric, int[] panels, double[] x, double[] y, double margin) {
        this(family, symmetric ? Turn.WHOLE : Turn.NONE, panels, null, x, y, margin);
    }

    /** The same at other places. */
    Spots at(double[] toX, double[] toY) {
        return new Spots(family, turn, panels, mirror, toX, toY, margin);
    }

    /** What they mirror each other across; null where they do not. */
    Axis axis() {
        return mirror == null ? null : mirror.axis();
    }

    /** Whether they repeat about the chamber's middle. */
    boolean symmetric() {
        return turn != Turn.NONE;
    }

    /** The same, which the chamber does not repeat with although it mirrors itself: not even. */
    Spots loose() {
        return new Spots(family, Turn.LOOSE, panels, mirror, x, y, margin);
    }

    /** Whether each has its mirror image across a line, to within a length. */
    boolean mirrors(Axis a, double withinMm) {
        return !inWall()
                && IntStream.range(0, x.length).allMatch(i -> {
                    Pt q = a.mirrored(x[i], y[i]);
                    return IntStream.range(0, x.length)
                            .anyMatch(j -> Math.hypot(q.x() - x[j], q.y() - y[j]) < withinMm);
                });
    }

    /** Whether they can be moved so that they stay as even as they are. */
    boolean kept() {
        return symmetric() || mirror != null;
    }

    boolean inWall() {
        return panels != null;
    }

    /** Whether they mirror each other, or lie evenly round the middle; a row does so too but heats in a stripe. */
    boolean even() {
        return mirror != null && !mirror.stripe(x, y)
                || turn == Turn.WHOLE && (x.length < 3 || !family.contains("row"));
    }

    /** Whether they are no stripe even when rounded, where they mirror each other. */
    boolean wide() {
        return mirror == null || mirror.wide(x, y);
    }

    /** The same with its margin found anew. */
    Spots weighed(double margin) {
        return new Spots(family, turn, panels, mirror, x, y, margin);
    }

    /** The same, named for lying higher in the wall than usual where one does. */
    Spots aboveThird(double thirdMm) {
        return Arrays.stream(y).allMatch(v -> v <= thirdMm)
                ? this
                : new Spots(family + " above its lower third", turn, panels, mirror, x, y, margin);
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
