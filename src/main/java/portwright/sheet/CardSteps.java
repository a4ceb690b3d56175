package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;

/** The table of steps: one row a step, and a row across where the gas goes off. What is too long for its cell is set smaller, then in lines. */
final class CardSteps {
    /** Least height of a row by how tight it is set, mm. */
    private static final double[] ROWS = {6.3, 5.5, 5.0};
    /** Room between a cell's words and the next column, mm. */
    private static final double GAP = 1.2;

    /** Where each column begins, as a share of the width. */
    private static final double[] COLUMNS = {0, 0.045, 0.337, 0.432, 0.516, 0.627, 0.733, 0.86, 1};

    private static final String[] NAMES = {
        "step", "to (both scales, cone)", "rate", "heat", "gas", "fire", "ports, plate", "flame"
    };
    /** Without gas the last columns are to be written in. */
    private static final double[] ELECTRIC = {0, 0.045, 0.4, 0.54, 0.68, 0.84, 1};

    private static final String[] ELECTRIC_NAMES = {
        "step", "to (both scales, cone)", "rate", "heat", "begun at", "meter shows"
    };

    private final CardPaper c;
    private final List<CardData.Step> steps;
    private final boolean gas;
    private final int tight;
    private final double[] columns;
    private final String[] names;
    private double end;

    /** {@code tight}: 0 to 2, how dense the rows are set. */
    CardSteps(CardPaper c, List<CardData.Step> steps, boolean gas, int tight) {
        this.c = c;
        this.steps = steps;
        this.gas = gas;
        this.tight = tight;
        columns = gas ? COLUMNS : ELECTRIC;
        names = gas ? NAMES : ELECTRIC_NAMES;
    }

    /** A cell's words as they are set. */
    private record Cell(double x, List<String> lines, TextStyle style) {
        double height() {
            return style.mm() * Words.LEADING * (lines.size() - 1) + style.mm();
        }
    }

    /**
     * Draws from a top the rows from an index on, as far as they end above a bottom, at least one.
     *
     * @return index of the first row that is left
     */
    int draw(double top, double bottom, int from) {
        for (int i = 0; i < names.length; i++) {
            Cell head = cell(names[i], x(i), x(i + 1) - x(i) - (i == 0 ? 0 : GAP), CardPaper.TEXT);
            words(head, top + 4.2);
        }
        end = top + 5.8;
        c.rule(end, LineStyle.DIMENSION);
        int number = (int) steps.subList(0, from).stream()
                .filter(s -> s.across().isEmpty())
                .count();
        for (int i = from; i < steps.size(); i++) {
            CardData.Step s = steps.get(i);
            boolean step = s.across().isEmpty();
            List<Cell> cells = step ? cells(s) : List.of(across(s));
            double high = step ? height(cells) : acrossHeight(cells.get(0));
            if (i > from && end + high > bottom) {
                return i;
            }
            number += step ? 1 : 0;
            if (step) {
                row(s, cells, number, end, high);
            } else {
                words(cells.get(0), end + (tight > 0 ? 3.8 : 4.3));
            }
            end += high;
            c.rule(end, LineStyle.DIMENSION);
        }
        return steps.size();
    }

    /** Where the rows drawn last end, from the top, mm. */
    double end() {
        return end;
    }

    private double x(int column) {
        return c.left + columns[column] * c.width();
    }

    private static TextStyle tighter(TextStyle s, int tight) {
        return tight < 2 ? s : s.size(s.px(), s.mm() * 0.92);
    }

    private List<Cell> cells(CardData.Step s) {
        double room = x(2) - x(1) - 1.5;
        TextStyle bold = tighter(CardPaper.STEP_BOLD, tight);
        List<Cell> out = new ArrayList<>();
        out.add(cell(s.to(), x(1), room, bold));
        double used = c.pen.textWidth(s.to(), bold) + 2;
        if (!s.beside().isEmpty()) {
            out.add(
                    used < room
                            ? cell(s.beside(), x(1) + used, room - used, CardPaper.TEXT)
                            : cell(s.beside(), x(1), room, CardPaper.TEXT));
        }
        String[] texts = gas
                ? new String[] {s.rate(), s.heat(), s.pressure(), s.atmosphere(), plate(s.plate()), s.flame()}
                : new String[] {s.rate(), s.heat()};
        for (int k = 0; k < texts.length; k++) {
            TextStyle style = k == 3 || k == 4 || k == 2 && s.gas()
                    ? bold
                    : k == 5 ? CardPaper.TEXT : tighter(CardPaper.STEP, tight);
            out.add(cell(texts[k], x(k + 2), x(k + 3) - x(k + 2) - GAP, style));
        }
        return out;
    }

    private Cell cell(String t, double x, double room, TextStyle s) {
        TextStyle fit = c.fitted(t, room, s);
        return new Cell(x, Words.wrap(c.pen, t, room, fit), fit);
    }

    private double height(List<Cell> cells) {
        double most = cells.stream().mapToDouble(Cell::height).max().orElse(0);
        return Math.max(ROWS[tight], most + 1.7);
    }

    private void row(CardData.Step s, List<Cell> cells, int number, double y, double high) {
        if (s.gas()) {
            c.pen.fill(new Box(c.left, c.height - y - high, c.right, c.height - y).corners(), Ink.SHADE, 1);
            c.rule(y, LineStyle.DIMENSION);
        }
        c.pen.circle(c.at(c.left + 3.4, y + high / 2), Math.min(2.7, high / 2 - 0.2), LineStyle.BOX, Ink.INK);
        TextStyle bold = tighter(CardPaper.STEP_BOLD, tight);
        c.pen.text(
                String.valueOf(number),
                c.at(c.left + 3.4, y + high / 2 + bold.mm() * 0.36),
                Pen.Align.CENTRE,
                0,
                number > 9 ? bold.size(bold.px(), 3) : bold);
        for (Cell cell : cells) {
            words(cell, y + (high - cell.height()) / 2 + cell.style().mm() * 0.86);
        }
        if (!gas) {
            for (int k = 4; k < columns.length - 1; k++) {
                c.pen.line(c.at(x(k) - 1.5, y), c.at(x(k) - 1.5, y + high), LineStyle.DIMENSION);
            }
        }
    }

    private void words(Cell cell, double base) {
        for (int i = 0; i < cell.lines().size(); i++) {
            c.words(cell.lines().get(i), cell.x(), base + cell.style().mm() * Words.LEADING * i, cell.style());
        }
    }

    /** Travel with its unit; other words as they are. */
    private static String plate(String words) {
        return Character.isDigit(words.charAt(0)) ? words.replace(" to ", "–") + " mm" : words;
    }

    /** What is done between two steps stands out; what is to be expected does not. */
    private Cell across(CardData.Step s) {
        TextStyle face = tighter(s.remark() ? CardPaper.TEXT : CardPaper.NUMBER, tight);
        return new Cell(x(1), Words.wrap(c.pen, s.across(), c.right - x(1), face), face);
    }

    private double acrossHeight(Cell cell) {
        return (tight > 0 ? 1.9 : 2.7) + cell.height();
    }
}
