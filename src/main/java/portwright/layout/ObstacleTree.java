package portwright.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the obstacle with the least margin at a point. A square is split where the point falls; each part keeps only the obstacles that can be the
 * worst somewhere in it (a clearance changes by no more than the centre moves). Exact; parts are made when first asked for.
 */
final class ObstacleTree {
    private static final int FEW = 4;
    private static final int DEEP = 16;
    /** Arrangements tried by a search reach far outside the slab; there the chamber's outline soon stands alone. */
    private static final int BEYOND = 16;

    private final double x;
    private final double y;
    private final double half;
    private final int level;
    private final Obstacle[] list;
    private final List<Obstacle> given;
    private final ObstacleTree[] parts = new ObstacleTree[4];

    /** About a slab whose middle and half width are given, mm. */
    ObstacleTree(double x, double y, double half, List<Obstacle> all) {
        this(x, y, BEYOND * half, 0, all.toArray(Obstacle[]::new), List.copyOf(all));
    }

    private ObstacleTree(double x, double y, double half, int level, Obstacle[] from, List<Obstacle> given) {
        this.given = given;
        this.x = x;
        this.y = y;
        this.half = half;
        this.level = level;
        double reach = half * Math.sqrt(2);
        double[] gaps = new double[from.length];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < from.length; i++) {
            gaps[i] = from[i].gap().at(x, y);
            least = Math.min(least, from[i].margin(gaps[i] + reach));
        }
        List<Obstacle> kept = new ArrayList<>();
        for (int i = 0; i < from.length; i++) {
            if (from[i].margin(gaps[i] - reach) <= least) {
                kept.add(from[i]);
            }
        }
        list = kept.toArray(Obstacle[]::new);
    }

    /** The least margin at a point. */
    double margin(double px, double py) {
        double least = Scale.FREE;
        for (Obstacle o : leaf(px, py)) {
            least = Math.min(least, o.margin(o.gap().at(px, py)));
        }
        return least;
    }

    /** All obstacles it was made from. */
    List<Obstacle> all() {
        return given;
    }

    private Obstacle[] leaf(double px, double py) {
        ObstacleTree t = this;
        if (Math.abs(px - x) > half || Math.abs(py - y) > half) {
            return list;
        }
        while (t.list.length > FEW && t.level < DEEP) {
            t = t.part(px, py);
        }
        return t.list;
    }

    private ObstacleTree part(double px, double py) {
        int k = (px > x ? 1 : 0) + (py > y ? 2 : 0);
        if (parts[k] == null) {
            double q = half / 2;
            parts[k] = new ObstacleTree(
                    x + ((k & 1) == 1 ? q : -q), y + ((k & 2) == 2 ? q : -q), q, level + 1, list, given);
        }
        return parts[k];
    }
}
