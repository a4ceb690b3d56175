package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Pt;
import portwright.model.On;

/** Saw circle, centre cross, awl dot, metal hole, keep-out ring and the ticket of a hole. */
final class HolePainter {
    private static final double CROSS_OVER_MM = 4;
    private static final double AWL_DOT_MM = 3;
    /** Beyond the keep-out ring lies the ring of the chosen hole, px. */
    private static final double CHOSEN_PX = 9;

    private final Pen pen;
    private final Labels labels;
    private final PartLook look;
    private final Box window;
    private final Traces traces;
    private final boolean hot;

    /**
     * @param traces the lines that tickets had better not cover; null where none are written
     * @param hot whether the inside is seen: sheet metal lies on the other face
     */
    HolePainter(Pen pen, Labels labels, PartLook look, Box window, Traces traces, boolean hot) {
        this.hot = hot;
        this.traces = traces;
        this.pen = pen;
        this.labels = labels;
        this.look = look;
        this.window = window;
    }

    private static Box box(Pt c, double r) {
        return new Box(c.x() - r, c.y() - r, c.x() + r, c.y() + r);
    }

    private Ink ink(HoleNote n) {
        return n.hole().inlet() ? Ink.COBALT : Ink.UMBER;
    }

    void rings(HoleNote n, Pt c) {
        double r = n.hole().diameter() / 2;
        double keepOut = n.hole().drilledRadius() + look.keepOutMm();
        if (!window.touches(box(c, Math.max(keepOut, n.hasMetal() ? n.metalMm() / 2 : r)))) {
            return;
        }
        if (pen.flavour() == Flavour.SCREEN) {
            pen.fillCircle(c, r, n.hole().inlet() ? Ink.COBALT_FILL : Ink.BISQUE, 1);
        }
        double over = look.plan() ? r + pen.size(1.5, 5) : r + CROSS_OVER_MM;
        pen.line(c.plus(-over, 0), c.plus(over, 0), LineStyle.DIMENSION);
        pen.line(c.plus(0, -over), c.plus(0, over), LineStyle.DIMENSION);
        if (!look.plan()) {
            if (n.sawDiffers() && seen(c, n.saw().diameterMm() / 2)) {
                pen.circle(c, n.saw().diameterMm() / 2, LineStyle.SAW_SECOND, ink(n));
            }
            if (n.hasMetal() && seen(c, n.metalMm() / 2)) {
                pen.circle(c, n.metalMm() / 2, hot ? LineStyle.HIDDEN : LineStyle.METAL_HOLE, Ink.INK2);
            }
            if (look.keepOutMm() > 0) {
                pen.circle(c, keepOut, LineStyle.KEEP_OUT);
            }
            if (look.awlDots() && seen(c, AWL_DOT_MM / 2)) {
                pen.fillCircle(c, AWL_DOT_MM / 2, Ink.INK, 1);
            }
        }
        if (seen(c, r)) {
            pen.circle(c, r, LineStyle.SAW_CIRCLE, ink(n));
        }
    }

    /** Whether some of a circle may lie on the sheet; the window is a little smaller than the sheet's area. */
    private boolean seen(Pt c, double r) {
        return window.grown(AWL_DOT_MM).touches(box(c, r));
    }

    void label(HoleNote n, Pt c) {
        double r = n.hole().diameter() / 2;
        if (look.plan()) {
            labels.place(String.valueOf(n.number()), around(c, r), TextStyle.LABEL_BOLD);
        } else if (pen.flavour() == Flavour.SCREEN) {
            name(n, c, n.hasMetal() ? Math.max(r, n.metalMm() / 2) : r);
        } else if (window.touches(box(c, r))) {
            ticket(n, c, r);
            keepOutWords(n, c);
        }
    }

    /** Name and size outside of the keep-out ring, else outside of the hole; the name alone where there is less room. */
    private void name(HoleNote n, Pt c, double r) {
        List<Labels.Spot> spots = around(c, n.hole().drilledRadius() + look.keepOutMm() + pen.size(0, CHOSEN_PX));
        spots.addAll(around(c, r));
        TextStyle style = TextStyle.LABEL_BOLD.withInk(ink(n));
        String words = n.hole().name();
        if (!labels.place(words + "  ⌀ " + n.hole().port().diameter().typed(), spots, style)) {
            labels.place(words, spots, style);
        }
    }

    private void keepOutWords(HoleNote n, Pt c) {
        if (look.keepOutMm() <= 0) {
            return;
        }
        double d = (n.hole().drilledRadius() + look.keepOutMm()) * Math.sqrt(0.5);
        double h = pen.textSize(TextStyle.LABEL);
        String words = "keep clear " + look.distance(look.keepOutMm());
        labels.place(
                words,
                List.of(
                        new Labels.Spot(c.plus(d + 1, -d - h), Pen.Align.LEFT, 0),
                        new Labels.Spot(c.plus(-d - 1, -d - h), Pen.Align.RIGHT, 0),
                        new Labels.Spot(c.plus(d + 1, d + h * 0.4), Pen.Align.LEFT, 0),
                        new Labels.Spot(c.plus(-d - 1, d + h * 0.4), Pen.Align.RIGHT, 0)),
                TextStyle.LABEL);
    }

    private List<Labels.Spot> around(Pt c, double r) {
        List<Labels.Spot> s = new ArrayList<>(labels.near(box(c, r)));
        s.remove(0);
        return s;
    }

