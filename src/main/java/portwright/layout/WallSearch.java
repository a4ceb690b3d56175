package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.Hole;
import portwright.layout.WallCells.Cell;

/**
 * Best places of n inlets in the wall: in the lower third of the chamber (common practice: the fire enters low), at any height where that has no place. Evenly round the wall, all shifted to
 * the same hand; side by side in one panel; or one by one wherever there is most room. Places are tried on a grid, the best refined.
 */
final class WallSearch {
    private static final double STEP_MM = 12;
    private static final double FINE_MM = 0.5;
    private static final double LOWEST_SHARE = 1.0 / 3;

    private final WallSite site;
    private final int n;
    private final Progress progress;
    private final int panels;
    private final WallCells grid;
    private final List<List<Cell>> cells = new ArrayList<>();
    private double highest;

    WallSearch(WallSite site, int n, Progress progress) {
        this.site = site;
        this.n = n;
        this.progress = progress;
        panels = site.kiln.panels().size();
        grid = new WallCells(site);
    }

    /** Arrangements, best first. */
    List<Spots> run() {
        if (site.nowhere()) {
            return nearest(site.kiln.height() * LOWEST_SHARE);
        }
        List<Spots> low = upTo(site.kiln.height() * LOWEST_SHARE);
        if (progress.cancelled() || !low.isEmpty() && low.get(0).margin() >= 0) {
            return low;
        }
        List<Spots> out = new ArrayList<>(low);
        upTo(site.kiln.height() - site.radius).forEach(s -> out.add(s.aboveThird(site.kiln.height() * LOWEST_SHARE)));
        out.sort(Comparator.comparingDouble((Spots s) -> -s.margin()));
        return out.subList(0, Math.min(4, out.size()));
    }

    /** Where no place passes: one arrangement, to tell what comes nearest. Every panel is looked at roughly, those unlike each other that come nearest closely. */
    private List<Spots> nearest(double heightMm) {
        highest = heightMm;
        look(WallCells.ROUGH_MM);
        if (progress.cancelled()) {
            return List.of();
        }
        List<Integer> closely = WallCells.nearest(cells);
        closely.forEach(p -> cells.set(p - 1, grid.of(p, highest, STEP_MM)));
        List<Spots> out = new ArrayList<>();
        if (n <= panels) {
            closely.forEach(p -> out.add(round(p)));
        }
        if (n > 1) {
            out.add(oneByOne());
        }
        return List.of(
                out.stream().max(Comparator.comparingDouble(Spots::margin)).orElseThrow());
    }

    private void look(double stepMm) {
        cells.clear();
        for (int p = 1; p <= panels && !progress.cancelled(); p++) {
            cells.add(grid.of(p, highest, stepMm));
        }
    }

    private List<Spots> upTo(double heightMm) {
        highest = heightMm;
        look(STEP_MM);
        List<Spots> out = new ArrayList<>();
        if (progress.cancelled()) {
            return out;
        }
        for (int p = 1; p <= panels; p++) {
            if (n <= panels) {
                out.add(round(p));
            }
            if (n == 2) {
                keep(out, pair(p));
            }
        }
        if (n == 2) {
            keep(out, anyPair());
        }
        if (n > 1) {
            keep(out, oneByOne());
        }
        out.sort(Comparator.comparingDouble((Spots s) -> -s.margin()));
        return out.subList(0, Math.min(4, out.size()));
    }

    private static void keep(List<Spots> out, Spots s) {
        if (s != null) {
            out.add(s);
        }
    }

