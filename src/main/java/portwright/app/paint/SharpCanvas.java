package portwright.app.paint;

import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Scale;

/** Canvases that stay sharp where the window is shown larger: they hold as many dots as the screen shows of them, and are painted in px all the same. */
public final class SharpCanvas {
    private SharpCanvas() {}

    /** How much larger than laid out a part of the window is shown, at least 1. */
    public static double factor(Node shown) {
        return Math.max(1, shown.getLocalToSceneTransform().getMxx());
    }

    /** Gives a canvas its size, px, for a window shown {@code factor} times as large. */
    public static void size(Canvas canvas, double w, double h, double factor) {
        if (canvas.getWidth() != w * factor || canvas.getHeight() != h * factor) {
            canvas.setWidth(w * factor);
            canvas.setHeight(h * factor);
        }
        GraphicsContext g = canvas.getGraphicsContext2D();
        if (g.getTransform().getMxx() != factor) {
            g.setTransform(new Affine(new Scale(factor, factor)));
            if (factor == 1) {
                canvas.getTransforms().clear();
            } else {
                canvas.getTransforms().setAll(new Scale(1 / factor, 1 / factor));
            }
        }
    }
}
