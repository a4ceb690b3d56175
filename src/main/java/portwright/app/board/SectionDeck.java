package portwright.app.board;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Lengths;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.Burner;
import portwright.model.On;

/** What the section carries beside the cut: chamber, flames, burners, plate, neutral level, pressure signs and their chart. */
final class SectionDeck {
    /** Height of a chamber that has room for words, px. */
    private static final double ROOMY_PX = 220;

    private static final double FLAME_SLOPE = Math.tan(Math.toRadians(11));

    /** Room of the words beside the wall, px. */
    private static final double WORDS_PX = 72;

    private SectionDeck() {}

    /** Width of the pressure chart. */
    static double room(double boardWidth) {
        return boardWidth < 640 ? 0 : 230;
    }

    /** What the cut leaves free at the right: the chart, and before it the words beside the wall. */
    static double kept(double boardWidth) {
        double chart = room(boardWidth);
        return chart == 0 ? 0 : chart + WORDS_PX;
    }

    static void under(
            GraphicsContext g,
            CanvasPen pen,
            View v,
            Palette p,
            KilnGeometry k,
            SectionWords words,
            double w,
            double h) {
        double[] in = k.inner().across(k.centre().y());
        pen.fill(box(in[0], 0, in[1], k.height()), Ink.BRICK, 1);
        if (words.known() && words.neutralMm() != null && words.neutralMm() > 0) {
            pen.fill(box(in[0], 0, in[1], Math.min(words.neutralMm(), k.height())), Ink.COBALT_FILL, 1);
        }
        for (Hole hole : k.holes()) {
            if (hole.face().on() == On.FLOOR) {
                double r = hole.diameter() / 2;
                double top = shelfOver(k, hole.centre());
                double wide = r + top * FLAME_SLOPE;
                List<Pt> flame = List.of(
                        new Pt(hole.centre().x() - r, 0),
                        new Pt(hole.centre().x() + r, 0),
                        new Pt(hole.centre().x() + wide, top),
                        new Pt(hole.centre().x() - wide, top));
                pen.fill(flame, Ink.FLAME, 0.55);
                pen.line(flame.get(0), flame.get(3), LineStyle.FLAME);
                pen.line(flame.get(1), flame.get(2), LineStyle.FLAME);
                pen.fill(
                        box(
                                hole.centre().x() - r,
                                -k.thickness(On.FLOOR),
                                hole.centre().x() + r,
                                0),
                        Ink.FLAME,
                        0.35);
            } else if (hole.face().on() == On.LID) {
                double r = hole.diameter() / 2;
                double t = k.height() + k.thickness(On.LID);
                pen.fill(box(hole.centre().x() - r, k.height(), hole.centre().x() + r, t), Ink.BRICK, 1);
            }
        }
    }

    private static double shelfOver(KilnGeometry k, Pt c) {
        double top = Math.min(k.height(), 400);
        for (ShelfPlate s : k.shelves()) {
            if (s.shape().contains(c)) {
                top = Math.min(top, s.bottom());
            }
        }
        return Math.max(5, top);
    }

    private static List<Pt> box(double a, double b, double c, double d) {
        return List.of(new Pt(a, b), new Pt(c, b), new Pt(c, d), new Pt(a, d));
    }

    static void over(
            GraphicsContext g,
            CanvasPen pen,
            View v,
            Palette p,
            KilnGeometry k,
            SectionWords words,
            double w,
            double h) {
        double[] in = k.inner().across(k.centre().y());
        double top = k.height() + k.thickness(On.LID);
        arrows(pen, k, top);
        TextStyle bold = TextStyle.LABEL_BOLD.size(16, 4).plainGround();
        Pt mid = new Pt((in[0] + in[1]) / 2, k.height() * 0.66);
        boolean roomy = in[1] - in[0] > pen.textWidth(words.lambda(), bold) && k.height() > pen.size(40, ROOMY_PX);
        burners(pen, k, roomy);
        if (words.known()) {
            // in a small picture the words of the chamber stand beside the kiln
            Pt at = roomy ? mid : new Pt(beside(pen, k, in) + pen.size(6, 22), k.height() * 1.02);
            Pen.Align align = roomy ? Pen.Align.CENTRE : Pen.Align.LEFT;
            pen.text(words.head(), at, align, TextStyle.LABEL.plainGround());
            pen.text(
                    words.lambda(),
                    at.plus(0, -pen.size(8, 23)),
                    align,
                    roomy ? bold : TextStyle.LABEL_BOLD.plainGround());
            levels(pen, k, words, in, roomy);
            PressureChart.paint(g, v, p, k, words, w, room(w));
        } else {
            pen.text(
                    "The fire is not computed yet: give every burner its gas and jet.",
                    mid,
                    Pen.Align.CENTRE,
                    TextStyle.SMALL);
        }
    }

