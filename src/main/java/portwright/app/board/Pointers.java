package portwright.app.board;

import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.StrokeLineCap;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.drawing.Ink;

/** Blue pointers on both rules at a point of the board, with dotted lines to it: nodes, as canvases for them would be as large as the board. */
final class Pointers {
    private static final double END = RulePainter.BREADTH;

    private final Line upright = dotted();
    private final Line level = dotted();
    private final Polygon top = new Polygon(-8, END - 12, 8, END - 12, 0, END);
    private final Polygon left = new Polygon(END - 12, -8, END - 12, 8, END, 0);
    private final Group group = new Group(upright, level, top, left);

    Pointers() {
        group.setManaged(false);
        group.setMouseTransparent(true);
    }

    private static Line dotted() {
        Line l = new Line();
        l.setStrokeWidth(1.2);
        l.setStrokeLineCap(StrokeLineCap.BUTT);
        l.getStrokeDashArray().setAll(1.4, 5.0);
        return l;
    }

    Node node() {
        return group;
    }

    void hide() {
        group.setVisible(false);
    }

    /** Points at x, y of a board of a width and height, px. */
    void show(Palette p, double x, double y, double width, double height) {
        group.setVisible(true);
        upright.setStroke(p.of(Ink.COBALT));
        level.setStroke(p.of(Ink.COBALT));
        top.setFill(p.of(Ink.COBALT));
        left.setFill(p.of(Ink.COBALT));
        upright.setStartX(x);
        upright.setStartY(END);
        upright.setEndX(x);
        upright.setEndY(height);
        level.setStartX(END);
        level.setStartY(y);
        level.setEndX(width);
        level.setEndY(y);
        top.setTranslateX(x);
        left.setTranslateY(y);
    }
}
