package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Circle;
import portwright.geometry.Pt;

/** Where a tile meets its neighbours: the lines to cut on and the marks to lay over each other. */
final class TileSeams {
    private static final TextStyle MARK = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3, Ink.INK, true);
    private static final TextStyle WORDS = new TextStyle(TextStyle.Face.SANS, 13, 3.2, Ink.INK, true);

    private static final double LINE_GAP = 1.2;
    private static final double CAPITAL = 0.78;
    private static final double TAIL = 0.24;

    private final View view;
    private final Tile tile;
    private final PdfPen model;

    TileSeams(View view, Tile tile, PdfPen model) {
        this.view = view;
        this.tile = tile;
        this.model = model;
    }

    /** The printed sheet beside this one, or null. */
    Tile neighbour(int dc, int dr) {
        Tile t = view.tiling().at(tile.column() + dc, tile.row() + dr);
        return t == null || t.blank() ? null : t;
    }

    /** Drawn before all else, so that no line to cut on runs through the words of a label. */
    void lines(Pen pen) {
        Box w = tile.window();
        for (int side = -1; side <= 1; side += 2) {
            if (neighbour(side, 0) != null) {
                double x = seam(side, true);
                pen.line(new Pt(x, w.minY()), new Pt(x, w.maxY()), LineStyle.TRIM);
            }
            if (neighbour(0, side) != null) {
                double y = seam(side, false);
                pen.line(new Pt(w.minX(), y), new Pt(w.maxX(), y), LineStyle.TRIM);
            }
        }
    }

    /** x of the left (−1) or right (1) trim line, or y of the upper (−1) or lower (1) one. */
    private double seam(int side, boolean upright) {
        return upright
                ? view.tiling().seamX(side < 0 ? tile.column() - 1 : tile.column())
                : view.tiling().seamY(side < 0 ? tile.row() - 1 : tile.row());
    }

    /** Words and match marks, to be drawn last; takes their places. */
    List<Runnable> words(Places places) {
        List<Runnable> later = new ArrayList<>();
        for (boolean upright : new boolean[] {true, false}) {
            for (int side = -1; side <= 1; side += 2) {
                Tile beside = upright ? neighbour(side, 0) : neighbour(0, side);
                if (beside != null) {
                    marks(
                            side < 0 ? beside : tile,
                            side < 0 ? tile : beside,
                            seam(side, upright),
                            upright,
                            places,
                            later);
                }
            }
        }
        for (boolean upright : new boolean[] {true, false}) {
            for (int side = -1; side <= 1; side += 2) {
                Tile beside = upright ? neighbour(side, 0) : neighbour(0, side);
                if (beside != null) {
                    later.add(order(beside, side, seam(side, upright), upright, places));
                }
            }
        }
        return later;
    }

    /**
     * What to do at a trim line, in the strip beyond it: a sheet is cut at its left and upper lines and laid over its neighbours there, so the
     * strip is cut away or covered.
     */
    private Runnable order(Tile beside, int side, double at, boolean upright, Places places) {
        String words =
                side < 0 ? "cut on this line, lay over " + beside.name() : beside.name() + " goes over up to this line";
        Box w = tile.window();
        double h = model.textSize(WORDS);
        double half = model.textWidth(words, WORDS) / 2;
        // across the line, away from the sheet's middle, where the words' feet stand
        double foot = side < 0 ? LINE_GAP : LINE_GAP + h * CAPITAL;
        double base = upright ? at + side * foot : at - side * foot;
        List<Box> boxes = new ArrayList<>();
        for (double off = 0; off <= 0.4; off += 0.02) {
            for (double share : new double[] {0.5 + off, 0.5 - off}) {
                double along = upright ? w.minY() + share * w.height() : w.minX() + share * w.width();
                double low = base - h * (upright ? CAPITAL : TAIL);
                double high = base + h * (upright ? TAIL : CAPITAL);
                boxes.add(
                        upright
                                ? new Box(low, along - half, high, along + half)
                                : new Box(along - half, low, along + half, high));
            }
        }
        Box found = places.first(boxes.stream().filter(w.grown(-1)::contains).toList());
        Box box = found == null ? boxes.get(0) : found;
        Pt place =
                upright ? new Pt(base, box.centre().y()) : new Pt(box.centre().x(), base);
        boolean cleared = places.breakable(box);
        return () -> {
            if (cleared) {
                model.fill(box.corners(), Ink.PAPER, 1);
            }
            model.text(words, place, Pen.Align.CENTRE, upright ? Math.PI / 2 : 0, WORDS);
        };
    }

    /** Two marks on a seam, at the same places on both sheets. */
    private void marks(Tile first, Tile second, double at, boolean upright, Places places, List<Runnable> later) {
        double from = kept(first, upright, -1);
        double to = kept(first, upright, 1);
        List<Circle> holes = view.painter().cutCircles();
        for (int i = 0; i < 2; i++) {
            double place = from + (to - from) * (i == 0 ? 0.2 : 0.8);
            // from both ends towards the middle, and never to one place
            for (int tries = 0; tries < 7 && near(holes, upright ? new Pt(at, place) : new Pt(place, at)); tries++) {
                place += (to - from) * (i == 0 ? 0.04 : -0.04);
            }
            Pt p = upright ? new Pt(at, place) : new Pt(place, at);
            String name = first.name() + "·" + second.cell() + (i == 0 ? " a" : " b");
            double tw = model.textWidth(name, MARK);
            boolean left = upright ? tile == first : i == 1;
            Pt text = p.plus(left ? -3.6 : 3.6, upright ? 3.4 : tile == first ? 2.6 : -5);
            places.take(new Box(p.x() - 5.5, p.y() - 5.5, p.x() + 5.5, p.y() + 5.5));
            Box words = new Box(
                    left ? text.x() - tw : text.x(), text.y() - 1, left ? text.x() : text.x() + tw, text.y() + 3.5);
            places.take(words);
            boolean hatched = places.hatched(words);
            later.add(() -> {
                if (hatched) {
                    model.fill(words.corners(), Ink.PAPER, 1);
                }
                model.polyline(
                        List.of(p.plus(0, 2.6), p.plus(2.6, 0), p.plus(0, -2.6), p.plus(-2.6, 0)), true, LineStyle.BOX);
                model.line(p.plus(-5, 0), p.plus(5, 0), LineStyle.BOX);
                model.line(p.plus(0, -5), p.plus(0, 5), LineStyle.BOX);
                model.text(name, text, left ? Pen.Align.RIGHT : Pen.Align.LEFT, 0, MARK);
            });
        }
    }

    /** Where what is kept of the sheets beside a seam ends, along it: at the lower or right (1) or the upper or left (−1) trim line. */
    private double kept(Tile t, boolean upright, int side) {
        Box w = t.window();
        Tiling tiling = view.tiling();
        int of = upright ? t.row() : t.column();
        int count = upright ? tiling.rowCount() : tiling.columnCount();
        int line = side < 0 ? of - 1 : of;
        if (line < 0 || line >= count - 1) {
            return upright ? (side < 0 ? w.maxY() : w.minY()) : side < 0 ? w.minX() : w.maxX();
        }
        return upright ? tiling.seamY(line) : tiling.seamX(line);
    }

    private static boolean near(List<Circle> holes, Pt p) {
        return holes.stream().anyMatch(c -> c.centre().distance(p) < c.radius() + 12);
    }
}
