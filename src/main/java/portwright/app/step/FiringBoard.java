package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Document;
import portwright.app.doc.FiringWords;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.app.part.PaintedRegion;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.Sample;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.review.StepRow;

/** Firing step: the forecast with its band and stall lines, pegs to drag, electricity and gas stacked, the damper strip. */
final class FiringBoard extends PaintedRegion implements FormStep.Refreshing {
    private static final double ZERO_C = 273.15;

    private final Document doc;
    private Chart chart;
    private int held = -1;
    private double heldC;

    FiringBoard(Document doc) {
        this.doc = doc;
        getStyleClass().add("paper");
        setFocusTraversable(true);
        setOnMousePressed(this::press);
        setOnMouseDragged(e -> {
            if (held >= 0 && chart != null) {
                double t = (chart.bottom() - e.getY()) / (chart.bottom() - chart.top());
                heldC = Math.rint(Math.max(40, Math.min(1400, t * 1500)) / 5) * 5;
                repaint();
            }
        });
        setOnMouseReleased(e -> drop());
    }

    @Override
    public void refresh() {
        repaint();
    }

    private List<StepRow> rows() {
        return doc.extras().rows();
    }

    private void press(MouseEvent e) {
        held = -1;
        List<StepRow> rows = rows();
        double at = 0;
        for (StepRow r : rows) {
            at += r.hours();
            boolean rise = doc.text().has("firing.steps[" + r.index() + "].to");
            if (rise && chart != null && Math.hypot(e.getX() - chart.x(at), e.getY() - chart.y(r.endC())) < 14) {
                held = r.index();
                heldC = r.endC();
            }
        }
    }

    private void drop() {
        if (held < 0) {
            return;
        }
        int step = held;
        held = -1;
        String to = FiringWords.temperature(
                heldC, "inch".equals(doc.text().get("units").orElse("")) ? UnitSystem.INCH : UnitSystem.METRIC);
        doc.edit("step " + (step + 1) + " to " + to, t -> t.setText("firing.steps[" + step + "].to", to));
        repaint();
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        Say.left(g, p, "Forecast of the firing", 24, 34, 17, true, Ink.INK);
        Say.left(g, p, "chamber, °C", 24, 55, 13, false, Ink.INK2);
        var firing = doc.review().firing();
        if (firing == null) {
            Say.left(g, p, "The forecast is being computed.", 24, 100, 14, false, Ink.INK);
            return;
        }
        var known = firing.forecast();
        if (!known.known()) {
            Say.lines(
                    g,
                    p,
                    "No forecast yet. Add " + String.join(", ", known.needs()) + ".",
                    24,
                    100,
                    w - 60,
                    14,
                    Ink.INK);
            return;
        }
        Forecast f = known.value();
        double hours = 0;
        for (FiringRun run : List.of(f.nominal(), f.quick(), f.slow())) {
            hours = Math.max(hours, run.endS() / 3600);
        }
        hours = Math.ceil(hours + 0.4);
        double right = w - 44;
        double low = 196;
        chart = new Chart(g, p, 76, 70, right - 76, h - 70 - low - 46, 0, hours, 0, 1500, false);
        fields(g, p);
        temperatures(g, p, f, hours);
        Chart heat = new Chart(g, p, 76, h - low, right - 76, 104, 0, hours, 0, niceKw(f.nominal()), false);
        heat(g, p, heat, f.nominal());
        strip(g, p, heat, h - 74);
        Say.left(
                g,
                p,
                doc.checking()
                        ? "The design has changed: a new forecast is being computed."
                        : "Band: brick conducts 20 % more or less. Hours are good to about a quarter until a record has taught the kiln's own loss.",
                24,
                h - 14,
                12.5,
                false,
                Ink.INK2);
    }

    private static double niceKw(FiringRun run) {
        double most = 4;
        for (Sample s : run.samples()) {
            most = Math.max(most, (s.electricW() + Math.max(0, s.flowHeatW())) / 1000);
        }
        return Math.ceil(most / 4) * 4;
    }