    private static void arrows(CanvasPen pen, KilnGeometry k, double top) {
        for (Hole hole : k.holes()) {
            double x = hole.centre().x();
            if (hole.face().on() == On.LID) {
                arrow(pen, new Pt(x, k.height() - 12), new Pt(x, top - 4), Ink.EMBER);
            } else if (hole.face().on() == On.FLOOR) {
                double bottom = -k.thickness(On.FLOOR);
                double r = hole.diameter() / 2;
                double s = pen.size(6, 16);
                arrow(pen, new Pt(x - r - s, bottom - 1.6 * s), new Pt(x - r * 0.6, bottom + 0.2 * s), Ink.COBALT);
                arrow(pen, new Pt(x + r + s, bottom - 1.6 * s), new Pt(x + r * 0.6, bottom + 0.2 * s), Ink.COBALT);
            }
        }
    }

    private static void arrow(CanvasPen pen, Pt a, Pt b, Ink ink) {
        pen.line(a, b, LineStyle.RULE, ink);
        double d = a.distance(b);
        double ux = (b.x() - a.x()) / d;
        double uy = (b.y() - a.y()) / d;
        double s = pen.size(3, 10);
        pen.fill(
                List.of(
                        b,
                        new Pt(b.x() - ux * s - uy * s * 0.45, b.y() - uy * s + ux * s * 0.45),
                        new Pt(b.x() - ux * s + uy * s * 0.45, b.y() - uy * s - ux * s * 0.45)),
                ink,
                1);
    }

    private static void burners(CanvasPen pen, KilnGeometry k, boolean named) {
        if (k.design().burners() == null) {
            return;
        }
        for (Burner b : k.design().burners()) {
            for (Hole hole : k.holes()) {
                if (hole.name().equals(b.port()) && hole.face().on() == On.FLOOR) {
                    double x = hole.centre().x();
                    double tip =
                            (b.tip() == null ? hole.diameter() * 0.5 : b.tip().mm()) / 2;
                    double body = b.body() == null ? tip * 2 : b.body().mm() / 2;
                    double from = -k.thickness(On.FLOOR)
                            - (b.setback() == null ? 12 : b.setback().mm());
                    double len = b.length() == null ? 90 : b.length().mm();
                    List<Pt> shape = List.of(
                            new Pt(x - tip, from),
                            new Pt(x + tip, from),
                            new Pt(x + tip, from - len * 0.45),
                            new Pt(x + body, from - len * 0.45),
                            new Pt(x + body, from - len * 0.85),
                            new Pt(x + tip * 0.6, from - len * 0.9),
                            new Pt(x + tip * 0.6, from - len),
                            new Pt(x - tip * 0.6, from - len),
                            new Pt(x - tip * 0.6, from - len * 0.9),
                            new Pt(x - body, from - len * 0.85),
                            new Pt(x - body, from - len * 0.45),
                            new Pt(x - tip, from - len * 0.45));
                    pen.fill(shape, Ink.BISQUE, 1);
                    pen.polyline(shape, true, LineStyle.BOX);
                    if (named) {
                        pen.text(
                                b.name(),
                                new Pt(x - body - pen.size(2, 6), from - len * 0.8),
                                Pen.Align.RIGHT,
                                TextStyle.LABEL);
                    }
                }
            }
        }
    }

    /** Where the pressure signs stand right of the wall, mm. */
    private static double beside(CanvasPen pen, KilnGeometry k, double[] in) {
        return in[1] + k.thickness(On.WALL) + pen.size(4, 14);
    }

    private static void levels(CanvasPen pen, KilnGeometry k, SectionWords words, double[] in, boolean roomy) {
        double out = beside(pen, k, in);
        if (words.neutralMm() != null) {
            double z = words.neutralMm();
            pen.line(
                    new Pt(in[0] - k.thickness(On.WALL) - pen.size(6, 20), z),
                    new Pt(out + pen.size(20, 120), z),
                    LineStyle.NEUTRAL_LEVEL,
                    Ink.COBALT);
            pen.text(
                    "neutral level",
                    new Pt(out + pen.size(6, 22), z + pen.size(6, 24)),
                    Pen.Align.LEFT,
                    TextStyle.LABEL_BOLD.withInk(Ink.COBALT));
            pen.text(
                    Lengths.shown(Math.abs(z), k.design().units()) + (z < 0 ? " below the floor" : " up"),
                    new Pt(out + pen.size(6, 22), z + pen.size(2, 8)),
                    Pen.Align.LEFT,
                    TextStyle.SMALL);
        }
        double s = pen.size(2, 7);
        for (int i = 1; i <= 6; i++) {
            double z = k.height() * i / 6.5;
            double pa = words.floorPa() + (words.lidPa() - words.floorPa()) * z / k.height();
            if (words.neutralMm() != null && Math.abs(z - words.neutralMm()) < pen.size(8, 34)) {
                continue;
            }
            Ink ink = pa > 0 ? Ink.EMBER : Ink.COBALT;
            pen.line(new Pt(out - s, z), new Pt(out + s, z), LineStyle.RULE, ink);
            if (pa > 0) {
                pen.line(new Pt(out, z - s), new Pt(out, z + s), LineStyle.RULE, ink);
            }
        }
        if (words.lidPa() > 0) {
            Pt at = new Pt(out + pen.size(6, 22), k.height() * (roomy ? 0.72 : 0.56));
            pen.text("leaks out,", at, Pen.Align.LEFT, TextStyle.LABEL);
            pen.text("with CO", at.plus(0, -pen.size(5, 19)), Pen.Align.LEFT, TextStyle.LABEL);
        }
    }
}
