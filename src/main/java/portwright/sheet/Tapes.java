package portwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;

/** BACK, RIGHT, FRONT, LEFT in boxes near the four sides of a sheet, where they cover nothing of the drawing; without their second half where there is little room. */
final class Tapes {
    private static final double STEP = 3;
    /** Share of the sheet, from either end of a side, where its box does not go: there it would seem to name the next side. */
    private static final double ENDS = 0.02;
    /** Share of the sheet that a box may lie in from its side. */
    private static final double DEEP = 0.44;

    private static final double AIR = 1.2;

    private final Pen pen;
    private final Box window;
    private final double[] insets;

    /** @param insets how far trim lines reach in at top, right, bottom and left, mm */
    Tapes(Pen pen, Box window, double[] insets) {
        this.pen = pen;
        this.window = window;
        this.insets = insets;
    }

    /** Finds their places; the boxes are drawn when all else is. */
    List<Runnable> lay(List<String> sides, Places places) {
        List<Runnable> out = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            String full = sides.get(side);
            if (!lay(full, side, places, out)) {
                lay(full.split(" · ", -1)[0], side, places, out);
            }
        }
        return out;
    }

    private boolean lay(String words, int side, Places places, List<Runnable> out) {
        String text = words + (side == 2 ? " ↓" : " ↑");
        Box b = places.first(candidates(side, pen.textWidth(text, TextStyle.TAPE) / 2 + 4));
        if (b != null) {
            out.add(() -> draw(text, b.grown(-AIR), side));
        }
        return b != null;
    }

    private List<Box> candidates(int side, double half) {
        boolean level = side % 2 == 0;
        double thick = TextStyle.TAPE.mm() * 0.85;
        double bw = (level ? half : thick) + AIR;
        double bh = (level ? thick : half) + AIR;
        double along = level ? window.width() : window.height();
        double across = level ? window.height() : window.width();
        List<double[]> offsets = new ArrayList<>();
        double reach = Math.max(0, along * (0.5 - ENDS) - half);
        for (double in = insets[side]; in < Math.max(insets[side] + 1, across * DEEP); in += STEP) {
            for (double off = 0; off <= reach; off += STEP) {
                offsets.add(new double[] {in, off});
                offsets.add(new double[] {in, -off});
            }
        }
        offsets.sort(Comparator.comparingDouble(o -> 2 * (o[0] - insets[side]) + Math.abs(o[1])));
        return offsets.stream()
                .map(o -> {
                    double x = level
                            ? window.centre().x() + o[1]
                            : side == 1 ? window.maxX() - o[0] - bw : window.minX() + o[0] + bw;
                    double y = level
                            ? (side == 0 ? window.maxY() - o[0] - bh : window.minY() + o[0] + bh)
                            : window.centre().y() + o[1];
                    return new Box(x - bw, y - bh, x + bw, y + bh);
                })
                .toList();
    }

    private void draw(String text, Box b, int side) {
        boolean level = side % 2 == 0;
        double angle = side == 1 ? -Math.PI / 2 : side == 3 ? Math.PI / 2 : 0;
        double drop = TextStyle.TAPE.mm() * 0.36;
        Pt at = b.centre().plus(side == 1 ? -drop : side == 3 ? drop : 0, level ? -drop : 0);
        pen.fill(b.corners(), Ink.PAPER, 1);
        pen.polyline(b.corners(), true, LineStyle.BOX);
        pen.text(text, at, Pen.Align.CENTRE, angle, TextStyle.TAPE);
    }
}
