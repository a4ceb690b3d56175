package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.HoleNote;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.units.Format;

/** The hole schedule of the first sheet: every hole with its saw and its place from two edges. */
final class FirstSchedule {
    private static final double ROW = 6.4;
    /** Room kept for the small plans below, mm. */
    private static final double LEAST_PLANS = 46;

    private final Job job;
    private final Block block;

    FirstSchedule(Job job, Block block) {
        this.job = job;
        this.block = block;
    }

    /** Draws it; gives where it ends from the top. */
    double draw(double top, double bottom) {
        block.words("Hole schedule", block.left, top, FirstPage.HEADING);
        block.words(
                "to set out with a tape if the printer fails · mm to hole centres",
                block.left + block.pen.textWidth("Hole schedule", FirstPage.HEADING) + 4,
                top,
                FirstPage.SMALL);
        double end = block.right - FirstPage.PIN_STRIP;
        double w = end - block.left;
        double[] col = {0, 0.058, 0.235, 0.305, 0.555, 0.655, 0.76, 0.845, 0.935};
        String[] names = {"no.", "hole", "part", "saw", "from left", "from back", "radius", "bearing", "metal"};
        block.rule(block.left, end, top + 2, LineStyle.CHAMBER_WALL);
        for (int i = 0; i < names.length; i++) {
            block.words(names[i], block.left + col[i] * w, top + 6, FirstPage.SMALL);
        }
        block.rule(block.left, end, top + 7.6, LineStyle.DIMENSION);
        List<HoleSchedule.Row> rows = HoleSchedule.of(job.kiln());
        double room = bottom - LEAST_PLANS - top - 7.6 - 10;
        int fit = Math.min(rows.size(), Math.max(1, (int) Math.floor(room / ROW)));
        double y = top + 7.6;
        boolean walls = false;
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
            cell(r.part(), block.left, col, w, 2, base, TextStyle.PLAIN);
            cell(n.sizeWords(), block.left, col, w, 3, base, TextStyle.PLAIN);
            cell(LastPages.tenths(r.fromLeftMm()), block.left, col, w, 4, base, TextStyle.PLAIN);
            cell(
                    LastPages.tenths(r.fromOtherMm()) + (r.wall() ? " up" : ""),
                    block.left,
                    col,
                    w,
                    5,
                    base,
                    TextStyle.PLAIN);
            cell(r.wall() ? "–" : LastPages.tenths(r.radiusMm()), block.left, col, w, 6, base, TextStyle.PLAIN);
            cell(r.wall() ? "–" : Format.plain(r.bearingDeg(), 1) + "°", block.left, col, w, 7, base, TextStyle.PLAIN);
            cell(
                    n.hasMetal() ? Format.plain(n.metalMm(), 0) + (n.metalKnown() ? "" : " ?") : "–",
                    block.left,
                    col,
                    w,
                    8,
                    base,
                    TextStyle.PLAIN);
            y += ROW;
            block.rule(block.left, end, y, LineStyle.DIMENSION);
            walls |= r.wall();
        }
        List<String> foot = new ArrayList<>();
        if (fit < rows.size()) {
            foot.add((rows.size() - fit) + " more: last sheets");
        }
        foot.add("left: straight batten held against the leftmost corner or side");
        foot.add("back: another against the backmost, square to it");
        foot.add("bearing clockwise from the BACK, all seen from above");
        if (walls) {
            foot.add("wall: from the left corner seen from inside, and up from the floor's hot face");
        }
        for (String line : Words.wrap(block.pen, String.join(" · ", foot), end - block.left, TextStyle.BAR)) {
            y += 4;
            block.words(line, block.left, y, TextStyle.BAR);
        }
        return y + 2;
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
