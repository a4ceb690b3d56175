package portwright.app.paint;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.View;
import portwright.drawing.Flavour;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** The pen on a canvas: screen flavour with the theme's colours, or a picture of paper. */
public final class CanvasPen implements Pen {
    /** Smallest words on the screen, px. */
    private static final double LEAST_PX = 11;
    /** Width of the stroke in the ground's colour under letters, of their size: half of it shows, and it closes the gaps between letters and words. */
    private static final double HALO_SHARE = 0.45;

    private final GraphicsContext g;
    private final View view;
    private final Palette palette;
    private final Flavour flavour;
    private final double lineScale;

    private CanvasPen(GraphicsContext g, View view, Palette palette, Flavour flavour, double lineScale) {
        this.g = g;
        this.view = view;
        this.palette = palette;
        this.flavour = flavour;
        this.lineScale = lineScale;
    }

    /** A pen for the board. */
    public static CanvasPen screen(GraphicsContext g, View view, Palette palette) {
        return new CanvasPen(g, view, palette, Flavour.SCREEN, 1);
    }

    /** A pen for a small picture: lines thinned by a factor. */
    public static CanvasPen thumb(GraphicsContext g, View view, Palette palette, double lineScale) {
        return new CanvasPen(g, view, palette, Flavour.SCREEN, lineScale);
    }

    /** A pen that shows printed paper: lines and words scale with the picture. */
    public static CanvasPen paper(GraphicsContext g, View view) {
        return new CanvasPen(g, view, Palette.paper(), Flavour.PAPER, 1);
    }

    @Override
    public Flavour flavour() {
        return flavour;
    }

    @Override
    public double size(double paperMm, double screenPx) {
        return flavour == Flavour.PAPER ? paperMm : screenPx * lineScale / view.scale();
    }

    private void stroke(LineStyle s, Ink ink) {
        boolean paper = flavour == Flavour.PAPER;
        double w = paper ? Math.max(0.35, s.mm() * view.scale()) : s.px() * lineScale;
        g.setStroke(palette.of(ink));
        g.setLineWidth(w);
        List<Double> dash = paper ? s.dashMm() : s.dashPx();
        double k = paper ? view.scale() : lineScale;
        if (dash.isEmpty()) {
            g.setLineDashes();
        } else {
            double[] d = new double[dash.size()];
            for (int i = 0; i < d.length; i++) {
                d[i] = Math.max(0.4, dash.get(i) * k);
            }
            g.setLineDashes(d);
        }
        g.setLineCap(StrokeLineCap.BUTT);
        g.setLineJoin(StrokeLineJoin.MITER);
    }

    @Override
    public void line(Pt a, Pt b, LineStyle style, Ink ink) {
        stroke(style, ink);
        g.strokeLine(view.x(a.x()), view.y(a.y()), view.x(b.x()), view.y(b.y()));
    }

    @Override
    public void lines(List<Segment> lines, LineStyle style) {
        stroke(style, style.ink());
        g.beginPath();
        for (Segment s : lines) {
            g.moveTo(view.x(s.a().x()), view.y(s.a().y()));
            g.lineTo(view.x(s.b().x()), view.y(s.b().y()));
        }
        g.stroke();
    }

    private void path(List<Pt> points, boolean closed) {
        g.beginPath();
        for (int i = 0; i < points.size(); i++) {
            double x = view.x(points.get(i).x());
            double y = view.y(points.get(i).y());
            if (i == 0) {
                g.moveTo(x, y);
            } else {
                g.lineTo(x, y);
            }
        }
        if (closed) {
            g.closePath();
        }
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        if (points.isEmpty()) {
            return;
        }
        stroke(style, ink);
        path(points, closed);
        g.stroke();
    }

    @Override
    public void circle(Pt c, double r, LineStyle style, Ink ink) {
        stroke(style, ink);
        double k = view.scale();
        g.strokeOval(view.x(c.x()) - r * k, view.y(c.y()) - r * k, 2 * r * k, 2 * r * k);
    }

    @Override
    public void arc(Pt c, double r, double start, double sweep, LineStyle style, Ink ink) {
        stroke(style, ink);
        double k = view.scale();
        g.strokeArc(
                view.x(c.x()) - r * k,
                view.y(c.y()) - r * k,
                2 * r * k,
                2 * r * k,
                Math.toDegrees(start),
                Math.toDegrees(sweep),
                ArcType.OPEN);
    }

    private Color colour(Ink ink, double opacity) {
        return palette.of(ink).deriveColor(0, 1, 1, opacity);
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        if (points.isEmpty() || flavour == Flavour.PAPER && ink.screenOnly()) {
            return;
        }
        g.setFill(colour(ink, opacity));
        path(points, true);
        g.fill();
    }

    @Override
    public void fillCircle(Pt c, double r, Ink ink, double opacity) {
        if (flavour == Flavour.PAPER && ink.screenOnly()) {
            return;
        }
        g.setFill(colour(ink, opacity));
        double k = view.scale();
        g.fillOval(view.x(c.x()) - r * k, view.y(c.y()) - r * k, 2 * r * k, 2 * r * k);
    }

    private double px(TextStyle style) {
        return flavour == Flavour.PAPER ? style.mm() * view.scale() : Math.max(LEAST_PX, style.px() * lineScale);
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        double px = px(style);
        if (px < 1) {
            return;
        }
        Font font = Fonts.of(style.face(), px);
        g.save();
        g.translate(view.x(at.x()), view.y(at.y()));
        if (angle != 0) {
            g.rotate(-Math.toDegrees(angle));
        }
        g.setFont(font);
        g.setTextAlign(
                switch (align) {
                    case LEFT -> TextAlignment.LEFT;
                    case CENTRE -> TextAlignment.CENTER;
                    case RIGHT -> TextAlignment.RIGHT;
                });
        if (style.halo() && flavour == Flavour.SCREEN) {
            g.setStroke(palette.of(Ink.PAPER));
            g.setLineWidth(HALO_SHARE * px);
            g.setLineDashes();
            g.setLineJoin(StrokeLineJoin.ROUND);
            g.strokeText(words, 0, 0);
        }
        g.setFill(palette.of(style.ink()));
        g.fillText(words, 0, 0);
        g.restore();
    }

    @Override
    public double textSize(TextStyle style) {
        return px(style) / view.scale();
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return TextSizes.width(words, Fonts.of(style.face(), px(style))) / view.scale();
    }
}
