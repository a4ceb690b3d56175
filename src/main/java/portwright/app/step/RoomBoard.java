package portwright.app.step;

import java.util.Locale;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Document;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.app.part.PaintedRegion;
import portwright.data.CoAlarmPoint;
import portwright.drawing.Ink;
import portwright.form.FieldNames;
import portwright.model.UnitSystem;
import portwright.review.RoomReview;
import portwright.units.Format;

/** Room step: the room with its air and carbon monoxide, fresh air against needed, CO over the firing. */
final class RoomBoard extends PaintedRegion implements FormStep.Refreshing {
    private static final double LOW_PX = 460;
    private static final double FIGURE_PX = 66;
    private static final double CHART_PX = 58;
    private static final int FIGURES = 4;
    private static final double CUBIC_FOOT_M3 = 0.028316846592;
    private static final double LONG_S = 3 * 3600;

    private final Document doc;
    /** Height of one figure: less where the board is low, so that the last stays above the chart. */
    private double pitch = FIGURE_PX;

    RoomBoard(Document doc) {
        this.doc = doc;
        getStyleClass().add("paper");
    }

    @Override
    public void refresh() {
        repaint();
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        RoomReview room = doc.review().room();
        Say.left(g, p, "Carbon monoxide in the room", 24, 34, 17, true, Ink.INK);
        if (room == null) {
            Say.left(g, p, "The room is being computed.", 24, 70, 14, false, Ink.INK);
            return;
        }
        if (Boolean.FALSE.equals(room.indoors())) {
            new RoomSketch(g, p).outdoors(w, h);
            return;
        }
        if (h < LOW_PX) {
            new CoChart(g, p).paint(room, 86, 72, Math.max(200, w - 86 - CoChart.WORDS_PX), h - 72 - 34);
            return;
        }
        Say.left(g, p, "section of the room · at the worst minute, mixed air, wind still", 24, 55, 13, false, Ink.INK2);
        double top = 74;
        double sw = Math.min(w * 0.56, 560);
        double sh = Math.min(250, h * 0.36);
        Double ppm = room.co().known() ? room.co().value().calm().peakPpm() : null;
        new RoomSketch(g, p).section(doc.design().room(), 60, top + 24, sw - 60, sh - 24, ppm);
        pitch = Math.min(FIGURE_PX, (sh + CHART_PX - 30) / FIGURES);
        figures(g, p, room, sw + 70, top + 20, w - sw - 110);
        new CoChart(g, p)
                .paint(
                        room,
                        86,
                        top + sh + CHART_PX,
                        Math.max(200, w - 86 - CoChart.WORDS_PX),
                        h - top - sh - CHART_PX - 84);
        Say.left(g, p, "A quiet alarm proves nothing: " + CoAlarmPoint.quiet() + ".", 24, h - 16, 13, false, Ink.INK);
    }

    private double flow(double m3PerS) {
        return m3PerS * (inch() ? 60 / CUBIC_FOOT_M3 : 3600);
    }

    private String air(double m3PerS) {
        return CoChart.grouped(flow(m3PerS));
    }

    private String airUnit() {
        return inch() ? "cfm" : "m³/h";
    }

    private boolean inch() {
        return doc.design().units() == UnitSystem.INCH;
    }

    private void figures(GraphicsContext g, Palette p, RoomReview r, double x, double y, double w) {
        double at = y + 10;
        if (r.co().known()) {
            var co = r.co().value();
            at = figure(
                    g,
                    p,
                    x,
                    at,
                    w,
                    "CO made, worst step",
                    Format.plain(flow(co.madeM3PerS()), 2),
                    airUnit() + ", at lambda " + String.format(Locale.ROOT, "%.2f", co.worstLambda()));
        } else {
            at = figure(g, p, x, at, w, "CO made", "–", "fill in " + FieldNames.of(r.co().needs()));
        }
        at = r.air().known()
                ? figure(
                        g,
                        p,
                        x,
                        at,
                        w,
                        "fresh air, wind still",
                        air(r.air().value().calmM3PerS()),
                        airUnit())
                : figure(
                        g,
                        p,
                        x,
                        at,
                        w,
                        "fresh air",
                        "–",
                        "fill in " + FieldNames.of(r.air().needs()));
        if (r.co().known()) {
            var co = r.co().value();
            at = figure(
                    g,
                    p,
                    x,
                    at,
                    w,
                    "fresh air wanted for " + Format.plain(co.eightHours().value(), 0) + " ppm over 8 h",
                    air(co.flowForEightHoursM3PerS()),
                    airUnit());
            figure(
                    g,
                    p,
                    x,
                    at,
                    w,
                    "airing out after the last gas, wind still",
                    CoChart.grouped(co.airOutS() / (co.airOutS() < LONG_S ? 60 : 3600)),
                    (co.airOutS() < LONG_S ? "min to " : "h to ")
                            + Format.plain(co.eightHours().value(), 0) + " ppm");
        }
    }

    private double figure(
            GraphicsContext g, Palette p, double x, double y, double w, String label, String value, String unit) {
        Say.left(g, p, label, x, y, 13, false, Ink.INK2);
        Say.left(g, p, value, x, y + 30, 26, true, Ink.INK);
        double vw = TextSizes.width(value, Fonts.bold(26));
        double words = Math.max(60, w - vw - 12);
        // two lines stand above the rule, not across it
        double first = Say.broken(unit, words, 13).size() > 1 ? y + 19 : y + 29;
        Say.lines(g, p, unit, x + vw + 9, first, words, 13, Ink.INK);
        g.setStroke(p.of(Ink.HAIR));
        g.setLineWidth(1.2);
        g.setLineDashes();
        double line = y + pitch - 20;
        g.strokeLine(x, line, x + w, line);
        return y + pitch;
    }
}
