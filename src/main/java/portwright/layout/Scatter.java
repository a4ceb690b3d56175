package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/** Places away from the middle from which a search of one slab sets out. Lengths in mm; the random stream has a fixed start. */
final class Scatter {
    private static final long SEED = 7;
    /** Places of the grid with margins as near as this are alike; of these the one nearest the middle comes first. */
    private static final double ALIKE = 1e-3;

    /** Up to so many holes are moved two at a time over the whole slab. */
    private static final int FEW = 12;

    private final Site site;
    private final int n;
    private final PairMoves moves;
    private final Progress progress;

    Scatter(Site site, int n, Progress progress) {
        this.site = site;
        this.n = n;
        this.progress = progress;
        moves = new PairMoves(site);
    }

    /** Starts away from the middle: for one hole and for two the best of a grid, else holes added one by one where they hurt least, then moved in pairs. */
    List<double[]> starts(int count) {
        List<PairMoves.Node> nodes =
                moves.nodes().stream().filter(p -> p.margin() > -1).toList();
        nodes = nodes.size() < n ? moves.nodes() : nodes;
        List<double[]> out = new ArrayList<>();
        if (nodes.size() < n) {
            return out;
        }
        if (n == 1) {
            out.add(new double[] {nodes.get(0).x(), nodes.get(0).y()});
            return out;
        }
        if (n == 2) {
            return moves.best(count);
        }
        SplittableRandom random = new SplittableRandom(SEED + n);
        for (int c = 0; c < count; c++) {
            out.add(settled(added(nodes, nodes.get(random.nextInt(Math.max(1, nodes.size() / 2))))));
        }
        return out;
    }

    /**
     * Starts where no place passes: the best places of a grid, none within a hole's width of another, and beside each, one by one, what further holes
     * hurt least. They know nothing of where the design has its holes.
     */
    List<double[]> nearest(int count) {
        if (n == 2) {
            return moves.best(count);
        }
        List<PairMoves.Node> firsts = new ArrayList<>();
        Comparator<PairMoves.Node> nearer = Comparator.comparingLong(q -> -Math.round(q.margin() / ALIKE));
        List<PairMoves.Node> nodes = moves.nodes().stream()
                .sorted(nearer.thenComparingDouble(q -> -site.balance(new double[] {q.x()}, new double[] {q.y()})))
                .toList();
        for (PairMoves.Node q : nodes) {
            if (firsts.size() < count
                    && firsts.stream().noneMatch(o -> Math.hypot(o.x() - q.x(), o.y() - q.y()) < site.diameter)) {
                firsts.add(q);
            }
        }
        return firsts.stream().map(q -> added(nodes, q)).toList();
    }

    /** From an arrangement the best that moving two of a few holes at a time leads to. */
    double[] settled(double[] p) {
        return n > 2 && n <= FEW ? moves.settled(p, progress) : p;
    }

    private double[] added(List<PairMoves.Node> nodes, PairMoves.Node first) {
        double[] tx = new double[n];
        double[] ty = new double[n];
        tx[0] = first.x();
        ty[0] = first.y();
        for (int i = 1; i < n; i++) {
            PairMoves.Node next = null;
            double most = Double.NEGATIVE_INFINITY;
            for (PairMoves.Node q : nodes) {
                double m = q.margin();
                for (int j = 0; j < i && m > most; j++) {
                    m = Math.min(m, site.pair(q.x(), q.y(), tx[j], ty[j]));
                }
                if (m > most) {
                    most = m;
                    next = q;
                }
            }
            tx[i] = next.x();
            ty[i] = next.y();
        }
        double[] p = Arrays.copyOf(tx, 2 * n);
        System.arraycopy(ty, 0, p, n, n);
        return p;
    }
}
