package portwright.app.board;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.StrokeLineCap;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.geometry.Pt;

/**
 * Blue pointers on both rules at a point of the board, with dotted lines to it. What moves near the point is drawn anew with each move, and
 * what touches it too: the lines are in three pieces each, with a gap between two dots, lest they bring in the whole board.
 */
final class Pointers {
    private static final double END = RulePainter.BREADTH;
    private static final double DOT = 1.4;
    private static final double PERIOD = 6.4;
    /** Pieces end at every tenth dot only, so that they seldom change. */
    private static final double STEP = 10 * PERIOD;

    private final List<Line> upright = dotted();
    private final List<Line> level = dotted();
    private final Polygon top = new Polygon(-8, END - 12, 8, END - 12, 0, END);
    private final Polygon left = new Polygon(END - 12, -8, END - 12, 8, END, 0);
    private final Group group = new Group(top, left);

    Pointers() {
        group.getChildren().addAll(upright);
        group.getChildren().addAll(level);
        group.setManaged(false);
        group.setMouseTransparent(true);
    }

    private static List<Line> dotted() {
        List<Line> pieces = Stream.generate(Line::new).limit(3).toList();
        for (Line l : pieces) {
            l.setStrokeWidth(1.2);
            l.setStrokeLineCap(StrokeLineCap.BUTT);
            l.getStrokeDashArray().setAll(DOT, PERIOD - DOT);
        }
        return pieces;
    }

    Node node() {
        return group;
    }

    void hide() {
        group.setVisible(false);
    }

    /**
     * Points at a point of a board of a width and height, px.
     *
     * @param near what is drawn anew together with the point, px
     */
    void show(Palette p, Pt at, double width, double height, Box near) {
        group.setVisible(true);
        top.setFill(p.of(Ink.COBALT));
        left.setFill(p.of(Ink.COBALT));
        top.setTranslateX(at.x());
        left.setTranslateY(at.y());
        double[] ys = ends(near.minY(), near.maxY(), height);
        double[] xs = ends(near.minX(), near.maxX(), width);
        for (int i = 0; i < 3; i++) {
            place(upright.get(i), p, at.x(), ys[2 * i], at.x(), ys[2 * i + 1]);
            place(level.get(i), p, xs[2 * i], at.y(), xs[2 * i + 1], at.y());
        }
    }

    /** Where the three pieces start and end, each on a dot. */
    private static double[] ends(double low, double high, double end) {
        double a = END + Math.max(0, Math.floor((low - END) / STEP) * STEP);
        double b = Math.max(a + STEP, END + Math.ceil((high - END) / STEP) * STEP);
        double last = Math.min(b, end);
        return new double[] {END, a - PERIOD + DOT, a, Math.min(b - PERIOD + DOT, end), last, end};
    }

    private static void place(Line l, Palette p, double x0, double y0, double x1, double y1) {
        l.setStroke(p.of(Ink.COBALT));
        l.setVisible(x1 > x0 || y1 > y0);
        l.setStartX(x0);
        l.setStartY(y0);
        l.setEndX(x1);
        l.setEndY(y1);
    }
}
