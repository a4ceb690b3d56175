package portwright.sheet;

import java.util.List;
import java.util.Locale;
import portwright.drawing.Flavour;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.units.Format;
import portwright.units.PlainSigns;

/** Writes SVG in millimetres, one class a line style, so that a cutter's program can pick the saw circles. */
final class SvgPen implements Pen {
    private static final int DECIMALS = 4;
    private static final double HALO_SHARE = 0.3;

    private final StringBuilder out;
    private final Fonts metrics;
    private final double originX;
    private final double originY;

    /** Picture (0, 0) lies at (originX, originY) from the upper left corner. */
    SvgPen(StringBuilder out, Fonts metrics, double originX, double originY) {
        this.out = out;
        this.metrics = metrics;
        this.originX = originX;
        this.originY = originY;
    }

    private String x(double mm) {
        return Format.plain(originX + mm, DECIMALS);
    }

    private String y(double mm) {
        return Format.plain(originY - mm, DECIMALS);
    }

    private static String n(double v) {
        return Format.plain(v, DECIMALS);
    }

    private static String colour(Ink ink) {
        return switch (ink) {
            case PAPER -> "#fff";
            case SHADE -> "#ededed";
            default -> "#000";
        };
    }

    private static String stroke(LineStyle s, Ink ink) {
        String dash = s.dashMm().isEmpty()
                ? ""
                : " stroke-dasharray=\""
                        + String.join(" ", s.dashMm().stream().map(SvgPen::n).toList()) + "\"";
        return " class=\"" + s.name().toLowerCase(Locale.ROOT).replace('_', '-') + "\" fill=\"none\" stroke=\""
                + colour(ink) + "\" stroke-width=\"" + n(s.mm()) + "\"" + dash + "/>\n";
    }

    private String points(List<Pt> points) {
        return String.join(
                " ", points.stream().map(p -> x(p.x()) + "," + y(p.y())).toList());
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
        out.append("<line x1=\"")
                .append(x(a.x()))
                .append("\" y1=\"")
                .append(y(a.y()))
                .append("\" x2=\"")
                .append(x(b.x()))
                .append("\" y2=\"")
                .append(y(b.y()))
                .append('"')
                .append(stroke(style, ink));
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        out.append(closed ? "<polygon" : "<polyline")
                .append(" points=\"")
                .append(points(points))
                .append('"')
                .append(stroke(style, ink));
    }

    @Override
    public void circle(Pt c, double r, LineStyle style, Ink ink) {
        out.append("<circle cx=\"")
                .append(x(c.x()))
                .append("\" cy=\"")
                .append(y(c.y()))
                .append("\" r=\"")
                .append(n(r))
                .append('"')
                .append(stroke(style, ink));
    }

    @Override
    public void arc(Pt c, double r, double start, double sweep, LineStyle style, Ink ink) {
        Pt a = c.plus(r * Math.cos(start), r * Math.sin(start));
        Pt b = c.plus(r * Math.cos(start + sweep), r * Math.sin(start + sweep));
        out.append("<path d=\"M ")
                .append(x(a.x()))
                .append(' ')
                .append(y(a.y()))
                .append(" A ")
                .append(n(r))
                .append(' ')
                .append(n(r))
                .append(" 0 ")
                .append(Math.abs(sweep) > Math.PI ? 1 : 0)
                .append(' ')
                .append(sweep > 0 ? 0 : 1)
                .append(' ')
                .append(x(b.x()))
                .append(' ')
                .append(y(b.y()))
                .append('"')
                .append(stroke(style, ink));
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        if (!ink.screenOnly()) {
            out.append("<polygon points=\"")
                    .append(points(points))
                    .append("\" fill=\"")
                    .append(colour(ink))
                    .append("\"/>\n");
        }
    }

    @Override
    public void fillCircle(Pt c, double r, Ink ink, double opacity) {
        if (!ink.screenOnly()) {
            out.append("<circle cx=\"")
                    .append(x(c.x()))
                    .append("\" cy=\"")
                    .append(y(c.y()))
                    .append("\" r=\"")
                    .append(n(r))
                    .append("\" fill=\"")
                    .append(colour(ink))
                    .append("\"/>\n");
        }
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return metrics.width(words, style.face(), style.mm());
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        String anchor = switch (align) {
            case LEFT -> "start";
            case CENTRE -> "middle";
            case RIGHT -> "end";
        };
        out.append("<text x=\"")
                .append(x(at.x()))
                .append("\" y=\"")
                .append(y(at.y()))
                .append("\" font-size=\"")
                .append(n(style.mm()))
                .append("\" text-anchor=\"")
                .append(anchor)
                .append('"');
        out.append(" font-family=\"")
                .append(style.face() == TextStyle.Face.SERIF_BOLD ? "DejaVu Serif, serif" : "DejaVu Sans, sans-serif")
                .append('"');
        out.append(style.face() == TextStyle.Face.SANS ? "" : " font-weight=\"bold\"")
                .append(" fill=\"")
                .append(colour(style.ink()))
                .append('"');
        if (style.halo()) {
            out.append(" stroke=\"#fff\" stroke-width=\"")
                    .append(n(style.mm() * HALO_SHARE))
                    .append("\" paint-order=\"stroke\"");
        }
        if (angle != 0) {
            out.append(" transform=\"rotate(")
                    .append(n(-Math.toDegrees(angle)))
                    .append(' ')
                    .append(x(at.x()))
                    .append(' ')
                    .append(y(at.y()))
                    .append(")\"");
        }
        out.append('>').append(escape(metrics.printable(words, style.face()))).append("</text>\n");
    }

    /** Text as XML may hold it: control characters, halves of pairs and marks of direction become a space. */
    static String escape(String t) {
        return PlainSigns.xml(t)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
