package portwright.app.part;

import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.shape.StrokeLineCap;
import portwright.check.Severity;

/** The signs: octagon, triangle, ring with i, ring with tick, dashed square, pencil, crossed field. Shape differs, not only colour. */
public enum Sign {
    STOP("sign-stop", "stop"),
    CAUTION("sign-caution", "caution"),
    NOTE("sign-note", "note"),
    CLEAR("sign-clear", "clear"),
    UNCHECKED("sign-unchecked", "not checked"),
    PENCIL("sign-pencil", "your limit"),
    UNREAD("sign-unread", "unreadable");

    private final String style;
    private final String word;

    Sign(String style, String word) {
        this.style = style;
        this.word = word;
    }

    /** The sign in a word. */
    public String word() {
        return word;
    }

    /** A drawing of the sign, {@code size} px high. */
    public Node draw(double size) {
        Group g = new Group();
        double s = size;
        switch (this) {
            case STOP -> {
                g.getChildren().add(mark(octagon(s)));
                Rectangle bar = new Rectangle(s * 0.2, s * 0.4, s * 0.6, s * 0.2);
                bar.getStyleClass().add("sign-cut");
                g.getChildren().add(bar);
            }
            case CAUTION -> {
                Polygon p = new Polygon(s * 0.5, s * 0.04, s, s * 0.96, 0, s * 0.96);
                g.getChildren().add(mark(p));
                Rectangle stroke = new Rectangle(s * 0.44, s * 0.36, s * 0.12, s * 0.32);
                Circle dot = new Circle(s * 0.5, s * 0.81, s * 0.075);
                stroke.getStyleClass().add("sign-cut");
                dot.getStyleClass().add("sign-cut");
                g.getChildren().addAll(stroke, dot);
            }
            case NOTE -> {
                g.getChildren().add(ring(s));
                Circle dot = new Circle(s * 0.5, s * 0.28, s * 0.075);
                Rectangle stem = new Rectangle(s * 0.44, s * 0.42, s * 0.12, s * 0.34);
                g.getChildren().addAll(mark(dot), mark(stem));
            }
            case CLEAR -> {
                g.getChildren().add(ring(s));
                g.getChildren().add(line(new Polyline(s * 0.28, s * 0.52, s * 0.44, s * 0.68, s * 0.73, s * 0.34), s));
            }
            case UNCHECKED -> {
                Rectangle r = new Rectangle(s * 0.1, s * 0.1, s * 0.8, s * 0.8);
                line(r, s).getStrokeDashArray().setAll(s * 0.16, s * 0.11);
                r.setStrokeWidth(Math.max(1.1, s * 0.085));
                Line dash = new Line(s * 0.32, s * 0.5, s * 0.68, s * 0.5);
                g.getChildren().addAll(r, line(dash, s));
            }
            case PENCIL -> {
                Polygon p = new Polygon(
                        s * 0.1, s * 0.9, s * 0.16, s * 0.66, s * 0.7, s * 0.12, s * 0.88, s * 0.3, s * 0.34, s * 0.84);
                Line neck = new Line(s * 0.16, s * 0.66, s * 0.34, s * 0.84);
                g.getChildren().addAll(line(p, s), line(neck, s));
            }
            case UNREAD -> {
                Rectangle r = new Rectangle(s * 0.04, s * 0.2, s * 0.92, s * 0.6);
                Line down = new Line(s * 0.36, s * 0.36, s * 0.64, s * 0.64);
                Line up = new Line(s * 0.36, s * 0.64, s * 0.64, s * 0.36);
                g.getChildren().addAll(line(r, s), line(down, s), line(up, s));
            }
            default -> throw new IllegalStateException();
        }
        g.getChildren().add(frame(s));
        g.getStyleClass().add(style);
        g.setAccessibleText(word);
        g.setMouseTransparent(true);
        return g;
    }

    private static Shape frame(double s) {
        Rectangle r = new Rectangle(0, 0, s, s);
        r.setFill(null);
        return r;
    }

    private static Polygon octagon(double s) {
        double c = s * 0.293;
        return new Polygon(c, 0, s - c, 0, s, c, s, s - c, s - c, s, c, s, 0, s - c, 0, c);
    }

    private static Shape mark(Shape s) {
        s.getStyleClass().add("sign-mark");
        return s;
    }

    private static Shape ring(double s) {
        return line(new Circle(s / 2, s / 2, s * 0.44), s);
    }

    private static Shape line(Shape shape, double s) {
        shape.getStyleClass().add("sign-line");
        shape.setStrokeWidth(Math.max(1.3, s * 0.09));
        shape.setStrokeLineCap(StrokeLineCap.ROUND);
        shape.setFill(null);
        return shape;
    }

    /** The sign of a severity. */
    public static Sign of(Severity severity) {
        return switch (severity) {
            case STOP -> STOP;
            case CAUTION -> CAUTION;
            case NOTE -> NOTE;
        };
    }
}
