package portwright.sheet;

import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;

/** One page of the firing card: its type, and drawing counted in millimetres from the top. */
final class CardPaper {
    static final TextStyle STEP_BOLD = new TextStyle(TextStyle.Face.SANS_BOLD, 15, 3.6, Ink.INK, false);
    static final TextStyle STEP = new TextStyle(TextStyle.Face.SANS, 15, 3.6, Ink.INK, false);
    static final TextStyle TEXT = new TextStyle(TextStyle.Face.SANS, 13, 3.2, Ink.INK, false);
    static final TextStyle NUMBER = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.2, Ink.INK, false);
    static final TextStyle HEADING = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 4.3, Ink.INK, false);
    /** Smallest type that a narrow cell is set in, mm. */
    private static final double LEAST_TYPE = 3.0;
    /** Type is set in steps, so text made to fit exactly may come out a hair too wide. */
    private static final double ROUNDING = 0.99;

    final Page page;
    final Pen pen;
    final double left = Frame.MARGIN;
    final double right;
    final double height;

    CardPaper(Paper paper, Fonts fonts) {
        page = new Page(paper.widthMm(), paper.heightMm());
        pen = PdfPen.onPage(page, fonts);
        right = paper.widthMm() - Frame.MARGIN;
        height = paper.heightMm();
    }

    double width() {
        return right - left;
    }

    /** Where the last line of the page leaves off room, mm from the top. */
    double bottom() {
        return height - Frame.MARGIN - 4.6;
    }

    Pt at(double x, double top) {
        return new Pt(x, height - top);
    }

    void words(String t, double x, double base, TextStyle s) {
        pen.text(t, at(x, base), Pen.Align.LEFT, 0, s);
    }

    void rule(double top, LineStyle s) {
        pen.line(at(left, top), at(right, top), s, Ink.INK);
    }

    /** Running text from a top downwards; answers where the next line begins. */
    double flow(String t, double x, double top, double w, TextStyle s) {
        return height - Words.flow(pen, t, x, height - top, w, s);
    }

    /** Text in a cell, set smaller where it is too long, then cut. */
    void cell(String t, double x, double room, double base, TextStyle s) {
        TextStyle fit = s;
        if (pen.textWidth(t, s) > room) {
            fit = s.size(s.px(), Math.max(LEAST_TYPE, ROUNDING * s.mm() * room / pen.textWidth(t, s)));
        }
        words(Words.fit(pen, t, room, fit), x, base, fit);
    }

    /** Title line with room for number and date. */
    void title(String title) {
        TextStyle t = FirstPage.TITLE;
        double room = width() - 52;
        if (pen.textWidth(title, t) > room) {
            t = t.size(t.px(), Math.max(3.8, 0.999 * t.mm() * room / pen.textWidth(title, t)));
        }
        words(Words.fit(pen, title, room, t), left, 20, t);
        words("no.", right - 48, 20, TEXT);
        pen.line(at(right - 42, 20.4), at(right - 31, 20.4), LineStyle.DIMENSION);
        words("date", right - 29, 20, TEXT);
        pen.line(at(right - 21, 20.4), at(right, 20.4), LineStyle.DIMENSION);
    }

    /** Last line of a page. */
    void foot(String text) {
        words(Words.fit(pen, text, width(), FirstPage.SMALL), left, height - Frame.MARGIN - 0.8, FirstPage.SMALL);
    }
}
