package portwright.app.frame;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Box;
import portwright.drawing.PartLook;
import portwright.geometry.KilnGeometry;
import portwright.model.On;

/** Plan of a kiln; of one with holes in its walls alone, its walls. */
final class StarterThumb extends PaintedRegion {
    private KilnGeometry kiln;

    /** @param kiln null leaves it empty */
    StarterThumb(KilnGeometry kiln, double width, double height) {
        this.kiln = kiln;
        setPrefSize(width, height);
        setMinSize(width, height);
    }

    void show(KilnGeometry other) {
        kiln = other;
        repaint();
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        if (kiln != null) {
            boolean walls = !kiln.holes().isEmpty()
                    && kiln.holes().stream().noneMatch(x -> x.face().on() == On.FLOOR);
            Plot plot = new Plot(kiln, walls ? Picture.WALLS_HOT : Picture.FLOOR_HOT, List.of(), PartLook.small());
            Box b = plot.bounds();
            plot.paint(CanvasPen.thumb(g, View.fit(b.minX(), b.minY(), b.maxX(), b.maxY(), 0, 0, w, h, 2), p, 0.6), b);
        }
    }
}
