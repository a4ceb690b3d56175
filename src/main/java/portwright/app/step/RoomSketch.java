package portwright.app.step;

import java.util.Random;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.drawing.Ink;
import portwright.model.Hood;
import portwright.model.LeadsTo;
import portwright.model.Opening;
import portwright.model.Room;

/** Draws the room, or the open yard, with the kiln and the person in it. */
final class RoomSketch {
    private static final double DOTS_PER_PPM = 1.0;
    private static final int MOST_DOTS = 900;
    /** Where the picture begins under its sentence, and its own height, px. */
    private static final double SENTENCE_PX = 84;

    private static final double TALL_PX = 276;

    private final GraphicsContext g;
    private final Palette p;

    RoomSketch(GraphicsContext g, Palette p) {
        this.g = g;
        this.p = p;
    }

    /** The kiln in the open, and where to stand. */
    void outdoors(double w, double h) {
        Say.left(
                g,
                p,
                "The kiln stands in the open. Stay upwind; CO pools under a roof and beside a wall.",
                24,
                62,
                14,
                false,
                Ink.INK);
        double gy = h * 0.72;
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.6);
        g.setLineDashes();
        g.strokeLine(60, gy, w - 60, gy);
        // all of it under the sentence above, however low the picture is
        double k = Math.min(1, (gy - SENTENCE_PX) / TALL_PX);
        kiln(w * 0.42, gy, 1.5 * k);
        person(w * 0.26, gy, 1.5 * k);
        arrow(w * 0.1, gy - 150 * k, w * 0.2, gy - 150 * k, Ink.COBALT);
        Say.at(
                g,
                p,
                "wind",
                w * 0.15,
                gy - 150 * k - 18,
                13,
                true,
                Ink.COBALT,
                TextAlignment.CENTER,
                VPos.CENTER,
                false);
        arrow(w * 0.46, gy - 190 * k, w * 0.62, gy - 260 * k, Ink.EMBER);
        Say.at(
                g,
                p,
                "flue gas, with CO",
                w * 0.63,
                gy - 268 * k,
                13,
                true,
                Ink.EMBER,
                TextAlignment.LEFT,
                VPos.CENTER,
                false);
    }

    /** The room cut open: air in and out, kiln, hood, fan, alarm, and the worst level as dots. */
    void section(Room room, double x, double y, double w, double h, Double ppm) {
        double ceiling =
                room == null || room.ceiling() == null ? 2.7 : room.ceiling().metres();
        double k = h / ceiling;
        g.setFill(p.of(Ink.BISQUE));
        g.fillRect(x - 9, y - 9, w + 18, h + 18);
        g.setFill(p.of(Ink.PAPER));
        g.fillRect(x, y, w, h);
        if (ppm != null && Double.isFinite(ppm)) {
            dots(x, y, w, h, ppm);
        }
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.2);
        g.setLineDashes();
        g.strokeRect(x - 9, y - 9, w + 18, h + 18);
        g.strokeRect(x, y, w, h);
        boolean left = true;
        if (room != null && room.openings() != null) {
            for (Opening o : room.openings()) {
                if (o.area() == null || o.level() == null || o.to() != LeadsTo.OUTDOORS) {
                    continue;
                }
                double side = Math.min(1.2, Math.max(0.2, Math.sqrt(o.area().si()) * 0.7)) * k;
                double oy = y + h - Math.max(0.05, Math.min(ceiling, o.level().metres())) * k - side / 2;
                oy = Math.max(y + 2, Math.min(y + h - side - 2, oy));
                g.setFill(p.of(Ink.PAPER));
                double ox = left ? x - 10.2 : x + w - 1.2;
                g.fillRect(ox, oy, 11.4, side);
                boolean high = oy + side / 2 < y + h / 2;
                double ay = oy + side / 2;
                if (high) {
                    arrow(left ? x + 40 : x + w - 40, ay, left ? x - 46 : x + w + 46, ay, Ink.EMBER);
                    Say.at(
                            g,
                            p,
                            "out, with CO",
                            left ? x + 46 : x + w - 46,
                            ay - 13,
                            13,
                            true,
                            Ink.EMBER,
                            left ? TextAlignment.LEFT : TextAlignment.RIGHT,
                            VPos.CENTER,
                            true);
                } else {
                    arrow(left ? x - 46 : x + w + 46, ay, left ? x + 50 : x + w - 50, ay, Ink.COBALT);
                    Say.at(
                            g,
                            p,
                            "fresh air in",
                            left ? x + 16 : x + w - 16,
                            ay - 14,
                            13,
                            true,
                            Ink.COBALT,
                            left ? TextAlignment.LEFT : TextAlignment.RIGHT,
                            VPos.CENTER,
                            true);
                }
                left = !left;
            }
        }
        kiln(x + w * 0.5, y + h, h / 230);
        if (room != null && room.hood() != null) {
            hood(room.hood(), x + w * 0.5, y + h - 74 * h / 230, y, k);
        }
        if (room != null && room.ventilator() != null && room.ventilator().si() > 0) {
            fan(x + w * 0.22, y);
        }
        person(x + w * 0.74, y + h, h / 230);
        if (room != null && Boolean.TRUE.equals(room.coAlarm())) {
            double ax = x + w * 0.9;
            double ay = y + h * 0.5;
            g.setFill(p.of(Ink.PAPER));
            g.fillRoundRect(ax - 9, ay - 13, 18, 26, 6, 6);
            g.setLineWidth(1.8);
            g.setStroke(p.of(Ink.INK));
            g.strokeRoundRect(ax - 9, ay - 13, 18, 26, 6, 6);
            g.setFill(p.of(Ink.CELADON));
            g.fillOval(ax - 4, ay - 5, 8, 8);
            Say.at(g, p, "CO alarm", ax, ay + 24, 13, false, Ink.INK, TextAlignment.CENTER, VPos.CENTER, true);
        }
    }

    /** A hood as wide and as high over the lid as declared, with its pipe through the ceiling. */
    private void hood(Hood hood, double x, double lid, double ceiling, double k) {
        double wide =
                Math.min(150, hood.diameter() == null ? 60 : hood.diameter().metres() * k);
        double up = hood.height() == null ? 30 : hood.height().metres() * k;
        double mouth = Math.max(ceiling + 34, lid - Math.max(16, up));
        double neck = Math.max(ceiling + 8, mouth - 26);
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.2);
        g.setLineDashes();
        g.strokePolyline(new double[] {x - wide / 2, x - 8, x - 8}, new double[] {mouth, neck, ceiling - 22}, 3);
        g.strokePolyline(new double[] {x + wide / 2, x + 8, x + 8}, new double[] {mouth, neck, ceiling - 22}, 3);
        arrow(x, neck, x, ceiling - 34, Ink.EMBER);
        Say.at(g, p, "hood", x + 14, neck - 4, 13, true, Ink.INK, TextAlignment.LEFT, VPos.CENTER, true);
    }

    private void fan(double x, double ceiling) {
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.2);
        g.setLineDashes();
        g.strokeOval(x - 11, ceiling - 16, 22, 22);
        g.strokeLine(x - 8, ceiling - 13, x + 8, ceiling + 3);
        g.strokeLine(x - 8, ceiling + 3, x + 8, ceiling - 13);
        Say.at(g, p, "fan", x, ceiling + 18, 13, true, Ink.INK, TextAlignment.CENTER, VPos.CENTER, true);
    }

    private void dots(double x, double y, double w, double h, double ppm) {
        Random random = new Random(7);
        int n = (int) Math.min(MOST_DOTS, Math.round(ppm * DOTS_PER_PPM));
        g.setFill(p.of(Ink.OXBLOOD).deriveColor(0, 1, 1, 0.75));
        for (int i = 0; i < n; i++) {
            g.fillOval(x + 4 + random.nextDouble() * (w - 8), y + 4 + random.nextDouble() * (h - 8), 4, 4);
        }
        String words = n >= MOST_DOTS ? "one dot for " + Math.round(ppm / MOST_DOTS) + " ppm" : "one dot a ppm";
        Say.at(g, p, words, x + 8, y + h - 10, 12.5, false, Ink.INK2, TextAlignment.LEFT, VPos.CENTER, true);
    }

    private void kiln(double x, double y, double k) {
        g.setFill(p.of(Ink.BRICK));
        g.fillRect(x - 28 * k, y - 74 * k, 56 * k, 58 * k);
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.2);
        g.setLineDashes();
        g.strokeRect(x - 28 * k, y - 74 * k, 56 * k, 58 * k);
        g.strokeLine(x - 22 * k, y - 16 * k, x - 22 * k, y);
        g.strokeLine(x + 22 * k, y - 16 * k, x + 22 * k, y);
        Say.at(g, p, "kiln", x, y - 45 * k, 13, true, Ink.INK, TextAlignment.CENTER, VPos.CENTER, false);
        g.setFill(p.of(Ink.FLAME));
        for (double dx : new double[] {-7, 7}) {
            double fx = x + dx * k;
            g.beginPath();
            g.moveTo(fx - 4 * k, y - 75 * k);
            g.bezierCurveTo(fx - 8 * k, y - 92 * k, fx + 1 * k, y - 94 * k, fx, y - 108 * k);
            g.bezierCurveTo(fx + 9 * k, y - 94 * k, fx + 7 * k, y - 86 * k, fx + 4 * k, y - 75 * k);
            g.closePath();
            g.fill();
        }
    }

    private void person(double x, double y, double k) {
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.2);
        g.setLineDashes();
        double head = y - 150 * k;
        g.strokeOval(x - 9 * k, head, 18 * k, 18 * k);
        g.strokeLine(x, head + 18 * k, x, y - 58 * k);
        g.strokeLine(x, head + 30 * k, x - 14 * k, y - 78 * k);
        g.strokeLine(x, head + 30 * k, x + 14 * k, y - 78 * k);
        g.strokeLine(x, y - 58 * k, x - 10 * k, y);
        g.strokeLine(x, y - 58 * k, x + 10 * k, y);
    }

    private void arrow(double x0, double y0, double x1, double y1, Ink ink) {
        g.setStroke(p.of(ink));
        g.setLineWidth(4);
        g.setLineDashes();
        double d = Math.hypot(x1 - x0, y1 - y0);
        double ux = (x1 - x0) / d;
        double uy = (y1 - y0) / d;
        g.strokeLine(x0, y0, x1 - ux * 10, y1 - uy * 10);
        g.setFill(p.of(ink));
        g.fillPolygon(
                new double[] {x1, x1 - ux * 15 - uy * 7, x1 - ux * 15 + uy * 7},
                new double[] {y1, y1 - uy * 15 + ux * 7, y1 - uy * 15 - ux * 7},
                3);
    }
}
