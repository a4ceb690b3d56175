package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import portwright.geometry.Circle;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** What is on a page, read back from its drawing commands, in mm from the lower left corner. */
final class PrintedPage extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    final List<Circle> strokedCircles = new ArrayList<>();
    final List<Circle> filledCircles = new ArrayList<>();
    final List<Double> circleLineWidths = new ArrayList<>();
    final List<Segment> lines = new ArrayList<>();
    final List<List<Pt>> polygons = new ArrayList<>();
    final Map<String, Pt> words = new LinkedHashMap<>();
    final Map<String, Pt> wordEnds = new LinkedHashMap<>();
    final List<Double> textSizes = new ArrayList<>();
    final List<Run> runs = new ArrayList<>();
    int images;
    double[] extent = {1e9, 1e9, -1e9, -1e9};
    /** What reaches furthest to the left, down, right and up. */
    final String[] outermost = new String[4];

    private final List<Pt> points = new ArrayList<>();
    private int curves;
    private boolean closed;
    private Point2D current = new Point2D.Float();
    private StringBuilder text = new StringBuilder();
    private Pt textAt;
    private Pt textEnd;

    /** Words set in one go: the ends of their base line and the type's size, mm. */
    record Run(String words, Pt from, Pt to, double sizeMm) {
        boolean level() {
            return Math.abs(from.y() - to.y()) < 1e-6 && to.x() > from.x();
        }
    }

    PrintedPage(PDPage page) throws IOException {
        super(page);
        processPage(page);
    }

    private static Pt mm(double x, double y) {
        return new Pt(x * MM, y * MM);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        points.clear();
        for (Point2D p : new Point2D[] {p0, p1, p2, p3}) {
            points.add(mm(p.getX(), p.getY()));
        }
        closed = true;
        path.append(new Rectangle2D.Double(p0.getX(), p0.getY(), p2.getX() - p0.getX(), p2.getY() - p0.getY()), false);
    }

    private final java.awt.geom.GeneralPath path = new java.awt.geom.GeneralPath();

    @Override
    public void drawImage(PDImage image) {
        images++;
    }

    private boolean clipping;

    @Override
    public void clip(int windingRule) {
        clipping = true;
    }

    @Override
    public void moveTo(float x, float y) {
        points.add(mm(x, y));
        current = new Point2D.Float(x, y);
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        points.add(mm(x, y));
        current = new Point2D.Float(x, y);
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        points.add(mm(x3, y3));
        curves++;
        current = new Point2D.Float(x3, y3);
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return current;
    }

    @Override
    public void closePath() {
        closed = true;
        path.closePath();
    }

    @Override
    public void endPath() {
        if (clipping) {
            path.setWindingRule(java.awt.geom.GeneralPath.WIND_NON_ZERO);
            getGraphicsState().intersectClippingPath((java.awt.geom.GeneralPath) path.clone());
            clipping = false;
        }
        reset();
    }

    private void reset() {
        points.clear();
        curves = 0;
        closed = false;
        path.reset();
    }

    private void seen(double half) {
        Rectangle2D b = path.getBounds2D();
        Shape clip = getGraphicsState().getCurrentClippingPath();
        Rectangle2D v = new Rectangle2D.Double(
                b.getX() * MM - half,
                b.getY() * MM - half,
                b.getWidth() * MM + 2 * half,
                b.getHeight() * MM + 2 * half);
        Rectangle2D c = clip.getBounds2D();
        v = v.createIntersection(
                new Rectangle2D.Double(c.getX() * MM, c.getY() * MM, c.getWidth() * MM, c.getHeight() * MM));
        if (v.getWidth() >= 0 && v.getHeight() >= 0) {
            String what = "a drawing " + around(v);
            grow(v.getMinX(), v.getMinY(), what);
            grow(v.getMaxX(), v.getMaxY(), what);
        }
    }

    private static String around(Rectangle2D v) {
        return String.format(
                java.util.Locale.ROOT,
                "from (%.1f, %.1f) to (%.1f, %.1f) mm",
                v.getMinX(),
                v.getMinY(),
                v.getMaxX(),
                v.getMaxY());
    }

    private void grow(double x, double y, String what) {
        double[] at = {x, y, x, y};
        for (int i = 0; i < 4; i++) {
            if (i < 2 ? at[i] < extent[i] : at[i] > extent[i]) {
                extent[i] = at[i];
                outermost[i] = what;
            }
        }
    }

    /** Nothing stands nearer to an edge of the paper than 12 mm. */
    void keepsItsMargins(Paper paper, String where) {
        double[] edge = {0, 0, paper.widthMm(), paper.heightMm()};
        String[] side = {"left", "lower", "right", "upper"};
        for (int i = 0; i < 4; i++) {
            assertThat(i < 2 ? extent[i] - edge[i] : edge[i] - extent[i])
                    .as("%s on %s: mm from the %s edge to %s", where, paper.words(), side[i], outermost[i])
                    .isGreaterThanOrEqualTo(12);
        }
    }

    private Circle circle() {
        if (curves != 4 || !closed || points.size() != 5) {
            return null;
        }
        double x0 = points.stream().mapToDouble(Pt::x).min().orElseThrow();
        double x1 = points.stream().mapToDouble(Pt::x).max().orElseThrow();
        double y0 = points.stream().mapToDouble(Pt::y).min().orElseThrow();
        double y1 = points.stream().mapToDouble(Pt::y).max().orElseThrow();
        return Math.abs((x1 - x0) - (y1 - y0)) > 0.01 * (x1 - x0) + 1e-3
                ? null
                : new Circle(new Pt((x0 + x1) / 2, (y0 + y1) / 2), (x1 - x0 + y1 - y0) / 4);
    }

    @Override
    public void strokePath() {
        double w = getGraphicsState().getLineWidth() * MM;
        seen(w / 2);
        Circle c = circle();
        if (c != null) {
            strokedCircles.add(c);
            circleLineWidths.add(w);
        } else if (curves == 0 && !closed && points.size() == 2) {
            lines.add(new Segment(points.get(0), points.get(1)));
        } else if (curves == 0 && closed) {
            polygons.add(List.copyOf(points));
        }
        reset();
    }

    @Override
    public void fillPath(int windingRule) {
        seen(0);
        Circle c = circle();
        if (c != null) {
            filledCircles.add(c);
        }
        reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fillPath(windingRule);
    }

    @Override
    public void shadingFill(COSName shadingName) {
        images++;
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        text = new StringBuilder();
        textAt = null;
        textSizes.add(getGraphicsState().getTextState().getFontSize() * MM);
        super.showText(string);
        words.put(text.toString(), textAt);
        wordEnds.put(text.toString(), textEnd);
        if (textAt != null) {
            runs.add(new Run(text.toString(), textAt, textEnd, textSizes.get(textSizes.size() - 1)));
        }
    }

    @Override
    protected void showGlyph(Matrix m, PDFont font, int code, Vector displacement) throws IOException {
        if (textAt == null) {
            textAt = mm(m.getTranslateX(), m.getTranslateY());
        }
        text.append(font.toUnicode(code));
        textEnd = mm(
                m.getTranslateX() + displacement.getX() * m.getScaleX(),
                m.getTranslateY() + displacement.getX() * m.getShearY());
        String what = "the words that begin \"" + text + "\"";
        grow(m.getTranslateX() * MM, m.getTranslateY() * MM, what);
        grow(
                (m.getTranslateX() + displacement.getX() * m.getScaleX()) * MM,
                (m.getTranslateY() + displacement.getX() * m.getShearY()) * MM,
                what);
    }
}
