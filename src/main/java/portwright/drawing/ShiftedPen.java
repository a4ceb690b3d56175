package portwright.drawing;

import java.util.List;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** Draws everything moved by (dx, dy). */
record ShiftedPen(Pen pen, double dx, double dy) implements Pen {
    private Pt at(Pt p) {
        return p.plus(dx, dy);
    }

    private List<Pt> all(List<Pt> points) {
        return points.stream().map(this::at).toList();
    }

    @Override
    public Flavour flavour() {
        return pen.flavour();
    }

    @Override
    public double size(double paperMm, double screenPx) {
        return pen.size(paperMm, screenPx);
    }

    @Override
    public void line(Pt a, Pt b, LineStyle style, Ink ink) {
        pen.line(at(a), at(b), style, ink);
    }

    @Override
    public void lines(List<Segment> lines, LineStyle style) {
        pen.lines(lines.stream().map(s -> new Segment(at(s.a()), at(s.b()))).toList(), style);
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        pen.polyline(all(points), closed, style, ink);
    }

    @Override
    public void circle(Pt centre, double radius, LineStyle style, Ink ink) {
        pen.circle(at(centre), radius, style, ink);
    }

    @Override
    public void arc(Pt centre, double radius, double start, double sweep, LineStyle style, Ink ink) {
        pen.arc(at(centre), radius, start, sweep, style, ink);
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        pen.fill(all(points), ink, opacity);
    }

    @Override
    public void fillCircle(Pt centre, double radius, Ink ink, double opacity) {
        pen.fillCircle(at(centre), radius, ink, opacity);
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        pen.text(words, at(at), align, angle, style);
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return pen.textWidth(words, style);
    }
}
