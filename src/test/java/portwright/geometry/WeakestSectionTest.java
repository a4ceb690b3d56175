package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.ElementRun;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Place;

class WeakestSectionTest {
    /** Hand case: two holes of d on the line across the flats of a slab W lose 2d/W; the oversize of 2 mm counts. */
    @Test
    void twoHolesAcrossTheFlatsLoseTwiceTheirDiameter() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        // across the flats of the rim: 17 in + 2 × 2 1/2 in = 22 in
        KilnGeometry g = KilnGeometry.of(k.inlet("A", 0, -100, 30).inlet("B", 0, 100, 30).build());
        assertThat(g.weakestSection(On.FLOOR).share()).isCloseTo(2 * 32 / (22 * 25.4), within(1e-9));
        assertThat(g.weakestSection(On.FLOOR).angle()).isCloseTo(0, within(1e-6));
        assertThat(g.weakestSection(On.LID)).isNull();
    }

    @Test
    void noneIsWorseThanBruteForceOnSixSlabs() {
        bruteForce(6, 0.5, 0.5);
    }

    @Test
    @Tag("slow")
    void noneIsWorseThanBruteForceOnFiftySlabs() {
        bruteForce(50, 0.1, 0.1);
    }

    /** The search must find at least what a raster finds, and not more than a raster's neighbourhood allows. */
    private static void bruteForce(int slabs, double stepDegrees, double stepMm) {
        for (int seed = 0; seed < slabs; seed++) {
            KilnGeometry g = random(seed);
            SectionLoss loss = SectionLoss.of(g, On.FLOOR);
            double best = -1;
            for (int hole = 0; hole < loss.proposed; hole++) {
                for (double deg = 0; deg < 180; deg += stepDegrees) {
                    double a = Math.toRadians(deg);
                    double mid = Math.cos(a) * loss.holeX(hole) - Math.sin(a) * loss.holeY(hole);
                    for (double s = -loss.holeR(hole); s <= loss.holeR(hole); s += stepMm) {
                        best = Math.max(best, loss.share(a, mid + s, null));
                    }
                }
            }
            WeakestSection.Line line = g.weakestSection(On.FLOOR);
            assertThat(line.share()).as("seed %d", seed).isGreaterThanOrEqualTo(best - 1e-6);
            assertThat(line.share()).as("seed %d: the line found is a real line", seed)
                    .isEqualTo(loss.share(line.angle(), line.offset(), null), within(1e-9));
            assertThat(line.share()).as("seed %d", seed).isLessThan(best + 0.02);
        }
    }

    private static KilnGeometry random(int seed) {
        Random r = new Random(seed);
        TestKiln k = TestKiln.polygon(4 + r.nextInt(11), (14 + r.nextInt(14)) + " in");
        int holes = 1 + r.nextInt(4);
        for (int i = 0; i < holes; i++) {
            k.inlet("inlet " + i, (r.nextDouble() - 0.5) * 220, (r.nextDouble() - 0.5) * 220, 20 + r.nextInt(50));
        }
        if (r.nextBoolean()) {
            List<Place> path = List.of(TestKiln.at(-60 - r.nextInt(60), -80), TestKiln.at(70, -90 + r.nextInt(40)), TestKiln.at(80, 60), TestKiln.at(-40, 90));
            k.elements.add(new ElementRun("EF", On.FLOOR, null, null, path, new Groove(null, mm(16), mm(19), null), mm(12), null));
        }
        return KilnGeometry.of(k.build());
    }
}
