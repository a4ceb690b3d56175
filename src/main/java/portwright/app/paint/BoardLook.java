package portwright.app.paint;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.model.On;

/** Tape words round the drawing, the scale in words, the line on an empty part. */
public final class BoardLook {
    /** Least room of the line on an empty part to the board's edge, px. */
    private static final double HINT_PX = 18;

    private BoardLook() {}

    /** Strips of tape that say which way the part lies. */
    public static void tapes(GraphicsContext g, Palette p, Plot plot, View v, double w, double h) {
        Picture picture = plot.picture();
        Box b = plot.bounds();
        double left = RulePainter.BREADTH;
        double midX = clamp(v.x(picture.slab() ? 0 : (b.minX() + b.maxX()) / 2), left + 70, w - 70);
        double midY = clamp(v.y(picture.slab() ? 0 : (b.minY() + b.maxY()) / 2), left + 40, h - 40);
        double top = clamp(v.y(b.maxY()) - 14, left + 18, h - 40);
        double bottom = clamp(v.y(b.minY()) + 14, left + 40, h - 16);
        if (picture.slab()) {
            tape(g, p, "BACK · hinge", midX, top, false);
            tape(g, p, "FRONT", midX, bottom, false);
            tape(
                    g,
                    p,
                    picture.mirrored() ? "RIGHT" : "LEFT",
                    clamp(v.x(b.minX()) - 36, left + 42, w - 120),
                    midY,
                    false);
            tape(
                    g,
                    p,
                    picture.mirrored() ? "LEFT" : "RIGHT",
                    clamp(v.x(b.maxX()) + 36, left + 120, w - 42),
                    midY,
                    false);
        } else if (picture.walls()) {
            tape(g, p, "LID", midX, clamp(v.y(b.maxY()) - 46, left + 18, h - 40), false);
            tape(g, p, "FLOOR", midX, bottom, false);
        } else {
            tape(g, p, "FRONT half removed, looking to the BACK", midX, clamp(h - 20, left + 40, h - 16), false);
            tape(g, p, "LEFT", clamp(v.x(b.minX()) - 46, left + 20, w), midY, true);
        }
        if (picture.mirrored()) {
            mirrored(g, p, w);
        }
    }

    private static void mirrored(GraphicsContext g, Palette p, double w) {
        g.setFont(Fonts.bold(15));
        double tw = TextSizes.width("MIRRORED", Fonts.bold(15));
        g.setFill(p.of(Ink.INK));
        g.fillRect(w - tw - 42, RulePainter.BREADTH + 12, tw + 28, 28);
        g.setFill(p.of(Ink.PAPER));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.CENTER);
        g.fillText("MIRRORED", w - tw - 28, RulePainter.BREADTH + 26);
        g.setTextBaseline(VPos.BASELINE);
    }

    private static double clamp(double v, double low, double high) {
        return Math.max(low, Math.min(high, v));
    }

    /** A strip of tape with torn ends. */
    public static void tape(GraphicsContext g, Palette p, String words, double x, double y, boolean upright) {
        g.save();
        g.translate(x, y);
        if (upright) {
            g.rotate(-90);
        }
        double tw = TextSizes.width(words, Fonts.bold(14));
        double half = tw / 2 + 12;
        double hh = 11;
        g.beginPath();
        g.moveTo(-half, -hh);
        g.lineTo(half, -hh);
        for (int i = 0; i < 4; i++) {
            g.lineTo(half - 3, -hh + (i + 0.5) * 2 * hh / 4);
            g.lineTo(half, -hh + (i + 1) * 2 * hh / 4);
        }
        g.lineTo(-half, hh);
        for (int i = 3; i >= 0; i--) {
            g.lineTo(-half + 3, -hh + (i + 0.5) * 2 * hh / 4);
            g.lineTo(-half, -hh + i * 2 * hh / 4);
        }
        g.closePath();
        g.setFill(p.of(Ink.BOXWOOD));
        g.fill();
        g.setFill(p.of(Ink.BOXINK));
        g.setFont(Fonts.bold(14));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.CENTER);
        g.fillText(words, 0, 0);
        g.restore();
    }

    /** One line on a part without a hole, under the drawing; without room there a shorter one in the corner. */
    public static void emptyHint(GraphicsContext g, Palette p, Plot plot, View v, double w, double h) {
        if (plot.picture() == Picture.SECTION) {
            return;
        }
        On on = plot.picture().face().on();
        if (plot.kiln().holes(on).isEmpty()) {
            String part = on == On.FLOOR ? "floor" : on == On.LID ? "lid" : "walls";
            String words = "No hole in the " + part + " yet. Press N, or use New port.";
            g.setFont(Fonts.sans(14));
            g.setTextAlign(TextAlignment.CENTER);
            g.setTextBaseline(VPos.CENTER);
            double y = v.y(plot.bounds().minY()) + 46;
            boolean low = y > h - HINT_PX;
            if (low) {
                y = h - 2.4 * HINT_PX;
                words = "No hole yet: N";
            }
            double middle =
                    low ? w - HINT_PX - TextSizes.width(words, Fonts.sans(14)) / 2 : (w + RulePainter.BREADTH) / 2;
            double half = TextSizes.width(words, Fonts.sans(14)) / 2 + 12;
            g.setFill(p.of(Ink.PAPER));
            if (!low) {
                g.fillRoundRect(middle - half, y - 14, 2 * half, 28, 8, 8);
            }
            g.setFill(p.of(Ink.INK));
            g.fillText(words, middle, y);
            g.setTextBaseline(VPos.BASELINE);
        }
    }

    /** The scale of the picture in words, lower right; 96 px an inch of screen. */
    public static void scaleWords(GraphicsContext g, Palette p, View v, double w, double h) {
        double pxPerMm = 96 / 25.4;
        double ratio = pxPerMm / v.scale();
        String words = ratio >= 1 ? "1 : " + number(ratio) + " on screen" : number(1 / ratio) + " : 1 on screen";
        g.setFont(Fonts.sans(12.5));
        g.setFill(p.of(Ink.INK2));
        g.setTextAlign(TextAlignment.RIGHT);
        g.setTextBaseline(VPos.BASELINE);
        g.fillText(words, w - 15, h - 14);
        g.setTextAlign(TextAlignment.LEFT);
    }

    private static String number(double v) {
        return portwright.units.Format.plain(v, v < 10 ? 1 : 0);
    }
}
