package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Document;
import portwright.app.doc.Lengths;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.app.paint.TextSizes;
import portwright.check.Finding;
import portwright.check.Mark;
import portwright.check.Severity;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** Paints what lies over the drawing: rings, clearance flags, pointers to the rules, the read-out box, a measure. */
final class LivePainter {
    private LivePainter() {}

    static void paint(GraphicsContext g, Palette p, Board board, Document doc, double w, double h) {
        Plot plot = board.plot();
        View v = board.view();
        g.save();
        g.beginPath();
        g.rect(0, 0, w, h);
        g.clip();
        List<String> rings = new ArrayList<>(doc.highlighted());
        if (doc.selected() != null && !rings.contains(doc.selected())) {
            rings.add(0, doc.selected());
        }
        CanvasPen pen = CanvasPen.screen(g, v, p);
        for (String name : rings) {
            ring(pen, plot, doc, name);
        }
        for (Hole hole : plot.kiln().holes()) {
            if (plot.shows(hole.face())) {
                stops(g, p, pen, plot, v, doc, hole, w, h);
            }
        }
        Hole chosen = hole(plot, doc.selected());
        if (chosen != null && plot.shows(chosen.face())) {
            Pt c = plot.toPicture(chosen.face(), chosen.centre());
            RulePainter.pointers(g, p, v.x(c.x()), v.y(c.y()), w, h);
            readOut(g, p, board, doc, chosen, v.x(c.x()), v.y(c.y()), w, h);
        }
        Marks m = board.marks();
        if (m.hovered != null && m.dragged == null && !m.hovered.equals(doc.selected()) && m.hoverAt != null) {
            hover(g, p, board, doc, m, w, h);
        }
        measure(g, p, board, m);
        if (board.isFocused()) {
            g.setStroke(p.of(Ink.COBALT));
            g.setLineWidth(3);
            g.setLineDashes();
            g.strokeRect(1.5, 1.5, w - 3, h - 3);
        }
        g.restore();
    }

    private static Hole hole(Plot plot, String name) {
        for (Hole h : plot.kiln().holes()) {
            if (h.name().equals(name)) {
                return h;
            }
        }
        return null;
    }

    private static void ring(CanvasPen pen, Plot plot, Document doc, String name) {
        for (Hole hole : plot.kiln().holes()) {
            if (hole.name().equals(name) && plot.shows(hole.face())) {
                pen.circle(
                        plot.toPicture(hole.face(), hole.centre()),
                        hole.drilled() / 2 + 25 + pen.size(1, 7),
                        LineStyle.SELECTION);
            }
        }
        for (FittingShape f : plot.kiln().fittings()) {
            if (f.name().equals(name) && plot.shows(f.face()) && f.fitting().at() != null) {
                Pt c = new Pt(f.fitting().at().xMm(), f.fitting().at().yMm());
                double r = Math.max(10, Math.abs(f.shape().distance(c)));
                pen.circle(plot.toPicture(f.face(), c), r + pen.size(2, 8), LineStyle.SELECTION);
            }
        }
        for (GrooveSolid gr : plot.kiln().grooves()) {
            if (gr.name().equals(name) && plot.shows(gr.face())) {
                if (gr instanceof GrooveSolid.OnWall wall) {
                    var mouth = wall.mouth();
                    pen.line(
                            plot.toPicture(gr.face(), mouth.a()),
                            plot.toPicture(gr.face(), mouth.b()),
                            LineStyle.SELECTION);
                } else if (gr.footprint() instanceof portwright.geometry.Shape.Strip strip) {
                    for (var s : strip.pieces()) {
                        pen.line(
                                plot.toPicture(gr.face(), s.a()),
                                plot.toPicture(gr.face(), s.b()),
                                LineStyle.SELECTION);
                    }
                }
            }
        }
        if (plot.picture().face() != null && plot.picture().face().on() == On.FLOOR) {
            for (ShelfPlate s : plot.kiln().shelves()) {
                if (s.name().equals(name)) {
                    Pt c = s.shelf().at() == null
                            ? new Pt(0, 0)
                            : new Pt(s.shelf().at().xMm(), s.shelf().at().yMm());
                    pen.circle(
                            plot.toPicture(plot.picture().face(), c),
                            Math.max(20, Math.abs(s.shape().distance(c))) + pen.size(1, 4),
                            LineStyle.SELECTION);
                }
            }
        }
    }

