package portwright.app.step;

import java.util.Random;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.drawing.Ink;

/** What stands in the picture of a room: kiln, person, arrows of air, dots of carbon monoxide. */
final class RoomSigns {
    private static final double DOTS_PER_PPM = 1.0;
    private static final int MOST_DOTS = 900;

    private RoomSigns() {}

    static void dots(GraphicsContext g, Palette p, double x, double y, double w, double h, double ppm) {
        Random random = new Random(7);
        int n = (int) Math.min(MOST_DOTS, Math.round(ppm * DOTS_PER_PPM));
        g.setFill(p.of(Ink.OXBLOOD).deriveColor(0, 1, 1, 0.75));
        for (int i = 0; i < n; i++) {
            g.fillOval(x + 4 + random.nextDouble() * (w - 8), y + 4 + random.nextDouble() * (h - 8), 4, 4);
        }
        String words = n >= MOST_DOTS ? "one dot for " + Math.round(ppm / MOST_DOTS) + " ppm" : "one dot a ppm";
        Say.at(g, p, words, x + 8, y + h - 10, 12.5, false, Ink.INK2, TextAlignment.LEFT, VPos.CENTER, true);
    }

    static void kiln(GraphicsContext g, Palette p, double x, double y, double k) {
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

    static void person(GraphicsContext g, Palette p, double x, double y, double k) {
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

    static void arrow(GraphicsContext g, Palette p, double x0, double y0, double x1, double y1, Ink ink) {
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
