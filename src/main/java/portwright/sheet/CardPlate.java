package portwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.review.PlateSetting;
import portwright.units.InchFraction;

/** The damper plate over one flue at full size, with the travel of each level. */
final class CardPlate {
    /** Of a wide flue only so much of each half is drawn. */
    private static final double WIDEST_HALF = 26;
    /** Room beside the drawn flue for its rule and the words of the levels, mm. */
    private static final double WORDS = 44;

    private static final TextStyle INSIDE = new TextStyle(TextStyle.Face.SANS, 13, 3, Ink.INK, true);
    /** Pieces that an arc is drawn with. */
    private static final int ARC = 60;

    private final CardPaper c;
    private final CardData.Plate plate;

    CardPlate(CardPaper c, CardData.Plate plate) {
        this.c = c;
        this.plate = plate;
    }

    /** Width that it needs, mm. */
    double needs() {
        return (plate == null ? 0 : 2 * Math.min(plate.holeMm() / 2, WIDEST_HALF)) + WORDS;
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
        c.cell("Damper plate on " + p.flue() + ", full size", c.left, w, top, CardPaper.HEADING);
        double y = c.flow(
                "Open travel. In the table: from a step's start to its end. Here: at its end (range it may need).",
                c.left,
                top + 1.6,
                w,
                CardPaper.TEXT);
        double r = p.holeMm() / 2;
        boolean large = p.holeMm() > 60;
        double shown = Math.min(r, WIDEST_HALF);
        double cx = c.left + 11 + shown;
        double zero = y + 3 + (large ? 60 : p.holeMm());
        Pt centre = c.at(cx, zero - r);
        Box seen = new Box(c.left + 9, c.height - zero - 4, cx + shown + 1, c.height - y - 1);
        c.page.clip(seen.minX(), seen.minY(), seen.width(), seen.height());
        double free = p.bands().stream().mapToDouble(CardData.Band::setMm).max().orElse(p.holeMm());
        c.pen.fill(covered(centre, r, free), Ink.SHADE, 1);
        c.pen.circle(centre, r, LineStyle.SAW_CIRCLE, Ink.INK);
        c.pen.line(centre.plus(0, -r - 3), centre.plus(0, r + 3), LineStyle.DIMENSION);
        c.page.unclip();
        double tall = large ? 60 : p.holeMm();
        for (int mm = 0; mm <= tall; mm++) {
            double tick = mm % 10 == 0 ? 3.4 : mm % 5 == 0 ? 2.4 : 1.4;
            Pt a = c.at(c.left + 6, zero - mm);
            c.pen.line(a, a.plus(tick, 0), LineStyle.DIMENSION);
            if (mm % 10 == 0) {
                c.pen.text(String.valueOf(mm), a.plus(-1, -1), Pen.Align.RIGHT, 0, TextStyle.BAR);
            }
        }
        bands(p, cx, shown, zero, y + 3, end);
        c.pen.text("open", c.at(cx, zero - 3), Pen.Align.CENTRE, 0, INSIDE);
        if (free < tall - 8) {
            c.pen.text("plate", c.at(cx, zero - (free + tall) / 2 + 1), Pen.Align.CENTRE, 0, INSIDE);
        }
        c.words("0 = shut", c.left, zero + 4.5, TextStyle.BAR);
        int last = (int) tall / 10 * 10;
        c.words("Measure it: 0 to " + last + " is " + last + " mm by a rule.", c.left, zero + 9, CardPaper.TEXT);
        return closing(zero + 11, w);
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

    private void bands(CardData.Plate p, double cx, double r, double zero, double top, double end) {
        List<CardData.Band> bands = new ArrayList<>(p.bands());
        bands.sort(Comparator.comparingDouble(CardData.Band::setMm).reversed());
        double x = Math.min(cx + r + 9, end - 25);
        double step = bands.isEmpty() ? 0 : Math.min(10.5, Math.max(8.6, (zero - top - 4) / bands.size()));
        double y = top + 5;
        for (CardData.Band b : bands) {
            double mid = b.setMm();
            Pt from = c.at(cx - r, zero - mid);
            Pt to = c.at(cx + r + 2, zero - mid);
            c.pen.line(from, to, LineStyle.CHAMBER_WALL, Ink.INK);
            c.pen.line(to, c.at(x - 1, y - 1.2), LineStyle.DIMENSION);
            c.words(b.level(), x, y, CardPaper.STEP_BOLD);
            if (p.inch()) {
                c.words(
                        InchFraction.words(mid, 16),
                        x + c.pen.textWidth(b.level(), CardPaper.STEP_BOLD) + 1.5,
                        y,
                        CardPaper.TEXT);
            }
            c.words(
                    PlateSetting.whole(mid) + " mm (" + PlateSetting.whole(b.lowMm()) + "–"
                            + PlateSetting.whole(b.highMm()) + ")",
                    x,
                    y + 4.2,
                    CardPaper.TEXT);
            y += step;
        }
        if (bands.isEmpty()) {
            c.flow("No travel computed. Mark your own: ______ mm", x, top + 2, end - x, CardPaper.TEXT);
        }
    }

    private double closing(double y, double w) {
        return c.flow(
                "The figures size the range, they do not set it. Set by flame, probe and CO meter.",
                c.left,
                y,
                w,
                CardPaper.NUMBER);
    }
}
