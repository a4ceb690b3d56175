package portwright.app.part;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Degrees;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.TextSizes;
import portwright.check.Severity;
import portwright.drawing.Ink;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.Inches;

/** The one picture for a measured quantity: a boxwood strip from 0 to twice the limit, a bar to the value, a post at the limit. */
public final class Gauge extends PaintedRegion {
    private static final double TOP = 17;
    private static final double STRIP = 7;

    private final String unit;
    private final Severity severity;
    private final boolean ownLimit;
    private double value;
    private double limit;
    private boolean inch;

    public Gauge(double value, double limit, String unit, Severity severity, boolean ownLimit) {
        this.unit = unit;
        this.severity = severity;
        this.ownLimit = ownLimit;
        setMinHeight(44);
        setPrefHeight(44);
        show(value, limit, false);
    }

    /** Shows other numbers. */
    void show(double newValue, double newLimit, boolean inInches) {
        if (value != newValue || limit != newLimit || inch != inInches) {
            value = newValue;
            limit = newLimit;
            inch = inInches;
            setAccessibleText(number(value) + ", limit " + number(limit));
            repaint();
        }
    }

    /** Whether a gauge can be drawn: both numbers finite and a limit above zero. */
    public static boolean fits(Double value, Double limit) {
        return value != null && limit != null && Double.isFinite(value) && Double.isFinite(limit) && limit > 0;
    }

    private String number(double v) {
        if (inch && "mm".equals(unit)) {
            return Inches.told(v, v == value ? limit : value);
        }
        if (inch && "°C".equals(unit)) {
            return Degrees.words(v, UnitSystem.INCH).replace("-", "−");
        }
        double a = Math.abs(v);
        String n = "1".equals(unit)
                ? Format.plain(v, 2)
                : a >= 100 ? Format.plain(v, 0) : a >= 10 ? fixed(v, 1) : Format.plain(v, 2);
        if ("mm".equals(unit)) {
            n = fixed(v, 1);
        }
        return n.replace("-", "−") + ("1".equals(unit) ? "" : " " + unit);
    }

    private static String fixed(double v, int decimals) {
        return String.format(java.util.Locale.ROOT, "%." + decimals + "f", v);
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        Ink ink = severity == Severity.STOP ? Ink.OXBLOOD : severity == Severity.CAUTION ? Ink.RUTILE : Ink.COBALT;
        double left = 4;
        double right = w - 6;
        double full = right - left;
        double top = TOP;
        g.setFill(p.of(Ink.BOXWOOD));
        g.fillRect(left, top, full, STRIP);
        double share = Math.max(0, value / (2 * limit));
        boolean over = share > 1;
        double end = left + full * Math.min(1, share);
        g.setFill(p.of(ink));
        g.fillRect(left, top, end - left, STRIP);
        if (over) {
            g.setStroke(p.of(Ink.PAPER));
            g.setLineWidth(2.4);
            g.strokeLine(right - 16, top + STRIP + 3, right - 10, top - 3);
            g.strokeLine(right - 10, top + STRIP + 3, right - 4, top - 3);
        }
        g.setStroke(p.of(Ink.BOXINK));
        g.setLineWidth(1);
        for (int i = 0; i <= 10; i++) {
            double x = Math.round(left + full * i / 10) + 0.5;
            g.strokeLine(x, top + STRIP, x, top + STRIP - (i % 5 == 0 ? 5 : 3));
        }
        g.setFill(p.of(ink));
        g.fillPolygon(new double[] {end - 5, end + 5, end}, new double[] {top - 8, top - 8, top - 1}, 3);
        g.setFont(Fonts.bold(13));
        g.setTextBaseline(VPos.BASELINE);
        String n = number(value);
        double tw = TextSizes.width(n, Fonts.bold(13));
        double post = left + full / 2;
        boolean crossed = end + 5 < post && end + 11 + tw > post && end - 8 - tw > 0;
        boolean toLeft = end + 8 + tw > w || crossed;
        g.setTextAlign(toLeft ? TextAlignment.RIGHT : TextAlignment.LEFT);
        g.fillText(n, toLeft ? end - 8 : end + 8, top - 3);
        g.setStroke(p.of(Ink.INK));
        g.setLineWidth(2);
        g.strokeLine(post, top - 1, post, top + STRIP + 4);
        g.setFill(p.of(Ink.INK));
        g.setFont(Fonts.sans(12.5));
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText((ownLimit ? "✎ your limit " : "limit ") + number(limit), post, top + STRIP + 17);
        g.setTextAlign(TextAlignment.LEFT);
    }
}
