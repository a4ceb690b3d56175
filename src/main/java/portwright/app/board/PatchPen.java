package portwright.app.board;

import java.util.List;
import java.util.function.Consumer;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.drawing.Box;
import portwright.drawing.Flavour;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** The pen of the board on patches: each stroke knows how far it reaches. */
final class PatchPen implements Pen {
    /** More than half the width of any line, with the halo of words, px. */
    private static final double BREADTH_PX = 6;

    private final Patches patches;
    private final View view;
    private final Palette palette;
    private final Box clip;
    private final Pen sizes;

    /** @param clip nothing is drawn outside of it, px of the board */
    PatchPen(Patches patches, View view, Palette palette, Box clip) {
        this.patches = patches;
        this.view = view;
        this.palette = palette;
        this.clip = clip;
        this.sizes = CanvasPen.screen(null, view, palette);
    }

    private void add(Box mm, Consumer<Pen> stroke) {
        Box px = new Box(view.x(mm.minX()), view.y(mm.maxY()), view.x(mm.maxX()), view.y(mm.minY()));
        patches.add(px.grown(BREADTH_PX), clip, g -> stroke.accept(CanvasPen.screen(g, view, palette)));
    }

    private static Box round(Pt c, double r) {
        return new Box(c.x(), c.y(), c.x(), c.y()).grown(r);
    }

    @Override
    public Flavour flavour() {
        return sizes.flavour();
    }

    @Override
    public double size(double paperMm, double screenPx) {
        return sizes.size(paperMm, screenPx);
    }

    @Override
    public void line(Pt a, Pt b, LineStyle style, Ink ink) {
        add(Box.around(List.of(a, b)), p -> p.line(a, b, style, ink));
    }

    @Override
    public void lines(List<Segment> lines, LineStyle style) {
        List<Pt> ends =
                lines.stream().flatMap(s -> List.of(s.a(), s.b()).stream()).toList();
        add(Box.around(ends), p -> p.lines(lines, style));
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        add(Box.around(points), p -> p.polyline(points, closed, style, ink));
    }

    @Override
    public void circle(Pt c, double r, LineStyle style, Ink ink) {
        add(round(c, r), p -> p.circle(c, r, style, ink));
    }

    @Override
    public void arc(Pt c, double r, double start, double sweep, LineStyle style, Ink ink) {
        add(round(c, r), p -> p.arc(c, r, start, sweep, style, ink));
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        add(Box.around(points), p -> p.fill(points, ink, opacity));
    }

    @Override
    public void fillCircle(Pt c, double r, Ink ink, double opacity) {
        add(round(c, r), p -> p.fillCircle(c, r, ink, opacity));
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        double w = textWidth(words, style);
        double h = textSize(style);
        double left = align == Align.LEFT ? 0 : align == Align.RIGHT ? -w : -w / 2;
        Box flat = new Box(left, -0.4 * h, left + w, 1.2 * h);
        List<Pt> corners = flat.corners().stream()
                .map(c -> at.plus(
                        c.x() * Math.cos(angle) - c.y() * Math.sin(angle),
                        c.x() * Math.sin(angle) + c.y() * Math.cos(angle)))
                .toList();
        add(Box.around(corners), p -> p.text(words, at, align, angle, style));
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return sizes.textWidth(words, style);
    }
}
