package portwright.app.part;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import portwright.app.paint.Palette;

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
        if (canvas.getWidth() != w || canvas.getHeight() != h) {
            canvas.setWidth(w);
            canvas.setHeight(h);
        }
        repaint();
    }

    /** Paints now. */
    public final void repaint() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (canvas.getWidth() > 0 && canvas.getHeight() > 0) {
            paint(g, canvas.getWidth(), canvas.getHeight(), Palette.of(probe));
        }
    }

    protected abstract void paint(GraphicsContext g, double w, double h, Palette p);
}
