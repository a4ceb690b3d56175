package portwright.app.paint;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import portwright.drawing.Ink;
import portwright.units.Unbroken;

/** Words on a canvas. */
public final class Say {
    private static final double LEADING = 1.38;

    private Say() {}

    public static void at(
            GraphicsContext g,
            Palette p,
            String words,
            double x,
            double y,
            double size,
            boolean bold,
            Ink ink,
            TextAlignment align,
            VPos base,
            boolean halo) {
        g.setFont(bold ? Fonts.bold(size) : Fonts.sans(size));
        g.setTextAlign(align);
        g.setTextBaseline(base);
        if (halo) {
            g.setStroke(p.of(Ink.PAPER));
            g.setLineWidth(4);
            g.setLineDashes();
            g.setLineJoin(StrokeLineJoin.ROUND);
            g.strokeText(words, x, y);
        }
        g.setFill(p.of(ink));
        g.fillText(words, x, y);
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BASELINE);
    }

    /** Left-bound words on a baseline. */
    public static void left(
            GraphicsContext g, Palette p, String words, double x, double y, double size, boolean bold, Ink ink) {
        at(g, p, words, x, y, size, bold, ink, TextAlignment.LEFT, VPos.BASELINE, false);
    }

    /** Words broken into lines of a width; answers the y under the last line. */
    public static double lines(
            GraphicsContext g, Palette p, String words, double x, double y, double width, double size, Ink ink) {
        double at = y;
        for (String line : broken(words, width, size)) {
            left(g, p, line, x, at, size, false, ink);
            at += size * LEADING;
        }
        return at;
    }

    /** How high words broken into lines of a width are, px. */
    public static double high(String words, double width, double size) {
        return broken(words, width, size).size() * size * LEADING;
    }

    /** Words broken into lines of a width; a longer word has a line of its own. */
    public static List<String> broken(String words, double width, double size) {
        List<String> out = new ArrayList<>();
        String line = "";
        for (String word : Unbroken.words(words).split(" ", 0)) {
            String next = line.isEmpty() ? word : line + " " + word;
            if (TextSizes.width(next, Fonts.sans(size)) > width && !line.isEmpty()) {
                out.add(line);
                line = word;
            } else {
                line = next;
            }
        }
        out.add(line);
        return out;
    }
}
