package portwright.drawing;

import portwright.geometry.Pt;
import portwright.units.Format;

/**
 * A check bar: 100 mm with millimetre ticks on one side, 4 in with eighths on the other. The wide line is 100 mm from
 * end to end, the narrow line under it 4 in.
 */
public final class CheckBar {
    /** Length of the metric bar, mm. */
    public static final double LENGTH_MM = 100;
    /** Length of the inch bar, mm. */
    public static final double INCH_LENGTH_MM = 101.6;

    private static final double INCH_MM = 25.4;

    private CheckBar() {}

    /** From {@code zero} to the right; millimetres above. */
    public static void across(Pen pen, Pt zero) {
        draw(pen, zero, 1, 0);
    }

    /** From {@code zero} downwards; millimetres to the right. */
    public static void down(Pen pen, Pt zero) {
        draw(pen, zero, 0, -1);
    }

    private static void draw(Pen pen, Pt zero, double dx, double dy) {
        Frame f = new Frame(zero, dx, dy);
        pen.line(f.at(0, 0), f.at(INCH_LENGTH_MM, 0), LineStyle.DIMENSION);
        pen.line(f.at(0, 0), f.at(LENGTH_MM, 0), LineStyle.RULE);
        for (int mm = 0; mm <= LENGTH_MM; mm++) {
            double tick = mm % 10 == 0 ? 3.4 : mm % 5 == 0 ? 2.6 : 1.7;
            pen.line(f.at(mm, 0), f.at(mm, tick), mm % 50 == 0 ? LineStyle.GROOVE : LineStyle.DIMENSION, Ink.INK);
        }
        for (int eighth = 0; eighth <= 32; eighth++) {
            double tick = eighth % 8 == 0 ? 3 : eighth % 4 == 0 ? 2.1 : 1.2;
            pen.line(
                    f.at(eighth * INCH_MM / 8, 0),
                    f.at(eighth * INCH_MM / 8, -tick),
                    eighth % 32 == 0 ? LineStyle.GROOVE : LineStyle.DIMENSION,
                    Ink.INK);
        }
        boolean across = dy == 0;
        double angle = across ? 0 : -Math.PI / 2;
        double base = 4;
        pen.text("0", f.at(0, base), Pen.Align.CENTRE, angle, TextStyle.BAR);
        pen.text("50", f.at(50, base), Pen.Align.CENTRE, angle, TextStyle.BAR);
        pen.text(Format.plain(LENGTH_MM, 0) + " mm", f.at(LENGTH_MM, base), Pen.Align.RIGHT, angle, TextStyle.BAR_BOLD);
        pen.text("4 in", f.at(INCH_LENGTH_MM + 1.2, -2.4), Pen.Align.LEFT, angle, TextStyle.BAR_BOLD);
    }

    private record Frame(Pt zero, double dx, double dy) {
        Pt at(double along, double side) {
            return zero.plus(along * dx - side * dy, along * dy + side * dx);
        }
    }
}
