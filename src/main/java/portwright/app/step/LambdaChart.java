package portwright.app.step;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.DamperPlan;
import portwright.app.doc.Degrees;
import portwright.app.doc.Extras;
import portwright.app.doc.LambdaBand;
import portwright.app.doc.Lengths;
import portwright.app.paint.Chart;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DamperCurve;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.units.Celsius;

/** Lambda over the damper: band and levels, CO of each level, the plate's travel below, a read-out at the pointer. */
final class LambdaChart {
    private final GraphicsContext g;
    private final Palette p;
    private final Extras.Gas gas;
    private final UnitSystem units;
    private final Places places = new Places();

    LambdaChart(GraphicsContext g, Palette p, Extras.Gas gas, UnitSystem units) {
        this.g = g;
        this.p = p;
        this.gas = gas;
        this.units = units;
    }

    /**
     * Where the chart lies and what it shows.
     *
     * @param left px
     * @param right px
     * @param least open share at its left end, %
     * @param most at its right end
     */
    record Frame(double left, double right, double least, double most) {
        /** Open share at an x, 0 to 1; null outside. */
        Double openAt(double x) {
            return x < left || x > right ? null : openNear(x);
        }

        /** The same at the nearest x of the chart. */
        Double openNear(double x) {
            double t = Math.max(0, Math.min(1, (x - left) / (right - left)));
            return (least + t * (most - least)) / 100;
        }
    }

    /** Paints in a box; {@code inside} for the words of the levels in the chart, else beside it; the read-out stands at the share {@code open}, 0 to 1. */
    Frame paint(double x, double y, double w, double h, boolean inside, double open) {
        double lo = 0.6;
        double hi = 1.4;
        List<Pt> mid = new ArrayList<>();
        for (DamperCurve.Point q : gas.top().points()) {
            mid.add(new Pt(q.open() * 100, q.state().lambda().orElse(Double.NaN)));
        }
        LambdaBand band = LambdaBand.of(gas.top());
        List<Pt> low = band.low();
        List<Pt> high = band.high();
        double most = 100;
        double least = 0;
        for (Pt q : mid) {
            if (Double.isFinite(q.y()) && q.y() < lo) {
                least = Math.max(least, q.x());
            }
        }
        least = Math.max(0, Math.floor(least / 10) * 10 - 10);
        for (int i = low.size() - 1; i >= 0; i--) {
            if (low.get(i).y() > hi) {
                most = Math.min(most, low.get(i).x());
            }
        }
        most = Math.min(100, Math.ceil(most / 10) * 10);
        if (most - least < 30) {
            most = Math.min(100, least + 30);
        }
        Chart c = new Chart(g, p, x, y, w, h, least, most, lo, hi, false);
        c.field(AtmosphereLevel.OXIDIZING.lambdaLow(), hi, Ink.COBALT_FILL, 0.45);
        c.field(AtmosphereLevel.LIGHT.lambdaLow(), AtmosphereLevel.LIGHT.lambdaHigh(), Ink.RUTILE_FILL, 0.3);
        c.field(AtmosphereLevel.MEDIUM.lambdaLow(), AtmosphereLevel.MEDIUM.lambdaHigh(), Ink.RUTILE_FILL, 0.6);
        c.field(AtmosphereLevel.HEAVY.lambdaLow(), AtmosphereLevel.HEAVY.lambdaHigh(), Ink.FLAME, 0.4);
        c.field(lo, AtmosphereLevel.BEYOND.lambdaHigh(), Ink.OXBLOOD_FILL, 0.5);
        c.clip();
        c.area(high, low, p.of(Ink.INK).deriveColor(0, 1, 1, 0.13));
        c.line(low, Ink.INK2, 1.4, 7, 4);
        c.line(high, Ink.INK2, 1.4, 7, 4);
        for (AtmosphereLevel l : EnumSet.range(AtmosphereLevel.NEUTRAL, AtmosphereLevel.HEAVY)) {
            c.line(List.of(new Pt(least, l.lambdaLow()), new Pt(most, l.lambdaLow())), Ink.INK2, 1, 1.5, 3);
        }
        c.line(List.of(new Pt(least, 1), new Pt(most, 1)), Ink.INK2, 1.2);
        List<Pt> on = new ArrayList<>();
        gas.on()
                .points()
                .forEach(q -> on.add(new Pt(q.open() * 100, q.state().lambda().orElse(Double.NaN))));
        c.line(on, Ink.COBALT, 2.4, 14, 4, 3, 4);
        c.line(mid, Ink.INK, 3.4);
        LevelNames names = new LevelNames(g, p, gas, places);
        List<Runnable> levels = inside ? names.inside(c) : List.of();
        CurveNames curves = new CurveNames(c, places);
        for (List<Pt> line : List.of(mid, on, low, high)) {
            curves.keep(line);
        }
        curves.keep(List.of(new Pt(gas.open() * 100, lo), new Pt(gas.open() * 100, hi)));
        curves.name(
                mid,
                List.of(Degrees.words(gas.topK() - Celsius.ZERO_C, units)),
                Ink.INK,
                TextAlignment.LEFT,
                CurveNames.LOW_FIRST);
        curves.name(
                on,
                List.of("gas lit, chamber", Degrees.words(gas.onK() - Celsius.ZERO_C, units)),
                Ink.COBALT,
                TextAlignment.RIGHT,
                CurveNames.LOW_FIRST);
        curves.name(low, List.of("band 5–95 %"), Ink.INK2, TextAlignment.LEFT, CurveNames.HIGH_FIRST);
        c.unclip();
        c.frame();
        for (double v = 0.6; v < 1.41; v += 0.1) {
            Say.at(
                    g,
                    p,
                    String.format(Locale.ROOT, "%.1f", v),
                    x - 9,
                    c.y(v),
                    13,
                    false,
                    Ink.INK,
                    TextAlignment.RIGHT,
                    VPos.CENTER,
                    false);
        }
        levels.forEach(Runnable::run);
        if (!inside) {
            names.beside(c);
        }
        travel(c, least, most);
        new LambdaReadOut(g, p, gas, units).paint(c, mid, least, most, open * 100, places);
        return new Frame(c.left(), c.right(), least, most);
    }

