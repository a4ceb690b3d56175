package portwright.app.paint;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.units.Format;

/** Tape words round the drawing, the scale in words, the line on an empty part. */
public final class BoardLook {
    /** Least room of the line on an empty part to the board's edge, px. */
    private static final double HINT_PX = 18;

    /** Height and breadth of the key hint in the lower left corner, on boards from some height on, px. */
    private static final double KEYS_PX = 62;

    private static final double KEYS_WIDE_PX = 312;
    private static final double KEYS_FROM_PX = 360;
    /** On a narrower board the hints at the upper edge show their keys alone, px; the middle of a tape right of these. */
    private static final double KEYS_ALONE_PX = 640;

    private static final double KEYS_END_PX = 212;

    /** Breadth of the scale in words in the lower right corner, px. */
    private static final double SCALE_PX = 120;

    /** Room of the panels' names over the walls, px. */
    private static final double NAMES_PX = 20;

    /** Half the breadth of a strip of tape, px. */
    private static final double TAPE_PX = 11;

    private BoardLook() {}

    /**
     * A strip of tape on the board.
     *
     * @param x middle, px
     * @param y middle, px
     */
    public record Tape(String words, double x, double y, boolean upright) {
        /** What it covers, px. */
        public Box box() {
            double half = TextSizes.width(words, Fonts.bold(14)) / 2 + 12;
            return upright
                    ? new Box(x - TAPE_PX, y - half, x + TAPE_PX, y + half)
                    : new Box(x - half, y - TAPE_PX, x + half, y + TAPE_PX);
        }
    }

    /** The strips of tape that say which way the part lies. */
    public static List<Tape> tapes(Plot plot, View v, double w, double h) {
        Picture picture = plot.picture();
        Box b = plot.bounds();
        double left = RulePainter.BREADTH;
        double midX = clamp(v.x(picture.slab() ? 0 : (b.minX() + b.maxX()) / 2), left + 70, w - 70);
        double midY = clamp(v.y(picture.slab() ? 0 : (b.minY() + b.maxY()) / 2), left + 40, h - 40);
        double top = clamp(v.y(b.maxY()) - 14, left + 18, h - 40);
        double bottom = clamp(v.y(b.minY()) + 14, left + 40, h - 16);
        if (picture.slab()) {
            boolean hints = w < KEYS_ALONE_PX && top < left + KEYS_PX;
            return List.of(
                    new Tape("BACK · hinge", hints ? Math.max(midX, left + KEYS_END_PX) : midX, top, false),
                    new Tape("FRONT", midX, bottom, false),
                    new Tape(
                            picture.mirrored() ? "RIGHT" : "LEFT",
                            clamp(v.x(b.minX()) - 36, left + 42, w - 120),
                            midY,
                            false),
                    new Tape(
                            picture.mirrored() ? "LEFT" : "RIGHT",
                            clamp(v.x(b.maxX()) + 36, left + 120, w - 42),
                            midY,
                            false));
        }
        if (picture.walls()) {
            return List.of(
                    new Tape("LID", midX, clamp(v.y(b.maxY()) - 46, left + 18, h - 40), false),
                    new Tape("FLOOR", midX, bottom, false));
        }
        return List.of(
                new Tape("FRONT half removed, looking to the BACK", midX, clamp(h - 20, left + 40, h - 16), false),
                new Tape("LEFT", clamp(v.x(b.minX()) - 46, left + 20, w), midY, true),
                new Tape("RIGHT", clamp(v.x(b.maxX()) + 46, left + 60, w - 20), midY, true));
    }

    /** What the strips of tape and the sign of a mirrored part cover, mm of the picture: no word goes under them. */
    public static List<Box> covered(Plot plot, View v, double w, double h) {
        return taped(plot, v, w, h).stream().map(b -> mm(v, b)).toList();
    }

    /** The same in px of the board. */
    public static List<Box> taped(Plot plot, View v, double w, double h) {
        List<Box> out = new ArrayList<>();
        tapes(plot, v, w, h).forEach(t -> out.add(t.box()));
        if (plot.picture().mirrored()) {
            out.add(mirroredBox(w));
        }
        return out;
    }

