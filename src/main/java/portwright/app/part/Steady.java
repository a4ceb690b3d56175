package portwright.app.part;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** A column that is never squeezed. Breaking words into lines is dear, and those around ask for the height several times: it is kept until something inside changes. */
public class Steady extends VBox {
    private double high;
    private double highFor = Double.NaN;

    public Steady(double spacing, Node... children) {
        super(spacing, children);
    }

    @Override
    public void requestLayout() {
        highFor = Double.NaN;
        super.requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        if (highFor != width) {
            high = super.computePrefHeight(width);
            highFor = width;
        }
        return high;
    }

    @Override
    protected double computeMinHeight(double width) {
        return prefHeight(width);
    }
}