    private static void stops(
            GraphicsContext g,
            Palette p,
            CanvasPen pen,
            Plot plot,
            View v,
            Document doc,
            Hole hole,
            double w,
            double h) {
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
            return;
        }
        Pt c = plot.toPicture(hole.face(), hole.centre());
        double r = hole.diameter() / 2;
        double cx = v.x(c.x());
        double cy = v.y(c.y());
        double pr = r * v.scale();
        Color ox = p.of(Ink.OXBLOOD);
        g.setFill(p.of(Ink.OXBLOOD_FILL));
        g.fillOval(cx - pr, cy - pr, 2 * pr, 2 * pr);
        g.save();
        g.beginPath();
        double k = (hole.drilled() / 2 + 25) * v.scale();
        g.arc(cx, cy, pr, pr, 0, 360);
        g.clip();
        g.setStroke(ox);
        g.setLineWidth(1.6);
        g.setLineDashes();
        for (double t = -2 * pr; t < 2 * pr; t += 7) {
            g.strokeLine(cx + t, cy - pr, cx + t + 2 * pr, cy + pr);
        }
        g.restore();
        pen.circle(c, r, LineStyle.SAW_CIRCLE, Ink.OXBLOOD);
        pen.circle(c, hole.drilled() / 2 + 25, LineStyle.KEEP_OUT, Ink.OXBLOOD);
        if (worst.measured() == null || !"mm".equals(worst.measured().unit())) {
            return;
        }
        if (mark != null && plot.shows(mark.face()) && !mark.a().equals(mark.b())) {
            pen.line(
                    plot.toPicture(mark.face(), mark.a()),
                    plot.toPicture(mark.face(), mark.b()),
                    LineStyle.BOX,
                    Ink.OXBLOOD);
        }
        String big = String.format(
                        java.util.Locale.ROOT, "%.1f mm", worst.measured().value())
                .replace("-", "−");
        String small = worst.limit() == null
                ? ""
                : "wants " + Format.plain(worst.limit().value(), 1) + " mm";
        double bw = Math.max(TextSizes.width(big, Fonts.bold(17)), TextSizes.width(small, Fonts.sans(13))) + 60;
        double bx = cx > w * 0.62 ? Math.min(w - bw - 14, cx + k + 40) : cx + k + 40;
        if (bx + bw > w - 8) {
            bx = cx - k - 40 - bw;
        }
        double by = Math.min(h - 80, Math.max(RulePainter.BREADTH + 10, cy + 70));
        g.setStroke(ox);
        g.setLineWidth(1.6);
        g.strokeLine(cx + pr * 0.7, cy + pr * 0.7, bx + bw / 2, by);
        box(g, p, bx, by, bw, 54, ox);
        octagon(g, p, bx + 12, by + 17, 20);
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BASELINE);
        g.setFill(ox);
        g.setFont(Fonts.bold(17));
        g.fillText(big, bx + 44, by + 24);
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.sans(13));
        g.fillText(small, bx + 44, by + 43);
    }

    static void octagon(GraphicsContext g, Palette p, double x, double y, double s) {
        double c = s * 0.293;
        g.setFill(p.of(Ink.OXBLOOD));
        g.fillPolygon(
                new double[] {x + c, x + s - c, x + s, x + s, x + s - c, x + c, x, x},
                new double[] {y, y, y + c, y + s - c, y + s, y + s, y + s - c, y + c},
                8);
        g.setFill(p.of(Ink.PAPER));
        g.fillRect(x + s * 0.2, y + s * 0.4, s * 0.6, s * 0.2);
    }

    private static void box(GraphicsContext g, Palette p, double x, double y, double w, double h, Color border) {
        g.setFill(p.of(Ink.PAPER));
        g.fillRoundRect(x, y, w, h, 8, 8);
        g.setStroke(border);
        g.setLineWidth(1.8);
        g.setLineDashes();
        g.strokeRoundRect(x, y, w, h, 8, 8);
    }

    private static void readOut(
            GraphicsContext g,
            Palette p,
            Board board,
            Document doc,
            Hole hole,
            double cx,
            double cy,
            double w,
            double h) {
        UnitSystem u = board.units();
        List<String> lines = new ArrayList<>();
        Pt c = hole.centre();
        if (hole.face().on() == On.WALL) {
            lines.add("panel " + hole.face().panel() + ", "
                    + side(c.x(), u, "right of its middle", "left of its middle"));
            lines.add(Lengths.shown(c.y(), u) + " up");
        } else {
            lines.add(side(c.x(), u, "to the right", "to the left"));
            lines.add(side(c.y(), u, "to the back", "to the front"));
            lines.add("r " + Lengths.shown(Math.hypot(c.x(), c.y()), u) + " · "
                    + Format.plain((Math.toDegrees(Math.atan2(c.x(), c.y())) + 360) % 360, 1) + "°");
        }
        String caught = board.marks().dragged != null ? board.marks().caught : null;
        if (caught != null) {
            lines.add("on " + caught);
        }
        double bw = TextSizes.width(hole.name(), Fonts.bold(14.5));
        for (String l : lines) {
            bw = Math.max(bw, TextSizes.width(l, Fonts.sans(13)));
        }
        bw += 26;
        double bh = 28 + 18 * lines.size() + 8;
        double r = (hole.drilled() / 2 + 30) * board.view().scale();
        double bx = cx + r + 30;
        double by = cy - r - bh - 10;
        if (bx + bw > w - 10) {
            bx = cx - r - 30 - bw;
        }
        bx = Math.max(RulePainter.BREADTH + 8, bx);
        if (by < RulePainter.BREADTH + 8) {
            by = Math.min(cy + r + 12, h - bh - 10);
        }
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(1.4);
        g.setLineDashes();
        double ax = bx > cx ? bx : bx + bw;
        double ay = by > cy ? by : by + bh;
        double d = Math.hypot(ax - cx, ay - cy);
        double rr = (hole.drilled() / 2 + 25) * board.view().scale() + 7;
        g.strokeLine(cx + (ax - cx) / d * rr, cy + (ay - cy) / d * rr, ax, ay);
        box(g, p, bx, by, bw, bh, p.of(Ink.COBALT));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BASELINE);
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.bold(14.5));
        g.fillText(hole.name(), bx + 12, by + 21);
        g.setFont(Fonts.sans(13));
        for (int i = 0; i < lines.size(); i++) {
            boolean second = lines.get(i).startsWith("r ") || lines.get(i).startsWith("on ");
            g.setFill(p.of(lines.get(i).startsWith("on ") ? Ink.CELADON : second ? Ink.INK2 : Ink.INK));
            g.fillText(lines.get(i), bx + 12, by + 40 + 18 * i);
        }
    }

    private static String side(double mm, UnitSystem u, String plus, String minus) {
        return Math.abs(mm) < 0.05
                ? "on the middle line"
                : Lengths.shown(Math.abs(mm), u) + " " + (mm > 0 ? plus : minus);
    }

    private static void hover(GraphicsContext g, Palette p, Board board, Document doc, Marks m, double w, double h) {
        List<String> lines = HoverWords.of(board.plot(), doc, m.hovered, board.units());
        if (lines.isEmpty()) {
            return;
        }
        double bw = 0;
        for (int i = 0; i < lines.size(); i++) {
            bw = Math.max(bw, TextSizes.width(lines.get(i), i == 0 ? Fonts.bold(13) : Fonts.sans(13)));
        }
        bw += 22;
        double bh = 12 + 18 * lines.size();
        double x = Math.min(w - bw - 8, m.hoverAt.x() + 18);
        double y = Math.min(h - bh - 8, m.hoverAt.y() + 18);
        box(g, p, x, y, bw, bh, p.of(Ink.EDGE));
        g.setFill(p.of(Ink.INK));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BASELINE);
        for (int i = 0; i < lines.size(); i++) {
            g.setFont(i == 0 ? Fonts.bold(13) : Fonts.sans(13));
            g.fillText(lines.get(i), x + 11, y + 19 + 18 * i);
        }
    }

    private static void measure(GraphicsContext g, Palette p, Board board, Marks m) {
        View v = board.view();
        if (m.measureA == null) {
            return;
        }
        double ax = v.x(m.measureA.x());
        double ay = v.y(m.measureA.y());
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(2);
        g.setLineDashes();
        g.strokeOval(ax - 5, ay - 5, 10, 10);
        if (m.measureB == null) {
            return;
        }
        double bx = v.x(m.measureB.x());
        double by = v.y(m.measureB.y());
        g.strokeOval(bx - 5, by - 5, 10, 10);
        g.strokeLine(ax, ay, bx, by);
        double d = m.measureA.distance(m.measureB);
        double edge = m.centreToCentre ? d : d - m.radiusA - m.radiusB;
        String words = Lengths.shown(edge, board.units()) + " · " + Lengths.other(edge, board.units())
                + (m.radiusA + m.radiusB > 0 ? m.centreToCentre ? ", centre to centre" : ", edge to edge" : "");
        double tw = TextSizes.width(words, Fonts.bold(13)) + 20;
        box(g, p, (ax + bx) / 2 - tw / 2, (ay + by) / 2 - 34, tw, 26, p.of(Ink.COBALT));
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.bold(13));
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(words, (ax + bx) / 2, (ay + by) / 2 - 16);
        g.setTextAlign(TextAlignment.LEFT);
    }
}
