package portwright.sheet;

import java.util.List;
import portwright.drawing.HoleNote;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;

/** The hole schedule of the first sheet: every hole with its saw and its place from two edges. */
final class FirstSchedule {
    private static final double ROW = 7.6;
    /** Height of the columns' heads, mm. */
    private static final double HEAD = 7.6;
    /** Room kept for the small plans below, mm. */
    private static final double LEAST_PLANS = 42;

    /**
     * @param endMm where it ends from the top
     * @param leftOut holes for which there was no room
     */
    record Drawn(double endMm, int leftOut) {}

    private final Job job;
    private final Block block;
    private final boolean inch;

    FirstSchedule(Job job, Block block) {
        this.job = job;
        this.block = block;
        inch = job.kiln().design().units() != UnitSystem.METRIC;
    }

    /** How many holes have room, 1 at least. */
    int fit(double top, double bottom) {
        double room = bottom - LEAST_PLANS - top - HEAD - 10;
        return Math.min(HoleSchedule.of(job.kiln()).size(), Math.max(1, (int) Math.floor(room / ROW)));
    }

    /** Where so many rows end, mm from the top of the sheet. */
    static double end(double top, int rows) {
        return top + HEAD + ROW * rows;
    }

    /** Draws so many rows from the top. */
    Drawn draw(double top, int fit) {
        block.words("Hole schedule", block.left, top, FirstPage.HEADING);
        block.words(
                "to set out with a tape if the printer fails · "
                        + (inch ? "in and mm" : "mm and in")
                        + ", to hole centres (inches to 1/32)",
                block.left + block.pen.textWidth("Hole schedule", FirstPage.HEADING) + 4,
                top,
                FirstPage.SMALL);
        double end = block.right - FirstPage.PIN_STRIP;
        double w = end - block.left;
        double[] col = {0, 0.052, 0.242, 0.322, 0.442, 0.576, 0.708, 0.824, 0.91};
        List<HoleSchedule.Row> rows = HoleSchedule.of(job.kiln());
        String other = rows.stream().anyMatch(HoleSchedule.Row::wall) ? "back / up" : "from back";
        String[] names = {"no.", "hole", "part", "hole, saw", "from left", other, "radius", "bearing", "metal"};
        block.rule(block.left, end, top + 2, LineStyle.CHAMBER_WALL);
        for (int i = 0; i < names.length; i++) {
            block.words(names[i], block.left + col[i] * w, top + 6, FirstPage.SMALL);
        }
        block.rule(block.left, end, top + HEAD, LineStyle.DIMENSION);
        double y = top + HEAD;
        for (HoleSchedule.Row r : rows.subList(0, fit)) {
            HoleNote n = r.note();
            double base = y + ROW * 0.68;
            block.pen.circle(block.at(block.left + 2.7, y + ROW / 2), 2.5, LineStyle.BOX, Ink.INK);
            block.pen.text(
                    String.valueOf(n.number()),
                    block.at(block.left + 2.7, y + ROW / 2 + 1.2),
                    Pen.Align.CENTRE,
                    0,
                    TextStyle.BOLD);
            cell(n.hole().name(), block.left, col, w, 1, base, TextStyle.BOLD);
            if (r.wall()) {
                over(r.part(), job.kiln().panel(n.hole().face().panel()).side(), col, w, 2, y);
            } else {
                cell(r.part(), block.left, col, w, 2, base, TextStyle.PLAIN);
            }
            String[] size = n.sizeWords().split(" · ", -1);
            over(
                    size[0].replace("about ", "≈ "),
                    n.sawDiffers() ? "saw " + n.saw().size().typed() : size[1].replace("about ", "≈ "),
                    col,
                    w,
                    3,
                    y);
            boolean outside = r.wall() && job.outsideOnly(r.note().hole().face().panel());
            length(outside ? r.outerLeftMm(job.kiln()) : r.fromLeftMm(), "", col, w, 4, y);
            length(outside ? r.upOutsideMm(job.kiln()) : r.fromOtherMm(), r.wall() ? " up" : "", col, w, 5, y);
            if (r.wall()) {
                cell("–", block.left, col, w, 6, base, TextStyle.PLAIN);
            } else {
                length(r.radiusMm(), "", col, w, 6, y);
            }
            cell(r.wall() ? "–" : Format.plain(r.bearingDeg(), 1) + "°", block.left, col, w, 7, base, TextStyle.PLAIN);
            if (n.hasMetal()) {
                String sure = n.metalKnown() ? "" : " ?";
                pair(
                        InchFraction.words(n.metalMm(), 16) + sure,
                        Format.plain(n.metalMm(), 1) + " mm" + sure,
                        col,
                        w,
                        8,
                        y);
            } else {
                cell("–", block.left, col, w, 8, base, TextStyle.PLAIN);
            }
            y += ROW;
            block.rule(block.left, end, y, LineStyle.DIMENSION);
        }
        return new Drawn(y, rows.size() - fit);
    }

    /** A length in both systems, the design's own above. */
    private void length(double mm, String after, double[] col, double w, int i, double top) {
        String inches = InchFraction.words(mm, 32);
        String metric = Format.tenths(mm) + " mm";
        pair(inches + (inch ? after : ""), metric + (inch ? "" : after), col, w, i, top);
    }

    private void pair(String inches, String metric, double[] col, double w, int i, double top) {
        over(inch ? inches : metric, inch ? metric : inches, col, w, i, top);
    }

    private void over(String above, String below, double[] col, double w, int i, double top) {
        cell(above, block.left, col, w, i, top + 3.6, TextStyle.PLAIN);
        cell(below, block.left, col, w, i, top + 7, TextStyle.BAR);
    }

    private void cell(String t, double x, double[] col, double w, int i, double base, TextStyle s) {
        double room = ((i + 1 < col.length ? col[i + 1] : 1) - col[i]) * w - 1;
        TextStyle fit = s;
        if (block.pen.textWidth(t, s) > room) {
            fit = s.size(s.px(), Math.max(3.0, s.mm() * room / block.pen.textWidth(t, s)));
        }
        block.words(Words.fit(block.pen, t, room, fit), x + col[i] * w, base, fit);
    }
}
