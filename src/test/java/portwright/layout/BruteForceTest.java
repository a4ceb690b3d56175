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

/** The search against every pair of places of a dense grid. */
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

    /** Largest shortfall of the search against the grid's best pair, as a share of it. */
    private static double worstGap(int kilns, double step) {
        double worst = Double.NEGATIVE_INFINITY;
        int compared = 0;
        for (int seed = 1000; compared < kilns; seed++) {
            TestKiln k = SomeKilns.of(seed);
            Design d = k.build();
            KilnGeometry kiln = KilnGeometry.of(d);
            boolean floor = seed % 2 == 0;
            double dia = floor ? 35 : 38;
            Site site = new Site(
                    kiln,
                    floor ? On.FLOOR : On.LID,
                    floor,
                    new LayoutLimits(d, LimitTable.load()),
                    dia,
                    k.drilling.oversize().mm(),
                    0,
                    Set.of());
            double grid = grid(site, kiln, step);
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

    private static double grid(Site site, KilnGeometry kiln, double step) {
        Segment box = kiln.inner().bounds();
        List<double[]> points = new ArrayList<>();
        for (double x = box.a().x(); x <= box.b().x(); x += step) {
            for (double y = box.a().y(); y <= box.b().y(); y += step) {
                points.add(new double[] {x, y, site.hole(x, y)});
            }
        }
        points.sort(Comparator.comparingDouble(p -> -p[2]));
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
