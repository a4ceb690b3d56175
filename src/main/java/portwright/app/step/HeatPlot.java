package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Lengths;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Sample;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.review.StepRow;

/** Electricity and gas stacked over the firing, and the boxwood strip of damper settings. */
final class HeatPlot {
    private static final double STRIP_PX = 30;
    /** Type of a word in a stretch too short for it, px. */
    private static final double OFF_PX = 10;

    private final GraphicsContext g;
    private final Palette p;
    private final UnitSystem units;

    HeatPlot(GraphicsContext g, Palette p, UnitSystem units) {
        this.units = units;
        this.g = g;
        this.p = p;
    }

    /** Top of the axis, kW. */
    static double niceKw(FiringRun run) {
        double most = 4;
        for (Sample s : run.samples()) {
            most = Math.max(most, (s.electricW() + Math.max(0, s.flowHeatW())) / 1000);
        }
        return Math.ceil(most / 4) * 4;
    }

    void heat(Chart c, FiringRun run) {
        Say.left(g, p, "heat into the chamber, kW", 24, c.top() - 12, 13, false, Ink.INK2);
        List<Pt> base = new ArrayList<>();
        List<Pt> electric = new ArrayList<>();
        List<Pt> both = new ArrayList<>();
        for (Sample s : run.samples()) {
            double t = s.timeS() / 3600;
            base.add(new Pt(t, 0));
            electric.add(new Pt(t, s.electricW() / 1000));
            both.add(new Pt(t, (s.electricW() + Math.max(0, s.flowHeatW())) / 1000));
        }
        double top = niceKw(run);
        for (double v = 0; v <= top; v += top / 4 >= 4 ? 4 : 2) {
            c.gridY(v, String.valueOf(Math.round(v)));
        }
        c.area(both, electric, p.of(Ink.COBALT).deriveColor(0, 1, 1, 0.3));
        c.area(electric, base, p.of(Ink.EMBER).deriveColor(0, 1, 1, 0.3));
        c.line(both, Ink.COBALT, 1.8);
        c.line(electric, Ink.EMBER, 1.8);
        double mid = c.x(run.endS() / 3600 * 0.4);
        Say.at(g, p, "electricity", mid, c.bottom() - 16, 13, true, Ink.EMBER, TextAlignment.CENTER, VPos.CENTER, true);
        if (run.fuelKg() > 0) {
            Say.at(
                    g,
                    p,
                    "gas, inside the chamber",
                    c.right(),
                    c.top() - 12,
                    13,
                    true,
                    Ink.COBALT,
                    TextAlignment.RIGHT,
                    VPos.BASELINE,
                    false);
        }
    }

    /** The strip under the time axis of a chart. */
    void strip(Chart c, double y, List<StepRow> rows, List<OpenSpell> spells) {
        Say.at(
                g,
                p,
                "damper",
                c.left() - 8,
                y + STRIP_PX / 2,
                13,
                false,
                Ink.INK,
                TextAlignment.RIGHT,
                VPos.CENTER,
                false);
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(c.left(), y, c.right() - c.left(), STRIP_PX);
        double end = 0;
        g.setStroke(p.of(Ink.BOXINK));
        g.setLineWidth(2);
        g.setLineDashes();
        for (StepRow r : rows) {
            double x0 = c.x(r.startHours());
            double x1 = c.x(r.endHours());
            for (String words : damper(r)) {
                if (TextSizes.width(words, Fonts.bold(13)) <= x1 - x0 - 6) {
                    middle(words, (x0 + x1) / 2, y);
                    break;
                }
            }
            g.strokeLine(x0, y, x0, y + STRIP_PX);
            g.strokeLine(x1, y, x1, y + STRIP_PX);
            end = r.endHours();
        }
        for (OpenSpell s : spells) {
            off((c.x(s.startS() / 3600) + c.x(s.endS() / 3600)) / 2, c.x(s.endS() / 3600) - c.x(s.startS() / 3600), y);
        }
        if (c.right() - c.x(end) > 90) {
            middle("shut", (c.x(end) + c.right()) / 2, y);
        }
    }

    /** Between two steps, air and clean fire: the plate is off. Words too long for it go over it in small type. */
    private void off(double x, double room, double y) {
        String words = offWords(room);
        double px = TextSizes.width(words, Fonts.bold(13)) <= room - 4 ? 13 : OFF_PX;
        Say.at(g, p, words, x, y + STRIP_PX / 2, px, true, Ink.BOXINK, TextAlignment.CENTER, VPos.CENTER, false);
    }

    /** The longest words for the plate off that have room, px; the short ones stand where none has. */
    static String offWords(double room) {
        return TextSizes.width("plate off", Fonts.bold(13)) <= room - 4 ? "plate off" : "off";
    }

    private void middle(String words, double x, double y) {
        Say.at(g, p, words, x, y + STRIP_PX / 2, 13, true, Ink.BOXINK, TextAlignment.CENTER, VPos.CENTER, false);
    }

    /** The damper of a step in words, the long form first. */
    private List<String> damper(StepRow r) {
        if (r.plateEndMm() != null) {
            String from = Lengths.travel(r.plateStartMm(), units);
            String to = Lengths.travel(r.plateEndMm(), units);
            String words = from.equals(to) ? to : from + " to " + to;
            return List.of(words + " " + Lengths.sign(units), words);
        }
        return r.damperOpen() == null
                ? List.of("shut, inlets plugged", "shut")
                : List.of(Math.round(r.damperOpen() * 100) + " % open", Math.round(r.damperOpen() * 100) + " %");
    }
}
