package portwright.sheet;

import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;

/** Two wide diagonals and the number of stops: paper that nobody may work from. */
final class Strike {
    private static final double WIDTH_MM = 2;
    private static final TextStyle WORDS = new TextStyle(TextStyle.Face.SANS_BOLD, 26, 9, Ink.INK, false);

    private Strike() {}

    static void through(Pen pen, Box box, String words) {
        diagonal(pen, new Pt(box.minX(), box.minY()), new Pt(box.maxX(), box.maxY()));
        diagonal(pen, new Pt(box.minX(), box.maxY()), new Pt(box.maxX(), box.minY()));
        TextStyle style = WORDS;
        double room = box.width() - 30;
        if (pen.textWidth(words, style) > room) {
            style = WORDS.size(WORDS.px(), WORDS.mm() * room / pen.textWidth(words, style));
        }
        double w = pen.textWidth(words, style) / 2 + 5;
        Pt c = box.centre();
        double h = style.mm() * 0.95;
        Box b = new Box(c.x() - w, c.y() - h, c.x() + w, c.y() + h);
        pen.fill(b.corners(), Ink.INK, 1);
        pen.text(words, c.plus(0, -style.mm() * 0.36), Pen.Align.CENTRE, 0, style.withInk(Ink.PAPER));
    }

    /** "2 STOPS: DO NOT DRILL". */
    static String stops(long n, String what) {
        return n + (n == 1 ? " STOP: " : " STOPS: ") + what;
    }

    private static void diagonal(Pen pen, Pt a, Pt b) {
        double l = a.distance(b);
        double nx = -(b.y() - a.y()) / l * WIDTH_MM / 2;
        double ny = (b.x() - a.x()) / l * WIDTH_MM / 2;
        double ex = (b.x() - a.x()) / l * WIDTH_MM;
        double ey = (b.y() - a.y()) / l * WIDTH_MM;
        pen.fill(
                List.of(
                        a.plus(nx + ex, ny + ey),
                        b.plus(nx - ex, ny - ey),
                        b.plus(-nx - ex, -ny - ey),
                        a.plus(ex - nx, ey - ny)),
                Ink.INK,
                1);
    }
}
