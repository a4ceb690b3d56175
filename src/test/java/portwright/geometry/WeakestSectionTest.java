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
import portwright.model.PlanShape;

class WeakestSectionTest {
    /** Hand case: two holes of d on the line across the flats of a slab W lose 2d/W; the oversize of 2 mm counts. */
    @Test
    void twoHolesAcrossTheFlatsLoseTwiceTheirDiameter() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        // across the flats of the rim: 17 in + 2 × 2 1/2 in = 22 in
        KilnGeometry g =
                KilnGeometry.of(k.inlet("A", 0, -100, 30).inlet("B", 0, 100, 30).build());
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
            assertThat(line.share())
                    .as("seed %d: the line found is a real line", seed)
                    .isEqualTo(loss.share(line.angle(), line.offset(), null), within(1e-9));
            assertThat(line.share()).as("seed %d", seed).isLessThan(best + 0.02);
        }
    }

    /** Up to sixteen holes, up to two grooves that bend at will, slabs of four to fourteen corners or with a recess. */
    static KilnGeometry random(int seed) {
        Random r = new Random(seed);
        boolean recess = seed % 5 == 4;
        TestKiln k = recess
                ? TestKiln.of(new PlanShape.OutlinePlan(List.of(
                        TestKiln.at(-300, -300),
                        TestKiln.at(-300, 300),
                        TestKiln.at(300, 300),
                        TestKiln.at(300, 60 + r.nextInt(60)),
                        TestKiln.at(20 + r.nextInt(40), 60),
                        TestKiln.at(0, -300))))
                : TestKiln.polygon(4 + r.nextInt(11), (14 + r.nextInt(14)) + " in");
        KilnGeometry empty = KilnGeometry.of(k.build());
        int holes = 1 + r.nextInt(16);
        while (k.ports.size() < holes) {
            double d = 20 + r.nextInt(50);
            double x = (r.nextDouble() - 0.5) * 560;
            double y = (r.nextDouble() - 0.5) * 560;
            if (empty.inner().depth(new Pt(x, y)) > d / 2 + 3) {
                k.inlet("inlet " + k.ports.size(), x, y, d);
            }
        }
        for (int e = r.nextInt(3); e > 0 && !recess; e--) {
            List<Place> path = new java.util.ArrayList<>();
            for (int i = 2 + r.nextInt(6); i > 0; i--) {
                path.add(TestKiln.at((r.nextDouble() - 0.5) * 240, (r.nextDouble() - 0.5) * 240));
            }
            k.elements.add(new ElementRun(
                    "E" + e,
                    On.FLOOR,
                    null,
                    null,
                    path,
                    new Groove(null, mm(8 + r.nextInt(16)), mm(10 + r.nextInt(30)), null),
                    mm(12),
                    null));
        }
        return KilnGeometry.of(k.build());
    }

    /** The proof leaves no place for a worse line: thousands of hill climbs from anywhere find none. */
    @Test
    void noClimbFromAnywhereFindsAWorseLine() {
        climbs(25, 400);
    }

    @Test
    @Tag("slow")
    void noneOfManyClimbsFindsAWorseLine() {
        climbs(600, 4000);
    }

    /**
     * The told share is that of the proof alone. Here fields are only split and their middle lines looked at, without likely lines, climbs and
     * rolls; so these change the time of the search, not its figure.
     */
    @Test
    void theToldShareIsThatOfTheProofAlone() {
        proofAlone(40);
    }

    @Test
    @Tag("slow")
    void manyToldSharesAreThoseOfTheProofAlone() {
        proofAlone(300);
    }

    private static void proofAlone(int slabs) {
        for (int seed = 0; seed < slabs; seed++) {
            KilnGeometry g = random(seed);
            WeakestSection.Line told = g.weakestSection(On.FLOOR);
            SectionLoss loss = SectionLoss.of(g, On.FLOOR);
            assertThat(told.share())
                    .as("seed %d", seed)
                    .isEqualTo(splitOnly(loss), within(2 * WeakestSection.EXACT))
                    .isEqualTo(loss.share(told.angle(), told.offset(), null), within(1e-9));
        }
    }

    /** The search runs about the middle of the slab; what it tells holds in the kiln's own frame. */
    @Test
    void theLineToldIsThatLineWhereTheSlabLiesOffTheOrigin() {
        KilnGeometry g = KilnGeometry.of(TestKiln.of(new PlanShape.OutlinePlan(List.of(
                        TestKiln.at(-100, -200),
                        TestKiln.at(-100, 300),
                        TestKiln.at(500, 300),
                        TestKiln.at(450, -200))))
                .inlet("A", 50, -60, 40)
                .inlet("B", 260, 90, 60)
                .build());
        WeakestSection.Line told = g.weakestSection(On.FLOOR);
        Segment box = g.slab(On.FLOOR).bounds();
        assertThat(box.a().x() + box.b().x()).as("off the origin").isGreaterThan(100);
        assertThat(SectionLoss.of(g, On.FLOOR).share(told.angle(), told.offset(), null))
                .isEqualTo(told.share(), within(1e-9));
        for (Pt end : List.of(told.across().a(), told.across().b())) {
            assertThat(SectionLoss.offset(told.angle(), end.x(), end.y())).isEqualTo(told.offset(), within(1e-6));
        }
    }

    private static double splitOnly(SectionLoss loss) {
        SectionField field = new SectionField();
        SectionBound bound = new SectionBound(loss, field);
        double reach = 0;
        for (int i = 0; i < loss.cornerX.length; i++) {
            reach = Math.max(reach, Math.hypot(loss.cornerX[i], loss.cornerY[i]));
        }
        java.util.ArrayDeque<double[]> parts = new java.util.ArrayDeque<>();
        parts.add(new double[] {Math.PI / 2, Math.PI / 2, 0, reach});
        double best = 0;
        while (!parts.isEmpty()) {
            double[] p = parts.removeFirst();
            field.set(p[0], p[1], p[2], p[3]);
            if (!bound.mayExceed(best + WeakestSection.EXACT)) {
                continue;
            }
            best = Math.max(best, loss.share(p[0], p[2], null));
            int turned = p[1] * reach > p[3] ? 0 : 2;
            assertThat(p[3]).as("a field too small to tell").isGreaterThan(1e-6);
            for (int side = -1; side <= 1; side += 2) {
                double[] q = p.clone();
                q[turned + 1] /= 2;
                q[turned] += side * q[turned + 1];
                parts.add(q);
            }
        }
        return best;
    }

    private static void climbs(int slabs, int starts) {
        for (int seed = 100; seed < 100 + slabs; seed++) {
            KilnGeometry g = random(seed);
            SectionLoss loss = SectionLoss.of(g, On.FLOOR);
            Random r = new Random(seed);
            double found = -1;
            for (int i = 0; i < starts; i++) {
                int hole = r.nextInt(loss.proposed);
                double angle = r.nextDouble() * Math.PI;
                double offset = Math.cos(angle) * loss.holeX(hole)
                        - Math.sin(angle) * loss.holeY(hole)
                        + (2 * r.nextDouble() - 1) * loss.holeR(hole);
                double share = loss.share(angle, offset, null);
                double step = 4;
                for (int k = 0; k < 300 && step > 1e-7; k++) {
                    double a = angle + (2 * r.nextDouble() - 1) * step / 300;
                    double o = offset + (2 * r.nextDouble() - 1) * step;
                    double up = loss.share(a, o, null);
                    if (up > share) {
                        share = up;
                        angle = a;
                        offset = o;
                    } else {
                        step *= 0.93;
                    }
                }
                found = Math.max(found, share);
            }
            assertThat(g.weakestSection(On.FLOOR).share()).as("seed %d", seed).isGreaterThanOrEqualTo(found - 1e-6);
        }
    }
}
