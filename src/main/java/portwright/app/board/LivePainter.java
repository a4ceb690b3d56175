package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import portwright.app.doc.Document;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.BoardLook;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.drawing.Box;
import portwright.geometry.Hole;
import portwright.geometry.Pt;

/** Paints what moves and what lies over the drawing, in its order: the moving hole, rings, stops, pointers to the rules, boxes with numbers. */
final class LivePainter {
    private final Patches marks = new Patches();
    private final Pointers pointers = new Pointers();
    private final Patches notes = new Patches();

    List<Node> nodes() {
        return List.of(marks.node(), pointers.node(), notes.node());
    }

    /** How much larger than laid out the board is shown. */
    void factor(double f) {
        marks.factor(f);
        notes.factor(f);
    }

    /** @param mm what the board shows, mm of the picture */
    void paint(Palette p, Board board, Document doc, double w, double h, Box mm) {
        Plot plot = board.plot();
        View v = board.view();
        Box all = new Box(0, 0, w, h);
        Box inRules = new Box(RulePainter.BREADTH, RulePainter.BREADTH, w, h);
        plot.over(new PatchPen(marks, v, p, inRules), mm, board.marks().dragged, BoardLook.covered(plot, v, w, h));
        List<String> rings = new ArrayList<>(doc.highlighted());
        if (doc.selected() != null && !rings.contains(doc.selected())) {
            rings.add(0, doc.selected());
        }
        PatchPen pen = new PatchPen(marks, v, p, all);
        for (String name : rings) {
            RingPainter.ring(pen, plot, name);
        }
        List<Box> flags = new ArrayList<>();
        board.marks().flags.clear();
        for (Hole hole : plot.kiln().holes()) {
            StopPainter.Flag flag =
                    plot.shows(hole.face()) ? StopPainter.paint(marks, p, plot, v, doc, hole, all) : null;
            if (flag != null) {
                flags.add(flag.box());
                board.marks().flags.add(flag);
            }
        }
        Hole chosen = hole(plot, doc.selected());
        if (chosen != null && plot.shows(chosen.face())) {
            Pt c = plot.toPicture(chosen.face(), chosen.centre());
            Pt at = new Pt(v.x(c.x()), v.y(c.y()));
            NoteBox.hole(notes, p, board, chosen, at, flags, all);
            pointers.show(p, at, w, h, marks.around(at).union(notes.around(at)), BoardLook.taped(plot, v, w, h));
        } else {
            pointers.hide();
        }
        Marks m = board.marks();
        if (m.hovered != null
                && m.dragged == null
                && m.reach == null
                && !m.hovered.equals(doc.selected())
                && m.hoverAt != null) {
            NoteBox.hovered(notes, p, board, doc, m, all);
        }
        NoteBox.measure(notes, p, board, m, all);
        marks.show();
        notes.show();
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
