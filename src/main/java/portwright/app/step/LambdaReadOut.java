package portwright.app.step;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Degrees;
import portwright.app.doc.Extras;
import portwright.app.doc.Lengths;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.units.Celsius;

/** What the curve says where the damper stands, or where the pointer is: a line, a ring, and a box that covers no curve; in a small chart a line above it. */
final class LambdaReadOut {
    private static final double HIGH_PX = 78;
    private static final double STEP_PX = 14;

    private final GraphicsContext g;
    private final Palette p;
    private final Extras.Gas gas;
    private final UnitSystem units;

    LambdaReadOut(GraphicsContext g, Palette p, Extras.Gas gas, UnitSystem units) {
        this.g = g;
        this.p = p;
        this.gas = gas;
        this.units = units;
    }

    /** {@code mid} is the curve over the open share, %; {@code open} the share to read, %. */
    void paint(Chart c, List<Pt> mid, double least, double most, double open, Places places) {
        boolean inside = open >= least && open <= most;
        Double lambda = lambda(mid, open);
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(2.4);
        g.setLineDashes();
        double x = c.x(Math.max(least, Math.min(most, open)));
        g.strokeLine(x, c.top(), x, c.bottom());
        g.setFill(p.of(Ink.COBALT));
        g.fillPolygon(
                new double[] {x - 7, x + 7, x}, new double[] {c.bottom() + 2, c.bottom() + 2, c.bottom() + 12}, 3);
        if (lambda == null) {
            return;
        }
        double y = Math.max(c.top(), Math.min(c.bottom(), c.y(lambda)));
        if (inside && lambda >= 0.6 && lambda <= 1.4) {
            g.setFill(p.of(Ink.PAPER));
            g.fillOval(x - 8, y - 8, 16, 16);
            g.setLineWidth(3);
            g.strokeOval(x - 8, y - 8, 16, 16);
            places.name(x - 9, y - 9, 18, 18);
        }
        places.name(x - 2, c.top(), 4, c.bottom() - c.top());
        double travelMm = gas.plate().travelFor(Math.max(0.0001, Math.min(1, open / 100))) * 1000;
        box(
                c,
                x,
                places,
                List.of(
                        String.format(Locale.ROOT, "lambda %.2f", lambda),
                        AtmosphereLevel.of(Math.max(0, lambda)).id() + ", "
                                + Degrees.words(gas.topK() - Celsius.ZERO_C, units),
                        Math.round(open) + " % open · " + Lengths.shown(travelMm, units)));
    }

    private static Double lambda(List<Pt> mid, double open) {
        for (int i = 1; i < mid.size(); i++) {
            Pt a = mid.get(i - 1);
            Pt b = mid.get(i);
            if (a.x() <= open && b.x() >= open && Double.isFinite(a.y())) {
                return a.y() + (open - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
            }
        }
        return null;
    }

    private void box(Chart c, double x, Places places, List<String> lines) {
        double w = 26 + TextSizes.width(lines.get(0), Fonts.bold(17));
        for (String line : lines.subList(1, lines.size())) {
            w = Math.max(w, 26 + TextSizes.width(line, Fonts.sans(13)));
        }
        List<double[]> corners = new ArrayList<>();
        for (double by = c.top() + 8; by <= c.bottom() - HIGH_PX - 6; by += STEP_PX) {
            corners.add(new double[] {Math.max(c.left() + 6, x - w - 12), by});
        }
        for (double bx = c.left() + 6; bx <= c.right() - w - 6; bx += STEP_PX) {
            for (double by = c.top() + 8; by <= c.bottom() - HIGH_PX - 6; by += STEP_PX) {
                corners.add(new double[] {bx, by});
            }
        }
        double width = w;
        corners.sort(Comparator.comparingDouble(at -> Math.abs(at[0] + width / 2 - x)));
        double[] at = places.free(corners, w, HIGH_PX);
        if (at == null) {
            Say.left(g, p, String.join(" · ", lines), c.left(), c.top() - 9, 13, true, Ink.COBALT);
            return;
        }
        g.setFill(p.of(Ink.PAPER));
        g.fillRoundRect(at[0], at[1], w, HIGH_PX, 8, 8);
        g.setLineWidth(1.8);
        g.strokeRoundRect(at[0], at[1], w, HIGH_PX, 8, 8);
        Say.left(g, p, lines.get(0), at[0] + 13, at[1] + 26, 17, true, Ink.INK);
        Say.left(g, p, lines.get(1), at[0] + 13, at[1] + 47, 13, false, Ink.INK);
        Say.left(g, p, lines.get(2), at[0] + 13, at[1] + 66, 13, false, Ink.INK);
    }
}
