package portwright.app.part;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.PaperModel;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.drawing.Ink;

/** The boxwood rule round 100 mm with a pointer for each bar and posts at 1.5 %. */
public final class CorrectionGauge extends PaintedRegion {
    private static final double LOW = 98;
    private static final double HIGH = 102;

    private final PaperModel model;

    public CorrectionGauge(PaperModel model) {
        this.model = model;
        setMinHeight(58);
        setPrefHeight(58);
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        double y = 14;
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(0, y, w, 20);
        g.setStroke(p.of(Ink.BOXINK));
        g.setLineWidth(1);
        for (int i = 0; i <= 40; i++) {
            double x = i * w / 40;
            g.strokeLine(x, y, x, y + (i % 10 == 0 ? 13 : i % 5 == 0 ? 10 : 7));
        }
        for (double post : new double[] {98.5, 101.5}) {
            double x = (post - LOW) / (HIGH - LOW) * w;
            g.setStroke(p.of(Ink.OXBLOOD));
            g.setLineWidth(2.4);
            g.strokeLine(x, y - 3, x, y + 24);
            Say.at(
                    g,
                    p,
                    post + (post > 100 ? " mm" : ""),
                    x,
                    y + 36,
                    13,
                    false,
                    Ink.INK,
                    TextAlignment.CENTER,
                    VPos.CENTER,
                    false);
        }
        Say.at(g, p, "100", w / 2, y + 36, 13, false, Ink.INK, TextAlignment.CENTER, VPos.CENTER, false);
        pointer(g, p, (model.measuredMm(true) - LOW) / (HIGH - LOW) * w, true);
        pointer(g, p, (model.measuredMm(false) - LOW) / (HIGH - LOW) * w, false);
    }

    private static void pointer(GraphicsContext g, Palette p, double x, boolean filled) {
        double[] xs = {x - 6, x + 6, x};
        double[] ys = {2, 2, 13};
        g.setFill(p.of(Ink.COBALT));
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(1.8);
        if (filled) {
            g.fillPolygon(xs, ys, 3);
        } else {
            g.strokePolygon(xs, ys, 3);
        }
    }
}
