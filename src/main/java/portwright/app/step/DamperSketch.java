package portwright.app.step;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.ArcType;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Degrees;
import portwright.app.doc.Document;
import portwright.app.doc.Extras;
import portwright.app.doc.Lengths;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.drawing.Ink;
import portwright.geometry.Hole;
import portwright.model.Role;
import portwright.model.UnitSystem;
import portwright.review.LevelSetting;
import portwright.units.Celsius;

/** The damper to scale: flues under their plate, one flue with the edge at each level, and the travel table. */
final class DamperSketch {
    /** Room at the right of the flue for its rule and the levels' names, px. */
    private static final double LEVEL_WORDS = 134;

    /** From this height on, px, the plates have their full picture. */
    private static final double TALL_PX = 560;

    /** Size of the flues' names, px. */
    private static final double NAME_PX = 13;

    private static final double PLATES_PX = 150;
    private static final double LOW_PLATES_PX = 104;

    private final GraphicsContext g;
    private final Palette p;
    private final Document doc;
    private final Extras.Gas gas;
    private final UnitSystem units;
    private final double open;

    /** @param open share that the plate stands at, 0 to 1 */
    DamperSketch(GraphicsContext g, Palette p, Document doc, Extras.Gas gas, double open) {
        this.open = open;
        this.g = g;
        this.p = p;
        this.doc = doc;
        this.gas = gas;
        this.units = doc.design().units();
    }

    void paint(double x, double y, double w, double h) {
        List<Hole> flues = doc.shapes().geometry().holes().stream()
                .filter(f -> f.port().role() == Role.FLUE)
                .toList();
        Say.left(g, p, "Damper plate", x, y + 34, 17, true, Ink.INK);
        Say.left(
                g,
                p,
                flues.size() == 1 ? "flue and plate, to one scale" : "flues and plate, to one scale",
                x,
                y + 55,
                13,
                false,
                Ink.INK2);
        double travel = gas.plate().travelFor(Math.max(0.0001, open)) * 1000;
        double plates = h > TALL_PX ? PLATES_PX : LOW_PLATES_PX;
        plates(flues, x, y + 72, w, plates, travel);
        double top = y + 72 + plates + (h > TALL_PX ? 48 : 26);
        Say.left(g, p, heading(), x, top, 14.5, true, Ink.INK);
        double room = Math.max(90, Math.min(w - LEVEL_WORDS, h - top - 210));
        oneFlue(flues.get(0), x + 6, top + 24, room, travel);
        table(x, Math.min(h - 118, top + room + 76), w);
    }

    private String heading() {
        return "Each level at " + Degrees.words(gas.topK() - Celsius.ZERO_C, units);
    }

    /** One flue and the table side by side, for a narrow board. */
    void beside(double x, double y, double w) {
        doc.shapes().geometry().holes().stream()
                .filter(f -> f.port().role() == Role.FLUE)
                .findFirst()
                .ifPresent(f -> {
                    Say.left(g, p, heading(), x, y + 14, 14.5, true, Ink.INK);
                    double travel = gas.plate().travelFor(Math.max(0.0001, open)) * 1000;
                    oneFlue(f, x + 6, y + 34, 150, travel);
                    table(x + w * 0.52, y + 50, w * 0.46);
                });
    }

    private void plates(List<Hole> flues, double x, double y, double w, double h, double travel) {
        List<Double> behind =
                gas.plate().holes().stream().map(o -> o.offset() * 1000).toList();
        double baseY = y + h - 52;
        PlateSketch laid = PlateSketch.of(flues, behind, doc.design().damper(), travel, x, y, w, h - 52);
        for (PlateSketch.Disc d : laid.flues()) {
            g.setFill(p.of(Ink.FLAME).deriveColor(0, 1, 1, 0.6));
            g.fillOval(d.x() - d.r(), d.y() - d.r(), 2 * d.r(), 2 * d.r());
            rim(d, 2.2);
        }
        for (PlateSketch.Rect r : laid.plates()) {
            g.setFill(p.of(Ink.BISQUE).deriveColor(0, 1, 1, 0.92));
            g.fillRect(r.x(), r.y(), r.w(), r.h());
            g.setStroke(p.of(Ink.INK));
            g.setLineWidth(2.2);
            g.strokeRect(r.x(), r.y(), r.w(), r.h());
        }
        g.setLineDashes(4, 3);
        laid.flues().forEach(d -> rim(d, 1.4));
        g.setLineDashes();
        names(flues, laid.flues().stream().mapToDouble(PlateSketch.Disc::x).toArray(), x + w / 2, baseY + 18);
        Say.at(
                g,
                p,
                laid.plates().isEmpty()
                        ? "no plate drawn: its width or length is not typed"
                        : "plate slides back; open at the front",
                x + w / 2,
                baseY + 42,
                12.5,
                false,
                Ink.INK2,
                TextAlignment.CENTER,
                VPos.CENTER,
                false);
    }

    private void rim(PlateSketch.Disc d, double px) {
        g.setStroke(p.of(Ink.UMBER));
        g.setLineWidth(px);
        g.strokeOval(d.x() - d.r(), d.y() - d.r(), 2 * d.r(), 2 * d.r());
    }

