package portwright.sheet;

import portwright.drawing.Box;

/** How a page is divided, mm: margin all round, head, drawing area, right band, foot. */
record Frame(Paper paper) {
    /** Nothing is printed nearer to the paper's edge: 12 mm and half a line. */
    static final double MARGIN = 12.4;

    static final double HEAD = 12;
    static final double BAND = 10;
    static final double FOOT = 15;

    double areaWidth() {
        return paper.widthMm() - 2 * MARGIN - BAND;
    }

    double areaHeight() {
        return paper.heightMm() - 2 * MARGIN - HEAD - FOOT;
    }

    /** The drawing area on the page, from the lower left corner. */
    Box area() {
        double x = MARGIN;
        double y = MARGIN + FOOT;
        return new Box(x, y, x + areaWidth(), y + areaHeight());
    }

    /** The page inside its margins. */
    Box inside() {
        return new Box(MARGIN, MARGIN, paper.widthMm() - MARGIN, paper.heightMm() - MARGIN);
    }
}
