package portwright.sheet;

import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;

/** The table of steps: one row a step, and a row across where the gas goes off. */
final class CardSteps {
    private static final double ROW = 6.3;
    /** Beside so many rows that the page would run over. */
    private static final double TIGHT_ROW = 5.5;

    private static final int MANY = 12;
    private static final double LINE = 4.5;
    /** Where each column begins, as a share of the width. */
    private static final double[] COLUMNS = {0, 0.045, 0.337, 0.432, 0.516, 0.627, 0.733, 0.86, 1};

    private static final String[] NAMES = {
        "step", "to (both scales, cone)", "rate", "heat", "gas", "fire", "ports, plate", "flame"
    };

    private final CardPaper c;
    private final List<CardData.Step> steps;
    private final double tall;
    private double end;

    CardSteps(CardPaper c, List<CardData.Step> steps) {
        this.c = c;
        this.steps = steps;
        this.tall = steps.size() > MANY ? TIGHT_ROW : ROW;
    }

    /**
     * Draws from a top the rows from an index on, as far as they end above a bottom, at least one.
     *
     * @return index of the first row that is left
     */
    int draw(double top, double bottom, int from) {
        for (int i = 0; i < NAMES.length; i++) {
            c.words(NAMES[i], x(i), top + 4.2, CardPaper.TEXT);
        }
        end = top + 5.8;
        c.rule(end, LineStyle.DIMENSION);
        int number = (int) steps.subList(0, from).stream()
                .filter(s -> s.across().isEmpty())
                .count();
        for (int i = from; i < steps.size(); i++) {
            CardData.Step s = steps.get(i);
            boolean step = s.across().isEmpty();
            if (i > from && end + (step ? tall : acrossHeight(acrossLines(s))) > bottom) {
                return i;
            }
            number += step ? 1 : 0;
            end = step ? row(s, number, end) : across(s, end);
            c.rule(end, LineStyle.DIMENSION);
        }
        return steps.size();
    }

    /** Where the rows drawn last end, from the top, mm. */
    double end() {
        return end;
    }

    private double x(int column) {
        return c.left + COLUMNS[column] * c.width();
    }

    private double row(CardData.Step s, int number, double y) {
        if (s.gas()) {
            c.pen.fill(new Box(c.left, c.height - y - tall, c.right, c.height - y).corners(), Ink.SHADE, 1);
            c.rule(y, LineStyle.DIMENSION);
        }
        double base = y + tall * 0.66;
        c.pen.circle(c.at(c.left + 3.4, y + tall / 2), Math.min(2.7, tall / 2 - 0.2), LineStyle.BOX, Ink.INK);
        c.pen.text(
                String.valueOf(number),
                c.at(c.left + 3.4, y + tall / 2 + 1.25),
                Pen.Align.CENTRE,
                0,
                CardPaper.STEP_BOLD);
        double room = x(2) - x(1) - 1.5;
        String to = Words.fit(c.pen, s.to(), room, CardPaper.STEP_BOLD);
        c.words(to, x(1), base, CardPaper.STEP_BOLD);
        double used = c.pen.textWidth(to, CardPaper.STEP_BOLD) + 2;
        if (room - used > 8) {
            c.cell(s.beside(), x(1) + used, room - used, base, CardPaper.TEXT);
        }
        String[] cells = {s.rate(), s.heat(), s.pressure(), s.atmosphere(), plate(s.plate()), s.flame()};
        for (int k = 0; k < cells.length; k++) {
            c.cell(
                    cells[k],
                    x(k + 2),
                    x(k + 3) - x(k + 2) - 1.2,
                    base,
                    k == 3 || k == 4 || k == 2 && s.gas()
                            ? CardPaper.STEP_BOLD
                            : k == 5 ? CardPaper.TEXT : CardPaper.STEP);
        }
        return y + tall;
    }

    /** Travel with its unit; other words as they are. */
    private static String plate(String words) {
        return Character.isDigit(words.charAt(0)) ? words.replace(" to ", "–") + " mm" : words;
    }

    /** What is done between two steps. */
    private double across(CardData.Step s, double y) {
        List<String> lines = acrossLines(s);
        for (int i = 0; i < lines.size(); i++) {
            c.words(lines.get(i), x(1), y + (tall < ROW ? 3.9 : 4.3) + LINE * i, face(s));
        }
        return y + acrossHeight(lines);
    }

    private List<String> acrossLines(CardData.Step s) {
        return Words.wrap(c.pen, s.across(), c.right - x(1), face(s));
    }

    /** What is done stands out; what is to be expected does not. */
    private static TextStyle face(CardData.Step s) {
        return s.remark() ? CardPaper.TEXT : CardPaper.NUMBER;
    }

    private double acrossHeight(List<String> lines) {
        return (tall < ROW ? 1 : 1.8) + LINE * lines.size();
    }
}
