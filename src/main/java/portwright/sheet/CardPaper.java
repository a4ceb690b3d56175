package portwright.sheet;

import java.util.List;
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
    private static final double LEAST_TYPE = 2.9;
    /** Type is set in steps, so text made to fit exactly may come out a hair too wide. */
    private static final double ROUNDING = 0.99;
    /** Between lines of a heading, over the type size. */
    private static final double TITLE_LEADING = 1.1;

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

    /** The style that a text fits a room with, no smaller than can be read. */
    TextStyle fitted(String t, double room, TextStyle s) {
        double w = pen.textWidth(t, s);
        return w <= room ? s : s.size(s.px(), Math.max(Math.min(LEAST_TYPE, s.mm()), ROUNDING * s.mm() * room / w));
    }

    /** Title with room for number and date, in two or three lines where it is long. */
    void title(String title) {
        TextStyle t = FirstPage.TITLE;
        double room = width() - 52;
        double size = t.mm();
        while (size > LEAST_TYPE
                && Words.wrap(pen, title, room, t.size(t.px(), size)).size() > (size > 4 ? 1 : size > 3.2 ? 2 : 3)) {
            size = Math.max(LEAST_TYPE, size - 0.1);
        }
        TextStyle fit = t.size(t.px(), size);
        List<String> lines = Words.wrap(pen, title, room, fit);
        for (int i = 0; i < lines.size(); i++) {
            words(lines.get(i), left, 20 + (i - (lines.size() - 1)) * size * TITLE_LEADING, fit);
        }
        words("no.", right - 48, 20, TEXT);
        pen.line(at(right - 42, 20.4), at(right - 31, 20.4), LineStyle.DIMENSION);
        words("date", right - 29, 20, TEXT);
        pen.line(at(right - 21, 20.4), at(right, 20.4), LineStyle.DIMENSION);
    }

    /** One line in the smallest type if need be, in more upwards from its place where that is too long. */
    void line(String t, double base, TextStyle s) {
        TextStyle fit = fitted(t, width(), s);
        List<String> lines = Words.wrap(pen, t, width(), fit);
        for (int i = 0; i < lines.size(); i++) {
            words(lines.get(i), left, base + (i - (lines.size() - 1)) * fit.mm() * TITLE_LEADING, fit);
        }
    }

    /** Last line of a page. */
    void foot(String text) {
        line(text, height - Frame.MARGIN - 0.8, FirstPage.SMALL);
    }
}
