package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.drawing.Box;
import portwright.drawing.CheckBar;
import portwright.drawing.HoleNote;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.drawing.Pen;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Face;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.units.Format;

/** Where to begin: verdict, hole schedule, small plans, check bars and pins, findings, what to do before the drill turns. */
final class FirstPage {
    static final TextStyle TITLE = new TextStyle(TextStyle.Face.SERIF_BOLD, 26, 7.6, Ink.INK, false);
    static final TextStyle SUB = new TextStyle(TextStyle.Face.SANS, 15, 3.8, Ink.INK, false);
    static final TextStyle HEADING = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 4.6, Ink.INK, false);
    static final TextStyle SMALL = new TextStyle(TextStyle.Face.SANS, 12.5, 3.0, Ink.INK, false);
    private static final double PIN_STRIP = 11;
    private static final double ROW = 6.4;
    private static final double BOTTOM = 112.5;
    private static final double LEAST_PLANS = 46;
    private static final int[] REDUCTIONS = {5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100};

    private final Job job;
    private final Page page;
    private final Fonts fonts;
    private final Pen pen;
    private final double width;
    private final double height;
    private final double left = Frame.MARGIN;
    private final double right;

    private FirstPage(Job job, Fonts fonts) {
        this.job = job;
        this.fonts = fonts;
        width = job.paper().widthMm();
        height = job.paper().heightMm();
        right = width - Frame.MARGIN;
        page = new Page(width, height);
        pen = PdfPen.onPage(page, fonts);
    }

    static Page of(Job job, int total, Fonts fonts) {
        FirstPage f = new FirstPage(job, fonts);
        f.head(total);
        double y = f.verdict(34);
        y = f.schedule(y);
        f.plans(y, f.height - Frame.MARGIN - BOTTOM - 2);
        f.bottom(f.height - Frame.MARGIN - BOTTOM, total);
        f.pins();
        if (job.stops() > 0) {
            Strike.through(f.pen, new Frame(job.paper()).inside(), Strike.stops(job.stops(), "DO NOT DRILL"));
        }
        return f.page;
    }

    private Pt at(double x, double top) {
        return new Pt(x, height - top);
    }

    private void words(String t, double x, double base, TextStyle s) {
        pen.text(t, at(x, base), Pen.Align.LEFT, 0, s);
    }

    private void rule(double x0, double x1, double top, LineStyle s) {
        pen.line(at(x0, top), at(x1, top), s, Ink.INK);
    }

    private void head(int total) {
        double boxW = 58;
        double room = right - boxW - 5 - left;
        TextStyle t = TITLE;
        String title = job.result().title();
        if (pen.textWidth(title, t) > room) {
            t = t.size(t.px(), Math.max(4.6, t.mm() * room / pen.textWidth(title, t)));
        }
        words(Words.fit(pen, title, room, t), left, 20, t);
        String parts = String.join(
                ", ", job.views().stream().map(View::words).distinct().toList());
        List<String> sub = Words.wrap(
                pen,
                "Full-size drilling template, " + total + " sheets "
                        + job.paper().words() + ": " + parts,
                room,
                SMALL);
        for (int i = 0; i < Math.min(2, sub.size()); i++) {
            words(
                    sub.size() > 2 && i == 1 ? Words.fit(pen, sub.get(1) + " …", room, SMALL) : sub.get(i),
                    left,
                    25.2 + 4 * i,
                    SMALL);
        }
        Box b = new Box(right - boxW, height - 29, right, height - Frame.MARGIN);
        pen.polyline(b.grown(-0.2).corners(), true, LineStyle.BOX);
        words("sheet 1 of " + total, right - boxW + 3, 17.2, TextStyle.BOLD);
        words(
                Words.fit(pen, job.fileName() + " · " + job.mark().words(), boxW - 6, SMALL),
                right - boxW + 3,
                21.8,
                SMALL);
        words("date", right - boxW + 3, 26.6, SMALL);
        rule(right - boxW + 12, right - 4, 26.9, LineStyle.DIMENSION);
        rule(left, right, 31.4, LineStyle.CHAMBER_WALL);
    }

    private double verdict(double top) {
        CheckResult r = job.result();
        long stops = job.stops();
        long cautions = r.count(Severity.CAUTION);
        Pt c = at(left + 5.6, top + 4.5);
        String t;
        if (stops > 0) {
            Signs.stop(pen, c, 9);
            t = stops + (stops == 1 ? " stop forbids" : " stops forbid") + " drilling. Do not drill.";
        } else {
            boolean incomplete = !unproven().isEmpty();
            if (incomplete) {
                Signs.notChecked(pen, c, 9);
            } else if (cautions > 0) {
                Signs.caution(pen, c, 9);
            } else {
                Signs.clear(pen, c, 9);
            }
            t = "No stop against drilling" + (incomplete ? " in what was checked" : "") + ". "
                    + (cautions == 0
                            ? "No caution."
                            : cautions == 1
                                    ? "1 caution: read it before drilling."
                                    : cautions + " cautions: read them before drilling.");
        }
        double room = right - PIN_STRIP - left - 12;
        TextStyle s = HEADING;
        if (pen.textWidth(t, s) > room) {
            s = s.size(s.px(), s.mm() * room / pen.textWidth(t, s));
        }
        words(t, left + 12, top + 5.2, s);
        long lighting = r.stops(Forbids.LIGHTING);
        if (lighting > 0) {
            words(
                    "Lighting: " + lighting + (lighting == 1 ? " stop" : " stops")
                            + ". Do not light before that is mended.",
                    left + 12,
                    top + 9.8,
                    SMALL);
        } else if (r.notChecked().stream().anyMatch(n -> n.forbids() == Forbids.LIGHTING)) {
            words("Lighting: not proven, see what was not checked.", left + 12, top + 9.8, SMALL);
        }
        return top + 16.2;
    }

    private List<NotChecked> unproven() {
        return job.result().notChecked().stream()
                .filter(n -> n.forbids() == Forbids.DRILLING)
                .toList();
    }

    private double schedule(double top) {
        words("Hole schedule", left, top, HEADING);
        words(
                "to set out with a tape if the printer fails · mm to hole centres",
                left + pen.textWidth("Hole schedule", HEADING) + 4,
                top,
                SMALL);
        double end = right - PIN_STRIP;
        double w = end - left;
        double[] col = {0, 0.058, 0.205, 0.285, 0.525, 0.635, 0.745, 0.835, 0.925};
        String[] names = {"no.", "hole", "part", "saw", "from left", "from back", "radius", "bearing", "metal"};
        rule(left, end, top + 2, LineStyle.CHAMBER_WALL);
        for (int i = 0; i < names.length; i++) {
            words(names[i], left + col[i] * w, top + 6, SMALL);
        }
        rule(left, end, top + 7.6, LineStyle.DIMENSION);
        List<HoleSchedule.Row> rows = HoleSchedule.of(job.kiln());
        double room = height - Frame.MARGIN - BOTTOM - 2 - LEAST_PLANS - top - 7.6 - 10;
        int fit = Math.min(rows.size(), Math.max(1, (int) Math.floor(room / ROW)));
        double y = top + 7.6;
        boolean walls = false;
        for (HoleSchedule.Row r : rows.subList(0, fit)) {
            HoleNote n = r.note();
            double base = y + ROW * 0.68;
            pen.circle(at(left + 2.7, y + ROW / 2), 2.5, LineStyle.BOX, Ink.INK);
            pen.text(
                    String.valueOf(n.number()), at(left + 2.7, y + ROW / 2 + 1.2), Pen.Align.CENTRE, 0, TextStyle.BOLD);
            cell(n.hole().name(), left, col, w, 1, base, TextStyle.BOLD);
            cell(r.part(), left, col, w, 2, base, TextStyle.PLAIN);
            cell(n.sizeWords(), left, col, w, 3, base, TextStyle.PLAIN);
            cell(LastPages.tenths(r.fromLeftMm()), left, col, w, 4, base, TextStyle.PLAIN);
            cell(LastPages.tenths(r.fromOtherMm()) + (r.wall() ? " up" : ""), left, col, w, 5, base, TextStyle.PLAIN);
            cell(r.wall() ? "–" : LastPages.tenths(r.radiusMm()), left, col, w, 6, base, TextStyle.PLAIN);
            cell(r.wall() ? "–" : Format.plain(r.bearingDeg(), 1) + "°", left, col, w, 7, base, TextStyle.PLAIN);
            cell(
                    n.hasMetal() ? Format.plain(n.metalMm(), 0) + (n.metalKnown() ? "" : " ?") : "–",
                    left,
                    col,
                    w,
                    8,
                    base,
                    TextStyle.PLAIN);
            y += ROW;
            rule(left, end, y, LineStyle.DIMENSION);
            walls |= r.wall();
        }
        List<String> foot = new ArrayList<>();
        if (fit < rows.size()) {
            foot.add((rows.size() - fit) + " more: last sheets");
        }
        foot.add("left: batten on the left corner");
        foot.add("back: batten on the back edge");
        foot.add("bearing clockwise from the BACK, all seen from above");
        if (walls) {
            foot.add("wall: from the left corner seen from inside, and up from the floor's hot face");
        }
        for (String line : Words.wrap(pen, String.join(" · ", foot), end - left, TextStyle.BAR)) {
            y += 4;
            words(line, left, y, TextStyle.BAR);
        }
        return y + 2;
    }

    private void cell(String t, double x, double[] col, double w, int i, double base, TextStyle s) {
        double room = ((i + 1 < col.length ? col[i + 1] : 1) - col[i]) * w - 1;
        TextStyle fit = s;
        if (pen.textWidth(t, s) > room) {
            fit = s.size(s.px(), Math.max(3.0, s.mm() * room / pen.textWidth(t, s)));
        }
        words(Words.fit(pen, t, room, fit), x + col[i] * w, base, fit);
    }

    private void plans(double top, double bottom) {
        List<Face> faces = new ArrayList<>();
        for (On on : List.of(On.FLOOR, On.LID)) {
            if (!job.kiln().holes(on).isEmpty()) {
                faces.add(new Face(on, 0, on == On.FLOOR));
            }
        }
        job.holes().stream()
                .filter(n -> n.hole().face().on() == On.WALL)
                .map(n -> n.hole().face())
                .distinct()
                .limit(Math.max(0, 3 - faces.size()))
                .forEach(faces::add);
        double end = right - PIN_STRIP;
        double slot = (end - left) / Math.max(1, faces.size());
        double room = bottom - top - 7;
        List<PartPainter> painters = faces.stream()
                .map(f -> new PartPainter(job.kiln(), f, job.result().findings(), PartLook.small()))
                .toList();
        int reduction = REDUCTIONS[REDUCTIONS.length - 1];
        for (int i = REDUCTIONS.length - 1; i >= 0; i--) {
            int n = REDUCTIONS[i];
            boolean roomy = n >= 10 || width > 250;
            if (roomy
                    && painters.stream()
                            .allMatch(p -> p.bounds().width() / n <= slot - 8
                                    && p.bounds().height() / n <= room - 7)) {
                reduction = n;
            }
        }
        for (int i = 0; i < painters.size(); i++) {
            plan(painters.get(i), left + slot * i, top, slot, room, reduction);
        }
        rule(left, end, bottom + 0.5, LineStyle.CHAMBER_WALL);
    }

    private void plan(PartPainter p, double x, double top, double slot, double room, int reduction) {
        double f = 1.0 / reduction;
        Box b = p.bounds();
        double cx = x + slot / 2;
        double cy = height - top - room / 2;
        PdfPen small =
                new PdfPen(page, fonts, cx - b.centre().x() * f, cy - b.centre().y() * f, f, f);
        Box rim = Box.around(p.rim());
        Box window = rim.grown(5 * reduction);
        List<Box> taken = new ArrayList<>();
        boolean wall = p.face().on() == On.WALL;
        String[] sides = wall ? new String[] {"TOP", "BOTTOM"} : new String[] {"BACK", "FRONT"};
        TextStyle s = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.0, Ink.INK, true);
        Pt back = new Pt(rim.centre().x(), rim.maxY() - 4.2 * reduction);
        Pt front = new Pt(rim.centre().x(), rim.minY() + 1.6 * reduction);
        for (Pt w : List.of(back, front)) {
            taken.add(
                    new Box(w.x() - 6 * reduction, w.y() - reduction, w.x() + 6 * reduction, w.y() + 3.4 * reduction));
        }
        p.paint(small, window, taken);
        small.text(sides[0], back, Pen.Align.CENTRE, 0, s);
        small.text(sides[1], front, Pen.Align.CENTRE, 0, s);
        double over = 2.5 * reduction;
        small.line(
                new Pt(rim.minX(), rim.maxY() + over),
                new Pt(rim.minX(), wall ? rim.minY() - over : rim.minY()),
                LineStyle.CHAMBER_WALL);
        double batten = wall ? rim.minY() : rim.maxY();
        small.line(new Pt(rim.minX() - over, batten), new Pt(rim.maxX(), batten), LineStyle.CHAMBER_WALL);
        String name = switch (p.face().on()) {
            case FLOOR -> "floor from above";
            case LID -> "lid from above";
            case WALL -> "wall " + p.face().panel() + " from inside";
        };
        pen.text(name + ", 1 : " + reduction, new Pt(cx, height - top - room - 4), Pen.Align.CENTRE, 0, TextStyle.BOLD);
    }

    private void bottom(double top, int total) {
        double sx = job.options().scaleX();
        double sy = job.options().scaleY();
        double x = left + 20;
        double findingsX = Math.max(left + 131, right - 74);
        double end = findingsX - 5;
        CheckBar.down(new PdfPen(page, fonts, left + 6, height - top - 0.8, sx, sy), new Pt(0, 0));
        double y = top + 6;
        words("Measure this sheet first", x, y, HEADING);
        y = flow(
                "Lay a steel rule on both bars. 100 mm within 0.5 mm: use the sheets. Within 1.5 mm: print again with a correction, true length over printed length, "
                        + "across and down. Worse: do not use, mend the printer's scaling first. Then prick P, Q and R: the sides must read 150, 200 and 250 mm.",
                x,
                y + 2,
                end - x,
                SMALL);
        if (job.options().corrected()) {
            y = flow("This print is " + job.options().correctionWords() + ".", x, y, end - x, SMALL);
        }
        CheckBar.across(new PdfPen(page, fonts, x, height - y - 8.6, sx, sy), new Pt(0, 0));
        y += 19.5;
        words("Before the drill turns", x, y, HEADING);
        y += 2.2;
        for (String s : List.of(
                "Unplug the kiln. Lift off pan and jacket where drilled.",
                "Offer up the real burner to the paper hole before drilling.",
                "Mask, goggles, damp brick: the dust harms the lungs.",
                "Metal hole first, then the brick, by slow drill.",
                "Read the last sheet. Local code comes before this paper.")) {
            pen.polyline(new Box(x, height - y - 4.2, x + 3.2, height - y - 1).corners(), true, LineStyle.BOX);
            words(s, x + 6, y + 3.8, TextStyle.PLAIN);
            y += 5.9;
        }
        findings(findingsX, top + 6, right - findingsX, height - Frame.MARGIN - 22);
    }

    private double flow(String t, double x, double top, double w, TextStyle s) {
        return height - Words.flow(pen, t, x, height - top, w, s);
    }

    private void findings(double x, double top, double w, double limit) {
        words("Findings", x, top, HEADING);
        double y = top + 2.5;
        List<Finding> all = job.result().findings();
        String nots = notChecked();
        double tail = Words.height(pen, nots, w, SMALL);
        int shown = 0;
        for (Finding f : all) {
            double h = Words.height(pen, f.message(), w - 8, SMALL);
            if (y + h + 1.5 + 5 + Math.min(tail, 30) > limit) {
                break;
            }
            Signs.severity(pen, f.severity(), at(x + 2.7, y + 2.9), 5);
            y = flow(f.message(), x + 8, y, w - 8, SMALL) + 1.5;
            shown++;
        }
        if (all.isEmpty()) {
            y = flow("None in what was checked.", x, y, w, SMALL) + 1;
        } else if (shown < all.size()) {
            y = flow((all.size() - shown) + " more on the last sheets.", x, y, w, SMALL) + 1;
        }
        List<String> lines = Words.wrap(pen, nots, w, SMALL);
        int room = Math.max(0, (int) Math.floor((limit - y) / (SMALL.mm() * Words.LEADING)));
        for (int i = 0; i < Math.min(room, lines.size()); i++) {
            boolean cut = i == room - 1 && lines.size() > room;
            words(cut ? "… more on the last sheets." : lines.get(i), x, y + SMALL.mm(), SMALL);
            y += SMALL.mm() * Words.LEADING;
        }
    }

    private String notChecked() {
        List<String> rules = job.result().notChecked().stream()
                .map(n -> n.rule().replace('-', ' '))
                .distinct()
                .toList();
        return rules.isEmpty() ? "Every rule was checked." : "Not checked: " + String.join(", ", rules) + ".";
    }

    private void pins() {
        double sx = job.options().scaleX();
        double sy = job.options().scaleY();
        double px = right - 5;
        double py = Frame.MARGIN + 5;
        PdfPen p = new PdfPen(page, fonts, px, py, sx, sy);
        Pt corner = new Pt(0, 0);
        Pt q = new Pt(-150, 0);
        Pt r = new Pt(0, 200);
        pin(p, corner, "P", -5.5, 3);
        pin(p, q, "Q", -6, -1.6);
        pin(p, r, "R", 0, 6);
        for (Pt[] d : new Pt[][] {
            {q.plus(7, 0), q.plus(19, 0)},
            {corner.plus(-7, 0), corner.plus(-19, 0)},
            {corner.plus(0, 7), corner.plus(0, 19)},
            {r.plus(0, -7), r.plus(0, -19)}
        }) {
            p.line(d[0], d[1], LineStyle.HIDDEN, Ink.INK);
        }
        p.text("P–Q 150 mm · P–R 200 mm · Q–R 250 mm", new Pt(-75, -1.2), Pen.Align.CENTRE, 0, SMALL);
    }

    private static void pin(Pen p, Pt c, String name, double dx, double dy) {
        p.line(c.plus(-4.5, 0), c.plus(4.5, 0), LineStyle.DIMENSION);
        p.line(c.plus(0, -4.5), c.plus(0, 4.5), LineStyle.DIMENSION);
        p.circle(c, 2.5, LineStyle.BOX, Ink.INK);
        p.fillCircle(c, 0.5, Ink.INK, 1);
        p.text(name, c.plus(dx, dy), Pen.Align.CENTRE, 0, TextStyle.BOLD);
    }
}
