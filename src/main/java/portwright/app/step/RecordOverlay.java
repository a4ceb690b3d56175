package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.RecordDesk;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.calc.firing.log.ConeOffset;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.RecordResult;
import portwright.calc.firing.log.Spell;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.review.RecordReview;
import portwright.review.RecordView;
import portwright.units.Celsius;

/** A record over the forecast: the reading, where it falls or stands, cones down, a numbered sign where a finding begins. */
final class RecordOverlay {
    private static final double LOW_PX = 180;

    private final GraphicsContext g;
    private final Palette p;
    private final Chart chart;
    private final RecordResult result;
    private final String name;
    private final List<Pt> line = new ArrayList<>();
    private final Places places;
    private final double firstS;
    private final double shiftH;

    /** @param places learns where curve and signs stand, so that later words keep off */
    RecordOverlay(GraphicsContext g, Palette p, Chart chart, RecordDesk desk, Places places) {
        this.places = places;
        this.g = g;
        this.p = p;
        this.chart = chart;
        RecordReview r = desk.record();
        int i = desk.chosen();
        result = desk.result();
        name = desk.entries().get(i).name();
        shiftH = r.shiftHours(i);
        firstS = r.logs().get(i).readings().get(0).timeS();
        for (RecordView v : r.views().get(i)) {
            if (v.measuredC() != null) {
                line.add(new Pt(v.hours() + shiftH, v.measuredC()));
            }
        }
    }

    /** Hour of the forecast at which a record ends; 0 without one. */
    static double endHours(RecordDesk desk) {
        if (desk.record() == null) {
            return 0;
        }
        double end = 0;
        for (RecordView v : desk.record().views().get(desk.chosen())) {
            end = v.measuredC() == null ? end : v.hours();
        }
        return end + desk.record().shiftHours(desk.chosen());
    }

    private double hours(double timeS) {
        return (timeS - firstS) / 3600 + shiftH;
    }

    void paint() {
        chart.clip();
        chart.line(line, Ink.UMBER, 3, 10, 4);
        for (Spell s : result.spells()) {
            List<Pt> piece = line.stream()
                    .filter(q -> q.x() >= hours(s.fromS()) - 1e-9 && q.x() <= hours(s.toS()) + 1e-9)
                    .toList();
            chart.line(piece, s.falls() ? Ink.OXBLOOD : Ink.RUTILE, 6);
        }
        chart.unclip();
        line.forEach(q -> places.curve(chart.x(q.x()), chart.y(q.y())));
        cones();
        name();
        int n = 1;
        for (LogFinding f : result.findings()) {
            double t = Double.isNaN(f.kelvin()) ? Double.NaN : hours(f.timeS());
            if (!Double.isNaN(t)) {
                sign(n, chart.x(t), chart.y(reading(t)));
            }
            n++;
        }
    }

    /** The file's name under the curve, where a third of it has passed. */
    private void name() {
        if (chart.bottom() - chart.top() < LOW_PX) {
            return;
        }
        Pt at = line.get(line.size() / 3);
        double w = TextSizes.width(name, Fonts.bold(13));
        double x = Math.min(chart.right() - w - 6, chart.x(at.x()) + 18);
        double y = Math.min(chart.bottom() - 12, chart.y(at.y()) + 30);
        Say.at(g, p, name, x, y, 13, true, Ink.UMBER, TextAlignment.LEFT, VPos.CENTER, true);
        places.name(x, y - 9, w, 18);
    }

    private double reading(double hours) {
        Pt best = line.get(0);
        for (Pt q : line) {
            best = Math.abs(q.x() - hours) < Math.abs(best.x() - hours) ? q : best;
        }
        return best.y();
    }

    /** A caution triangle over the curve, or under it where there is no room, with the finding's number in the ticket. */
    private void sign(int number, double x, double y) {
        boolean over = y - 52 > chart.top();
        double top = over ? y - 44 : y + 24;
        g.setStroke(p.of(Ink.RUTILE));
        g.setLineWidth(1.6);
        g.setLineDashes();
        g.strokeLine(x, over ? y - 4 : y + 4, x, over ? top + 20 : top);
        double[] xs = {x, x + 15, x - 15};
        double[] ys = {top - 6, top + 21, top + 21};
        g.setFill(p.of(Ink.RUTILE));
        g.fillPolygon(xs, ys, 3);
        places.name(x - 15, top - 6, 30, 30);
        String n = String.valueOf(number);
        Say.at(g, p, n, x, top + 12, 13, true, Ink.PAPER, TextAlignment.CENTER, VPos.CENTER, false);
    }

    private void cones() {
        for (ConeOffset o : result.offsets()) {
            double x = chart.x(hours(o.timeS()));
            double y = chart.y(o.readingK() - Celsius.ZERO_C);
            g.setFill(p.of(Ink.PAPER));
            g.setStroke(p.of(Ink.UMBER));
            g.setLineWidth(2);
            double[] xs = {x - 8, x + 6, x + 12};
            double[] ys = {y + 6, y - 12, y + 6};
            g.fillPolygon(xs, ys, 3);
            g.strokePolygon(xs, ys, 3);
            places.name(x - 10, y - 14, 46, 36);
            Say.at(g, p, o.cone(), x + 15, y + 14, 13, true, Ink.UMBER, TextAlignment.LEFT, VPos.CENTER, true);
        }
    }
}
