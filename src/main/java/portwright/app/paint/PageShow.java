package portwright.app.paint;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import portwright.app.doc.View;
import portwright.drawing.Box;
import portwright.drawing.Pen;
import portwright.sheet.PagePicture;

/** Shows a printed page on a canvas. */
public final class PageShow {
    private PageShow() {}

    /** Draws the page white into a box of the canvas; answers the scale, px per mm. */
    public static double draw(
            GraphicsContext g, PagePicture page, double x, double y, double width, double height, Color edge) {
        double k = Math.min(width / page.widthMm(), height / page.heightMm());
        double w = page.widthMm() * k;
        double h = page.heightMm() * k;
        double left = x + (width - w) / 2;
        g.setFill(Color.WHITE);
        g.fillRect(left, y, w, h);
        View v = new View(0, 0, left, y + h, k);
        CanvasPen pen = CanvasPen.paper(g, v);
        g.save();
        g.beginPath();
        g.rect(left, y, w, h);
        g.clip();
        page.show(new PagePicture.Stage() {
            @Override
            public Pen pen() {
                return pen;
            }

            @Override
            public void clip(Box b) {
                g.save();
                g.beginPath();
                g.rect(v.x(b.minX()), v.y(b.maxY()), b.width() * k, b.height() * k);
                g.clip();
            }

            @Override
            public void unclip() {
                g.restore();
            }
        });
        g.restore();
        g.setStroke(edge);
        g.setLineWidth(1);
        g.setLineDashes();
        g.strokeRect(left, y, w, h);
        return k;
    }
}
