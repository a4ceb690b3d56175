package portwright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import portwright.drawing.Flavour;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;

/**
 * Draws on a page. Picture mm become page mm by {@code origin + factor × mm}; the factors are the printer's correction
 * (1 where there is none), or a reduction for small plans.
 */
final class PdfPen implements Pen {
    private static final HexFormat HEX = HexFormat.of().withUpperCase();
    /** Four curves make a circle; the radius is off by 0.03 % at most. */
    private static final double KAPPA = 0.5522847498;

    private static final double HALO_SHARE = 0.3;
    private static final double SHADE_GREY = 0.93;

    private final Page page;
    private final Fonts fonts;
    private final double originX;
    private final double originY;
    private final double factorX;
    private final double factorY;

    PdfPen(Page page, Fonts fonts, double originX, double originY, double factorX, double factorY) {
        this.page = page;
        this.fonts = fonts;
        this.originX = originX;
        this.originY = originY;
        this.factorX = factorX;
        this.factorY = factorY;
    }

    /** Plain page millimetres from the lower left corner. */
    static PdfPen onPage(Page page, Fonts fonts) {
        return new PdfPen(page, fonts, 0, 0, 1, 1);
    }

    private double x(double mm) {
        return originX + factorX * mm;
    }

    private double y(double mm) {
        return originY + factorY * mm;
    }

    @Override
    public Flavour flavour() {
        return Flavour.PAPER;
    }

    @Override
    public double size(double paperMm, double screenPx) {
        return paperMm / factorX;
    }

    private static double grey(Ink ink) {
        return switch (ink) {
            case PAPER -> 1;
            case SHADE -> SHADE_GREY;
            default -> 0;
        };
    }

    private Pt onPage(Pt p) {
        return new Pt(x(p.x()), y(p.y()));
    }

    private List<Pt> onPage(List<Pt> points) {
        return points.stream().map(this::onPage).toList();
    }

    private double radius(double r) {
        return r * (factorX + factorY) / 2;
    }

    private void style(LineStyle s, Ink ink) {
        page.lines().add(s);
        page.strokeState(grey(ink), s.mm(), s.dashMm(), 0, 0);
    }

    private void path(List<Pt> points, boolean closed) {
        boolean first = true;
        for (Pt p : points) {
            page.n(x(p.x())).n(y(p.y())).op(first ? "m" : "l");
            first = false;
        }
        if (closed) {
            page.op("h");
        }
    }

    @Override
    public void line(Pt a, Pt b, LineStyle style, Ink ink) {
        page.picture().draw(p -> p.line(onPage(a), onPage(b), style, ink));
        style(style, ink);
        path(List.of(a, b), false);
        page.op("S");
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        page.picture().draw(p -> p.polyline(onPage(points), closed, style, ink));
        style(style, ink);
        path(points, closed);
        page.op("S");
    }

    private void circlePath(Pt c, double r) {
        double cx = x(c.x());
        double cy = y(c.y());
        double rx = r * factorX;
        double ry = r * factorY;
        double kx = rx * KAPPA;
        double ky = ry * KAPPA;
        page.n(cx + rx).n(cy).op("m");
        page.n(cx + rx).n(cy + ky).n(cx + kx).n(cy + ry).n(cx).n(cy + ry).op("c");
        page.n(cx - kx).n(cy + ry).n(cx - rx).n(cy + ky).n(cx - rx).n(cy).op("c");
        page.n(cx - rx).n(cy - ky).n(cx - kx).n(cy - ry).n(cx).n(cy - ry).op("c");
        page.n(cx + kx).n(cy - ry).n(cx + rx).n(cy - ky).n(cx + rx).n(cy).op("c");
        page.op("h");
    }

    @Override
    public void circle(Pt centre, double radius, LineStyle style, Ink ink) {
        page.picture().draw(p -> p.circle(onPage(centre), radius(radius), style, ink));
        style(style, ink);
        circlePath(centre, radius);
        page.op("S");
    }

    @Override
    public void arc(Pt centre, double radius, double start, double sweep, LineStyle style, Ink ink) {
        page.picture().draw(p -> p.arc(onPage(centre), radius(radius), start, sweep, style, ink));
        style(style, ink);
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (Math.PI / 4) - 1e-9));
        double step = sweep / pieces;
        double k = 4.0 / 3 * Math.tan(step / 4);
        double t = start;
        point(centre, radius, Math.cos(t), Math.sin(t)).op("m");
        for (int i = 0; i < pieces; i++) {
            double e = t + step;
            point(centre, radius, Math.cos(t) - k * Math.sin(t), Math.sin(t) + k * Math.cos(t));
            point(centre, radius, Math.cos(e) + k * Math.sin(e), Math.sin(e) - k * Math.cos(e));
            point(centre, radius, Math.cos(e), Math.sin(e)).op("c");
            t = e;
        }
        page.op("S");
    }

    private Page point(Pt c, double r, double ux, double uy) {
        return page.n(x(c.x() + r * ux)).n(y(c.y() + r * uy));
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        page.picture().draw(p -> p.fill(onPage(points), ink, opacity));
        if (ink.screenOnly()) {
            return;
        }
        page.fillState(grey(ink));
        path(points, true);
        page.op("f");
    }

    @Override
    public void fillCircle(Pt centre, double radius, Ink ink, double opacity) {
        page.picture().draw(p -> p.fillCircle(onPage(centre), radius(radius), ink, opacity));
        if (ink.screenOnly()) {
            return;
        }
        page.fillState(grey(ink));
        circlePath(centre, radius);
        page.op("f");
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return fonts.width(words, style.face(), style.mm()) / factorX;
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        page.picture().draw(p -> p.text(words, onPage(at), align, angle, style));
        String t = fonts.printable(words, style.face());
        if (t.isBlank()) {
            return;
        }
        PDType0Font font = fonts.font(style.face());
        t.codePoints().forEach(font::addToSubset);
        double w = fonts.width(words, style.face(), style.mm());
        double back = switch (align) {
            case LEFT -> 0;
            case CENTRE -> w / 2;
            case RIGHT -> w;
        };
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double px = x(at.x()) - back * c;
        double py = y(at.y()) - back * s;
        if (style.halo()) {
            page.strokeState(1, style.mm() * HALO_SHARE, List.of(), 1, 1);
            show(t, font, style, px, py, c, s, 1);
        }
        page.fillState(grey(style.ink()));
        show(t, font, style, px, py, c, s, 0);
    }

    private void show(String t, PDType0Font font, TextStyle style, double px, double py, double c, double s, int mode) {
        page.raw("BT /")
                .raw(style.face().name())
                .raw(" ")
                .n(style.mm())
                .raw("Tf ")
                .raw(mode + " Tr ");
        page.number(c).number(s).number(-s).number(c).n(px).n(py).raw("Tm <");
        try {
            page.raw(HEX.formatHex(font.encode(t))).op("> Tj ET");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
