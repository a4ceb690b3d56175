package portwright.drawing;

import java.util.List;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/**
 * Draws in the picture's own millimetres: x to the right, y up. A picture of a mirrored face is mirrored by the
 * painter, never by the pen, so words always read.
 *
 * <p>Sizes of lines and words do not follow the zoom: {@link #size} turns them into picture millimetres, so that a
 * painter can lay out boxes and flags alike for paper and screen.
 */
public interface Pen {
    /** Paper or screen. */
    Flavour flavour();

    /** A length that stays the same at any zoom, in picture mm: {@code paperMm} on paper at 1 : 1, {@code screenPx} on screen. */
    double size(double paperMm, double screenPx);

    /** A straight line. */
    void line(Pt a, Pt b, LineStyle style, Ink ink);

    /** Joined straight lines. */
    void polyline(List<Pt> points, boolean closed, LineStyle style, Ink ink);

    /** A true circle. */
    void circle(Pt centre, double radius, LineStyle style, Ink ink);

    /** A circular arc; angles in rad counter-clockwise from the picture's x axis; {@code sweep} may be negative. */
    void arc(Pt centre, double radius, double start, double sweep, LineStyle style, Ink ink);

    /** A filled area. Inks that are {@link Ink#screenOnly} are left out on paper. */
    void fill(List<Pt> points, Ink ink, double opacity);

    /** A filled disc. */
    void fillCircle(Pt centre, double radius, Ink ink, double opacity);

    /** Words: {@code at} is the baseline's left end, middle or right end; {@code angle} in rad counter-clockwise. */
    void text(String words, Pt at, Align align, double angle, TextStyle style);

    /** Width of the words in picture mm. */
    double textWidth(String words, TextStyle style);

    /** Where the baseline point lies in the words. */
    enum Align {
        LEFT,
        CENTRE,
        RIGHT
    }

    /** Size of the type in picture mm. */
    default double textSize(TextStyle style) {
        return size(style.mm(), style.px());
    }

    default void line(Pt a, Pt b, LineStyle style) {
        line(a, b, style, style.ink());
    }

    /** Many straight lines of one style, such as hatching. */
    default void lines(List<Segment> lines, LineStyle style) {
        lines.forEach(s -> line(s.a(), s.b(), style));
    }

    default void polyline(List<Pt> points, boolean closed, LineStyle style) {
        polyline(points, closed, style, style.ink());
    }

    default void circle(Pt centre, double radius, LineStyle style) {
        circle(centre, radius, style, style.ink());
    }
}
