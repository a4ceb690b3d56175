package portwright.app.board;

import portwright.app.doc.Plot;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
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
}
