package portwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import portwright.drawing.Box;
import portwright.geometry.Circle;
import portwright.geometry.Pt;

/** How a picture falls on sheets: columns A, B, … from the left, rows 1, 2, … from the top. */
final class Tiling {
    /** Overlap of neighbouring sheets, mm; at least 10 by the contract. */
    static final double OVERLAP_MM = 12;

    private final Seams columns;
    private final Seams rows;
    private final List<Tile> tiles = new ArrayList<>();

    /**
     * @param box the picture, mm
     * @param outline its rim; a sheet that the rim's inside does not reach is blank
     * @param circles saw circles that no seam should cut
     * @param prefix before every name: part and face, ending in "-"
     */
    Tiling(Box box, List<Pt> outline, List<Circle> circles, double width, double height, String prefix) {
        columns = Seams.of(
                box.minX(),
                box.maxX(),
                width,
                OVERLAP_MM,
                circles.stream()
                        .map(c -> new Seams.Span(
                                c.centre().x() - c.radius(), c.centre().x() + c.radius()))
                        .toList());
        Seams up = Seams.of(
                -box.maxY(),
                -box.minY(),
                height,
                OVERLAP_MM,
                circles.stream()
                        .map(c -> new Seams.Span(
                                -c.centre().y() - c.radius(), -c.centre().y() + c.radius()))
                        .toList());
        rows = up;
        for (int r = 0; r < rows.count(); r++) {
            for (int c = 0; c < columns.count(); c++) {
                double x = columns.windows().get(c);
                double top = -rows.windows().get(r);
                Box window = new Box(x, top - height, x + width, top);
                Box cell = new Box(
                        c == 0 ? x : columns.seams().get(c - 1),
                        r == rows.count() - 1 ? top - height : -rows.seams().get(r),
                        c == columns.count() - 1 ? x + width : columns.seams().get(c),
                        r == 0 ? top : -rows.seams().get(r - 1));
                boolean hole =
                        circles.stream().anyMatch(k -> cell.grown(k.radius()).contains(k.centre()));
                boolean blank = !hole && cell.sharedArea(outline) < 1;
                tiles.add(new Tile(c, r, prefix + letters(c) + (r + 1), window, cell, blank));
            }
        }
    }

    /** A, B, … Z, AA, AB, … */
    static String letters(int column) {
        String s = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? s : letters(column / 26 - 1) + s;
    }

    int columnCount() {
        return columns.count();
    }

    int rowCount() {
        return rows.count();
    }

    /** x of the trim line right of a column. */
    double seamX(int column) {
        return columns.seams().get(column);
    }

    /** y of the trim line below a row. */
    double seamY(int row) {
        return -rows.seams().get(row);
    }

    List<Tile> all() {
        return Collections.unmodifiableList(tiles);
    }

    /** The tile there; null outside. */
    Tile at(int column, int row) {
        return column < 0 || row < 0 || column >= columns.count() || row >= rows.count()
                ? null
                : tiles.get(row * columns.count() + column);
    }

    List<Tile> printed() {
        return tiles.stream().filter(t -> !t.blank()).toList();
    }

    List<Tile> blanks() {
        return tiles.stream().filter(Tile::blank).toList();
    }

    /** Names of the seams that cut a circle, for example "B–C" or "2–3"; empty where none does. */
    List<String> cutsThrough(Circle circle) {
        List<String> out = new ArrayList<>();
        for (int c = 0; c + 1 < columns.count(); c++) {
            if (Math.abs(columns.seams().get(c) - circle.centre().x()) < circle.radius()) {
                out.add(letters(c) + "–" + letters(c + 1));
            }
        }
        for (int r = 0; r + 1 < rows.count(); r++) {
            if (Math.abs(seamY(r) - circle.centre().y()) < circle.radius()) {
                out.add((r + 1) + "–" + (r + 2));
            }
        }
        return out;
    }
}