    /** A box of the board in mm of the picture. */
    public static Box mm(View v, Box px) {
        return Box.around(List.of(v.toMm(px.minX(), px.minY()), v.toMm(px.maxX(), px.maxY())));
    }

    /** Paints the strips of tape. */
    public static void tapes(GraphicsContext g, Palette p, Plot plot, View v, double w, double h) {
        tapes(plot, v, w, h).forEach(t -> tape(g, p, t.words(), t.x(), t.y(), t.upright()));
        if (plot.picture().mirrored()) {
            mirrored(g, p, w);
        }
    }

    private static Box mirroredBox(double w) {
        double tw = TextSizes.width("MIRRORED", Fonts.bold(15));
        return new Box(w - tw - 42, RulePainter.BREADTH + 12, w - 14, RulePainter.BREADTH + 40);
    }

    private static void mirrored(GraphicsContext g, Palette p, double w) {
        g.setFont(Fonts.bold(15));
        Box b = mirroredBox(w);
        g.setFill(p.of(Ink.INK));
        g.fillRect(b.minX(), b.minY(), b.width(), b.height());
        g.setFill(p.of(Ink.PAPER));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.CENTER);
        g.fillText("MIRRORED", b.minX() + 14, b.centre().y());
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
        double hh = TAPE_PX;
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
            String words = "No hole in the " + part + " yet. Press Ctrl+Shift+N.";
            g.setFont(Fonts.sans(14));
            g.setTextAlign(TextAlignment.CENTER);
            g.setTextBaseline(VPos.CENTER);
            double y = v.y(plot.bounds().minY()) + 46;
            double middle = (w + RulePainter.BREADTH) / 2;
            double half = TextSizes.width(words, Fonts.sans(14)) / 2 + 12;
            boolean low = y > h - KEYS_PX && h >= KEYS_FROM_PX;
            if (low) {
                middle = Math.max(middle, RulePainter.BREADTH + KEYS_WIDE_PX + half);
            }
            if (y <= h - HINT_PX && (!low || middle + half < w - SCALE_PX)) {
                g.setFill(p.of(Ink.PAPER));
                g.fillRoundRect(middle - half, y - 14, 2 * half, 28, 8, 8);
            } else {
                words = "No hole yet";
                half = TextSizes.width(words, Fonts.sans(14)) / 2 + 6;
                Pt at = corner(plot, v, w, h, half);
                if (at == null) {
                    return;
                }
                middle = at.x();
                y = at.y();
            }
            g.setFill(p.of(Ink.INK));
            g.fillText(words, middle, y);
            g.setTextBaseline(VPos.BASELINE);
        }
    }

    /** Middle of words in a corner of the board where they cover neither the part nor tape; null where there is none. */
    private static Pt corner(Plot plot, View v, double w, double h, double half) {
        Box part = plot.bounds();
        Box drawn = new Box(
                v.x(part.minX()),
                v.y(part.maxY()) - (plot.picture().walls() ? 3 : 1) * NAMES_PX,
                v.x(part.maxX()),
                v.y(part.minY()));
        double right = w - HINT_PX - half;
        double left = RulePainter.BREADTH + HINT_PX + half;
        double low = h - 2.4 * HINT_PX;
        double high = RulePainter.BREADTH + 3.6 * HINT_PX;
        return List.of(new Pt(right, low), new Pt(left, low), new Pt(right, high), new Pt(left, high)).stream()
                .filter(c -> {
                    Box b = new Box(c.x() - half, c.y() - 10, c.x() + half, c.y() + 10);
                    return !b.touches(drawn) && tapes(plot, v, w, h).stream().noneMatch(t -> b.touches(t.box()));
                })
                .findFirst()
                .orElse(null);
    }

    /**
     * The scale of the picture in words, lower right; 96 px an inch of screen.
     *
     * @param larger how much larger than laid out the window is shown
     */
    public static void scaleWords(GraphicsContext g, Palette p, View v, double w, double h, double larger) {
        double pxPerMm = 96 / 25.4 / larger;
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
        return Format.plain(v, v < 10 ? 1 : 0);
    }
}
