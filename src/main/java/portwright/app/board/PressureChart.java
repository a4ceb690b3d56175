package portwright.app.board;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.View;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.geometry.KilnGeometry;
import portwright.model.On;

/** Pressure over the height of the chamber, drawn beside the section at the same height. */
final class PressureChart {
    private PressureChart() {}

    /** What it covers, px; null without room for it. */
    static Box box(View v, KilnGeometry k, double w, double room) {
        double top = v.y(k.height() + k.thickness(On.LID)) - 16;
        return room == 0 ? null : new Box(w - room + 4, top, w - 14, v.y(0) + 62);
    }

    /** @param room width kept for the chart at the board's right end, px; 0 for none */
    static void paint(GraphicsContext g, View v, Palette p, KilnGeometry k, SectionWords words, double w, double room) {
        Box box = box(v, k, w, room);
        if (box == null) {
            return;
        }
        double x0 = box.minX();
        double y0 = box.minY();
        double y1 = box.maxY();
        g.setFill(p.of(Ink.BISQUE));
        g.fillRoundRect(x0, y0, room - 18, y1 - y0, 8, 8);
        g.setStroke(p.of(Ink.HAIR));
        g.setLineWidth(1.2);
        g.setLineDashes();
        g.strokeRoundRect(x0, y0, room - 18, y1 - y0, 8, 8);
        g.setTextBaseline(VPos.BASELINE);
        g.setTextAlign(TextAlignment.LEFT);
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.bold(14.5));
        g.fillText("Pressure", x0 + 12, y0 + 22);
        double low = Math.min(0, Math.min(words.floorPa(), words.lidPa()));
        double high = Math.max(0.5, Math.max(words.floorPa(), words.lidPa()));
        double left = x0 + 26;
        double wide = room - 18 - 62;
        java.util.function.DoubleUnaryOperator px = pa -> left + (pa - low) / (high - low) * wide;
        double top = v.y(k.height());
        double bottom = v.y(0);
        double step = high - low > 8 ? 4 : high - low > 4 ? 2 : high - low > 1.6 ? 1 : 0.5;
        g.setFont(Fonts.sans(12.5));
        g.setTextAlign(TextAlignment.CENTER);
        for (double t = Math.ceil(low / step) * step; t <= high + 1e-9; t += step) {
            g.setStroke(p.of(Ink.HAIR));
            g.strokeLine(px.applyAsDouble(t), top, px.applyAsDouble(t), bottom);
            g.setFill(p.of(Ink.INK2));
            g.fillText(
                    String.format(Locale.ROOT, step < 1 ? "%.1f" : "%.0f", Math.abs(t) < step / 9 ? 0 : t)
                            .replace("-", "−"),
                    px.applyAsDouble(t),
                    bottom + 22);
        }
        g.fillText("Pa above the room", x0 + (room - 18) / 2, bottom + 44);
        g.setFill(p.of(Ink.FLAME).deriveColor(0, 1, 1, 0.4));
        double zero = px.applyAsDouble(0);
        double yn = words.neutralMm() == null ? bottom : v.y(Math.max(0, Math.min(k.height(), words.neutralMm())));
        if (words.lidPa() > 0) {
            g.fillPolygon(
                    new double[] {
                        zero,
                        px.applyAsDouble(words.lidPa()),
                        words.floorPa() > 0 ? px.applyAsDouble(words.floorPa()) : zero,
                        zero
                    },
                    new double[] {top, top, words.floorPa() > 0 ? bottom : yn, words.floorPa() > 0 ? bottom : yn},
                    4);
        }
        if (words.floorPa() < 0) {
            g.setFill(p.of(Ink.COBALT).deriveColor(0, 1, 1, 0.6));
            g.fillPolygon(
                    new double[] {zero, px.applyAsDouble(words.floorPa()), zero}, new double[] {yn, bottom, bottom}, 3);
        }
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.6);
        g.strokeLine(px.applyAsDouble(words.floorPa()), bottom, px.applyAsDouble(words.lidPa()), top);
        g.setLineWidth(1.6);
        g.strokeLine(zero, top, zero, bottom);
        g.setFont(Fonts.bold(13));
        g.setFill(p.of(Ink.INK));
        g.setTextAlign(TextAlignment.RIGHT);
        g.fillText("lid " + pa(words.lidPa()), x0 + room - 28, top - 8);
        g.setTextAlign(TextAlignment.LEFT);
        double fx = Math.min(px.applyAsDouble(words.floorPa()) + 14, x0 + room - 110);
        g.fillText("floor " + pa(words.floorPa()), Math.max(zero + 8, fx), bottom - 8);
    }

    private static String pa(double v) {
        return String.format(Locale.ROOT, "%+.1f Pa", v).replace("-", "−");
    }
}
