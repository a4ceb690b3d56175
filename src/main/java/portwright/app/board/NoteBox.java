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
import portwright.app.doc.WallWords;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.TextSizes;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** Small boxes with numbers over the drawing: the chosen hole, the part under the pointer, a measure. */
final class NoteBox {
    /** Letters in a line of the numbers under the pointer at most, and how wide one is about, px. */
    private static final int HOVER_LETTERS = 46;

    private static final double HOVER_LETTER_PX = 8;

    private NoteBox() {}

    /** @param flags of stops, px: they stay in sight */
    static void hole(Patches patches, Palette p, Board board, Hole hole, Pt at, List<Box> flags, Box window) {
        double cx = at.x();
        double cy = at.y();
        UnitSystem u = board.units();
        List<String> lines = new ArrayList<>();
        Pt c = hole.centre();
        if (hole.face().on() == On.WALL) {
            lines.add(board.plot().kiln().panel(hole.face().panel()).words() + ", "
                    + side(c.x(), u, "right of its middle", "left of its middle"));
            lines.add(Lengths.shown(c.y(), u) + " above the floor");
            lines.addAll(List.of(
                    WallWords.outside(board.plot().kiln().panel(hole.face().panel()), c.x(), u)
                            .split(", ", 0)));
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
        Box box = NotePlace.of(board, hole, at, r, new Box(0, 0, bw, bh), flags, window);
        double ring = (hole.drilled() / 2 + 25) * board.view().scale() + 7;
        patches.add(box.union(new Box(cx, cy, cx, cy)).grown(2), window, g -> {
            leader(g, p, at, box, ring);
            frame(g, p, box, p.of(Ink.COBALT));
            words(g, p, hole.name(), lines, box.minX() + 12, box.minY());
        });
    }

    private static void leader(GraphicsContext g, Palette p, Pt from, Box box, double ring) {
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(1.4);
        g.setLineDashes();
        double ax = box.minX() > from.x() ? box.minX() : box.maxX();
        double ay = box.minY() > from.y() ? box.minY() : box.maxY();
        double k = ring / Math.hypot(ax - from.x(), ay - from.y());
        g.strokeLine(from.x() + (ax - from.x()) * k, from.y() + (ay - from.y()) * k, ax, ay);
    }

    private static void words(GraphicsContext g, Palette p, String name, List<String> lines, double x, double y) {
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BASELINE);
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.bold(14.5));
        g.fillText(name, x, y + 21);
        g.setFont(Fonts.sans(13));
        for (int i = 0; i < lines.size(); i++) {
            boolean second = lines.get(i).startsWith("r ") || lines.get(i).startsWith("on ");
            g.setFill(p.of(lines.get(i).startsWith("on ") ? Ink.CELADON : second ? Ink.INK2 : Ink.INK));
            g.fillText(lines.get(i), x, y + 40 + 18 * i);
        }
    }

    private static String side(double mm, UnitSystem u, String plus, String minus) {
        return Math.abs(mm) < 0.05
                ? "on the middle line"
                : Lengths.shown(Math.abs(mm), u) + " " + (mm > 0 ? plus : minus);
    }

    static void hovered(Patches patches, Palette p, Board board, Document doc, Marks m, Box window) {
        int most = (int) Math.max(14, Math.min(HOVER_LETTERS, (window.width() - 60) / HOVER_LETTER_PX));
        List<String> lines = HoverWords.broken(HoverWords.of(board.plot(), doc, m.hovered, board.units()), most);
        if (lines.isEmpty()) {
            return;
        }
        double bw = 0;
        for (int i = 0; i < lines.size(); i++) {
            bw = Math.max(bw, TextSizes.width(lines.get(i), i == 0 ? Fonts.bold(13) : Fonts.sans(13)));
        }
        bw += 22;
        double bh = 12 + 18 * lines.size();
        double x = Math.max(window.minX() + 4, Math.min(window.maxX() - bw - 8, m.hoverAt.x() + 18));
        double low = m.hoverAt.y() + 18;
        double y = Math.max(
                window.minY() + 4,
                low + bh > window.maxY() - 8 ? Math.min(window.maxY(), m.hoverAt.y() - 10) - bh : low);
        Box box = new Box(x, y, x + bw, y + bh);
        patches.add(box.grown(2), window, g -> {
            frame(g, p, box, p.of(Ink.EDGE));
            g.setFill(p.of(Ink.INK));
            g.setTextAlign(TextAlignment.LEFT);
            g.setTextBaseline(VPos.BASELINE);
            for (int i = 0; i < lines.size(); i++) {
                g.setFont(i == 0 ? Fonts.bold(13) : Fonts.sans(13));
                g.fillText(lines.get(i), x + 11, y + 19 + 18 * i);
            }
        });
    }

    static void measure(Patches patches, Palette p, Board board, Marks m, Box window) {
        if (m.from == null) {
            return;
        }
        Pt a = on(board.view(), m.from.at());
        Marks.End end = m.to == null ? m.reach : m.to;
        if (end == null) {
            patches.add(Box.around(List.of(a)).grown(7), window, g -> rings(g, p, a));
            return;
        }
        Pt b = on(board.view(), end.at());
        double d = m.from.at().distance(end.at());
        double radii = m.from.radiusMm() + end.radiusMm();
        double edge = m.centreToCentre ? d : d - radii;
        String words = Lengths.shown(edge, board.units()) + " · " + Lengths.other(edge, board.units())
                + (radii > 0 ? m.centreToCentre ? ", centre to centre" : ", edge to edge" : "");
        double tw = TextSizes.width(words, Fonts.bold(13)) + 20;
        double x = (a.x() + b.x()) / 2;
        double y = (a.y() + b.y()) / 2;
        Box box = NotePlace.beside(board, new Pt(x, y), tw, 26, window);
        patches.add(box.union(Box.around(List.of(a, b)).grown(5)).grown(2), window, g -> {
            rings(g, p, a, b);
            g.strokeLine(a.x(), a.y(), b.x(), b.y());
            frame(g, p, box, p.of(Ink.COBALT));
            g.setFill(p.of(Ink.INK));
            g.setFont(Fonts.bold(13));
            g.setTextAlign(TextAlignment.CENTER);
            g.setTextBaseline(VPos.BASELINE);
            g.fillText(words, box.centre().x(), box.minY() + 18);
        });
    }

    private static Pt on(View v, Pt mm) {
        return new Pt(v.x(mm.x()), v.y(mm.y()));
    }

    private static void rings(GraphicsContext g, Palette p, Pt... points) {
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(2);
        g.setLineDashes();
        for (Pt q : points) {
            g.strokeOval(q.x() - 5, q.y() - 5, 10, 10);
        }
    }

    static void frame(GraphicsContext g, Palette p, Box box, Color border) {
        g.setFill(p.of(Ink.PAPER));
        g.fillRoundRect(box.minX(), box.minY(), box.width(), box.height(), 8, 8);
        g.setStroke(border);
        g.setLineWidth(1.8);
        g.setLineDashes();
        g.strokeRoundRect(box.minX(), box.minY(), box.width(), box.height(), 8, 8);
    }
}