    /** Each flue's name under it; all in one line where two would touch. */
    private void names(List<Hole> flues, double[] middles, double x, double y) {
        boolean apart = true;
        for (int i = 0; i < flues.size(); i++) {
            for (int j = 0; j < i; j++) {
                double both = TextSizes.width(flues.get(i).name(), Fonts.sans(NAME_PX))
                        + TextSizes.width(flues.get(j).name(), Fonts.sans(NAME_PX));
                apart &= Math.abs(middles[i] - middles[j]) > both / 2 + NAME_PX / 2;
            }
        }
        if (apart) {
            for (int i = 0; i < flues.size(); i++) {
                name(flues.get(i).name(), middles[i], y);
            }
        } else {
            name(String.join(", ", flues.stream().map(Hole::name).toList()), x, y);
        }
    }

    private void name(String words, double x, double y) {
        Say.at(g, p, words, x, y, NAME_PX, false, Ink.INK, TextAlignment.CENTER, VPos.CENTER, false);
    }

    private void oneFlue(Hole f, double x, double y, double size, double travel) {
        double k = size / f.diameter();
        double edge = y + size - Math.min(travel, f.diameter()) * k;
        g.setFill(p.of(Ink.BISQUE));
        g.fillOval(x, y, size, size);
        g.save();
        g.beginPath();
        g.rect(x - 4, edge, size + 8, y + size - edge + 4);
        g.clip();
        g.setFill(p.of(Ink.FLAME).deriveColor(0, 1, 1, 0.6));
        g.fillOval(x, y, size, size);
        g.restore();
        g.setStroke(p.of(Ink.UMBER));
        g.setLineWidth(2.8);
        g.setLineDashes();
        g.strokeArc(x, y, size, size, 0, 360, ArcType.OPEN);
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(4);
        g.strokeLine(x - 8, edge, x + size + 12, edge);
        String words = Lengths.shown(travel, units);
        double below = y + size - edge;
        Say.at(
                g,
                p,
                words,
                x + size / 2,
                below > 40 ? edge + below / 2 : edge - 16,
                17,
                true,
                Ink.INK,
                TextAlignment.CENTER,
                VPos.CENTER,
                false);
        if (edge - y > 34) {
            Say.at(
                    g,
                    p,
                    "plate",
                    x + size / 2,
                    y + (edge - y) * 0.42,
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
                "open at the front",
                x + size / 2,
                y + size + 18,
                13,
                false,
                Ink.INK2,
                TextAlignment.CENTER,
                VPos.CENTER,
                false);
        double rx = x + size + 20;
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(rx, y, 24, size);
        g.setStroke(p.of(Ink.BOXINK));
        g.setLineWidth(1);
        boolean inch = units == UnitSystem.INCH;
        double tick = inch ? 25.4 / 16 : 1;
        for (int n = 0; n * tick <= f.diameter(); n++) {
            double ty = y + size - n * tick * k;
            g.strokeLine(rx, ty, rx + (n % (inch ? 8 : 10) == 0 ? 16 : n % (inch ? 4 : 5) == 0 ? 11 : 6), ty);
        }
        double last = y + size + 100;
        for (LevelSetting s : gas.levels().stream()
                .sorted((a, b) -> Double.compare(a.travelLowMm(), b.travelLowMm()))
                .toList()) {
            if (!s.reachable()) {
                continue;
            }
            double at = y + size - (s.travelLowMm() + s.travelHighMm()) / 2 * k;
            double ty = Math.min(last - 20, at + 6);
            g.setStroke(p.of(Ink.INK));
            g.setLineWidth(1);
            g.strokeLine(rx + 25, at, rx + 40, ty);
            Say.at(g, p, s.level().id(), rx + 44, ty, 13, false, Ink.INK, TextAlignment.LEFT, VPos.CENTER, false);
            last = ty;
        }
    }

    private void table(double x, double y, double w) {
        Say.left(g, p, "level", x, y, 13, false, Ink.INK2);
        Say.at(
                g,
                p,
                "travel, " + Lengths.sign(units),
                x + w * 0.66,
                y,
                13,
                false,
                Ink.INK2,
                TextAlignment.RIGHT,
                VPos.BASELINE,
                false);
        Say.at(g, p, "open, %", x + w, y, 13, false, Ink.INK2, TextAlignment.RIGHT, VPos.BASELINE, false);
        double at = y + 23;
        for (LevelSetting s : gas.levels()) {
            Say.left(g, p, s.level().id(), x, at, 13.5, true, Ink.INK);
            Say.at(
                    g,
                    p,
                    GasBoard.travelWords(s, gas.levels(), units),
                    x + w * 0.66,
                    at,
                    13.5,
                    false,
                    Ink.INK,
                    TextAlignment.RIGHT,
                    VPos.BASELINE,
                    false);
            Say.at(
                    g,
                    p,
                    s.reachable() ? Math.round(s.openLow() * 100) + " – " + Math.round(s.openHigh() * 100) : "",
                    x + w,
                    at,
                    13.5,
                    false,
                    Ink.INK,
                    TextAlignment.RIGHT,
                    VPos.BASELINE,
                    false);
            at += 22;
        }
    }
}
