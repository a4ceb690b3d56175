package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.text.TextAlignment;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.TextSizes;
import portwright.drawing.Ink;
import portwright.geometry.Pt;

/** Names of the curves of lambda over the damper, each at its curve and off what stands there already. */
final class CurveNames {
    /** Heights at which a curve may be named. */
    static final double[] LOW_FIRST = {0.68, 0.72, 0.76, 0.64, 0.82, 0.88, 1.06, 1.12, 1.18, 1.24, 1.3};

    static final double[] HIGH_FIRST = {1.17, 1.25, 1.32, 1.08, 0.9, 0.75, 0.66};

    private static final double LINE_PX = 17;

    private final Chart c;
    private final Places places;

    CurveNames(Chart c, Places places) {
        this.c = c;
        this.places = places;
    }

    /** Words go over the curve only where there is no other place. */
    void keep(List<Pt> line) {
        for (int i = 1; i < line.size(); i++) {
            Pt a = line.get(i - 1);
            Pt b = line.get(i);
            places.line(c.x(a.x()), c.y(a.y()), c.x(b.x()), c.y(b.y()));
        }
    }

    /** Where a curve passes a height; infinite where it does not. */
    private static double xAt(List<Pt> line, double y) {
        for (int i = 1; i < line.size(); i++) {
            Pt a = line.get(i - 1);
            Pt b = line.get(i);
            if (Double.isFinite(a.y()) && Double.isFinite(b.y()) && a.y() <= y && b.y() > y) {
                return a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Names a curve at the first of some heights where its words cover neither other words nor a curve; where there is none, only words.
     *
     * @param lines one under the other
     */
    void name(List<Pt> line, List<String> lines, Ink ink, TextAlignment align, double[] heights) {
        double w = 0;
        for (String words : lines) {
            w = Math.max(w, TextSizes.width(words, Fonts.bold(13)));
        }
        double h = lines.size() * LINE_PX;
        List<double[]> corners = new ArrayList<>();
        for (double gap : new double[] {14, 26, 40}) {
            for (double at : heights) {
                double px = c.x(xAt(line, at));
                double x = align == TextAlignment.RIGHT ? px - gap - w : px + gap;
                double y = c.y(at) - h / 2;
                if (x > c.left() + 4 && x + w < c.right() - 4 && y > c.top() && y + h < c.bottom()) {
                    corners.add(new double[] {x, y});
                }
            }
        }
        double[] at = places.first(corners.toArray(new double[0][]), w, h);
        if (at == null) {
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            double tw = TextSizes.width(lines.get(i), Fonts.bold(13));
            double x = align == TextAlignment.RIGHT ? at[0] + w - tw : at[0];
            double y = at[1] + (i + 0.5) * LINE_PX;
            c.say(lines.get(i), x, y, 13, ink != Ink.INK2, ink, TextAlignment.LEFT, VPos.CENTER, true);
        }
        places.name(at[0], at[1], w, h);
    }
}
