package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/**
 * Best places for two holes at a time, the others standing still, among all places of a fine grid over one slab. Brick joints leave strips with no way
 * from one to the next that climbs, so steps alone stay where they began. The balance keeps the second hole of a pair within a circle, so few of all
 * pairs are looked at. Lengths in mm; places of n holes are {x, …, y, …}.
 */
final class PairMoves {
    /** Step of the grid: holes across a brick joint have strips hardly wider than twice this to stand in. */
    private static final double FINE_MM = 6;
    /** Steps along the longer side at most, so that a large slab takes no longer than a small one. */
    private static final int MOST_STEPS = 110;
    /** Rounds over all pairs of holes (judgement). */
    private static final int ROUNDS = 6;
    /**
     * Weakest sections weighed for a pair at most, and for one arrangement by the square of its holes; they take nearly all the time (judgement: three
     * thousand a pair gained next to nothing over a thousand on forty kilns).
     */
    private static final int SECTIONS = 1000;

    private static final int SECTIONS_IN_ALL = 200_000;

    /** A place of the grid by column and row, with the margin of one hole there. */
    record Node(int column, int row, double x, double y, double margin) {}

    private final Site site;
    private final Pt middle;
    private final double west;
    private final double south;
    private final double step;
    /** Places, those with most room first, and where each stands in that order. */
    private final List<Node> nodes = new ArrayList<>();

    private final int[][] rank;
    /** By rank: margin of one hole there beside those that stand still. */
    private final double[] room;

    PairMoves(Site site) {
        this.site = site;
        middle = site.kiln.centre();
        Segment box = site.kiln.inner().bounds();
        double width = box.b().x() - box.a().x();
        double depth = box.b().y() - box.a().y();
        step = Math.max(Math.max(width, depth) / MOST_STEPS, FINE_MM);
        west = box.a().x() + step / 2;
        south = box.a().y() + step / 2;
        rank = new int[Math.max(1, (int) (width / step))][Math.max(1, (int) (depth / step))];
        for (int i = 0; i < rank.length; i++) {
            for (int j = 0; j < rank[i].length; j++) {
                double x = west + i * step;
                double y = south + j * step;
                nodes.add(new Node(i, j, x, y, site.hole(x, y)));
            }
        }
        nodes.sort(Comparator.comparingDouble((Node a) -> -a.margin()));
        for (int k = 0; k < nodes.size(); k++) {
            rank[nodes.get(k).column()][nodes.get(k).row()] = k;
        }
        room = new double[nodes.size()];
    }

    /** Places of the grid, those with most room first. */
    List<Node> nodes() {
        return nodes;
    }

    /** So many pairs, best first; no two of them with both holes within a hole's width of each other's. */
    List<double[]> best(int count) {
        List<Spots> best = new ArrayList<>();
        seek(new double[2], new double[2], 0, 1, Double.NEGATIVE_INFINITY, Integer.MAX_VALUE, found -> {
            if (best.stream().noneMatch(o -> o.margin() >= found.margin() && o.farFrom(found) < site.diameter)) {
                best.removeIf(o -> o.farFrom(found) < site.diameter);
                best.add(found);
                best.sort(Comparator.comparingDouble(o -> -o.margin()));
                best.subList(Math.min(count, best.size()), best.size()).clear();
            }
            return best.size() < count
                    ? Double.NEGATIVE_INFINITY
                    : best.get(count - 1).margin();
        });
        return best.stream().map(s -> join(s.x(), s.y())).toList();
    }

    /** Moves two holes at a time to where they have most room, until no pair gains. */
    double[] settled(double[] p, Progress progress) {
        int n = p.length / 2;
        double[] x = Arrays.copyOf(p, n);
        double[] y = Arrays.copyOfRange(p, n, 2 * n);
        double[] best = {site.margin(x, y, Double.NEGATIVE_INFINITY)};
        double before = Double.NEGATIVE_INFINITY;
        int left = SECTIONS_IN_ALL / (n * n);
        for (int round = 0; round < ROUNDS && best[0] > before && !progress.cancelled(); round++) {
            before = best[0];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < i; j++) {
                    Spots[] to = {null};
                    left -= seek(x.clone(), y.clone(), i, j, best[0], Math.min(left, SECTIONS), found -> {
                        to[0] = found;
                        return found.margin();
                    });
                    if (to[0] != null) {
                        x = to[0].x();
                        y = to[0].y();
                        best[0] = to[0].margin();
                    }
                }
            }
        }
        return join(x, y);
    }

    /** Told of each arrangement above the margin asked for; answers the margin to ask for from there on. */
    private interface Found {
        double above(Spots s);
    }

    /**
     * Tries holes a and b at every pair of places; the others stay as given.
     *
     * @param most weakest sections to weigh at most
     * @return how many were weighed
     */
    private int seek(double[] x, double[] y, int a, int b, double from, int most, Found found) {
        double cut = from;
        int n = x.length;
        double sumX = n * middle.x();
        double sumY = n * middle.y();
        for (int i = 0; i < n; i++) {
            sumX -= i == a || i == b ? 0 : x[i];
            sumY -= i == a || i == b ? 0 : y[i];
        }
        beside(x, y, a, b, cut);
        int sections = 0;
        for (int k = 0; k < room.length && nodes.get(k).margin() > cut && sections < most; k++) {
            if (room[k] <= cut) {
                continue;
            }
            x[a] = nodes.get(k).x();
            y[a] = nodes.get(k).y();
            double reach = n * site.offsetFor(cut);
            int last = clip(Math.floor((sumX - x[a] + reach - west) / step), rank.length - 1);
            for (int i = clip(Math.ceil((sumX - x[a] - reach - west) / step), rank.length); i <= last; i++) {
                int end = clip(Math.floor((sumY - y[a] + reach - south) / step), rank[i].length - 1);
                for (int j = clip(Math.ceil((sumY - y[a] - reach - south) / step), rank[i].length); j <= end; j++) {
                    int other = rank[i][j];
                    // a pair is looked at once, from its hole with less room
                    if (other >= k || room[other] <= cut) {
                        continue;
                    }
                    x[b] = west + i * step;
                    y[b] = south + j * step;
                    double m = Math.min(Math.min(room[k], room[other]), site.pair(x[a], y[a], x[b], y[b]));
                    m = m > cut ? Math.min(m, site.balance(x, y)) : m;
                    if (m > cut) {
                        m = site.sectionAbove(x, y, cut, m);
                        sections++;
                    }
                    if (m > cut) {
                        cut = found.above(new Spots("", false, x.clone(), y.clone(), m));
                    }
                }
            }
        }
        return sections;
    }

    private void beside(double[] x, double[] y, int a, int b, double cut) {
        double still = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            if (i == a || i == b) {
                continue;
            }
            still = Math.min(still, site.hole(x[i], y[i]));
            for (int j = 0; j < i; j++) {
                still = j == a || j == b ? still : Math.min(still, site.pair(x[i], y[i], x[j], y[j]));
            }
        }
        for (int k = 0; k < room.length; k++) {
            Node node = nodes.get(k);
            double m = Math.min(still, node.margin());
            for (int i = 0; i < x.length && m > cut; i++) {
                m = i == a || i == b ? m : Math.min(m, site.pair(node.x(), node.y(), x[i], y[i]));
            }
            room[k] = m;
        }
    }

    private static double[] join(double[] x, double[] y) {
        double[] p = Arrays.copyOf(x, 2 * x.length);
        System.arraycopy(y, 0, p, x.length, x.length);
        return p;
    }

    private static int clip(double v, int most) {
        return (int) Math.max(0, Math.min(most, v));
    }
}
