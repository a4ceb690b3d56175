package portwright.app.step;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Cursor;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Degrees;
import portwright.app.doc.Document;
import portwright.app.doc.FiringWords;
import portwright.app.doc.RecordDesk;
import portwright.app.paint.Chart;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.part.PaintedRegion;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.drawing.Ink;
import portwright.form.FieldNames;
import portwright.model.UnitSystem;
import portwright.report.ReportLine;
import portwright.review.ClimbEnds;
import portwright.review.StepRow;
import portwright.units.BothSystems;

/** Firing step: the forecast with pegs to drag, a record over it, electricity and gas stacked, the damper strip. */
final class FiringBoard extends PaintedRegion implements FormStep.Refreshing {
    /** What heat, strip and last words take below the forecast; the least height of the forecast beside them, px. */
    private static final double HEAT_PX = 270;

    private static final double LEAST_PX = 190;
    private static final double CATCH_PX = 14;
    /** Where the words beside the title begin. */
    private static final double BESIDE = 270;

    private final Document doc;
    private final RecordDesk records;
    private Chart chart;
    private int held = -1;
    private double heldC;
    /** Where the words beside the title ended last: the chart keeps its place while new ones are made. */
    private double besideY = 70;

    private double mostC = ForecastPlot.MOST_C;

    FiringBoard(Document doc, RecordDesk records) {
        this.doc = doc;
        this.records = records;
        getStyleClass().add("paper");
        setFocusTraversable(true);
        setOnMousePressed(e -> {
            held = peg(e);
            if (held >= 0) {
                heldC = rows().stream()
                        .filter(r -> r.index() == held)
                        .findFirst()
                        .orElseThrow()
                        .endC();
            }
        });
        setOnMouseMoved(e -> setCursor(peg(e) >= 0 ? Cursor.V_RESIZE : Cursor.DEFAULT));
        setOnMouseDragged(this::drag);
        setOnMouseReleased(e -> drop());
    }

    @Override
    public void refresh() {
        repaint();
    }

    private UnitSystem units() {
        return doc.design().units();
    }

    private List<StepRow> rows() {
        return doc.extras().rows();
    }

    /** The step whose peg lies under the pointer and has a temperature of its own; −1 for none. */
    private int peg(MouseEvent e) {
        for (StepRow r : rows()) {
            boolean rise = doc.text().has("firing.steps[" + r.index() + "].to");
            if (rise
                    && chart != null
                    && Math.hypot(e.getX() - chart.x(r.endHours()), e.getY() - chart.y(r.endC())) < CATCH_PX) {
                return r.index();
            }
        }
        return -1;
    }

    private void drag(MouseEvent e) {
        if (held >= 0 && chart != null) {
            double t = (chart.bottom() - e.getY()) / (chart.bottom() - chart.top());
            heldC = Math.max(40, Math.min(ForecastPlot.MOST_C, t * mostC));
            repaint();
        }
    }

    private void drop() {
        if (held < 0) {
            return;
        }
        int step = held;
        held = -1;
        String typed = doc.text().get("firing.steps[" + step + "].to").orElse("");
        String to = FiringWords.temperature(heldC, typed, units());
        doc.edit("step " + (step + 1) + " to " + to, t -> t.setText("firing.steps[" + step + "].to", to));
        repaint();
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        Say.left(g, p, "Forecast of the firing", 24, 34, 17, true, Ink.INK);
        var firing = doc.review().firing();
        if (firing == null) {
            Say.left(
                    g,
                    p,
                    doc.stopped() ? "The forecast was called off." : "The forecast is being computed.",
                    24,
                    100,
                    14,
                    false,
                    Ink.INK);
            return;
        }
        var known = firing.forecast();
        if (!known.known()) {
            Say.lines(
                    g,
                    p,
                    "No forecast yet. Fill in " + FieldNames.of(known.needs()) + ".",
                    24,
                    100,
                    w - 60,
                    14,
                    Ink.INK);
            return;
        }
        Forecast f = known.value();
        double hours = RecordOverlay.endHours(records);
        for (FiringRun run : List.of(f.nominal(), f.quick(), f.slow())) {
            hours = Math.max(hours, run.endS() / 3600);
        }
        hours = Math.ceil(hours + 0.4);
        double width = w - 76 - 30;
        double top = beside(g, p, w);
        boolean low = h - top - HEAT_PX < LEAST_PX;
        Say.left(g, p, "chamber, " + Degrees.sign(units()), 24, top - 15, 13, false, Ink.INK2);
        double bottom = low ? 84 : HEAT_PX;
        ClimbEnds ends = ClimbEnds.of(doc.review().firing());
        mostC = ForecastPlot.topC(ends);
        chart = new Chart(g, p, 76, top, width, Math.max(60, h - top - bottom), 0, hours, 0, mostC, false);
        Places places = new Places();
        ForecastPlot plot = new ForecastPlot(g, p, chart, rows(), places, units());
        plot.curves(f, ends, hours);
        axisWords(g, p);
        if (records.record() != null) {
            new RecordOverlay(g, p, chart, records, places).paint();
        }
        plot.pegs(held, heldC);
        HeatPlot heat = new HeatPlot(g, p, units());
        if (!low) {
            Chart kw = new Chart(g, p, 76, h - 194, width, 102, 0, hours, 0, HeatPlot.niceKw(f.nominal()), false);
            heat.heat(kw, f.nominal());
        }
        heat.strip(chart, low ? h - 38 : h - 76, rows(), f.nominal().openSpells());
        if (!low) {
            Say.left(g, p, lastWord(), 24, h - 16, 12.5, false, Ink.INK2);
        }
    }

    private void axisWords(GraphicsContext g, Palette p) {
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
    }

    /** What the firing takes beside an all-electric one, right of the title; answers the y of the next line. */
    private double beside(GraphicsContext g, Palette p, double w) {
        double y = 34;
        for (ReportLine l : doc.extras().energy()) {
            String both = l.name() + ": " + l.value();
            String words = units() == UnitSystem.INCH ? BothSystems.inchFirst(both) : BothSystems.metricOnly(both);
            y = Say.lines(g, p, words, BESIDE, y, w - 30 - BESIDE, 13, Ink.INK);
        }
        besideY = doc.extras().energy().isEmpty() ? besideY : Math.max(70, y);
        return besideY;
    }

    private String lastWord() {
        return doc.stopped()
                ? "The design has changed since: this forecast belongs to the one before."
                : doc.checking()
                        ? "The design has changed: a new forecast is being computed."
                        : "Band: brick conducts 20 % more or less. Hours are good to about a quarter until a record has taught the kiln's own loss.";
    }
}
