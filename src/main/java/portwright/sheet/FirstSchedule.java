package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.HoleNote;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Panel;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;

/** The hole schedule of the first sheet: every hole with its saw and its place from two edges. */
final class FirstSchedule {
    private static final double ROW = 7.6;
    /** Room kept for the small plans below, mm. */
    private static final double LEAST_PLANS = 42;

    /** Up to so many holes every pair of one part is measured. */
    private static final int MOST_PAIRED = 5;

    private final Job job;
    private final Block block;
    private final boolean inch;

    FirstSchedule(Job job, Block block) {
        this.job = job;
        this.block = block;
        inch = job.kiln().design().units() != UnitSystem.METRIC;
    }

    /** Draws it; gives where it ends from the top. */
    double draw(double top, double bottom) {
        block.words("Hole schedule", block.left, top, FirstPage.HEADING);
        block.words(
                "to set out with a tape if the printer fails · to hole centres, "
                        + (inch ? "in (to 1/32) and mm" : "mm and in (to 1/32)"),
                block.left + block.pen.textWidth("Hole schedule", FirstPage.HEADING) + 4,
                top,
                FirstPage.SMALL);
        double end = block.right - FirstPage.PIN_STRIP;
        double w = end - block.left;
        double[] col = {0, 0.052, 0.234, 0.304, 0.504, 0.612, 0.732, 0.838, 0.906};
        List<HoleSchedule.Row> rows = HoleSchedule.of(job.kiln());
        String other = rows.stream().anyMatch(HoleSchedule.Row::wall) ? "back / up" : "from back";
        String[] names = {"no.", "hole", "part", "saw", "from left", other, "radius", "bearing", "metal"};
        block.rule(block.left, end, top + 2, LineStyle.CHAMBER_WALL);
        for (int i = 0; i < names.length; i++) {
            block.words(names[i], block.left + col[i] * w, top + 6, FirstPage.SMALL);
        }
        block.rule(block.left, end, top + 7.6, LineStyle.DIMENSION);
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
            length(r.fromLeftMm(), "", col, w, 4, y);
            length(r.fromOtherMm(), r.wall() ? " up" : "", col, w, 5, y);
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
            walls |= r.wall();
        }
        String pairs = pairs(rows);
        if (!pairs.isEmpty()) {
            for (String line : Words.wrap(block.pen, pairs, end - block.left, FirstPage.SMALL)) {
                y += 4.2;
                block.words(line, block.left, y, FirstPage.SMALL);
            }
        }
        List<String> foot = new ArrayList<>();
        if (fit < rows.size()) {
            foot.add((rows.size() - fit) + " more: last sheets");
        }
        foot.add("left: straight batten held against the leftmost corner or side");
        foot.add("back: another against the backmost, square to it");
        foot.add("bearing clockwise from the BACK, all seen from above"
                + (job.views().stream().anyMatch(v -> v.face().mirrored())
                        ? "; on a MIRRORED face left and right change places"
                        : ""));
        String others = unprinted(rows);
        if (!others.isEmpty()) {
            foot.add(others);
        }
        if (walls) {
            foot.add(
                    "wall: from the left corner seen from inside, and up from the floor's hot face; outside, that face lies "
                            + HoleNote.both(job.kiln().thickness(On.FLOOR))
                            + " above the floor's underside. Bore a pilot from inside through the jacket, then cut the jacket from outside, then the brick: where the bit comes out rules, not the paper's dot. From outside the chamber's corner cannot be seen: "
                            + fromOutside(rows));
        }
        for (String line : Words.wrap(block.pen, String.join(" · ", foot), end - block.left, TextStyle.BAR)) {
            y += 4;
            block.words(line, block.left, y, TextStyle.BAR);
        }
        return y + 2;
    }

    /** How far each hole of a wall lies from the wall's outer edges, as a tape finds it from outside. */
    private String fromOutside(List<HoleSchedule.Row> rows) {
        List<String> out = new ArrayList<>();
        for (HoleSchedule.Row r : rows) {
            if (r.wall()) {
                Panel p = job.kiln().panel(r.note().hole().face().panel());
                double u = r.note().hole().centre().x();
                double left = p.uMax(p.thickness()) - u;
                double right = u - p.uMin(p.thickness());
                out.add(r.note().number() + " lies " + HoleNote.both(left) + " from the outer left edge there, "
                        + HoleNote.both(right) + " from the right one");
            }
        }
        return String.join("; ", out);
    }

    /** Holes of parts that this print leaves out. */
    private String unprinted(List<HoleSchedule.Row> rows) {
        List<HoleSchedule.Row> out = rows.stream()
                .filter(r -> job.views().stream()
                        .noneMatch(v -> v.face().samePart(r.note().hole().face())))
                .toList();
        return out.isEmpty()
                ? ""
                : "no sheets here for "
                        + String.join(
                                ", ",
                                out.stream()
                                        .map(r -> r.note().number() + " (" + r.part() + ")")
                                        .toList());
    }

    /** A length in both systems, the design's own above. */
    private void length(double mm, String after, double[] col, double w, int i, double top) {
        String inches = InchFraction.words(mm, 32);
        String metric = LastPages.tenths(mm) + " mm";
        pair(inches + (inch ? after : ""), metric + (inch ? "" : after), col, w, i, top);
    }

    private void pair(String inches, String metric, double[] col, double w, int i, double top) {
        cell(inch ? inches : metric, block.left, col, w, i, top + 3.6, TextStyle.PLAIN);
        cell(inch ? metric : inches, block.left, col, w, i, top + 7, TextStyle.BAR);
    }

    /** Centre to centre of the holes of each part, to check across a seam; of many holes those next to each other in number. */
    private String pairs(List<HoleSchedule.Row> rows) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            for (int k = i + 1; k < rows.size() && (rows.size() <= MOST_PAIRED || k == i + 1); k++) {
                HoleNote a = rows.get(i).note();
                HoleNote b = rows.get(k).note();
                if (rows.get(i).part().equals(rows.get(k).part())) {
                    double mm = a.hole().centre().distance(b.hole().centre());
                    String words = InchFraction.words(mm, 32);
                    String metric = LastPages.tenths(mm) + " mm";
                    out.add(a.number() + " to " + b.number() + ": "
                            + (inch ? words + " (" + metric + ")" : metric + " (" + words + ")"));
                }
            }
        }
        return out.isEmpty() ? "" : "Centre to centre, to check across a seam: " + String.join(" · ", out);
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
