package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;

/** Draws plain shapes: discs as true circles, strips with round ends. */
public final class ShapeLines {
    private static final int ROUND = 16;
    private static final double SHARP = 1e-9;

    private ShapeLines() {}

    static void draw(Pen pen, Shape shape, UnaryOperator<Pt> view, LineStyle style) {
        if (shape instanceof Shape.Disc d) {
            pen.circle(view.apply(d.circle().centre()), d.circle().radius(), style);
        } else if (shape instanceof Shape.Strip s && s.halfWidth() == 0) {
            pen.polyline(s.path().stream().map(view).toList(), false, style);
        } else {
            outlines(shape).forEach(o -> pen.polyline(o.stream().map(view).toList(), true, style));
        }
    }

    static Box box(Shape shape, UnaryOperator<Pt> view) {
        if (shape instanceof Shape.Disc d) {
            Pt c = view.apply(d.circle().centre());
            double r = d.circle().radius();
            return new Box(c.x() - r, c.y() - r, c.x() + r, c.y() + r);
        }
        return Box.around(
                outlines(shape).stream().flatMap(List::stream).map(view).toList());
    }

    /** Closed outlines, even-odd; curves as short straight pieces. */
    public static List<List<Pt>> outlines(Shape shape) {
        if (shape instanceof Shape.Poly p) {
            return List.of(p.outline().points());
        }
        if (shape instanceof Shape.Disc d) {
            return List.of(arc(d.circle().centre(), d.circle().radius(), 0, 2 * Math.PI, 4 * ROUND));
        }
        if (shape instanceof Shape.HalfDisc h) {
            double middle = Math.PI / 2 - h.bearing();
            return List.of(arc(h.centre(), h.radius(), middle - Math.PI / 2, Math.PI, 2 * ROUND));
        }
        return strip((Shape.Strip) shape);
    }

    private static List<Pt> arc(Pt c, double r, double start, double sweep, int pieces) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            double a = start + sweep * i / pieces;
            out.add(c.plus(r * Math.cos(a), r * Math.sin(a)));
        }
        return out;
    }

    private static List<List<Pt>> strip(Shape.Strip s) {
        List<Pt> path = new ArrayList<>();
        for (Pt p : s.path()) {
            if (path.isEmpty() || path.get(path.size() - 1).distance(p) > SHARP) {
                path.add(p);
            }
        }
        if (path.size() < 2) {
            return List.of(arc(path.get(0), s.halfWidth(), 0, 2 * Math.PI, 4 * ROUND));
        }
        boolean closed = path.size() > 3 && path.get(0).distance(path.get(path.size() - 1)) < SHARP;
        if (closed) {
            path.remove(path.size() - 1);
            List<Pt> back = new ArrayList<>(path);
            java.util.Collections.reverse(back);
            return List.of(side(path, s.halfWidth(), true), side(back, s.halfWidth(), true));
        }
        List<Pt> back = new ArrayList<>(path);
        java.util.Collections.reverse(back);
        List<Pt> out = new ArrayList<>(side(path, s.halfWidth(), false));
        end(out, path, s.halfWidth());
        out.addAll(side(back, s.halfWidth(), false));
        end(out, back, s.halfWidth());
        return List.of(out);
    }

    private static void end(List<Pt> out, List<Pt> path, double r) {
        Pt last = path.get(path.size() - 1);
        Pt before = path.get(path.size() - 2);
        double angle = Math.atan2(last.y() - before.y(), last.x() - before.x());
        out.addAll(arc(last, r, angle + Math.PI / 2, -Math.PI, ROUND));
    }

    /** The line at distance r on the left of the path; round on the outside of a bend, meeting on the inside. */
    private static List<Pt> side(List<Pt> path, double r, boolean closed) {
        List<Pt> out = new ArrayList<>();
        int n = path.size();
        for (int i = 0; i < n; i++) {
            boolean first = !closed && i == 0;
            boolean last = !closed && i == n - 1;
            Pt p = path.get(i);
            Segment in = first ? null : new Segment(path.get((i + n - 1) % n), p);
            Segment next = last ? null : new Segment(p, path.get((i + 1) % n));
            double a = first ? angle(next) : angle(in);
            double b = last ? angle(in) : angle(next);
            double turn = Math.atan2(Math.sin(b - a), Math.cos(b - a));
            if (turn < -SHARP) {
                out.addAll(arc(p, r, a + Math.PI / 2, turn, Math.max(1, (int) Math.ceil(-turn / (Math.PI / ROUND)))));
            } else {
                double m = a + turn / 2 + Math.PI / 2;
                double l = r / Math.max(0.2, Math.cos(turn / 2));
                out.add(p.plus(l * Math.cos(m), l * Math.sin(m)));
            }
        }
        return out;
    }

    private static double angle(Segment s) {
        return Math.atan2(s.b().y() - s.a().y(), s.b().x() - s.a().x());
    }
}
