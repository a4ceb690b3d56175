package portwright.app.board;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Document;
import portwright.app.doc.Plot;
import portwright.app.doc.Step;
import portwright.app.doc.View;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.app.paint.TextSizes;
import portwright.check.Finding;
import portwright.check.Mark;
import portwright.check.Severity;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.form.RuleWords;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.Inches;

/** Marks a hole that stops: hatched to the left, its rings in oxblood, and a flag that says why, with the distance that is too small. */
final class StopPainter {
    private static final double HATCH_PX = 7;

    private StopPainter() {}

    /** A flag and what it tells; the box in px. */
    record Flag(Box box, Finding finding) {}

    /** Marks a hole that stops; answers its flag, or null where it has none. */
    static Flag paint(Patches patches, Palette p, Plot plot, View v, Document doc, Hole hole, Box board) {
        Finding worst = null;
        Mark mark = null;
        for (Finding f : doc.result().findings()) {
            if (f.severity() == Severity.STOP
                    && !f.parts().isEmpty()
                    && f.parts().get(0).equals(hole.name())
                    && worst == null) {
                worst = f;
                mark = f.marks().isEmpty() ? null : f.marks().get(0);
            }
        }
        if (worst == null) {
            return null;
        }
        Pt c = plot.toPicture(hole.face(), hole.centre());
        double r = hole.diameter() / 2;
        double cx = v.x(c.x());
        double cy = v.y(c.y());
        double pr = r * v.scale();
        Color ox = p.of(Ink.OXBLOOD);
        patches.add(box(cx, cy, pr + 2), board, g -> {
            g.setFill(p.of(Ink.OXBLOOD_FILL));
            g.fillOval(cx - pr, cy - pr, 2 * pr, 2 * pr);
            g.setStroke(ox);
            g.setLineWidth(1.6);
            g.setLineDashes();
            hatch(g, cx, cy, pr);
        });
        PatchPen pen = new PatchPen(patches, v, p, board);
        pen.circle(c, r, LineStyle.SAW_CIRCLE, Ink.OXBLOOD);
        pen.circle(c, hole.drilled() / 2 + 25, LineStyle.KEEP_OUT, Ink.OXBLOOD);
        boolean gauged =
                worst.measured() != null && "mm".equals(worst.measured().unit());
        if (gauged && mark != null && plot.shows(mark.face()) && !mark.a().equals(mark.b())) {
            pen.line(
                    plot.toPicture(mark.face(), mark.a()),
                    plot.toPicture(mark.face(), mark.b()),
                    LineStyle.BOX,
                    Ink.OXBLOOD);
        }
        String head = RuleWords.head(worst.rule());
        String big = gauged ? is(worst, doc) : head;
        String small = gauged ? head + wants(worst, doc) : slip(worst);
        double k = (hole.drilled() / 2 + 25) * v.scale();
        double w = board.maxX();
        double bw = Math.max(TextSizes.width(big, Fonts.bold(17)), TextSizes.width(small, Fonts.sans(13))) + 60;
        double right = cx > w * 0.62 ? Math.min(w - bw - 14, cx + k + 40) : cx + k + 40;
        double bx = right + bw > w - 8 ? cx - k - 40 - bw : right;
        double by = Math.min(board.maxY() - 80, Math.max(RulePainter.BREADTH + 10, cy + 70));
        Box flag = new Box(bx, by, bx + bw, by + 54);
        patches.add(flag.grown(2).union(box(cx, cy, pr)), board, g -> {
            g.setStroke(ox);
            g.setLineWidth(1.6);
            g.setLineDashes();
            g.strokeLine(cx + pr * 0.7, cy + pr * 0.7, bx + bw / 2, by);
            NoteBox.frame(g, p, flag, ox);
            octagon(g, p, bx + 12, by + 17, 20);
            g.setTextAlign(TextAlignment.LEFT);
            g.setTextBaseline(VPos.BASELINE);
            g.setFill(ox);
            g.setFont(Fonts.bold(17));
            g.fillText(big, bx + 44, by + 24);
            g.setFill(p.of(Ink.INK));
            g.setFont(Fonts.sans(13));
            g.fillText(small, bx + 44, by + 43);
        });
        return new Flag(flag, worst);
    }

    private static String slip(Finding f) {
        return "click: its slip in " + Step.of(f.rule()).word() + " says how to mend it";
    }

    private static String is(Finding f, Document doc) {
        double is = f.measured().value();
        return doc.design().units() == UnitSystem.INCH
                ? Inches.told(is, f.limit() == null ? is : f.limit().value())
                : String.format(Locale.ROOT, "%.1f mm", is).replace("-", "−");
    }

    private static String wants(Finding f, Document doc) {
        if (f.limit() == null) {
            return "";
        }
        double wants = f.limit().value();
        return ", wants "
                + (doc.design().units() == UnitSystem.INCH
                        ? Inches.told(wants, f.measured().value())
                        : Format.plain(wants, 1) + " mm");
    }

    private static Box box(double x, double y, double r) {
        return new Box(x, y, x, y).grown(r);
    }

    /** Lines that fall to the right, as chords of the circle. */
    private static void hatch(GraphicsContext g, double cx, double cy, double r) {
        g.beginPath();
        for (double s = -Math.floor(r * Math.sqrt(2) / HATCH_PX) * HATCH_PX; s < r * Math.sqrt(2); s += HATCH_PX) {
            double half = Math.sqrt(Math.max(0, r * r - s * s / 2) / 2);
            g.moveTo(cx + s / 2 - half, cy - s / 2 - half);
            g.lineTo(cx + s / 2 + half, cy - s / 2 + half);
        }
        g.stroke();
    }

    private static void octagon(GraphicsContext g, Palette p, double x, double y, double s) {
        double c = s * 0.293;
        g.setFill(p.of(Ink.OXBLOOD));
        g.fillPolygon(
                new double[] {x + c, x + s - c, x + s, x + s, x + s - c, x + c, x, x},
                new double[] {y, y, y + c, y + s - c, y + s, y + s, y + s - c, y + c},
                8);
        g.setFill(p.of(Ink.PAPER));
        g.fillRect(x + s * 0.2, y + s * 0.4, s * 0.6, s * 0.2);
    }
}
