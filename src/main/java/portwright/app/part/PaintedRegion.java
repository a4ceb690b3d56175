package portwright.app.part;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import portwright.app.paint.Palette;
import portwright.app.paint.SharpCanvas;

/** A region that is one canvas and repaints itself when it or the theme changes. */
public abstract class PaintedRegion extends Region {
    private final Canvas canvas = new Canvas();
    private final Region probe = new Region();

    protected PaintedRegion() {
        probe.getStyleClass().add("colour-probe");
        probe.setVisible(false);
        probe.setManaged(false);
        getChildren().addAll(probe, canvas);
        probe.backgroundProperty().addListener((o, a, b) -> requestLayout());
    }

    /** The least room, px, in which the picture can be read. */
    protected final void least(double width, double height) {
        setMinSize(width, height);
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        double h = getHeight();
        SharpCanvas.size(canvas, w, h, SharpCanvas.factor(this));
        repaint();
    }

    /** Paints now. */
    public final void repaint() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        double factor = g.getTransform().getMxx();
        double w = canvas.getWidth() / factor;
        double h = canvas.getHeight() / factor;
        g.clearRect(0, 0, w, h);
        if (w > 0 && h > 0) {
            paint(g, w, h, Palette.of(probe));
        }
    }

    protected abstract void paint(GraphicsContext g, double w, double h, Palette p);
}