    /** The travel axis: a boxwood rule whose ticks follow the real, unequal scale. */
    private void travel(Chart c, double least, double most) {
        double y = c.bottom() + 12;
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(c.left(), y, c.right() - c.left(), 34);
        g.setStroke(p.of(Ink.BOXINK));
        g.setLineWidth(1.2);
        g.setLineDashes();
        double from = gas.plate().travelFor(Math.max(0.0001, least / 100)) * 1000;
        double to = gas.plate().travelFor(most / 100) * 1000;
        double lastWords = -100;
        boolean inch = units == UnitSystem.INCH;
        double tick = inch ? 25.4 / 16 : 1;
        for (int n = (int) Math.ceil(from / tick); n * tick <= to; n++) {
            double open = DamperPlan.openAt(gas.plate(), n * tick);
            double x = c.x(open * 100);
            boolean big = n % (inch ? 4 : 5) == 0;
            g.strokeLine(x, y, x, y + (big ? 12 : 7));
            if (big && x - lastWords > 52 && x > c.left() + 22 && x < c.right() - 24) {
                String words = Lengths.travel(n * tick, units) + " " + Lengths.sign(units);
                Say.at(g, p, words, x, y + 23, 13, false, Ink.BOXINK, TextAlignment.CENTER, VPos.CENTER, false);
                lastWords = x;
            }
        }
        double step = most - least > 60 ? 20 : 10;
        for (double v = Math.ceil(least / step) * step; v <= most + 1e-9; v += step) {
            Say.at(
                    g,
                    p,
                    Math.round(v) + " %",
                    c.x(v),
                    y + 47,
                    13,
                    false,
                    Ink.INK,
                    TextAlignment.CENTER,
                    VPos.CENTER,
                    false);
        }
        Say.at(
                g,
                p,
                "plate travel from shut (rule) and open share of the flues",
                (c.left() + c.right()) / 2,
                y + 69,
                13,
                false,
                Ink.INK2,
                TextAlignment.CENTER,
                VPos.CENTER,
                false);
    }
}
