package portwright.sheet;

import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.Words;

/** The table of steps: one row a step, and a row across where the gas goes off. */
final class CardSteps {
    private static final double ROW = 6.3;
    /** Beside so many rows that the page would run over. */
    private static final double TIGHT_ROW = 5.5;

    private static final int MANY = 12;
    private static final double LINE = 4.5;
    private static final int MOST = 10;
    /** Where each column begins, as a share of the width. */
    private static final double[] COLUMNS = {0, 0.051, 0.341, 0.436, 0.518, 0.62, 0.729, 0.835, 1};

    private static final String[] NAMES = {
        "step", "to (both scales, cone)", "rate", "heat", "gas", "fire", "plate, mm", "flame"
    };

    private final CardPaper c;
    private final List<CardData.Step> steps;
    private final double tall;

    CardSteps(CardPaper c, List<CardData.Step> steps) {
        this.c = c;
        this.steps = steps;
        this.tall = steps.size() > MANY ? TIGHT_ROW : ROW;
    }

    /** Draws from a top; answers where it ends. */
    double draw(double top) {
        for (int i = 0; i < NAMES.length; i++) {
            c.words(NAMES[i], x(i), top + 4.2, CardPaper.TEXT);
        }
        double y = top + 5.8;
        c.rule(y, LineStyle.DIMENSION);
        int number = 0;
        int left = 0;
        for (CardData.Step s : steps) {
            boolean step = s.across().isEmpty();
            number += step ? 1 : 0;
            if (number > MOST && step) {
                left++;
                continue;
            }
            y = step ? row(s, number, y) : across(s.across(), y);
            c.rule(y, LineStyle.DIMENSION);
        }
        if (left > 0) {
            y += 4.4;
            c.words(left + " more steps in the design file.", c.left, y, CardPaper.NUMBER);
        }
        return y;
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
        String[] cells = {s.rate(), s.heat(), s.pressure(), s.atmosphere(), s.plate(), s.flame()};
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

    /** What is done between two steps. */
    private double across(String words, double y) {
        double w = c.right - x(1);
        List<String> lines = Words.wrap(c.pen, words, w, CardPaper.NUMBER);
        for (int i = 0; i < lines.size(); i++) {
            c.words(lines.get(i), x(1), y + (tall < ROW ? 3.9 : 4.3) + LINE * i, CardPaper.NUMBER);
        }
        return y + (tall < ROW ? 1 : 1.8) + LINE * lines.size();
    }
}
