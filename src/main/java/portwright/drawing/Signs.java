package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.check.Severity;
import portwright.geometry.Pt;

/** The five signs: stop, caution, note, passed, not checked. Shape alone tells them apart; on paper all are black. */
public final class Signs {
    private static final double OPAQUE = 1;

    private Signs() {}

    /** Octagon with a bar, triangle, or ring with i. {@code size} is the height, picture mm. */
    public static void severity(Pen pen, Severity severity, Pt centre, double size) {
        switch (severity) {
            case STOP -> stop(pen, centre, size);
            case CAUTION -> caution(pen, centre, size);
            default -> note(pen, centre, size);
        }
    }

    /** Filled octagon, bar cut out. */
    public static void stop(Pen pen, Pt c, double size) {
        pen.fill(corners(c, size / 2 / Math.cos(Math.PI / 8), 8, Math.PI / 8), Ink.OXBLOOD, OPAQUE);
        bar(pen, c, size * 0.62, size * 0.2, Ink.PAPER);
    }

    /** Triangle with stroke and dot: filled on screen, open on paper. */
    public static void caution(Pen pen, Pt c, double size) {
        double h = size * 0.94;
        List<Pt> t = List.of(c.plus(0, size / 2), c.plus(h * 0.577, size / 2 - h), c.plus(-h * 0.577, size / 2 - h));
        boolean screen = pen.flavour() == Flavour.SCREEN;
        if (screen) {
            pen.fill(t, Ink.RUTILE, OPAQUE);
        } else {
            pen.polyline(t, true, LineStyle.CHAMBER_WALL, Ink.RUTILE);
        }
        Ink ink = screen ? Ink.PAPER : Ink.INK;
        double w = size * 0.1;
        pen.fill(
                List.of(
                        c.plus(-w / 2, size * 0.2),
                        c.plus(w / 2, size * 0.2),
                        c.plus(w / 2, -size * 0.12),
                        c.plus(-w / 2, -size * 0.12)),
                ink,
                OPAQUE);
        pen.fillCircle(c.plus(0, -size * 0.26), size * 0.07, ink, OPAQUE);
    }

    /** Ring with i. */
    public static void note(Pen pen, Pt c, double size) {
        pen.circle(c, size * 0.46, LineStyle.BOX, Ink.COBALT);
        double w = size * 0.11;
        pen.fill(
                List.of(
                        c.plus(-w / 2, size * 0.08),
                        c.plus(w / 2, size * 0.08),
                        c.plus(w / 2, -size * 0.26),
                        c.plus(-w / 2, -size * 0.26)),
                Ink.COBALT,
                OPAQUE);
        pen.fillCircle(c.plus(0, size * 0.22), size * 0.07, Ink.COBALT, OPAQUE);
    }

    /** Ring with a tick. */
    public static void clear(Pen pen, Pt c, double size) {
        pen.circle(c, size * 0.46, LineStyle.BOX, Ink.CELADON);
        pen.polyline(
                List.of(c.plus(-size * 0.22, 0), c.plus(-size * 0.05, -size * 0.18), c.plus(size * 0.24, size * 0.2)),
                false,
                LineStyle.BOX,
                Ink.CELADON);
    }

    /** Dashed square with a dash: not checked. */
    public static void notChecked(Pen pen, Pt c, double size) {
        double h = size * 0.42;
        pen.polyline(new Box(c.x() - h, c.y() - h, c.x() + h, c.y() + h).corners(), true, LineStyle.TRIM, Ink.INK);
        bar(pen, c, size * 0.4, size * 0.1, Ink.INK);
    }

    private static void bar(Pen pen, Pt c, double w, double h, Ink ink) {
        pen.fill(new Box(c.x() - w / 2, c.y() - h / 2, c.x() + w / 2, c.y() + h / 2).corners(), ink, OPAQUE);
    }

    private static List<Pt> corners(Pt c, double r, int n, double start) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            out.add(c.plus(r * Math.cos(start + 2 * Math.PI * i / n), r * Math.sin(start + 2 * Math.PI * i / n)));
        }
        return out;
    }
}
