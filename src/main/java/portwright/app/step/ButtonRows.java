package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.layout.Pane;

/** Buttons in one row, in as many as they need where the room is narrow: their words are never cut. */
final class ButtonRows extends Pane {
    private static final double GAP_PX = 8;
    /** Height of a button in one row, and in several, px. */
    private static final double HIGH_PX = 48;

    private static final double LOW_PX = 40;

    private final List<Button> all;

    ButtonRows(Button... buttons) {
        all = List.of(buttons);
        getChildren().addAll(buttons);
    }

    private List<List<Button>> rows(double width) {
        List<List<Button>> rows = new ArrayList<>();
        List<Button> row = new ArrayList<>();
        double used = 0;
        for (Button b : all) {
            double w = b.prefWidth(-1);
            if (!row.isEmpty() && used + GAP_PX + w > width) {
                rows.add(row);
                row = new ArrayList<>();
                used = 0;
            }
            used += (row.isEmpty() ? 0 : GAP_PX) + w;
            row.add(b);
        }
        rows.add(row);
        return rows;
    }

    private static double high(int rows) {
        return rows == 1 ? HIGH_PX : LOW_PX;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefHeight(double width) {
        int n = rows(width < 0 ? Double.MAX_VALUE : width).size();
        return n * high(n) + (n - 1) * GAP_PX;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected void layoutChildren() {
        List<List<Button>> rows = rows(getWidth());
        double high = high(rows.size());
        double y = 0;
        for (List<Button> row : rows) {
            double words = row.stream().mapToDouble(b -> b.prefWidth(-1)).sum();
            double more = Math.max(0, getWidth() - words - GAP_PX * (row.size() - 1)) / row.size();
            double x = 0;
            for (Button b : row) {
                double w = b.prefWidth(-1) + more;
                b.resizeRelocate(x, y, w, high);
                x += w + GAP_PX;
            }
            y += high + GAP_PX;
        }
    }
}
