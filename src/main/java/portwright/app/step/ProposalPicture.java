package portwright.app.step;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.PartLook;
import portwright.geometry.KilnGeometry;
import portwright.layout.Proposal;

/** A proposal as a small picture true to scale: floor and lid side by side, by the painter of the board, at one scale. */
final class ProposalPicture extends PaintedRegion {
    private static final double LINES = 0.6;
    private static final double WORDS_PX = 18;

    private final Plot floor;
    private final Plot lid;

    ProposalPicture(Proposal p) {
        KilnGeometry kiln = KilnGeometry.of(p.design());
        floor = new Plot(kiln, Picture.FLOOR_HOT, List.of(), PartLook.small());
        lid = new Plot(kiln, Picture.LID_COLD, List.of(), PartLook.small());
        setPrefHeight(150);
        setMinHeight(150);
        setAccessibleText("floor and lid from above: " + p.arrangement());
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        Box f = floor.bounds();
        Box l = lid.bounds();
        Box both = new Box(
                Math.min(f.minX(), l.minX()),
                Math.min(f.minY(), l.minY()),
                Math.max(f.maxX(), l.maxX()),
                Math.max(f.maxY(), l.maxY()));
        one(g, p, floor, both, 0, w / 2, h, "floor from above");
        one(g, p, lid, both, w / 2, w / 2, h, "lid from above");
    }

    private static void one(
            GraphicsContext g, Palette p, Plot plot, Box b, double x, double w, double h, String words) {
        View v = View.fit(b.minX(), b.minY(), b.maxX(), b.maxY(), x, 0, w, h - WORDS_PX, 3);
        plot.paint(CanvasPen.thumb(g, v, p, LINES), b);
        Say.at(g, p, words, x + w / 2, h - 8, 12.5, false, Ink.INK2, TextAlignment.CENTER, VPos.CENTER, false);
    }
}
