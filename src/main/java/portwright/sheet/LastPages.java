package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.drawing.HoleNote;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.review.Assumed;
import portwright.review.LightingLimits;

/** The end of the print: cautions in full and whose word comes first, findings in full, what was not checked or assumed, sheets left out. */
final class LastPages {
    private static final TextStyle TEXT = TextStyle.PLAIN;
    private static final double FOOT = 20;
    /** Room at the right for the upright bar. */
    private static final double BAR = 16;

    private static final double HEADING = 14;
    /** Most that a heading keeps with it, mm. */
    private static final double MOST_KEPT = 120;

    private static final String WANDER = "How far each hole may wander";
    private static final double WANDER_COLUMN = 13;
    /** Length of a line shown, mm. */
    private static final double SAMPLE = 26;

    private static final String JOINING =
            "Cut a sheet on its left and upper trim lines, lay it over the neighbours on those sides, and let the crosses in the diamonds meet. "
                    + "Tape on a flat board, then measure the schedule's distances across the joined sheets. White head: seen from above or inside. "
                    + "Black head: mirrored. F floor, L lid, W wall, U mirrored: these stand on every mark. Never mix them.";

    private final Job job;
    private final Fonts fonts;
    private final double width;
    private final double height;
    private final List<Page> pages = new ArrayList<>();
    private final Wraps wraps;
    private Pen pen;
    private double y;

    private LastPages(Job job, Fonts fonts) {
        this.job = job;
        this.fonts = fonts;
        wraps = new Wraps(fonts);
        width = job.paper().widthMm();
        height = job.paper().heightMm();
    }

    /** The pages laid out but for their feet, after the words of other pages that may lack signs. */
    static LastPages of(Job job, Fonts fonts) {
        LastPages l = new LastPages(job, fonts);
        l.findings();
        l.holes();
        l.wander();
        l.sheets();
        l.lines();
        l.cautions();
        l.missing();
        return l;
    }

    /** How many pages they are. */
    int size() {
        return pages.size();
    }

    /** The pages with their feet; sheet numbers go from {@code first} to {@code total}. */
    List<Page> numbered(int first, int total) {
        for (int i = 0; i < pages.size(); i++) {
            LastFoot.draw(job, pages.get(i), fonts, "sheet " + (first + i) + " of " + total);
        }
        return pages;
    }

    private double textWidth() {
        return Math.min(width - 2 * Frame.MARGIN - BAR, 240);
    }

    private void newPage() {
        Page p = new Page(width, height);
        pages.add(p);
        pen = PdfPen.onPage(p, fonts);
        y = height - Frame.MARGIN - 2;
    }

    private void room(double mm) {
        if (pen == null || y - mm < Frame.MARGIN + FOOT) {
            newPage();
        }
    }

    private void heading(String t) {
        heading(t, 8);
    }

    /** A heading that stays on one page with so much of what stands below it, mm. */
    private void heading(String t, double below) {
        room(HEADING + below);
        if (y < height - Frame.MARGIN - 3) {
            y -= 4;
        }
        pen.text(t, new Pt(Frame.MARGIN, y - FirstPage.HEADING.mm()), Pen.Align.LEFT, 0, FirstPage.HEADING);
        y -= FirstPage.HEADING.mm() + 2;
        pen.line(new Pt(Frame.MARGIN, y), new Pt(Frame.MARGIN + textWidth(), y), LineStyle.BOX);
        y -= 2;
    }

    private void para(String t, double indent, TextStyle s) {
        double w = textWidth() - indent;
        room(wraps.high(t, w, s));
        y = Words.flow(pen, wraps.lines(t, w, s), Frame.MARGIN + indent, y, s);
    }

    /** Items under a heading that a new page repeats; the last two stay together, so that no page begins with a single one that is left over. */
    private void list(String heading, List<String> items, double gap) {
        for (int i = 0; i < items.size(); i++) {
            int before = pages.size();
            double high = wraps.high(items.get(i), textWidth(), TEXT);
            boolean lastTwo = i == items.size() - 2;
            room(lastTwo ? high + gap + wraps.high(items.get(i + 1), textWidth(), TEXT) : high);
            if (pages.size() > before) {
                heading(heading + ", continued");
            }
            para(items.get(i), 0, TEXT);
            y -= gap;
        }
    }

