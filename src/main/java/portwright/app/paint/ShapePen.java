package portwright.app.paint;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Text;
import javafx.scene.transform.Rotate;
import portwright.drawing.Box;
import portwright.drawing.Flavour;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.sheet.PagePicture;

/** Makes nodes of a page, in points, for the system's printer: lines stay lines. */
public final class ShapePen implements Pen, PagePicture.Stage {
    private static final double PT = 72 / 25.4;

    private final double height;
    private final Palette palette = Palette.paper();
    private final Group root = new Group();
    private final Deque<Group> clips = new ArrayDeque<>();

    private ShapePen(double heightMm) {
        this.height = heightMm;
        clips.push(root);
    }

    /** The page as nodes, one unit a point, origin at the upper left corner. */
    public static Group of(PagePicture page) {
        ShapePen pen = new ShapePen(page.heightMm());
        page.show(pen);
        return pen.root;
    }

    private double x(double mm) {
        return mm * PT;
    }

    private double y(double mm) {
        return (height - mm) * PT;
    }

    private void add(javafx.scene.Node n) {
        clips.peek().getChildren().add(n);
    }

    private void stroke(Shape s, LineStyle style, Ink ink) {
        s.setFill(null);
        s.setStroke(palette.of(ink));
        s.setStrokeWidth(style.mm() * PT);
        s.setStrokeLineCap(StrokeLineCap.BUTT);
        style.dashMm().forEach(d -> s.getStrokeDashArray().add(d * PT));
        add(s);
    }

    @Override
    public Flavour flavour() {
        return Flavour.PAPER;
    }

    @Override
    public double size(double paperMm, double screenPx) {
        return paperMm;
    }

    @Override
    public void line(Pt a, Pt b, LineStyle style, Ink ink) {
        polyline(List.of(a, b), false, style, ink);
    }

    private double[] flat(List<Pt> points) {
        double[] d = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            d[2 * i] = x(points.get(i).x());
            d[2 * i + 1] = y(points.get(i).y());
        }
        return d;
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        stroke(closed ? new Polygon(flat(points)) : new Polyline(flat(points)), style, ink);
    }

    @Override
    public void circle(Pt c, double r, LineStyle style, Ink ink) {
        stroke(new Circle(x(c.x()), y(c.y()), r * PT), style, ink);
    }

    @Override
    public void arc(Pt c, double r, double start, double sweep, LineStyle style, Ink ink) {
        Arc a = new Arc(x(c.x()), y(c.y()), r * PT, r * PT, Math.toDegrees(start), Math.toDegrees(sweep));
        a.setType(ArcType.OPEN);
        stroke(a, style, ink);
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        if (!ink.screenOnly()) {
            Polygon s = new Polygon(flat(points));
            s.setFill(palette.of(ink));
            add(s);
        }
    }

    @Override
    public void fillCircle(Pt c, double r, Ink ink, double opacity) {
        if (!ink.screenOnly()) {
            add(new Circle(x(c.x()), y(c.y()), r * PT, palette.of(ink)));
        }
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        Text t = new Text(words);
        t.setFont(Fonts.of(style.face(), style.mm() * PT));
        double w = t.getLayoutBounds().getWidth();
        double back = switch (align) {
            case LEFT -> 0;
            case CENTRE -> w / 2;
            case RIGHT -> w;
        };
        t.setX(x(at.x()) - back);
        t.setY(y(at.y()));
        if (angle != 0) {
            t.getTransforms().add(new Rotate(-Math.toDegrees(angle), x(at.x()), y(at.y())));
        }
        t.setFill(style.ink() == Ink.PAPER ? Color.WHITE : Color.BLACK);
        add(t);
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return TextSizes.width(words, Fonts.of(style.face(), style.mm() * PT)) / PT;
    }

    @Override
    public Pen pen() {
        return this;
    }

    @Override
    public void clip(Box b) {
        Group g = new Group();
        g.setClip(new Rectangle(x(b.minX()), y(b.maxY()), b.width() * PT, b.height() * PT));
        add(g);
        clips.push(g);
    }

    @Override
    public void unclip() {
        clips.pop();
    }
}
