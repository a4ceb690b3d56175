package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.On;

/** The search against every pair of places of a dense grid, and every three of a coarser one. */
class BruteForceTest {
    @Test
    void aFewKilns() {
        assertThat(worstGap(6, 10)).isLessThan(0.01);
    }

    @Tag("slow")
    @Test
    void fortyKilns() {
        assertThat(worstGap(40, 5)).isLessThan(0.01);
    }

    @Test
    void threeHoles() {
        threesOf(4, 24);
    }

    @Tag("slow")
    @Test
    void threeHolesOfFortyKilns() {
        threesOf(40, 14);
    }

    private static void threesOf(int kilns, double step) {
        for (int seed = 1000; seed < 1000 + kilns; seed++) {
            Site site = site(seed);
            double grid = threes(site, step);
            double ours = new SlabSearch(site, 3, Progress.none())
                    .run().stream().mapToDouble(Spots::margin).max().orElse(Double.NEGATIVE_INFINITY);
            assertThat(ours).as("seed %d: grid %.4f", seed, grid).isGreaterThan(grid - 0.01 * Math.abs(grid) - 1e-9);
        }
    }

    /** The best three of a grid, the first of them with least room. */
    private static double threes(Site site, double step) {
        List<double[]> points = points(site, step);
        double best = Double.NEGATIVE_INFINITY;
        double[] x = new double[3];
        double[] y = new double[3];
        for (int i = 0; i < points.size() && points.get(i)[2] > best; i++) {
            x[0] = points.get(i)[0];
            y[0] = points.get(i)[1];
            for (int j = 0; j < i; j++) {
                x[1] = points.get(j)[0];
                y[1] = points.get(j)[1];
                if (site.pair(x[0], y[0], x[1], y[1]) <= best) {
                    continue;
                }
                for (int k = 0; k < j; k++) {
                    x[2] = points.get(k)[0];
                    y[2] = points.get(k)[1];
                    double m = Math.min(points.get(i)[2], site.balance(x, y));
                    if (m > best) {
                        m = Math.min(m, Math.min(site.pair(x[0], y[0], x[2], y[2]), site.pair(x[1], y[1], x[2], y[2])));
                        m = Math.min(m, site.pair(x[0], y[0], x[1], y[1]));
                        best = m > best ? Math.max(best, Math.min(m, site.section(x, y))) : best;
                    }
                }
            }
        }
        return best;
    }

    private static List<double[]> points(Site site, double step) {
        Segment box = site.kiln.inner().bounds();
        List<double[]> points = new ArrayList<>();
        for (double x = box.a().x(); x <= box.b().x(); x += step) {
            for (double y = box.a().y(); y <= box.b().y(); y += step) {
                points.add(new double[] {x, y, site.hole(x, y)});
            }
        }
        points.sort(Comparator.comparingDouble(p -> -p[2]));
        return points;
    }

    private static Site site(int seed) {
        TestKiln k = SomeKilns.of(seed);
        Design d = k.build();
        KilnGeometry kiln = KilnGeometry.of(d);
        boolean floor = seed % 2 == 0;
        return new Site(
                kiln,
                floor ? On.FLOOR : On.LID,
                floor,
                new LayoutLimits(d, LimitTable.load()),
                floor ? 35 : 38,
                k.drilling.oversize().mm(),
                0,
                Set.of());
    }

    /** Largest shortfall of the search against the grid's best pair, as a share of it. */
    private static double worstGap(int kilns, double step) {
        double worst = Double.NEGATIVE_INFINITY;
        int compared = 0;
        for (int seed = 1000; compared < kilns; seed++) {
            Site site = site(seed);
            double grid = grid(site, step);
            double ours = new SlabSearch(site, 2, Progress.none())
                    .run().stream().mapToDouble(Spots::margin).max().orElse(Double.NEGATIVE_INFINITY);
            if (grid > 0.05) {
                double gap = (grid - ours) / grid;
                assertThat(gap)
                        .as("seed %d: grid %.4f, search %.4f", seed, grid, ours)
                        .isLessThan(0.01);
                worst = Math.max(worst, gap);
                compared++;
            } else {
                assertThat(ours)
                        .as("seed %d: grid %.4f", seed, grid)
                        .isGreaterThan(Math.min(0, grid) - 0.02 * Math.abs(grid) - 1e-9);
            }
        }
        return worst;
    }

    private static double grid(Site site, double step) {
        List<double[]> points = points(site, step);
        double best = Double.NEGATIVE_INFINITY;
        double[] x = new double[2];
        double[] y = new double[2];
        for (int i = 0; i < points.size() && points.get(i)[2] > best; i++) {
            for (int j = 0; j < i; j++) {
                x[0] = points.get(i)[0];
                y[0] = points.get(i)[1];
                x[1] = points.get(j)[0];
                y[1] = points.get(j)[1];
                double m = Math.min(points.get(i)[2], Math.min(site.pair(x[0], y[0], x[1], y[1]), site.balance(x, y)));
                if (m > best) {
                    best = Math.max(best, Math.min(m, site.section(x, y)));
                }
            }
        }
        return best;
    }
}