    /** One in each of n panels evenly round from panel {@code first}, at the same place in each. */
    private Spots round(int first) {
        int[] where = new int[n];
        for (int k = 0; k < n; k++) {
            where[k] = (first - 1 + (int) Math.round(k * (double) panels / n)) % panels + 1;
        }
        double[] best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Cell c : cells.get(first - 1)) {
            double m = c.margin() > most ? same(where, c.u(), c.v(), most) : c.margin();
            if (m > most) {
                most = m;
                best = new double[] {c.u(), c.v()};
            }
        }
        for (double step = STEP_MM / 2; step >= FINE_MM; step /= 2) {
            for (int k = 0; k < 8; k++) {
                double u = best[0] + step * Math.sin(k * Math.PI / 4);
                double v = best[1] + step * Math.cos(k * Math.PI / 4);
                double m = v > highest ? most : same(where, u, v, most);
                if (m > most) {
                    most = m;
                    best = new double[] {u, v};
                    k = -1;
                }
            }
        }
        double[] u = new double[n];
        double[] v = new double[n];
        Arrays.fill(u, best[0]);
        Arrays.fill(v, best[1]);
        boolean even = n > 1 && panels % n == 0;
        String name = n == 1
                ? "in " + site.kiln.panel(first).words()
                : n == 2 && even ? "in opposite panels of the wall" : "in panels round the wall";
        return new Spots(name, even, where, u, v, most);
    }

    private double same(int[] where, double u, double v, double enough) {
        List<Hole> holes = new ArrayList<>();
        double m = Scale.FREE;
        for (int k = 0; k < n && m > enough; k++) {
            holes.add(site.hole("", where[k], u, v));
            m = Math.min(m, joined(holes));
        }
        return m;
    }

    /** Margin of the last of these holes, by itself and to the others. */
    private double joined(List<Hole> holes) {
        Hole last = holes.get(holes.size() - 1);
        double m = site.margin(last);
        for (Hole o : holes.subList(0, holes.size() - 1)) {
            m = Math.min(m, site.pair(o, last));
        }
        return m;
    }

    /** Two in one panel, as far left as right. */
    private Spots pair(int panel) {
        Spots best = null;
        for (Cell c : cells.get(panel - 1)) {
            if (c.u() > 0 && (best == null || c.margin() > best.margin())) {
                Hole a = site.hole("a", panel, -c.u(), c.v());
                Hole b = site.hole("b", panel, c.u(), c.v());
                double m = Math.min(c.margin(), joined(List.of(b, a)));
                if ((best == null || m > best.margin()) && !site.overlap(a, b)) {
                    best = new Spots(
                            "side by side in " + site.kiln.panel(panel).words(),
                            false,
                            new int[] {panel, panel},
                            new double[] {-c.u(), c.u()},
                            new double[] {c.v(), c.v()},
                            m);
                }
            }
        }
        return best;
    }

    /** The best two of all cells, moved on by ever shorter steps. */
    private Spots anyPair() {
        List<Cell> all = cells.stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingDouble((Cell c) -> -c.margin()))
                .toList();
        Cell[] best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < all.size() && all.get(i).margin() > most && !progress.cancelled(); i++) {
            for (int j = 0; j < i; j++) {
                double m = both(all.get(i), all.get(j));
                if (m > most) {
                    most = m;
                    best = new Cell[] {all.get(i), all.get(j)};
                }
            }
        }
        if (best == null) {
            return null;
        }
        for (double step = STEP_MM / 2; step >= FINE_MM; step /= 2) {
            for (int k = 0; k < 16; k++) {
                Cell was = best[k / 8];
                double v = was.v() + step * Math.cos(k * Math.PI / 4);
                Cell to = v > highest ? was : grid.cell(was.panel(), was.u() + step * Math.sin(k * Math.PI / 4), v);
                double m = both(to, best[1 - k / 8]);
                if (m > most) {
                    most = m;
                    best[k / 8] = to;
                    k = -1;
                }
            }
        }
        return new Spots(
                "one by one in the wall",
                false,
                new int[] {best[0].panel(), best[1].panel()},
                new double[] {best[0].u(), best[1].u()},
                new double[] {best[0].v(), best[1].v()},
                most);
    }

    private double both(Cell a, Cell b) {
        return Math.min(
                Math.min(a.margin(), b.margin()),
                site.pair(site.hole("a", a.panel(), a.u(), a.v()), site.hole("b", b.panel(), b.u(), b.v())));
    }

    /** Least margin of the brick between a hole and others. */
    private double apart(List<Hole> holes, Hole h) {
        return holes.stream().mapToDouble(o -> site.pair(o, h)).min().orElse(Scale.FREE);
    }

    /** Each next one where it hurts least, and not into another; where there is no such place, as far from the others as can be. */
    private Spots oneByOne() {
        List<Cell> all = cells.stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingDouble((Cell c) -> -c.margin()))
                .toList();
        List<Hole> holes = new ArrayList<>();
        double least = Scale.FREE;
        for (int k = 0; k < n; k++) {
            Hole next = null;
            double most = Double.NEGATIVE_INFINITY;
            for (Cell c : all) {
                if (c.margin() <= most) {
                    break;
                }
                Hole h = site.hole("", c.panel(), c.u(), c.v());
                double m = Math.min(c.margin(), apart(holes, h));
                if (m > most && holes.stream().noneMatch(o -> site.overlap(o, h))) {
                    most = m;
                    next = h;
                }
            }
            if (next == null) {
                next = all.stream()
                        .map(c -> site.hole("", c.panel(), c.u(), c.v()))
                        .max(Comparator.comparingDouble(h -> apart(holes, h)))
                        .orElseThrow();
                most = Math.min(site.margin(next), apart(holes, next));
            }
            holes.add(next);
            least = Math.min(least, most);
        }
        return new Spots(
                "one by one in the wall",
                false,
                holes.stream().mapToInt(h -> h.face().panel()).toArray(),
                holes.stream().mapToDouble(h -> h.centre().x()).toArray(),
                holes.stream().mapToDouble(h -> h.centre().y()).toArray(),
                least);
    }
}