    private static Ink ink(String atmosphere) {
        return switch (atmosphere == null ? "" : atmosphere) {
            case "heavy", "beyond" -> Ink.FLAME;
            case "light", "medium" -> Ink.RUTILE_FILL;
            default -> Ink.COBALT_FILL;
        };
    }

    private void fields(GraphicsContext g, Palette p) {
        double at = 0;
        for (StepRow r : rows()) {
            if (r.heat() != null && (r.heat().equals("both") || r.heat().equals("gas"))) {
                chart.upright(at, at + r.hours(), ink(r.atmosphere()), "heavy".equals(r.atmosphere()) ? 0.35 : 0.75);
            }
            at += r.hours();
        }
    }

    private void temperatures(GraphicsContext g, Palette p, Forecast f, double hours) {
        for (int c = 0; c <= 1400; c += 200) {
            chart.gridY(c, String.valueOf(c));
        }
        int every = hours > 20 ? 4 : hours > 14 ? 2 : 1;
        for (int t = 0; t <= hours; t += every) {
            chart.tickX(t, String.valueOf(t));
        }
        Say.at(
                g,
                p,
                "hours from switching on",
                chart.right(),
                chart.bottom() + 36,
                13,
                false,
                Ink.INK2,
                TextAlignment.RIGHT,
                VPos.CENTER,
                false);
        chart.clip();
        chart.area(curve(f.quick()), curve(f.slow()), p.of(Ink.INK).deriveColor(0, 1, 1, 0.13));
        chart.line(curve(f.quick()), Ink.INK2, 1.4, 7, 4);
        chart.line(curve(f.slow()), Ink.INK2, 1.4, 7, 4);
        chart.line(curve(f.nominal()), Ink.INK, 3.4);
        stall(g, p, f.stallAllK(), "stall %s, electricity and gas", -9);
        stall(g, p, f.stallElectricK(), "stall %s, electricity alone", 15);
        chart.unclip();
        chart.frame();
        pegs(g, p);
    }

    private static List<Pt> curve(FiringRun run) {
        List<Pt> out = new ArrayList<>();
        for (Sample s : run.samples()) {
            out.add(new Pt(s.timeS() / 3600, s.chamberK() - ZERO_C));
        }
        return out;
    }

    private void stall(GraphicsContext g, Palette p, double k, String words, double dy) {
        double c = k - ZERO_C;
        if (!Double.isFinite(c) || c < 100 || c > 1490) {
            return;
        }
        chart.line(List.of(new Pt(0, c), new Pt(1000, c)), Ink.OXBLOOD, 2, 14, 6);
        chart.say(
                String.format(words, Math.round(c) + " °C"),
                chart.left() + 12,
                chart.y(c) + dy,
                13,
                true,
                Ink.OXBLOOD,
                TextAlignment.LEFT,
                VPos.CENTER,
                true);
    }

