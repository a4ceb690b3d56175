package portwright.layout;

import java.util.Arrays;

/**
 * A clearance read from a fine grid round a mark, as far as a mark may be shifted and a drill then stray, for measures that take long to compute; farther off it is computed. Lengths in mm. Between grid points it is
 * interpolated, which is wrong by at most a third of the grid where the clearance has an edge.
 */
final class NearGap implements Obstacle.Gap {
    private static final double GRID_MM = 0.25;
    private static final int HALF = 120;
    private static final int SIDE = 2 * HALF + 1;

    private final Obstacle.Gap exact;
    private final double x;
    private final double y;
    private final double[][] known = new double[SIDE][];

    NearGap(Obstacle.Gap exact, double x, double y) {
        this.exact = exact;
        this.x = x;
        this.y = y;
    }

    @Override
    public double at(double px, double py) {
        double i = (px - x) / GRID_MM + HALF;
        double j = (py - y) / GRID_MM + HALF;
        int i0 = (int) Math.floor(i);
        int j0 = (int) Math.floor(j);
        if (i0 < 0 || j0 < 0 || i0 + 1 >= SIDE || j0 + 1 >= SIDE) {
            return exact.at(px, py);
        }
        double u = i - i0;
        double v = j - j0;
        return (1 - v) * ((1 - u) * node(i0, j0) + u * node(i0 + 1, j0))
                + v * ((1 - u) * node(i0, j0 + 1) + u * node(i0 + 1, j0 + 1));
    }

    private double node(int i, int j) {
        if (known[j] == null) {
            known[j] = new double[SIDE];
            Arrays.fill(known[j], Double.NaN);
        }
        if (Double.isNaN(known[j][i])) {
            known[j][i] = exact.at(x + (i - HALF) * GRID_MM, y + (j - HALF) * GRID_MM);
        }
        return known[j][i];
    }
}
