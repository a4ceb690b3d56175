package portwright.sheet;

import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Words;

/** The blank table of the record: what room the first page leaves, and a whole page for the back of it. */
final class CardRecord {
    /** Lowest row that a gloved hand fills, mm. */
    static final double LEAST_ROW = 7;
    /** Fewer are not worth a table: its head and two to write in. */
    private static final int LEAST_ROWS = 3;
    /** Height of the heading, mm. */
    private static final double HEADING = 6.2;
    /** Where each column begins, as a share of the width. */
    private static final double[] COLUMNS = {0, 0.107, 0.226, 0.344, 0.462, 0.58, 0.72, 0.816, 1};

    private final CardPaper c;
    private final CardData data;

    CardRecord(CardPaper c, CardData data) {
        this.c = c;
        this.data = data;
    }

    /** The rest of the first page: a table, or a line that says where to write where none fits. */
    void below(double top, boolean cautions) {
        if (top + HEADING > c.bottom()) {
            return;
        }
        if (rows(top + HEADING, c.bottom()) < LEAST_ROWS) {
            String line = "Write the firing down on the back; " + forecast();
            c.words(Words.fit(c.pen, line, c.width(), CardPaper.TEXT), c.left, top + 5, CardPaper.TEXT);
            return;
        }
        c.words("Record", c.left, top + 5, CardPaper.HEADING);
        double used = c.pen.textWidth("Record", CardPaper.HEADING) + 4;
        c.words(
                Words.fit(
                        c.pen,
                        forecast() + (cautions ? "; rows on the back" : "; more on the back"),
                        c.width() - used,
                        CardPaper.TEXT),
                c.left + used,
                top + 5,
                CardPaper.TEXT);
        table(top + HEADING, c.bottom());
    }

    /** A page of its own, with room left at its foot, mm. */
    void wholePage(double foot) {
        c.title("Record: " + data.title());
        c.words(
                Words.fit(c.pen, forecast() + " · content " + data.mark(), c.width(), CardPaper.TEXT),
                c.left,
                25.4,
                CardPaper.TEXT);
        c.words(
                (data.piped()
                                ? "Gas meter before ________ m³    after ________ m³"
                                : "Cylinder before ________ kg    after ________ kg")
                        + "        Cones set ______________    Weather, wind ______________",
                c.left,
                32.6,
                CardPaper.TEXT);
        c.words(
                "A row at every step and each half hour with gas. Write the cone when it is down. Stand aside to read.",
                c.left,
                38.2,
                CardPaper.TEXT);
        table(40.4, c.bottom() - foot - (foot > 0 ? 1.5 : 0));
        c.foot("Type the rows into a table and read them with the design: time, temp " + data.scale()
                + ", damper mm, gas, cone, notes.");
    }

    private String forecast() {
        return data.forecast().isEmpty() ? "no forecast for this design" : "forecast: " + data.forecast();
    }

    private static int rows(double y, double bottom) {
        return (int) Math.floor((bottom - y) / LEAST_ROW + 1e-9);
    }

    private void table(double y, double bottom) {
        double w = c.width();
        int rows = rows(y, bottom);
        if (rows < LEAST_ROWS) {
            return;
        }
        double row = (bottom - y) / rows;
        String[] names = {
            "clock", "meter " + data.scale(), "cones", "plate mm", "pressure", "flame at spy", "CO ppm", "notes"
        };
        for (int i = 0; i <= rows; i++) {
            c.pen.line(
                    c.at(c.left, y + row * i),
                    c.at(c.right, y + row * i),
                    i == 0 || i == 1 || i == rows ? LineStyle.CHAMBER_WALL : LineStyle.DIMENSION,
                    Ink.INK);
        }
        for (int i = 0; i < COLUMNS.length; i++) {
            c.pen.line(
                    c.at(c.left + COLUMNS[i] * w, y),
                    c.at(c.left + COLUMNS[i] * w, y + row * rows),
                    i == 0 || i == COLUMNS.length - 1 ? LineStyle.CHAMBER_WALL : LineStyle.DIMENSION,
                    Ink.INK);
            if (i < names.length) {
                c.words(names[i], c.left + COLUMNS[i] * w + 1.4, y + row * 0.62, FirstPage.SMALL);
            }
        }
    }
}
