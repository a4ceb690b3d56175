package portwright.sheet;

import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;

/** The part of the first sheet that is printed on: all of it, or on large paper a block in its upper left corner that is cut off and kept. */
final class Block {
    /** Wider or higher the first sheet only gets emptier, mm. */
    private static final double WIDEST = 420;

    private static final double HIGHEST = 440;
    private static final TextStyle NOTE = TextStyle.BAR;
    /** Stands on what is cut away, below the line or to its right. */
    private static final String CUT = "cut off and keep with the kiln's papers";

    final Page page;
    final Fonts fonts;
    final Pen pen;
    final double width;
    final double height;
    final double left = Frame.MARGIN;
    final double right;
    private final double base;

    Block(Paper paper, Fonts fonts) {
        this.fonts = fonts;
        width = paper.widthMm() > WIDEST + 100 ? WIDEST : paper.widthMm();
        height = paper.heightMm() > HIGHEST + 100 ? HIGHEST : paper.heightMm();
        right = width - Frame.MARGIN;
        base = paper.heightMm() - height;
        page = new Page(paper.widthMm(), paper.heightMm());
        pen = pen(0, 0, 1, 1);
        boolean narrower = width < paper.widthMm();
        boolean lower = height < paper.heightMm();
        if (narrower) {
            pen.line(
                    at(width, Frame.MARGIN),
                    at(width, lower ? height : height - Frame.MARGIN),
                    LineStyle.HIDDEN,
                    Ink.INK);
        }
        if (lower) {
            pen.line(at(Frame.MARGIN, height), at(narrower ? width : right, height), LineStyle.HIDDEN, Ink.INK);
        }
        if (lower) {
            pen.text(CUT, new Pt(narrower ? width : right, -4), Pen.Align.RIGHT, 0, NOTE);
        } else if (narrower) {
            pen.text(CUT, new Pt(width + 4, Frame.MARGIN + 1), Pen.Align.LEFT, 0, NOTE);
        }
    }

    /** A pen with its origin so far right and up of the block's lower left corner, mm. */
    PdfPen pen(double x, double y, double scaleX, double scaleY) {
        return new PdfPen(page, fonts, x, base + y, scaleX, scaleY);
    }

    /** The block inside its margins. */
    Box inside() {
        return new Box(left, Frame.MARGIN, right, height - Frame.MARGIN);
    }

    Pt at(double x, double top) {
        return new Pt(x, height - top);
    }

    void words(String t, double x, double baseline, TextStyle s) {
        pen.text(t, at(x, baseline), Pen.Align.LEFT, 0, s);
    }

    void rule(double x0, double x1, double top, LineStyle s) {
        pen.line(at(x0, top), at(x1, top), s, Ink.INK);
    }

    /** Running text; gives where it ends from the top. */
    double flow(String t, double x, double top, double w, TextStyle s) {
        return height - Words.flow(pen, t, x, height - top, w, s);
    }
}
