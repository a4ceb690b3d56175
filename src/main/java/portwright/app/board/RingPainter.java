package portwright.app.board;

import java.util.List;
import portwright.app.doc.Plot;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.ShapeLines;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;
import portwright.model.On;

/** Rings the chosen parts and those of a chosen finding. */
final class RingPainter {
    private RingPainter() {}

    static void ring(Pen pen, Plot plot, String name) {
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
                groove(pen, plot, gr);
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

    /** A groove between two lines: in the walls along its row, in a slab round its path. */
    private static void groove(Pen pen, Plot plot, GrooveSolid g) {
        double gap = pen.size(1, 4);
        if (g instanceof GrooveSolid.OnWall wall) {
            Segment mouth = wall.mouth();
            for (double v : new double[] {mouth.a().y() - gap, mouth.b().y() + gap}) {
                pen.line(
                        plot.toPicture(g.face(), new Pt(mouth.a().x(), v)),
                        plot.toPicture(g.face(), new Pt(mouth.b().x(), v)),
                        LineStyle.SELECTION);
            }
        } else if (g.footprint() instanceof Shape.Strip strip) {
            for (List<Pt> rim : ShapeLines.outlines(new Shape.Strip(strip.path(), strip.halfWidth() + gap))) {
                pen.polyline(rim.stream().map(p -> plot.toPicture(g.face(), p)).toList(), true, LineStyle.SELECTION);
            }
        }
    }
}
