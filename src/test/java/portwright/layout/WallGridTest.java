package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;

/** The search of the wall against every place, and every pair of places, of a grid in its lower third. */
class WallGridTest {
    private static final double STEP_MM = 6;

    private record Place(Hole hole, double margin) {}

    @Test
    void oneAndTwoInlets() {
        TestKiln k = TestKiln.polygon(6, "460 mm");
        k.wallElement("E1", 150, 16, 19, 0, List.of(1, 2, 3, 4));
        k.box("control box", FittingKind.CONTROL_BOX, On.WALL, 2, TestKiln.at(0, 200), 150, 200, 25.0);
        Design d = k.build();
        KilnGeometry kiln = KilnGeometry.of(d);
        WallSite site = new WallSite(kiln, new LayoutLimits(d, LimitTable.load()), 30, 2, Set.of());
        List<Place> grid = grid(site);
        assertThat(grid.get(0).margin()).isPositive();
        assertThat(ours(site, 1)).isGreaterThan(0.99 * grid.get(0).margin());
        double pair = pair(site, grid);
        assertThat(pair).isPositive();
        assertThat(ours(site, 2)).isGreaterThan(0.99 * pair);
    }

    private static double ours(WallSite site, int n) {
        return new WallSearch(site, n, Progress.none()).run().get(0).margin();
    }

    /** Widest first. */
    private static List<Place> grid(WallSite site) {
        List<Place> out = new ArrayList<>();
        for (int p = 1; p <= site.kiln.panels().size(); p++) {
            double side = site.kiln.panel(p).width() / 2;
            for (double u = -side; u <= side; u += STEP_MM) {
                for (double v = site.radius; v <= site.kiln.height() / 3; v += STEP_MM) {
                    Hole h = site.hole("", p, u, v);
                    out.add(new Place(h, site.margin(h)));
                }
            }
        }
        out.sort(Comparator.comparingDouble(q -> -q.margin()));
        return out;
    }

    private static double pair(WallSite site, List<Place> grid) {
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < grid.size() && grid.get(i).margin() > best; i++) {
            for (int j = 0; j < i; j++) {
                best = Math.max(
                        best,
                        Math.min(
                                grid.get(i).margin(),
                                site.pair(grid.get(j).hole(), grid.get(i).hole())));
            }
        }
        return best;
    }
}
