package portwright.app.paint;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import portwright.drawing.Ink;
import portwright.geometry.Pt;

/** A plot area on a canvas: few grid lines, curves named at the curve, words with a halo. */
public final class Chart {
    private final GraphicsContext g;
    private final Palette p;
    private final double x0;
    private final double y0;
    private final double w;
    private final double h;
    private final double minX;
    private final double maxX;
    private final double minY;
    private final double maxY;
    private final boolean logY;

    /** A chart in a box of the canvas; {@code logY}: each mark ten times the last. */
    public Chart(
            GraphicsContext g,
            Palette p,
            double x0,
            double y0,
            double w,
            double h,
            double minX,
            double maxX,
            double minY,
            double maxY,
            boolean logY) {
        this.g = g;
        this.p = p;
        this.x0 = x0;
        this.y0 = y0;
        this.w = w;
        this.h = h;
        this.minX = minX;
        this.maxX = maxX;
        this.minY = minY;
        this.maxY = maxY;
        this.logY = logY;
    }

    public double x(double v) {
        return x0 + (v - minX) / (maxX - minX) * w;
    }

    public double y(double v) {
        double t = logY
                ? (Math.log10(Math.max(v, minY * 1e-3)) - Math.log10(minY)) / (Math.log10(maxY) - Math.log10(minY))
                : (v - minY) / (maxY - minY);
        return y0 + h - t * h;
    }

    /** Largest value of the upright axis. */
    public double maxY() {
        return maxY;
    }

    public void frame() {
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(1.4);
        g.setLineDashes();
        g.strokeRect(x0, y0, w, h);
    }

    public void gridY(double v, String words) {
        g.setStroke(p.of(Ink.HAIR));
        g.setLineWidth(1);
        g.setLineDashes();
        g.strokeLine(x0, y(v), x0 + w, y(v));
        say(words, x0 - 8, y(v), 13, false, Ink.INK, TextAlignment.RIGHT, VPos.CENTER, false);
    }

    public void tickX(double v, String words) {
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(1);
        g.setLineDashes();
        g.strokeLine(x(v), y0 + h, x(v), y0 + h + 5);
        say(words, x(v), y0 + h + 9, 13, false, Ink.INK, TextAlignment.CENTER, VPos.TOP, false);
    }

    /** A horizontal field between two values. */
    public void field(double low, double high, Ink ink, double opacity) {
        double a = Math.max(y0, Math.min(y0 + h, y(high)));
        double b = Math.max(y0, Math.min(y0 + h, y(low)));
        g.setFill(p.of(ink).deriveColor(0, 1, 1, opacity));
        g.fillRect(x0, a, w, b - a);
    }

    /** A vertical field. */
    public void upright(double from, double to, Ink ink, double opacity) {
        g.setFill(p.of(ink).deriveColor(0, 1, 1, opacity));
        g.fillRect(x(from), y0, x(to) - x(from), h);
    }

    public void clip() {
        g.save();
        g.beginPath();
        g.rect(x0, y0, w, h);
        g.clip();
    }

    public void unclip() {
        g.restore();
    }

    public void line(List<Pt> pts, Ink ink, double width, double... dash) {
        g.setStroke(p.of(ink));
        g.setLineWidth(width);
        g.setLineDashes(dash);
        g.beginPath();
        boolean on = false;
        for (Pt q : pts) {
            if (!Double.isFinite(q.y())) {
                on = false;
            } else if (on) {
                g.lineTo(x(q.x()), y(q.y()));
            } else {
                g.moveTo(x(q.x()), y(q.y()));
                on = true;
            }
        }
        g.stroke();
        g.setLineDashes();
    }

    /** An area between two curves, or over a base. */
    public void area(List<Pt> upper, List<Pt> lower, Color fill) {
        g.setFill(fill);
        g.beginPath();
        for (int i = 0; i < upper.size(); i++) {
            if (i == 0) {
                g.moveTo(x(upper.get(i).x()), y(upper.get(i).y()));
            } else {
                g.lineTo(x(upper.get(i).x()), y(upper.get(i).y()));
            }
        }
        for (int i = lower.size() - 1; i >= 0; i--) {
            g.lineTo(x(lower.get(i).x()), y(lower.get(i).y()));
        }
        g.closePath();
        g.fill();
    }

    /** Hatched to the left: forbidden. */
    public void forbidden(double low, double high) {
        double a = Math.max(y0, y(high));
        double b = Math.min(y0 + h, y(low));
        if (b <= a) {
            return;
        }
        g.save();
        g.beginPath();
        g.rect(x0, a, w, b - a);
        g.clip();
        g.setFill(p.of(Ink.OXBLOOD_FILL).deriveColor(0, 1, 1, 0.55));
        g.fillRect(x0, a, w, b - a);
        g.setStroke(p.of(Ink.OXBLOOD).deriveColor(0, 1, 1, 0.45));
        g.setLineWidth(1);
        for (double t = x0 - h; t < x0 + w + h; t += 8) {
            g.strokeLine(t, a, t + (b - a), b);
        }
        g.restore();
    }

    /** Words with or without a halo of the ground. */
    public void say(
            String words,
            double px,
            double py,
            double size,
            boolean bold,
            Ink ink,
            TextAlignment align,
            VPos base,
            boolean halo) {
        Say.at(g, p, words, px, py, size, bold, ink, align, base, halo);
    }

    public double minX() {
        return minX;
    }

    public double maxX() {
        return maxX;
    }

    public double left() {
        return x0;
    }

    public double right() {
        return x0 + w;
    }

    public double top() {
        return y0;
    }

    public double bottom() {
        return y0 + h;
    }
}
