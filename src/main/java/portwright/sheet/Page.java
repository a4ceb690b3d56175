package portwright.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import portwright.drawing.Box;
import portwright.drawing.LineStyle;

/** The drawing commands of one page, written in points with five decimals. */
final class Page {
    static final double POINTS_PER_MM = 72 / 25.4;
    private static final double DECIMALS = 1e5;

    private final double widthMm;
    private final double heightMm;
    private final StringBuilder ops = new StringBuilder();
    private String stroke = "";
    private String fill = "";
    private final PagePicture picture;
    private final Set<LineStyle> lines = EnumSet.noneOf(LineStyle.class);

    Page(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        picture = new PagePicture(widthMm, heightMm);
    }

    /** The same page for other pens. */
    PagePicture picture() {
        return picture;
    }

    /** The kinds of line drawn so far. */
    Set<LineStyle> lines() {
        return lines;
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return heightMm;
    }

    String content() {
        return ops.toString();
    }

    /** Length in mm as points. */
    Page n(double mm) {
        number(mm * POINTS_PER_MM);
        return this;
    }

    /** A number as it is. */
    Page number(double v) {
        long r = Math.round(v * DECIMALS);
        if (r < 0) {
            ops.append('-');
            r = -r;
        }
        ops.append(r / 100000);
        long f = r % 100000;
        if (f != 0) {
            String d = Long.toString(f + 100000).substring(1);
            int end = d.length();
            while (d.charAt(end - 1) == '0') {
                end--;
            }
            ops.append('.').append(d, 0, end);
        }
        ops.append(' ');
        return this;
    }

    Page op(String operator) {
        ops.append(operator).append('\n');
        return this;
    }

    Page raw(String text) {
        ops.append(text);
        return this;
    }

    /** Grey level, width and dash of the lines that follow. */
    void strokeState(double grey, double widthMm, List<Double> dashMm, int cap, int join) {
        int mark = ops.length();
        number(grey).op("G");
        n(widthMm).op("w");
        ops.append('[');
        for (double d : dashMm) {
            n(d);
        }
        ops.append("] 0 d\n").append(cap).append(" J ").append(join).append(" j\n");
        String state = ops.substring(mark);
        if (state.equals(stroke)) {
            ops.setLength(mark);
        }
        stroke = state;
    }

    void fillState(double grey) {
        int mark = ops.length();
        number(grey).op("g");
        String state = ops.substring(mark);
        if (state.equals(fill)) {
            ops.setLength(mark);
        }
        fill = state;
    }

    /** Starts a part whose drawing stays inside a rectangle (mm from the lower left corner). */
    void clip(double x, double y, double w, double h) {
        picture.clip(new Box(x, y, x + w, y + h));
        op("q");
        n(x).n(y).n(w).n(h).op("re W n");
    }

    void unclip() {
        picture.unclip();
        op("Q");
        stroke = "";
        fill = "";
    }
}
