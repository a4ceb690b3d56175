package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.review.PlateSetting;

/** The damper plate over one flue, whole: at full size where it has room, else smaller and so called; with the travel of each step with gas. */
final class CardPlate {
    /** Widest flue that is drawn at full size, mm; 2 1/2 in is. */
    private static final double WIDEST = 64;
    /** Room beside the drawn flue for its rule, leaders and the gap to the lists, mm. */
    private static final double BESIDE = 23;
    /** Least and most room of the words of the marks, mm. */
    private static final double WORDS = 23;

    private static final double MOST_WORDS = 34;
    /** Between a mark's steps and its travel, mm. */
    private static final double APART = 1.5;
    /** More where inches stand beside a travel, mm. */
    private static final double INCHES = 7;

    private static final TextStyle INSIDE = new TextStyle(TextStyle.Face.SANS, 13, 3, Ink.INK, true);
    /** A travel is read at arm's length through a visor. */
    private static final TextStyle TRAVEL = new TextStyle(TextStyle.Face.SANS_BOLD, 20, 5.2, Ink.INK, false);
    /** Most marks that have room for their fires under them. */
    private static final int FEW = 5;
    /** Room of a mark with its fires, and without, mm. */
    private static final double TWO_LINES = 9.6;

    private static final double ONE_LINE = 6.4;
    /** Pieces that an arc is drawn with. */
    private static final int ARC = 60;

    private final CardPaper c;
    private final CardData.Plate plate;

    /** Drawn over true, 1 at full size. */
    private final double scale;

    CardPlate(CardPaper c, CardData.Plate plate) {
        this.c = c;
        this.plate = plate;
        scale = plate == null ? 1 : Math.min(1, WIDEST / plate.holeMm());
    }

    /** Width that it needs, mm. */
    double needs() {
        if (plate == null) {
            return BESIDE + WORDS;
        }
        double widest = plate.marks().stream()
                .mapToDouble(m ->
                        c.pen.textWidth(steps(m), CardPaper.STEP_BOLD) + APART + c.pen.textWidth(travel(m), TRAVEL))
                .max()
                .orElse(0);
        return plate.holeMm() * scale
                + BESIDE
                + Math.max(WORDS + (plate.inch() ? INCHES : 0), Math.min(MOST_WORDS, widest));
    }

    private static String steps(CardData.Mark m) {
        return String.join(", ", m.steps().stream().map(String::valueOf).toList());
    }

    private static String travel(CardData.Mark m) {
        return PlateSetting.whole(m.mm()) + " mm";
    }

    /** Draws from a top to an end on the right; answers where it ends below. */
    double draw(double top, double end) {
        double w = end - c.left;
        CardData.Plate p = plate;
        if (p == null) {
            c.words("Plate over the flue", c.left, top, CardPaper.HEADING);
            double y =
                    c.flow("The flues are not known: the plate cannot be drawn.", c.left, top + 2, w, CardPaper.TEXT);
            return closing(y + 2, w);
        }
        boolean full = scale == 1;
        double y = c.flow(
                "Damper plate on " + p.flue() + (full ? ", full size" : ", NOT full size"),
                c.left,
                top - 4,
                w,
                CardPaper.HEADING);
        y = c.flow(
                "Open travel: in the table from a step's start to its end; here, by step number, at its end (range).",
                c.left,
                y - 0.4,
                w,
                CardPaper.TEXT);
        double drawn = p.holeMm() * scale;
        double r = drawn / 2;
        double cx = c.left + 11 + r;
        double zero = y + 3 + drawn;
        Pt centre = c.at(cx, zero - r);
        double free =
                scale * p.marks().stream().mapToDouble(CardData.Mark::mm).max().orElse(p.holeMm());
        c.pen.fill(covered(centre, r, free), Ink.SHADE, 1);
        c.pen.circle(centre, r, LineStyle.SAW_CIRCLE, Ink.INK);
        c.pen.line(centre.plus(0, -r - 3), centre.plus(0, r + 3), LineStyle.DIMENSION);
        rule(zero);
        double under = marks(p, cx, r, zero, y + 3, end);
        c.pen.text("open", c.at(cx, zero - 3), Pen.Align.CENTRE, 0, INSIDE);
        if (free < drawn - 8) {
            c.pen.text("plate", c.at(cx, zero - (free + drawn) / 2 + 1), Pen.Align.CENTRE, 0, INSIDE);
        }
        c.words("0 = shut", c.left, zero + 4.5, TextStyle.BAR);
        int last = (int) p.holeMm() / 10 * 10;
        double measured = c.flow(
                full
                        ? "Measure it: 0 to " + last + " is " + last + " mm."
                        : "Too wide to draw at full size. Set the plate with a rule.",
                c.left,
                zero + 5.4,
                cx + r + 4 - c.left,
                CardPaper.TEXT);
        double foot = Math.max(measured + 0.8, under);
        return closing(p.close().isEmpty() ? foot : c.flow(p.close(), c.left, foot, w, CardPaper.NUMBER) + 0.8, w);
    }

