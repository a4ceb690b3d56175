package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;
import portwright.model.On;

/** Small plans of the faces that are printed: where the sheets meet, and the edges that the schedule is measured from. */
final class FirstPlans {
    private static final int[] REDUCTIONS = {
        2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 30, 32, 35, 40, 50, 75, 100
    };

    private static final int MOST = 3;
    /** Height for a plan's name, two lines, mm. */
    private static final double CAPTION = 10;

    /** On so wide a plan LEFT and RIGHT stand beside each other, BACK and FRONT above and below them, mm. */
    private static final double LEAST_MM = 27;

    private static final TextStyle NAME = new TextStyle(TextStyle.Face.SANS, 12.5, 2.8, Ink.INK, true);

    private final Job job;
    private final Block block;
    private final List<View> views;
    private final List<PartPainter> painters;

    FirstPlans(Job job, Block block) {
        this.job = job;
        this.block = block;
        views = views(job);
        painters = views.stream()
                .map(v -> new PartPainter(job.kiln(), v.face(), job.result().findings(), PartLook.small()))
                .toList();
    }

    /** How many times smaller than the kiln they can be drawn within a box, from the top. */
    int reduction(double left, double end, double top, double bottom) {
        double slot = slot(left, end);
        double room = room(top, bottom);
        int reduction = REDUCTIONS[REDUCTIONS.length - 1];
        for (int i = REDUCTIONS.length - 1; i >= 0; i--) {
            int n = REDUCTIONS[i];
            boolean roomy = n >= 10 || block.width > 250;
            if (roomy
                    && painters.stream()
                            .allMatch(p -> p.bounds().width() / n <= slot - 14
                                    && (p.bounds().height() + below(p)) / n <= room - 8)) {
                reduction = n;
            }
        }
        return reduction;
    }

    /** Whether their words keep clear of each other so much smaller than the kiln. */
    boolean readable(int reduction) {
        return painters.stream()
                .map(p -> Box.around(p.rim()))
                .allMatch(b -> Math.max(b.width(), b.height()) >= LEAST_MM * reduction);
    }

    /** Draws them within a box, from the top. */
    void draw(double left, double end, double top, double bottom) {
        int reduction = reduction(left, end, top, bottom);
        double slot = slot(left, end);
        for (int i = 0; i < painters.size(); i++) {
            plan(views.get(i), painters.get(i), left + slot * i, top, slot, room(top, bottom), reduction);
        }
    }

    private double slot(double left, double end) {
        return (end - left) / Math.max(1, views.size());
    }

    /** Height for a plan above its name. */
    private static double room(double top, double bottom) {
        return bottom - top - CAPTION;
    }

    /** The faces that are printed; of more than three one for each part, not mirrored where both are. */
    private static List<View> views(Job job) {
        List<View> all = job.views();
        return all.size() <= MOST
                ? all
                : all.stream()
                        .filter(v -> !v.face().mirrored()
                                || all.stream()
                                        .noneMatch(o -> o != v
                                                && o.face().on() == v.face().on()
                                                && o.face().panel() == v.face().panel()))
                        .limit(MOST)
                        .toList();
    }

