package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.geometry.Pt;

/** A pen that draws nothing and remembers where lines run, to find room for words between them. */
public final class Traces implements Pen {
    /** Lines that run on and on: a box may break them where there is no free room. */
    private static final Set<LineStyle> LONG =
            Set.of(LineStyle.JOINT, LineStyle.JOINT_BEHIND, LineStyle.AXIS, LineStyle.GROOVE_HATCH);

    private static final double PIECE = Math.toRadians(10);

    private record Trace(Pt a, Pt b, LineStyle style) {
        boolean runsOn() {
            return LONG.contains(style);
        }
    }

    private final Pen sizes;
    private final Box window;
    private final List<Trace> traces = new ArrayList<>();

    /** @param sizes the pen that the drawing is made with; what lies outside the window is forgotten */
    public Traces(Pen sizes, Box window) {
        this.sizes = sizes;
        this.window = window;
    }

    /** Whether no line runs through a box. */
    public boolean free(Box box) {
        return traces.stream().noneMatch(t -> box.clip(t.a, t.b) != null);
    }

    /** Whether no line at all runs through the window. */
    public boolean none() {
        return traces.isEmpty();
    }

    /** Whether nothing but joints, axes and hatching runs through a box. */
    public boolean breakable(Box box) {
        return traces.stream().noneMatch(t -> !t.runsOn() && box.clip(t.a, t.b) != null);
    }

    /** Whether hatching runs through a box, and besides it nothing but joints and axes. */
    public boolean hatched(Box box) {
        List<Trace> through =
                traces.stream().filter(t -> box.clip(t.a, t.b) != null).toList();
        return through.stream().anyMatch(t -> t.style == LineStyle.CUT_HATCH || t.style == LineStyle.GROOVE_HATCH)
                && through.stream().allMatch(t -> t.style == LineStyle.CUT_HATCH || t.runsOn());
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
        if (window.clip(a, b) != null) {
            traces.add(new Trace(a, b, style));
        }
    }

    @Override
    public void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink) {
        for (int i = 0; i + (closed ? 0 : 1) < points.size(); i++) {
            line(points.get(i), points.get((i + 1) % points.size()), style, ink);
        }
    }

    @Override
    public void circle(Pt centre, double radius, LineStyle style, Ink ink) {
        arc(centre, radius, 0, 2 * Math.PI, style, ink);
    }

    @Override
    public void arc(Pt centre, double radius, double start, double sweep, LineStyle style, Ink ink) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / PIECE));
        List<Pt> points = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            double a = start + sweep * i / pieces;
            points.add(centre.plus(radius * Math.cos(a), radius * Math.sin(a)));
        }
        polyline(points, false, style, ink);
    }

    @Override
    public void fill(List<Pt> points, Ink ink, double opacity) {
        // an area's edge is drawn as a line
    }

    @Override
    public void fillCircle(Pt centre, double radius, Ink ink, double opacity) {
        circle(centre, radius, LineStyle.SAW_CIRCLE, ink);
    }

    @Override
    public void text(String words, Pt at, Align align, double angle, TextStyle style) {
        // words come after the lines
    }

    @Override
    public double textWidth(String words, TextStyle style) {
        return sizes.textWidth(words, style);
    }
}