    /** True millimetres of the flue beside it, as large as it is drawn; where that is small, every fifth. */
    private void rule(double zero) {
        for (int mm = 0; mm <= plate.holeMm(); mm += scale == 1 ? 1 : 5) {
            double tick = mm % 10 == 0 ? 3.4 : mm % 5 == 0 ? 2.4 : 1.4;
            Pt a = c.at(c.left + 6, zero - mm * scale);
            c.pen.line(a, a.plus(tick, 0), LineStyle.DIMENSION);
            if (mm % (scale < 0.5 ? 20 : 10) == 0) {
                c.pen.text(String.valueOf(mm), a.plus(-1, -1), Pen.Align.RIGHT, 0, TextStyle.BAR);
            }
        }
    }

    /** The part of a flue that the plate still covers when its edge stands so many mm above the lower end. */
    private static List<Pt> covered(Pt centre, double r, double open) {
        double from = Math.asin(Math.max(-1, Math.min(1, open / r - 1)));
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i <= ARC; i++) {
            double a = from + (Math.PI - 2 * from) * i / ARC;
            out.add(centre.plus(r * Math.cos(a), r * Math.sin(a)));
        }
        return out;
    }

    /** A line for each travel, and beside it the steps, the travel and the fires; answers where the last ends. */
    private double marks(CardData.Plate p, double cx, double r, double zero, double top, double end) {
        double x = cx + r + 8;
        boolean few = p.marks().size() <= FEW;
        double y = top + 4;
        for (CardData.Mark m : p.marks()) {
            Pt from = c.at(cx - r, zero - m.mm() * scale);
            Pt to = c.at(cx + r + 2, zero - m.mm() * scale);
            c.pen.line(from, to, LineStyle.CHAMBER_WALL, Ink.INK);
            c.pen.line(to, c.at(x - 1, y - 1.6), LineStyle.DIMENSION);
            String travel = travel(m);
            double at = end - c.pen.textWidth(travel, TRAVEL);
            c.words(travel, at, y, TRAVEL);
            c.words(steps(m), x, y, c.fitted(steps(m), at - x - APART, CardPaper.STEP_BOLD));
            y += few ? 4.2 : ONE_LINE;
            if (few) {
                String range = m.highMm() > m.lowMm()
                        ? " (" + PlateSetting.whole(m.lowMm()) + "–" + PlateSetting.whole(m.highMm()) + ")"
                        : "";
                String told =
                        String.join(", ", m.levels()) + range + (m.inches().isEmpty() ? "" : ", " + m.inches());
                double low = c.flow(told.strip(), x, y - 3, end - x, c.fitted(told, end - x, CardPaper.TEXT));
                y = Math.max(y + TWO_LINES - 4.2, low + 5.2);
            }
        }
        if (p.marks().isEmpty()) {
            return c.flow("No travel computed. Mark your own: ______ mm", x, top + 2, end - x, CardPaper.TEXT);
        }
        return y - (few ? 5 : 3);
    }

    private double closing(double y, double w) {
        return c.flow(
                "The figures give a range: set the plate by flame, probe and CO meter.",
                c.left,
                y,
                w,
                CardPaper.NUMBER);
    }
}
