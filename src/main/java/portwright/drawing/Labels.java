package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Pt;

/** Places words so that they stay inside the window and off one another: the first free spot of a list wins. */
public final class Labels {
    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.24;

    private final Pen pen;
    private final Box window;
    private final List<Box> taken;

    /** @param window words stay inside of it */
    public Labels(Pen pen, Box window) {
        this(pen, window, new ArrayList<>());
    }

    private Labels(Pen pen, Box window, List<Box> taken) {
        this.pen = pen;
        this.window = window;
        this.taken = taken;
    }

    /** The same places, written with another pen. */
    Labels with(Pen other) {
        return new Labels(other, window, taken);
    }

    /** A place for words: baseline point, alignment, angle. */
    public record Spot(Pt at, Pen.Align align, double angle) {}

    /** Words keep off the box. */
    public void keepFree(Box box) {
        taken.add(box);
    }

    boolean free(Box b) {
        return window.contains(b) && taken.stream().noneMatch(b::touches);
    }

    Box extent(String words, Spot s, TextStyle style) {
        double w = pen.textWidth(words, style);
        double h = pen.textSize(style);
        double x0 = switch (s.align) {
            case LEFT -> 0;
            case CENTRE -> -w / 2;
            case RIGHT -> -w;
        };
        List<Pt> corners = new ArrayList<>();
        for (double x : new double[] {x0, x0 + w}) {
            for (double y : new double[] {-h * DESCENT, h * ASCENT}) {
                corners.add(s.at.plus(
                        x * Math.cos(s.angle) - y * Math.sin(s.angle), x * Math.sin(s.angle) + y * Math.cos(s.angle)));
            }
        }
        return Box.around(corners);
    }

    /** Writes the words at the first free spot; false when there is none. */
    public boolean place(String words, List<Spot> spots, TextStyle style) {
        for (Spot s : spots) {
            Box b = extent(words, s, style);
            if (free(b)) {
                pen.text(words, s.at, s.align, s.angle, style);
                taken.add(b);
                return true;
            }
        }
        return false;
    }

    /** One line of a block of words. */
    public record Line(String words, TextStyle style) {}

    /** Writes lines one under the other, {@code step} apart, at the first spot where all of them are free; false when there is none. */
    public boolean block(List<Line> lines, List<Spot> spots, double step) {
        for (Spot s : spots) {
            List<Spot> each = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                each.add(new Spot(s.at.plus(0, -i * step), s.align, s.angle));
            }
            List<Box> boxes = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                boxes.add(extent(lines.get(i).words(), each.get(i), lines.get(i).style()));
            }
            if (boxes.stream().allMatch(this::free)) {
                for (int i = 0; i < lines.size(); i++) {
                    Line l = lines.get(i);
                    pen.text(l.words(), each.get(i).at, s.align, s.angle, l.style());
                }
                taken.addAll(boxes);
                return true;
            }
        }
        return false;
    }

    /** Spots along lines, a little to their left, reading upright. */
    List<Spot> along(List<Pt> line, boolean closed, double off) {
        List<Spot> out = new ArrayList<>();
        int n = line.size();
        for (double share : new double[] {0.5, 0.3, 0.7, 0.18, 0.82}) {
            for (int i = 0; i + (closed ? 0 : 1) < n; i++) {
                Pt a = line.get(i);
                Pt b = line.get((i + 1) % n);
                double[] part = window.clip(a, b);
                if (part == null) {
                    continue;
                }
                double t = part[0] + share * (part[1] - part[0]);
                double angle = Math.atan2(b.y() - a.y(), b.x() - a.x());
                if (angle > Math.PI / 2 + 1e-9 || angle <= -Math.PI / 2 + 1e-9) {
                    angle += angle > 0 ? -Math.PI : Math.PI;
                }
                Pt at = new Pt(
                        a.x() + t * (b.x() - a.x()) - off * Math.sin(angle),
                        a.y() + t * (b.y() - a.y()) + off * Math.cos(angle));
                out.add(new Spot(at, Pen.Align.CENTRE, angle));
            }
        }
        return out;
    }

    /** Spots in and round a box. */
    List<Spot> near(Box b) {
        double h = pen.textSize(TextStyle.LABEL);
        Pt c = b.centre();
        return List.of(
                new Spot(c.plus(0, -h / 3), Pen.Align.CENTRE, 0),
                new Spot(new Pt(c.x(), b.maxY() + h * 0.4), Pen.Align.CENTRE, 0),
                new Spot(new Pt(c.x(), b.minY() - h * 1.1), Pen.Align.CENTRE, 0),
                new Spot(new Pt(b.maxX() + h * 0.4, c.y()), Pen.Align.LEFT, 0),
                new Spot(new Pt(b.minX() - h * 0.4, c.y()), Pen.Align.RIGHT, 0),
                new Spot(new Pt(b.maxX(), b.maxY() + h * 0.4), Pen.Align.LEFT, 0),
                new Spot(new Pt(b.minX(), b.maxY() + h * 0.4), Pen.Align.RIGHT, 0),
                new Spot(new Pt(b.maxX(), b.minY() - h * 1.1), Pen.Align.LEFT, 0),
                new Spot(new Pt(b.minX(), b.minY() - h * 1.1), Pen.Align.RIGHT, 0));
    }
}
