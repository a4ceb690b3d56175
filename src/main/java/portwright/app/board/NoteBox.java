package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Document;
import portwright.app.doc.Lengths;
import portwright.app.doc.View;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.app.paint.TextSizes;
import portwright.drawing.Ink;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** Small boxes with numbers over the drawing: the chosen hole, the part under the pointer, a measure. */
final class NoteBox {
    private NoteBox() {}

    static void hole(GraphicsContext g, Palette p, Board board, Hole hole, double cx, double cy, double w, double h) {
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
        frame(g, p, bx, by, bw, bh, p.of(Ink.COBALT));
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

    static void hovered(GraphicsContext g, Palette p, Board board, Document doc, Marks m, double w, double h) {
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
        frame(g, p, x, y, bw, bh, p.of(Ink.EDGE));
        g.setFill(p.of(Ink.INK));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BASELINE);
        for (int i = 0; i < lines.size(); i++) {
            g.setFont(i == 0 ? Fonts.bold(13) : Fonts.sans(13));
            g.fillText(lines.get(i), x + 11, y + 19 + 18 * i);
        }
    }

    static void measure(GraphicsContext g, Palette p, Board board, Marks m) {
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
        frame(g, p, (ax + bx) / 2 - tw / 2, (ay + by) / 2 - 34, tw, 26, p.of(Ink.COBALT));
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.bold(13));
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(words, (ax + bx) / 2, (ay + by) / 2 - 16);
        g.setTextAlign(TextAlignment.LEFT);
    }

    static void frame(GraphicsContext g, Palette p, double x, double y, double w, double h, Color border) {
        g.setFill(p.of(Ink.PAPER));
        g.fillRoundRect(x, y, w, h, 8, 8);
        g.setStroke(border);
        g.setLineWidth(1.8);
        g.setLineDashes();
        g.strokeRoundRect(x, y, w, h, 8, 8);
    }
}
