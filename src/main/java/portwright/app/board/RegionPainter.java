package portwright.app.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.FillRule;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Plot;
import portwright.app.doc.RegionDesk.Region;
import portwright.app.doc.RegionWords;
import portwright.app.doc.View;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.drawing.Ink;
import portwright.geometry.Face;
import portwright.geometry.FeasibleRegion.Piece;
import portwright.geometry.Outline;
import portwright.geometry.Pt;

/** Where the centre of the chosen hole may go: tinted, ruled with upright lines, with a dashed edge. Shape and lines tell it without colour. */
final class RegionPainter {
    private static final double RULED_PX = 12;
    /** Under this height of the board no key hint lies in the corner, px. */
    private static final double LOW_PX = 360;

    private RegionPainter() {}

    /** Green only where all was checked that shapes it. */
    private static Ink ink(Region r) {
        return r.unknown().isEmpty() ? Ink.CELADON : Ink.INK;
    }

    static void paint(GraphicsContext g, Palette p, Plot plot, View v, Region r, double w, double h) {
        Face face = plot.picture().face();
        if (face == null || face.on() != r.on()) {
            return;
        }
        List<double[][]> rings = new ArrayList<>();
        for (Piece piece : r.pieces()) {
            rings.add(ring(plot, v, face, piece.outer()));
            piece.holes().forEach(o -> rings.add(ring(plot, v, face, o)));
        }
        g.save();
        g.setFillRule(FillRule.EVEN_ODD);
        path(g, rings);
        g.setFill(p.of(ink(r)).deriveColor(0, 1, 1, 0.13));
        g.fill();
        g.setStroke(p.of(ink(r)).deriveColor(0, 1, 1, 0.6));
        g.setLineWidth(1);
        g.setLineDashes();
        ruled(g, rings, w);
        path(g, rings);
        g.setStroke(p.of(ink(r)));
        g.setLineWidth(2);
        g.setLineDashes(8, 5);
        g.stroke();
        g.restore();
        words(g, p, r, h, v.x(plot.bounds().minX()));
    }

    private static double[][] ring(Plot plot, View v, Face face, Outline o) {
        List<Pt> pts = o.points();
        double[][] xy = new double[2][pts.size()];
        for (int i = 0; i < pts.size(); i++) {
            Pt q = plot.toPicture(face, pts.get(i));
            xy[0][i] = v.x(q.x());
            xy[1][i] = v.y(q.y());
        }
        return xy;
    }

    private static void path(GraphicsContext g, List<double[][]> rings) {
        g.beginPath();
        for (double[][] r : rings) {
            g.moveTo(r[0][0], r[1][0]);
            for (int i = 1; i < r[0].length; i++) {
                g.lineTo(r[0][i], r[1][i]);
            }
            g.closePath();
        }
    }

    /** Upright lines inside, by the crossings of each line with all rims. */
    private static void ruled(GraphicsContext g, List<double[][]> rings, double w) {
        for (double x = RULED_PX / 2; x < w; x += RULED_PX) {
            double[] ys = crossings(rings, x);
            for (int i = 0; i + 1 < ys.length; i += 2) {
                g.strokeLine(x, ys[i], x, ys[i + 1]);
            }
        }
    }

    private static double[] crossings(List<double[][]> rings, double x) {
        List<Double> ys = new ArrayList<>();
        for (double[][] r : rings) {
            int n = r[0].length;
            for (int i = 0; i < n; i++) {
                double ax = r[0][i];
                double bx = r[0][(i + 1) % n];
                if (ax <= x != bx <= x) {
                    double ay = r[1][i];
                    ys.add(ay + (r[1][(i + 1) % n] - ay) * (x - ax) / (bx - ax));
                }
            }
        }
        double[] out = ys.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(out);
        return out;
    }

    /** @param part left end of the part, px; on a low board the words end before it */
    private static void words(GraphicsContext g, Palette p, Region r, double h, double part) {
        boolean none = r.pieces().isEmpty();
        boolean low = h < LOW_PX;
        String words = none ? "No place is clear for " + r.hole() + "." : RegionWords.ruled(r);
        if (low && RulePainter.BREADTH + 14 + TextSizes.width(words, Fonts.bold(13)) > part) {
            words = none ? "no place is clear" : RegionWords.ruledShort(r);
        }
        Ink ink = none ? Ink.OXBLOOD : ink(r);
        double x = RulePainter.BREADTH + 14;
        Say.at(g, p, words, x, low ? h - 20 : h - 62, 13, true, ink, TextAlignment.LEFT, VPos.CENTER, true);
    }
}