    private void pegs(GraphicsContext g, Palette p) {
        double at = 0;
        double lastY = -100;
        List<StepRow> rows = rows();
        for (int i = 0; i < rows.size(); i++) {
            StepRow r = rows.get(i);
            at += r.hours();
            double c = held == r.index() ? heldC : r.endC();
            double x = chart.x(at);
            double y = chart.y(c);
            g.setFill(p.of(Ink.PAPER));
            g.fillOval(x - 9, y - 9, 18, 18);
            g.setStroke(p.of(held == r.index() ? Ink.EMBER : Ink.COBALT));
            g.setLineWidth(3);
            g.setLineDashes();
            g.strokeOval(x - 9, y - 9, 18, 18);
            String head = r.stalled()
                    ? r.goal() + ": stalls"
                    : r.goal() + (r.atmosphere() == null ? "" : " · " + r.atmosphere());
            String tail = held == r.index() ? Math.round(c) + " °C" : hm(at) + " · " + Math.round(r.endC()) + " °C";
            boolean toLeft = x > chart.left() + 150;
            double tx = toLeft ? x - 16 : x + 16;
            double ty = toLeft ? y - 14 : y + 20;
            if (Math.abs(ty - lastY) < 36) {
                ty = lastY + 36 < chart.bottom() - 20 && !toLeft ? lastY + 36 : ty + (i % 2 == 0 ? -36 : 44);
            }
            lastY = ty;
            TextAlignment align = toLeft ? TextAlignment.RIGHT : TextAlignment.LEFT;
            Say.at(g, p, head, tx, ty, 13, true, r.stalled() ? Ink.OXBLOOD : Ink.INK, align, VPos.CENTER, true);
            Say.at(g, p, tail, tx, ty + 17, 13, false, Ink.INK, align, VPos.CENTER, true);
        }
    }

    static String hm(double hours) {
        long min = Math.round(hours * 60);
        return min / 60 + " h " + String.format(Locale.ROOT, "%02d", min % 60);
    }

    private void heat(GraphicsContext g, Palette p, Chart c, FiringRun run) {
        Say.left(g, p, "heat into the chamber, kW", 24, c.top() - 12, 13, false, Ink.INK2);
        List<Pt> base = new ArrayList<>();
        List<Pt> electric = new ArrayList<>();
        List<Pt> both = new ArrayList<>();
        double most = c.top();
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
        double mid = run.endS() / 3600 * 0.4;
        Say.at(
                g,
                p,
                "electricity",
                c.x(mid),
                c.bottom() - 16,
                13,
                true,
                Ink.EMBER,
                TextAlignment.CENTER,
                VPos.CENTER,
                true);
        boolean gas = run.fuelKg() > 0;
        if (gas) {
            Say.at(
                    g,
                    p,
                    "gas, inside the chamber",
                    c.right(),
                    most - 10,
                    13,
                    true,
                    Ink.COBALT,
                    TextAlignment.RIGHT,
                    VPos.CENTER,
                    true);
        }
    }

    private void strip(GraphicsContext g, Palette p, Chart c, double y) {
        Say.at(g, p, "damper", c.left() - 8, y + 15, 13, false, Ink.INK, TextAlignment.RIGHT, VPos.CENTER, false);
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(c.left(), y, c.right() - c.left(), 30);
        double at = 0;
        g.setStroke(p.of(Ink.BOXINK));
        g.setLineWidth(2);
        g.setLineDashes();
        for (StepRow r : rows()) {
            double x0 = c.x(at);
            double x1 = c.x(at + r.hours());
            String words = r.travelMm() != null
                    ? String.format(Locale.ROOT, "%.1f mm", r.travelMm())
                    : r.damperOpen() == null ? "shut, inlets plugged" : Math.round(r.damperOpen() * 100) + " % open";
            if (TextSizes.width(words, Fonts.bold(13)) > x1 - x0 - 6 && r.travelMm() != null) {
                words = String.format(Locale.ROOT, "%.1f", r.travelMm());
            }
            if (TextSizes.width(words, Fonts.bold(13)) <= x1 - x0 - 4) {
                Say.at(
                        g,
                        p,
                        words,
                        (x0 + x1) / 2,
                        y + 15,
                        13,
                        true,
                        Ink.BOXINK,
                        TextAlignment.CENTER,
                        VPos.CENTER,
                        false);
            }
            g.strokeLine(x1, y, x1, y + 30);
            at += r.hours();
        }
        if (c.right() - c.x(at) > 90) {
            Say.at(
                    g,
                    p,
                    "shut",
                    (c.x(at) + c.right()) / 2,
                    y + 15,
                    13,
                    true,
                    Ink.BOXINK,
                    TextAlignment.CENTER,
                    VPos.CENTER,
                    false);
        }
    }
}
