package portwright.app.frame;

import javafx.scene.Parent;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** Shows its content larger: lays it out in less room and scales it up. */
public final class ScaledPane extends Region {
    private final Scale scale = new Scale(1, 1);
    private final Parent content;
    private double factor = 1;

    public ScaledPane(Parent content) {
        this.content = content;
        content.getTransforms().add(scale);
        getChildren().add(content);
    }

    public double factor() {
        return factor;
    }

    /** Sets the size, 1 to 2. */
    public void factor(double f) {
        factor = Math.max(1, Math.min(2, f));
        scale.setX(factor);
        scale.setY(factor);
        requestLayout();
    }

    @Override
    protected double computePrefWidth(double height) {
        return factor * content.prefWidth(height < 0 ? height : height / factor);
    }

    @Override
    protected double computePrefHeight(double width) {
        return factor * content.prefHeight(width < 0 ? width : width / factor);
    }

    @Override
    protected void layoutChildren() {
        content.resizeRelocate(0, 0, getWidth() / factor, getHeight() / factor);
    }
}
