package portwright.sheet;

import java.util.List;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;

/** The blank table of the record: what room the first page leaves, and a whole page for the back of it. */
final class CardRecord {
    /** Lowest row that a gloved hand fills, mm. */
    static final double LEAST_ROW = 7;
    /** Fewer are not worth a table: its head and two to write in. */
    private static final int LEAST_ROWS = 3;
    /** So many on the front are enough for the first hours. */
    private static final int ENOUGH_ROWS = 8;
    /** Height of the heading, mm. */
    private static final double HEADING = 6.2;
    /** Where each column begins, as a share of the width. */
    private static final double[] COLUMNS = {0, 0.107, 0.226, 0.344, 0.462, 0.58, 0.72, 0.816, 1};

    /** Units that a log's column of the pressure may name. */
    private static final List<String> UNITS = List.of("inH2O", "mbar", "bar", "psi", "kPa", "Pa");

    private static final double[] ELECTRIC = {0, 0.107, 0.226, 0.4, 0.56, 1};

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
            c.flow("Write the firing down on the back; " + forecast(), c.left, top + 1.5, c.width(), CardPaper.TEXT);
            return;
        }
        c.words("Record", c.left, top + 5, CardPaper.HEADING);
        double used = c.pen.textWidth("Record", CardPaper.HEADING) + 4;
        double y = c.flow(
                forecast() + (cautions ? "; rows on the back" : "; more on the back"),
                c.left + used,
                top + 1.8,
                c.width() - used,
                CardPaper.TEXT);
        table(Math.max(top + HEADING, y + 0.4), c.bottom());
    }

    /** A page of its own, with room left at its foot, mm. */
    void wholePage(double foot) {
        c.title("Record: " + data.title());
        double y = c.flow(forecast() + " · content " + data.mark(), c.left, 22.2, c.width(), CardPaper.TEXT);
        y = c.flow(
                switch (data.gas()) {
                            case CYLINDER -> "Cylinder before ________ kg    after ________ kg";
                            case PIPED -> "Gas meter before ________ m³    after ________ m³";
                            case NONE -> "Electricity meter before ________ kWh    after ________ kWh";
                        }
                        + "        Cones set ______________    "
                        + (gas() ? "Weather, wind ______________" : "Load ______________"),
                c.left,
                Math.max(29.4, y + 1),
                c.width(),
                CardPaper.TEXT);
        y = c.flow(
                "A row at every step and each half hour" + (gas() ? " with gas" : "")
                        + ". Write the cone when it is down. Stand aside to read.",
                c.left,
                y + 1.2,
                c.width(),
                CardPaper.TEXT);
        table(y + 0.6, c.bottom() - foot - (foot > 0 ? 1.5 : 0));
        c.foot("Type the rows into a table under these names and read them with the design.");
    }

    /** Name of the column of the pressure, with the unit that the steps have it in: so named a log is read without one in each cell. */
    private String gasColumn() {
        return "gas "
                + data.steps().stream()
                        .filter(CardData.Step::gas)
                        .map(s -> s.pressure().replaceFirst("^[0-9.]+ ", ""))
                        .filter(UNITS::contains)
                        .findFirst()
                        .orElse(data.scale().equals("°F") ? "inH2O" : "mbar");
    }

    private boolean gas() {
        return data.gas() != CardData.Gas.NONE;
    }

    private String forecast() {
        return data.forecast().isEmpty() ? "no forecast for this design" : "forecast: " + data.forecast();
    }

    /** What of a height of the front the record leaves to others: all that holds no table, else what lies beyond rows enough, mm. */
    static double leaves(double height) {
        return rows(HEADING, height) < LEAST_ROWS
                ? height
                : Math.max(0, height - HEADING - (ENOUGH_ROWS + 1) * LEAST_ROW);
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
        String meter = "meter " + data.scale();
        String[] names = gas()
                ? new String[] {"clock", meter, "cones", "plate mm", gasColumn(), "spyhole flame", "CO ppm", "notes"}
                : new String[] {"clock", meter, "cones", "meter kWh", "notes"};
        double[] columns = gas() ? COLUMNS : ELECTRIC;
        for (int i = 0; i <= rows; i++) {
            c.pen.line(
                    c.at(c.left, y + row * i),
                    c.at(c.right, y + row * i),
                    i == 0 || i == 1 || i == rows ? LineStyle.CHAMBER_WALL : LineStyle.DIMENSION,
                    Ink.INK);
        }
        for (int i = 0; i < columns.length; i++) {
            c.pen.line(
                    c.at(c.left + columns[i] * w, y),
                    c.at(c.left + columns[i] * w, y + row * rows),
                    i == 0 || i == columns.length - 1 ? LineStyle.CHAMBER_WALL : LineStyle.DIMENSION,
                    Ink.INK);
            if (i < names.length) {
                c.words(
                        names[i],
                        c.left + columns[i] * w + 1.4,
                        y + row * 0.62,
                        c.fitted(names[i], (columns[i + 1] - columns[i]) * w - 1.8, FirstPage.SMALL));
            }
        }
    }
}