    private void plan(View view, PartPainter p, double x, double top, double slot, double room, int reduction) {
        double f = 1.0 / reduction;
        Box b = p.bounds();
        double cx = x + slot / 2;
        double cy = block.height - top - room / 2 + below(p) * f / 2;
        PdfPen small = block.pen(cx - b.centre().x() * f, cy - b.centre().y() * f, f, f);
        Box rim = Box.around(p.rim());
        Box window = rim.grown(5 * reduction);
        List<Box> taken = new ArrayList<>();
        boolean wall = p.face().on() == On.WALL;
        boolean outsideOnly = wall && job.outsideOnly(p.face().panel());
        String[] sides = wall ? new String[] {"TOP", "BOTTOM"} : new String[] {"BACK", "FRONT"};
        TextStyle s = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.0, Ink.INK, true);
        Pt back = new Pt(rim.centre().x(), rim.maxY() - 4.2 * reduction);
        Pt front = new Pt(rim.centre().x(), rim.minY() + 1.6 * reduction);
        for (Pt w : List.of(back, front)) {
            taken.add(
                    new Box(w.x() - 6 * reduction, w.y() - reduction, w.x() + 6 * reduction, w.y() + 3.4 * reduction));
        }
        boolean turned = p.face().mirrored();
        double level = rim.centre().y() + 2 * reduction;
        String[] ends = {turned ? "RIGHT" : "LEFT", turned ? "LEFT" : "RIGHT"};
        Pt leftEnd = new Pt(rim.minX() + reduction, level);
        Pt rightEnd = new Pt(rim.maxX() - reduction, level);
        double end = Math.max(small.textWidth(ends[0], s), small.textWidth(ends[1], s));
        if (!wall) {
            taken.add(new Box(leftEnd.x(), level - reduction, leftEnd.x() + end, level + 3.4 * reduction));
            taken.add(new Box(rightEnd.x() - end, level - reduction, rightEnd.x(), level + 3.4 * reduction));
        }
        p.paint(small, window, taken);
        sheets(view, p.bounds(), small, reduction);
        if (!wall) {
            small.text(ends[0], leftEnd, Pen.Align.LEFT, 0, s);
            small.text(ends[1], rightEnd, Pen.Align.RIGHT, 0, s);
        }
        small.text(sides[0], back, Pen.Align.CENTRE, 0, s);
        small.text(sides[1], front, Pen.Align.CENTRE, 0, s);
        if (!wall || !turned || outsideOnly) {
            battens(small, rim, wall, !wall && turned, below(p), reduction);
        }
        String name = view.words() + (p.face().mirrored() ? ", MIRRORED" : "");
        List<String> title = Words.wrap(block.pen, name + ", 1:" + reduction, slot - 2, TextStyle.BOLD);
        double base = block.height - top - room - CAPTION + 1.5;
        for (int i = 0; i < title.size(); i++) {
            block.pen.text(
                    title.get(i), new Pt(cx, base + 4.6 * (title.size() - 1 - i)), Pen.Align.CENTRE, 0, TextStyle.BOLD);
        }
    }

    /** How far below a wall's picture the floor's underside lies, where the schedule is measured from that, mm. */
    private double below(PartPainter p) {
        return p.face().on() == On.WALL && job.outsideOnly(p.face().panel())
                ? job.kiln().thickness(On.FLOOR)
                : 0;
    }

    /** The edges that the schedule is measured from. */
    private static void battens(PdfPen small, Box rim, boolean wall, boolean right, double below, int reduction) {
        double over = 2.5 * reduction;
        double x = right ? rim.maxX() : rim.minX();
        double y = wall ? rim.minY() - below : rim.maxY();
        double foot = wall ? y - over : rim.minY();
        small.line(new Pt(x, rim.maxY() + over), new Pt(x, foot), LineStyle.CHAMBER_WALL);
        small.line(new Pt(rim.minX() - over, y), new Pt(rim.maxX() + over, y), LineStyle.CHAMBER_WALL);
        small.text("batten", new Pt(x, Math.min(foot, rim.minY()) - 5.6 * reduction), Pen.Align.CENTRE, 0, NAME);
        small.text("batten", new Pt(rim.maxX() + 2.8 * reduction, y - reduction), Pen.Align.LEFT, 0, NAME);
    }

    /** Where the sheets meet, with the letter of each column above, the number of each row beside, and in the corner what stands before both. */
    private static void sheets(View view, Box b, PdfPen small, int reduction) {
        Tiling t = view.tiling();
        Box seen = b.grown(2 * reduction);
        for (int c = 0; c + 1 < t.columnCount(); c++) {
            small.line(new Pt(t.seamX(c), seen.minY()), new Pt(t.seamX(c), seen.maxY()), LineStyle.TRIM);
        }
        for (int r = 0; r + 1 < t.rowCount(); r++) {
            small.line(new Pt(seen.minX(), t.seamY(r)), new Pt(seen.maxX(), t.seamY(r)), LineStyle.TRIM);
        }
        if (t.printed().size() < 2) {
            return;
        }
        double top = seen.maxY() + reduction;
        double left = seen.minX() - 1.6 * reduction;
        small.text(view.code(), new Pt(seen.minX() + reduction, top), Pen.Align.RIGHT, 0, NAME);
        for (int c = 0; c < t.columnCount(); c++) {
            double from = c == 0 ? b.minX() : t.seamX(c - 1);
            double to = c + 1 == t.columnCount() ? b.maxX() : t.seamX(c);
            small.text(Tiling.letters(c), new Pt((from + to) / 2, top), Pen.Align.CENTRE, 0, NAME);
        }
        for (int r = 0; r < t.rowCount(); r++) {
            double from = r == 0 ? b.maxY() : t.seamY(r - 1);
            double to = r + 1 == t.rowCount() ? b.minY() : t.seamY(r);
            small.text(String.valueOf(r + 1), new Pt(left, (from + to) / 2 - reduction), Pen.Align.RIGHT, 0, NAME);
        }
    }
}
