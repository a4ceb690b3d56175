package portwright.sheet;

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
    private static final TextStyle WORDS = new TextStyle(TextStyle.Face.SANS, 13, 3.2, Ink.INK, false);

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
    void lines() {
        Box w = tile.window();
        Tiling tiling = view.tiling();
        for (int side = -1; side <= 1; side += 2) {
            if (neighbour(side, 0) != null) {
                double x = tiling.seamX(side < 0 ? tile.column() - 1 : tile.column());
                model.line(new Pt(x, w.minY()), new Pt(x, w.maxY()), LineStyle.TRIM);
            }
            if (neighbour(0, side) != null) {
                double y = tiling.seamY(side < 0 ? tile.row() - 1 : tile.row());
                model.line(new Pt(w.minX(), y), new Pt(w.maxX(), y), LineStyle.TRIM);
            }
        }
    }

    /** Words and match marks, to be drawn last; the places they take are kept free of labels. */
    void words(List<Box> taken, List<Runnable> later) {
        Box w = tile.window();
        Tiling tiling = view.tiling();
        for (int side = -1; side <= 1; side += 2) {
            Tile beside = neighbour(side, 0);
            if (beside != null) {
                double x = tiling.seamX(side < 0 ? tile.column() - 1 : tile.column());
                Tile first = side < 0 ? beside : tile;
                Tile second = side < 0 ? tile : beside;
                marks(first, second, x, true, taken, later);
                if (side > 0) {
                    String cut = "cut " + beside.name() + " on this line and lay it over";
                    double h = model.textSize(WORDS);
                    double half = model.textWidth(cut, WORDS) / 2;
                    Pt at = new Pt(x - 1.2, w.centre().y());
                    for (double share : new double[] {0.5, 0.4, 0.6, 0.34, 0.66}) {
                        double yy = w.minY() + share * w.height();
                        Box b = new Box(x - 1.5 - h, yy - half, x + 1, yy + half);
                        if (view.painter().sawCircles().stream()
                                .noneMatch(c -> b.grown(c.radius() + 2).contains(c.centre()))) {
                            at = new Pt(x - 1.2, yy);
                            break;
                        }
                    }
                    Pt place = at;
                    taken.add(new Box(
                            x - 1.5 - h,
                            at.y() - model.textWidth(cut, WORDS) / 2,
                            x + 1,
                            at.y() + model.textWidth(cut, WORDS) / 2));
                    later.add(() -> model.text(
                            cut,
                            place,
                            Pen.Align.CENTRE,
                            Math.PI / 2,
                            new TextStyle(WORDS.face(), WORDS.px(), WORDS.mm(), Ink.INK, true)));
                }
            }
            Tile above = neighbour(0, side);
            if (above != null) {
                double y = tiling.seamY(side < 0 ? tile.row() - 1 : tile.row());
                marks(side < 0 ? above : tile, side < 0 ? tile : above, y, false, taken, later);
            }
        }
    }

    /** Two marks on a seam, at the same places on both sheets. */
    private void marks(Tile first, Tile second, double at, boolean upright, List<Box> taken, List<Runnable> later) {
        double low = upright
                ? Math.max(first.window().minY(), second.window().minY())
                : Math.max(first.window().minX(), second.window().minX());
        double high = upright
                ? Math.min(first.window().maxY(), second.window().maxY())
                : Math.min(first.window().maxX(), second.window().maxX());
        List<Circle> holes = view.painter().sawCircles();
        for (int i = 0; i < 2; i++) {
            double from = upright ? high : low;
            double to = upright ? low : high;
            double place = from + (to - from) * (i == 0 ? 0.2 : 0.8);
            for (int tries = 0; tries < 8 && near(holes, upright ? new Pt(at, place) : new Pt(place, at)); tries++) {
                place += (to - from) * (i == 0 ? 0.04 : -0.04);
            }
            Pt p = upright ? new Pt(at, place) : new Pt(place, at);
            String name = first.name() + "·" + second.name() + (i == 0 ? " a" : " b");
            double tw = model.textWidth(name, MARK);
            boolean left = upright ? tile == first : i == 1;
            Pt text = p.plus(left ? -3.6 : 3.6, upright ? 3.4 : tile == first ? 2.6 : -5);
            taken.add(new Box(p.x() - 5.5, p.y() - 5.5, p.x() + 5.5, p.y() + 5.5));
            taken.add(new Box(
                    left ? text.x() - tw : text.x(), text.y() - 1, left ? text.x() : text.x() + tw, text.y() + 3.5));
            later.add(() -> {
                model.polyline(
                        List.of(p.plus(0, 2.6), p.plus(2.6, 0), p.plus(0, -2.6), p.plus(-2.6, 0)), true, LineStyle.BOX);
                model.line(p.plus(-5, 0), p.plus(5, 0), LineStyle.BOX);
                model.line(p.plus(0, -5), p.plus(0, 5), LineStyle.BOX);
                model.text(name, text, left ? Pen.Align.RIGHT : Pen.Align.LEFT, 0, MARK);
            });
        }
    }

    private static boolean near(List<Circle> holes, Pt p) {
        return holes.stream().anyMatch(c -> c.centre().distance(p) < c.radius() + 12);
    }
}
