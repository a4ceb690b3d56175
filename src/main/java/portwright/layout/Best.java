package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The best rows of numbers out of many, each with its value behind them; of equals the first. */
final class Best {
    private final int most;
    private final int width;
    private final List<double[]> rows = new ArrayList<>();
    private double cut = Double.NEGATIVE_INFINITY;

    /** @param width length of a row without its value */
    Best(int most, int width) {
        this.most = most;
        this.width = width;
    }

    /** What is not above this is not kept. */
    double cut() {
        return cut;
    }

    void offer(double[] row, double value) {
        if (value > cut) {
            double[] kept = Arrays.copyOf(row, width + 1);
            kept[width] = value;
            rows.add(kept);
            if (rows.size() >= 2 * most) {
                trim();
            }
        }
    }

    private void trim() {
        rows.sort(Comparator.comparingDouble(a -> -a[width]));
        if (rows.size() >= most) {
            rows.subList(most, rows.size()).clear();
            cut = rows.get(most - 1)[width];
        }
    }

    /** Best first. */
    List<double[]> rows() {
        trim();
        return List.copyOf(rows);
    }
}
