package portwright.app.paint;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Scale;
import portwright.app.doc.View;
import portwright.drawing.Ink;
import portwright.model.UnitSystem;

/** The boxwood rule along the edges of the board. */
public final class RulePainter {
    /** Breadth of a rule, px. */
    public static final double BREADTH = 29;

    private RulePainter() {}

    /** The rule along the top, from {@code left} on; {@code flip} −1 when x runs to the left. */
    public static void top(GraphicsContext g, Palette p, View v, UnitSystem units, double left, double width) {
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(0, 0, width, BREADTH);
        g.setStroke(p.of(Ink.BOXINK));
        g.setFill(p.of(Ink.BOXINK));
        g.setLineDashes();
        g.setLineWidth(1);
        g.setFont(Fonts.sans(12.5));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.BASELINE);
        for (Scale.Tick t : Scale.ticks(v.toMm(left, 0).x(), v.toMm(width, 0).x(), v.scale(), units, true)) {
            double x = Math.round(v.x(t.mm())) + 0.5;
            g.strokeLine(x, BREADTH, x, BREADTH - (t.rank() == 2 ? 12 : t.rank() == 1 ? 8 : 5));
            if (t.words() != null && x > left + 8 && x < width - 8) {
                g.fillText(t.words(), x, 14);
            }
        }
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(units == UnitSystem.INCH ? "in" : "mm", BREADTH / 2, 19);
    }

    /** The rule along the left edge. */
    public static void left(GraphicsContext g, Palette p, View v, UnitSystem units, double top, double height) {
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(0, top, BREADTH, height - top);
        g.setStroke(p.of(Ink.BOXINK));
        g.setFill(p.of(Ink.BOXINK));
        g.setLineDashes();
        g.setLineWidth(1);
        g.setFont(Fonts.sans(12.5));
        g.setTextAlign(TextAlignment.RIGHT);
        g.setTextBaseline(VPos.CENTER);
        for (Scale.Tick t : Scale.ticks(v.toMm(0, height).y(), v.toMm(0, top).y(), v.scale(), units, true)) {
            double y = Math.round(v.y(t.mm())) + 0.5;
            g.strokeLine(BREADTH, y, BREADTH - (t.rank() == 2 ? 11 : t.rank() == 1 ? 8 : 5), y);
            if (t.words() != null && y > top + 8 && y < height - 8) {
                // three digits are wider than the room beside the tick: they stand over it, on clear wood
                boolean beside = t.words().length() < 3;
                if (!beside) {
                    g.setFill(p.of(Ink.BOXWOOD));
                    g.fillRect(0, y - 14, BREADTH, 12);
                    g.setFill(p.of(Ink.BOXINK));
                }
                // four digits are pressed together, none is cut off
                g.fillText(t.words(), beside ? 17 : 27, beside ? y : y - 8, 25);
            }
        }
        g.setTextBaseline(VPos.BASELINE);
        g.setTextAlign(TextAlignment.LEFT);
    }
}
