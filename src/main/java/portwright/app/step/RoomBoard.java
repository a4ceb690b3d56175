package portwright.app.step;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Document;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Ink;
import portwright.model.Opening;
import portwright.review.RoomReview;
import portwright.units.Format;

/** Room step: the room with its air and carbon monoxide, fresh air against needed, CO over the firing. */
final class RoomBoard extends PaintedRegion implements FormStep.Refreshing {
    private static final double MOL_M3 = 0.024;
    private static final double LOW_PX = 460;

    private final Document doc;

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
            outdoors(g, p, w, h);
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
        section(g, p, 60, top + 24, sw - 60, sh - 24, ppm);
        figures(g, p, room, sw + 70, top + 20, w - sw - 110);
        new CoChart(g, p)
                .paint(room, 86, top + sh + 58, Math.max(200, w - 86 - CoChart.WORDS_PX), h - top - sh - 58 - 84);
        Say.left(
                g,
                p,
                "A quiet alarm proves nothing: it may stay silent at 30 ppm for weeks, and at 70 ppm for an hour.",
                24,
                h - 16,
                13,
                false,
                Ink.INK);
    }

    private void outdoors(GraphicsContext g, Palette p, double w, double h) {
        Say.left(
                g,
                p,
                "The kiln stands in the open. Stay upwind; CO pools under a roof and beside a wall.",
                24,
                62,
                14,
                false,
                Ink.INK);
        double gy = h * 0.72;
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.6);
        g.setLineDashes();
        g.strokeLine(60, gy, w - 60, gy);
        RoomSigns.kiln(g, p, w * 0.42, gy, 1.5);
        RoomSigns.person(g, p, w * 0.26, gy, 1.5);
        RoomSigns.arrow(g, p, w * 0.1, gy - 150, w * 0.2, gy - 150, Ink.COBALT);
        Say.at(g, p, "wind", w * 0.15, gy - 168, 13, true, Ink.COBALT, TextAlignment.CENTER, VPos.CENTER, false);
        RoomSigns.arrow(g, p, w * 0.46, gy - 190, w * 0.62, gy - 260, Ink.EMBER);
        Say.at(
                g,
                p,
                "flue gas, with CO",
                w * 0.63,
                gy - 268,
                13,
                true,
                Ink.EMBER,
                TextAlignment.LEFT,
                VPos.CENTER,
                false);
    }

    private void section(GraphicsContext g, Palette p, double x, double y, double w, double h, Double ppm) {
        var room = doc.design().room();
        double ceiling =
                room == null || room.ceiling() == null ? 2.7 : room.ceiling().metres();
        double k = h / ceiling;
        g.setFill(p.of(Ink.BISQUE));
        g.fillRect(x - 9, y - 9, w + 18, h + 18);
        g.setFill(p.of(Ink.PAPER));
        g.fillRect(x, y, w, h);
        if (ppm != null && Double.isFinite(ppm)) {
            RoomSigns.dots(g, p, x, y, w, h, ppm);
        }
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2.2);
        g.setLineDashes();
        g.strokeRect(x - 9, y - 9, w + 18, h + 18);
        g.strokeRect(x, y, w, h);
        boolean left = true;
        if (room != null && room.openings() != null) {
            for (Opening o : room.openings()) {
                if (o.area() == null || o.level() == null) {
                    continue;
                }
                double side = Math.min(1.2, Math.max(0.2, Math.sqrt(o.area().si()) * 0.7)) * k;
                double oy = y + h - Math.max(0.05, Math.min(ceiling, o.level().metres())) * k - side / 2;
                oy = Math.max(y + 2, Math.min(y + h - side - 2, oy));
                g.setFill(p.of(Ink.PAPER));
                double ox = left ? x - 10.2 : x + w - 1.2;
                g.fillRect(ox, oy, 11.4, side);
                boolean high = oy + side / 2 < y + h / 2;
                double ay = oy + side / 2;
                if (high) {
                    RoomSigns.arrow(g, p, left ? x + 40 : x + w - 40, ay, left ? x - 46 : x + w + 46, ay, Ink.EMBER);
                    Say.at(
                            g,
                            p,
                            "out, with CO",
                            left ? x + 46 : x + w - 46,
                            ay - 13,
                            13,
                            true,
                            Ink.EMBER,
                            left ? TextAlignment.LEFT : TextAlignment.RIGHT,
                            VPos.CENTER,
                            true);
                } else {
                    RoomSigns.arrow(g, p, left ? x - 46 : x + w + 46, ay, left ? x + 50 : x + w - 50, ay, Ink.COBALT);
                    Say.at(
                            g,
                            p,
                            "fresh air in",
                            left ? x + 16 : x + w - 16,
                            ay - 14,
                            13,
                            true,
                            Ink.COBALT,
                            left ? TextAlignment.LEFT : TextAlignment.RIGHT,
                            VPos.CENTER,
                            true);
                }
                left = !left;
            }
        }
        RoomSigns.kiln(g, p, x + w * 0.5, y + h, h / 230);
        RoomSigns.person(g, p, x + w * 0.74, y + h, h / 230);
        if (room != null && Boolean.TRUE.equals(room.coAlarm())) {
            double ax = x + w * 0.9;
            double ay = y + h * 0.5;
            g.setFill(p.of(Ink.PAPER));
            g.fillRoundRect(ax - 9, ay - 13, 18, 26, 6, 6);
            g.setLineWidth(1.8);
            g.setStroke(p.of(Ink.INK));
            g.strokeRoundRect(ax - 9, ay - 13, 18, 26, 6, 6);
            g.setFill(p.of(Ink.CELADON));
            g.fillOval(ax - 4, ay - 5, 8, 8);
            Say.at(g, p, "CO alarm", ax, ay + 24, 13, false, Ink.INK, TextAlignment.CENTER, VPos.CENTER, true);
        }
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
                    Format.plain(co.madeMolPerS() * MOL_M3 * 3600, 2),
                    "m³/h, at lambda " + String.format(Locale.ROOT, "%.2f", co.worstLambda()));
        } else {
            at = figure(g, p, x, at, w, "CO made", "–", "add " + String.join(", ", r.co().needs()));
        }
        at = r.air().known()
                ? figure(
                        g,
                        p,
                        x,
                        at,
                        w,
                        "fresh air, wind still",
                        CoChart.grouped(r.air().value().calmM3PerS() * 3600),
                        "m³/h")
                : figure(
                        g,
                        p,
                        x,
                        at,
                        w,
                        "fresh air",
                        "–",
                        "add " + String.join(", ", r.air().needs()));
        if (r.co().known()) {
            var co = r.co().value();
            figure(
                    g,
                    p,
                    x,
                    at,
                    w,
                    "fresh air wanted",
                    CoChart.grouped(co.flowForEightHoursM3PerS() * 3600),
                    "m³/h for " + Format.plain(co.eightHours().value(), 0) + " ppm over 8 hours");
        }
    }

    private static double figure(
            GraphicsContext g, Palette p, double x, double y, double w, String label, String value, String unit) {
        Say.left(g, p, label, x, y, 13, false, Ink.INK2);
        Say.left(g, p, value, x, y + 30, 26, true, Ink.INK);
        double vw = portwright.app.paint.TextSizes.width(value, portwright.app.paint.Fonts.bold(26));
        Say.lines(g, p, unit, x + vw + 9, y + 29, Math.max(60, w - vw - 12), 13, Ink.INK);
        g.setStroke(p.of(Ink.HAIR));
        g.setLineWidth(1.2);
        g.setLineDashes();
        g.strokeLine(x, y + 50, x + w, y + 50);
        return y + 82;
    }
}
