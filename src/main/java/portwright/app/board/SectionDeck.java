package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.BoardLook;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.Labels;
import portwright.drawing.LineStyle;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.Burner;
import portwright.model.On;

/** What the section carries beside the cut: chamber, flames, burners, plate, neutral level, pressure signs and their chart. */
final class SectionDeck {
    private static final double FLAME_SLOPE = Math.tan(Flame.HALF_ANGLE);

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

    /** Paints what lies over the cut; words keep off all that {@code labels} know of, tape above all. */
    static void over(
            GraphicsContext g,
            CanvasPen pen,
            View v,
            Palette p,
            Plot plot,
            SectionWords words,
            double w,
            Labels labels) {
        KilnGeometry k = plot.kiln();
        arrows(pen, k, k.height() + k.thickness(On.LID));
        List<Box> burners = burners(pen, k);
        burners.forEach(labels::keepFree);
        inletArrows(pen, k).forEach(labels::keepFree);
        plot.sectionKeepFree(labels);
        SectionLabels say = new SectionLabels(pen, k, words, labels);
        if (words.known()) {
            Box chart = PressureChart.box(v, k, w, room(w));
            if (chart != null) {
                labels.keepFree(BoardLook.mm(v, chart));
                PressureChart.paint(g, v, p, k, words, w, room(w));
            }
            say.fire();
        } else {
            say.unknown();
        }
        plot.sectionNames(pen, labels);
        say.burners(burners);
    }

    /** What the arrows of the air drawn in cover. */
    private static List<Box> inletArrows(CanvasPen pen, KilnGeometry k) {
        double s = pen.size(6, 16);
        return k.holes(On.FLOOR).stream()
                .map(h -> new Box(
                        h.centre().x() - h.diameter() / 2 - s,
                        -k.thickness(On.FLOOR) - 1.6 * s,
                        h.centre().x() + h.diameter() / 2 + s,
                        -k.thickness(On.FLOOR)))
                .toList();
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

    /** Paints the burners; answers what each covers, none for one that stands at no hole in the floor. */
    private static List<Box> burners(CanvasPen pen, KilnGeometry k) {
        List<Box> out = new ArrayList<>();
        if (k.design().burners() == null) {
            return out;
        }
        for (Burner b : k.design().burners()) {
            Box covers = new Box(0, 0, 0, 0);
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
                    covers = Box.around(shape);
                }
            }
            out.add(covers);
        }
        return out;
    }
}
