package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Places of panels on a grid, each with the margin of one hole there. Lengths in mm. */
final class WallCells {
    /** Step of a first look at panels that have no place. */
    static final double ROUGH_MM = 36;

    /** How many panels get a closer look after it (judgement). */
    private static final int CLOSELY = 4;

    /** Margins that differ by less are the same. */
    private static final double SAME = 1e-6;

    private final WallSite site;

    /** A place in a panel and its margin by itself. */
    record Cell(int panel, double u, double v, double margin) {}

    WallCells(WallSite site) {
        this.site = site;
    }

    /** Places of a panel, numbered from 1, from its foot up to a height. */
    List<Cell> of(int panel, double highest, double step) {
        double side = Math.max(0, site.kiln.panel(panel).width() / 2 - site.radius);
        double low = site.radius;
        double high = Math.max(low + 1, highest);
        int across = (int) (side / step);
        List<Cell> out = new ArrayList<>();
        for (int i = -across; i <= across; i++) {
            for (double v = low; v <= high; v += step) {
                out.add(cell(panel, i * step, v));
            }
        }
        return out;
    }

    Cell cell(int panel, double u, double v) {
        return new Cell(panel, u, v, site.margin(site.hole("", panel, u, v)));
    }

    /**
     * The panels that have a place with most margin, no two of them with the same margins everywhere; the first where they are all alike.
     *
     * @param looked places of every panel in turn
     */
    static List<Integer> nearest(List<List<Cell>> looked) {
        List<Integer> order = IntStream.rangeClosed(1, looked.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer p) -> -most(looked.get(p - 1))))
                .toList();
        List<Integer> out = new ArrayList<>();
        for (int p : order) {
            if (out.size() < CLOSELY && out.stream().noneMatch(o -> alike(looked.get(o - 1), looked.get(p - 1)))) {
                out.add(p);
            }
        }
        return out;
    }

    private static double most(List<Cell> some) {
        return some.stream().mapToDouble(Cell::margin).max().orElse(Double.NEGATIVE_INFINITY);
    }

    private static boolean alike(List<Cell> a, List<Cell> b) {
        return a.size() == b.size()
                && IntStream.range(0, a.size())
                        .allMatch(i -> Math.abs(a.get(i).margin() - b.get(i).margin()) < SAME);
    }
}
