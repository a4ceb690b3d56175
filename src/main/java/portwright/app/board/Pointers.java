package portwright.app.board;

import java.util.ArrayList;
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

    /** Clear of the words that a line ends at, px. */
    private static final double CLEAR = 3;
    /** Three pieces, and as many more as strips may cut. */
    private static final int PIECES = 7;

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
        List<Line> pieces = Stream.generate(Line::new).limit(PIECES).toList();
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
     * @param words strips with words that no line crosses, px
     */
    void show(Palette p, Pt at, double width, double height, Box near, List<Box> words) {
        group.setVisible(true);
        top.setFill(p.of(Ink.COBALT));
        left.setFill(p.of(Ink.COBALT));
        top.setTranslateX(at.x());
        left.setTranslateY(at.y());
        List<double[]> ys = ends(near.minY(), near.maxY(), height);
        List<double[]> xs = ends(near.minX(), near.maxX(), width);
        for (Box b : words) {
            if (at.x() > b.minX() - CLEAR && at.x() < b.maxX() + CLEAR) {
                ys = without(ys, b.minY() - CLEAR, b.maxY() + CLEAR);
            }
            if (at.y() > b.minY() - CLEAR && at.y() < b.maxY() + CLEAR) {
                xs = without(xs, b.minX() - CLEAR, b.maxX() + CLEAR);
            }
        }
        for (int i = 0; i < PIECES; i++) {
            double[] y = i < ys.size() ? ys.get(i) : new double[2];
            double[] x = i < xs.size() ? xs.get(i) : new double[2];
            place(upright.get(i), p, at.x(), y[0], at.x(), y[1]);
            place(level.get(i), p, x[0], at.y(), x[1], at.y());
        }
    }

    /** Pieces of a line without what lies from {@code low} to {@code high}; what goes on behind it starts on a dot. */
    static List<double[]> without(List<double[]> pieces, double low, double high) {
        double on = END + Math.ceil((high - END) / PERIOD) * PERIOD;
        List<double[]> out = new ArrayList<>();
        for (double[] piece : pieces) {
            if (piece[1] <= low || piece[0] >= high) {
                out.add(piece);
                continue;
            }
            if (piece[0] < low) {
                out.add(new double[] {piece[0], low});
            }
            if (on < piece[1]) {
                out.add(new double[] {on, piece[1]});
            }
        }
        return out;
    }

    /** Where the three pieces start and end, each on a dot. */
    private static List<double[]> ends(double low, double high, double end) {
        double a = END + Math.max(0, Math.floor((low - END) / STEP) * STEP);
        double b = Math.max(a + STEP, END + Math.ceil((high - END) / STEP) * STEP);
        double last = Math.min(b, end);
        return List.of(
                new double[] {END, a - PERIOD + DOT},
                new double[] {a, Math.min(b - PERIOD + DOT, end)},
                new double[] {last, end});
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
