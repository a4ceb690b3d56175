package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.FeasibleRegion;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;

/** The region of a hole's centre. */
class CentreRegionTest {
    @Test
    void regionAgreesWithTheStopsPointByPoint() {
        region(4);
    }

    @Tag("slow")
    @Test
    void regionsOfManyKilnsAgreeWithTheStopsPointByPoint() {
        region(60);
    }

    private static void region(int kilns) {
        int inside = 0;
        for (int seed = 0; seed < kilns; seed++) {
            TestKiln k = SomeKilns.of(seed);
            k.inlet("inlet B", 60, 40, 32);
            Design d = k.build();
            FeasibleRegion region = CentreRegion.of(d, On.FLOOR, Role.INLET, 35).around("inlet A");
            Site site = site(d);
            SplittableRandom r = new SplittableRandom(seed);
            for (int i = 0; i < 200; i++) {
                Pt p = new Pt((r.nextDouble() - 0.5) * 600, (r.nextDouble() - 0.5) * 600);
                double spare = spare(site, p);
                boolean in = region.contains(p);
                inside += in ? 1 : 0;
                if (in) {
                    assertThat(spare).as("seed %d, %s", seed, p).isGreaterThan(-1e-6);
                } else if (spare > 3 * FeasibleRegion.chordError(300)) {
                    assertThat(in).as("seed %d, %s: spare %s", seed, p, spare).isTrue();
                }
            }
        }
        assertThat(inside).isGreaterThan(6 * kilns);
    }

    private static Site site(Design d) {
        double over = d.drilling().oversize().mm();
        var limits = new LayoutLimits(d, LimitTable.load());
        return new Site(KilnGeometry.of(d), On.FLOOR, true, limits, 35, over, 0, Set.of());
    }

    /** Least spare over the stops of a hole's own clearances and the brick to the other hole, 3 mm smaller. */
    private static double spare(Site s, Pt p) {
        double least = Double.POSITIVE_INFINITY;
        for (Obstacle o : s.drilled()) {
            if (!Double.isNaN(o.stop())) {
                least = Math.min(least, o.gap().at(p.x(), p.y()) - o.stop());
            }
        }
        return Math.min(least, Math.hypot(p.x() - 60, p.y() - 40) - s.radius - (s.radius - 1.5) - 25);
    }
}