    private void ticket(HoleNote n, Pt c, double r) {
        List<String> lines = new ArrayList<>();
        lines.add(n.sawDiffers() ? "⌀ " + n.sizeWords() : n.sawWords());
        if (n.sawDiffers()) {
            lines.add(n.sawWords());
        }
        if (n.hasMetal()) {
            lines.add((n.metalKnown() ? "" : "if there is metal: ") + n.metalWords());
            lines.add(
                    hot
                            ? "on the other face, not here"
                            : n.hole().face().on() == On.WALL
                                    ? "first a pilot from inside"
                                    : "pilot, then metal, then brick");
        }
        double size = pen.textSize(TextStyle.PLAIN);
        double ring = pen.size(9, 20);
        double pad = pen.size(2.2, 5);
        double nameSize = pen.textSize(TextStyle.NAME);
        String name = Words.fit(pen, n.hole().name(), pen.size(50, 150), TextStyle.NAME);
        double width = ring + pad + pen.textWidth(name, TextStyle.NAME);
        for (int i = 0; i < lines.size(); i++) {
            width = Math.max(width, pen.textWidth(lines.get(i), TextStyle.PLAIN) + (i == 0 ? ring + pad : 0));
        }
        width += 2 * pad;
        double step = size * Words.LEADING;
        double head = Math.max(ring, nameSize * 1.25 + step);
        double height = 2 * pad + head + (lines.size() - 1) * step + (lines.size() > 1 ? size * 0.3 : 0);
        Box b = spot(c, r, width, height, n);
        if (b == null) {
            return;
        }
        labels.keepFree(b.grown(pen.size(1, 3)));
        leader(b, c, r);
        pen.fill(b.corners(), Ink.PAPER, 1);
        pen.polyline(b.corners(), true, LineStyle.DIMENSION);
        Pt no = new Pt(b.minX() + pad + ring / 2, b.maxY() - pad - head / 2);
        pen.circle(no, ring / 2, LineStyle.NUMBER_RING, Ink.INK);
        pen.text(String.valueOf(n.number()), no.plus(0, -nameSize * 0.36), Pen.Align.CENTRE, 0, TextStyle.NAME);
        double x = b.minX() + 2 * pad + ring;
        pen.text(name, new Pt(x, b.maxY() - pad - nameSize * 0.9), Pen.Align.LEFT, 0, TextStyle.NAME);
        pen.text(lines.get(0), new Pt(x, b.maxY() - pad - nameSize * 1.25 - size), Pen.Align.LEFT, 0, TextStyle.PLAIN);
        for (int i = 1; i < lines.size(); i++) {
            pen.text(
                    lines.get(i),
                    new Pt(b.minX() + pad, b.maxY() - pad - head - size * 0.3 - step * i + step - size),
                    Pen.Align.LEFT,
                    0,
                    TextStyle.PLAIN);
        }
    }

    /** Fixed places round the hole, near ones first; the first where it covers no line, else only such as run on, else the first free one. */
    private Box spot(Pt c, double r, double w, double h, HoleNote n) {
        List<Box> free = spots(c, r, w, h, n).stream().filter(labels::free).toList();
        return free.stream()
                .filter(traces::free)
                .findFirst()
                .or(() -> free.stream().filter(traces::breakable).findFirst())
                .or(() -> free.stream().findFirst())
                .orElse(null);
    }

    private List<Box> spots(Pt c, double r, double w, double h, HoleNote n) {
        double rim = Math.max(
                Math.max(r, n.hasMetal() ? n.metalMm() / 2 : 0), n.hole().drilledRadius() + look.keepOutMm());
        List<Box> out = new ArrayList<>();
        for (double off : new double[] {rim + 4, rim + 18, rim + 36, rim + 60, r + 6}) {
            for (int k = 0; k < 16; k++) {
                double a = Math.PI / 2 + (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2) * Math.PI / 8;
                double cx = c.x() + Math.cos(a) * (off + w / 2 * Math.abs(Math.cos(a)));
                double cy = c.y() + Math.sin(a) * (off + h / 2);
                cx = Math.max(window.minX() + w / 2 + 2, Math.min(window.maxX() - w / 2 - 2, cx));
                cy = Math.max(window.minY() + h / 2 + 2, Math.min(window.maxY() - h / 2 - 2, cy));
                Box b = new Box(cx - w / 2, cy - h / 2, cx + w / 2, cy + h / 2);
                double dx = Math.max(Math.max(b.minX() - c.x(), c.x() - b.maxX()), 0);
                double dy = Math.max(Math.max(b.minY() - c.y(), c.y() - b.maxY()), 0);
                if (Math.hypot(dx, dy) >= r + 4) {
                    out.add(b);
                }
            }
        }
        return out;
    }

    private void leader(Box b, Pt c, double r) {
        Pt from = new Pt(Math.max(b.minX(), Math.min(b.maxX(), c.x())), Math.max(b.minY(), Math.min(b.maxY(), c.y())));
        double d = from.distance(c);
        pen.line(from, toward(c, from, r / d), LineStyle.DIMENSION);
        double step = pen.size(2, 6);
        for (double at = r; at < d; at += step) {
            labels.keepFree(box(toward(c, from, at / d), step / 2));
        }
    }

    private static Pt toward(Pt from, Pt to, double share) {
        return from.plus((to.x() - from.x()) * share, (to.y() - from.y()) * share);
    }
}
