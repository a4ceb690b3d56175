package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Document;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.drawing.Ink;
import portwright.geometry.Hole;
import portwright.geometry.Pt;

/** Paints what lies over the drawing, in its order: rings, stops, pointers to the rules, boxes with numbers. */
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
            RingPainter.ring(pen, plot, name);
        }
        for (Hole hole : plot.kiln().holes()) {
            if (plot.shows(hole.face())) {
                StopPainter.paint(g, p, pen, plot, v, doc, hole, w, h);
            }
        }
        Hole chosen = hole(plot, doc.selected());
        if (chosen != null && plot.shows(chosen.face())) {
            Pt c = plot.toPicture(chosen.face(), chosen.centre());
            RulePainter.pointers(g, p, v.x(c.x()), v.y(c.y()), w, h);
            NoteBox.hole(g, p, board, chosen, v.x(c.x()), v.y(c.y()), w, h);
        }
        Marks m = board.marks();
        if (m.hovered != null && m.dragged == null && !m.hovered.equals(doc.selected()) && m.hoverAt != null) {
            NoteBox.hovered(g, p, board, doc, m, w, h);
        }
        NoteBox.measure(g, p, board, m);
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
}