    private void findings() {
        heading("Findings in full");
        if (job.result().findings().isEmpty()) {
            para("None in what was checked.", 0, TEXT);
        }
        for (Finding f : job.result().findings()) {
            double w = textWidth() - 9;
            String source =
                    RuleWords.head(f.rule()) + ": " + f.source().line() + (f.limitSetByUser() ? " · your limit" : "");
            String remedy = f.remedy() == null ? "" : FieldNames.inWords(f.remedy());
            room(wraps.high(f.message(), w, TextStyle.BOLD)
                    + wraps.high(remedy, w, TEXT)
                    + wraps.high(source, w, TextStyle.BAR)
                    + 2);
            Signs.severity(pen, f.severity(), new Pt(Frame.MARGIN + 3, y - 3), 5.6);
            para(f.message(), 9, TextStyle.BOLD);
            if (!remedy.isBlank()) {
                para(remedy, 9, TEXT);
            }
            para(source, 9, TextStyle.BAR);
            y -= 1.6;
        }
        heading("Not checked");
        List<NotChecked> nots = job.result().notChecked();
        if (nots.isEmpty()) {
            para("Every rule was checked.", 0, TEXT);
        }
        List<String> said = new ArrayList<>();
        for (NotChecked n : nots) {
            String t = RuleWords.head(n.rule()) + ". " + FieldNames.lacking(n) + ".";
            if (!said.contains(t)) {
                said.add(t);
                room(5);
                Signs.notChecked(pen, new Pt(Frame.MARGIN + 3, y - 2.4), 4);
                para(t, 9, TEXT);
            }
        }
        if (!job.result().ownLimits().isEmpty()) {
            heading("Your own limits");
            job.result()
                    .ownLimits()
                    .forEach(l -> para(
                            RuleWords.head(l.rule())
                                    + l.words().substring(l.rule().length()),
                            0,
                            TEXT));
        }
        if (!job.result().assumed().isEmpty()) {
            heading("Assumed");
            job.result().assumed().forEach(a -> para(assumed(a), 0, TEXT));
        }
    }

    private static String assumed(Assumed a) {
        return FieldNames.of(a.field()) + " = " + a.value() + ". "
                + Character.toUpperCase(a.why().charAt(0)) + a.why().substring(1) + ".";
    }

    private void holes() {
        List<HoleSchedule.Row> rows = HoleSchedule.of(job.kiln());
        heading("Holes and saws", 24);
        list(
                "Holes and saws",
                rows.stream().map(r -> r.words(job.kiln().design().units())).toList(),
                0);
    }

    private void wander() {
        WanderRows table = new WanderRows(job.drill(), HoleNote.of(job.kiln()));
        List<WanderRows.Row> rows = table.rows();
        if (rows.isEmpty()) {
            if (!table.words().isEmpty()) {
                heading(WANDER, Words.height(pen, table.words(), textWidth(), TEXT));
                para(table.words(), 0, TEXT);
            }
            return;
        }
        double cells = 6 + 9 * rows.size();
        heading(WANDER, Math.min(MOST_KEPT, Words.height(pen, table.words(), textWidth(), TEXT) + cells));
        para(table.words(), 0, TEXT);
        y -= 1;
        double name = textWidth() - WanderRows.HEADS.size() * WANDER_COLUMN;
        room(cells);
        cells(WanderRows.HEADS, name, TextStyle.BAR);
        for (WanderRows.Row r : rows) {
            room(9);
            pen.text(
                    Words.fit(pen, r.hole(), name, TextStyle.BOLD),
                    new Pt(Frame.MARGIN, y - 3.6),
                    Pen.Align.LEFT,
                    0,
                    TextStyle.BOLD);
            cells(r.room(), name, TEXT);
            if (!r.tightest().isEmpty()) {
                para(r.tightest(), 6, TextStyle.BAR);
            }
            y -= 0.8;
        }
    }

    private void cells(List<String> words, double left, TextStyle style) {
        for (int i = 0; i < words.size(); i++) {
            pen.text(
                    words.get(i),
                    new Pt(Frame.MARGIN + left + (i + 1) * WANDER_COLUMN, y - 3.6),
                    Pen.Align.RIGHT,
                    0,
                    style);
        }
        y -= 4.8;
    }

    private void sheets() {
        heading("Putting the sheets together", Words.height(pen, JOINING, textWidth(), TEXT));
        para(JOINING, 0, TEXT);
        for (View v : job.views()) {
            List<Tile> blank = v.tiling().blanks();
            String t = v.words() + ": " + v.tiling().printed().size()
                    + (v.tiling().printed().size() == 1 ? " sheet" : " sheets");
            t += blank.isEmpty()
                    ? "."
                    : "; blank, left out: "
                            + String.join(", ", blank.stream().map(Tile::name).toList()) + ".";
            para(t, 0, TEXT);
            v.bare(pen).forEach(b -> para(b, 0, TEXT));
            v.cuts().forEach(c -> para(c, 0, TextStyle.BOLD));
        }
    }

    private void lines() {
        List<LineKey.Row> key = LineKey.of(job, fonts);
        heading("Reading the lines", 5 * key.size());
        for (LineKey.Row r : key) {
            pen.line(new Pt(Frame.MARGIN, y - 2.2), new Pt(Frame.MARGIN + SAMPLE, y - 2.2), r.style(), Ink.INK);
            y -= 0.4;
            para(r.words(), SAMPLE + 4, TEXT);
        }
    }

    private void cautions() {
        Design design = job.kiln().design();
        LightingLimits limits = LightingLimits.of(design, job.result().figures());
        for (Map.Entry<String, List<String>> e :
                Cautions.byMoment(design, limits).entrySet()) {
            heading(e.getKey(), 18);
            list(e.getKey(), e.getValue(), 1.2);
        }
        heading("Whose word comes first");
        para(Cautions.LOCAL_CODE, 0, TextStyle.BOLD);
    }

    private void missing() {
        if (!fonts.missing().isEmpty()) {
            heading("Signs that the type face lacks");
            para(Fonts.SUBSTITUTE + " stands for: " + Fonts.words(fonts.missing()) + ".", 0, TEXT);
        }
    }
}
