package portwright.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import portwright.file.Starters;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;

/** The small plan helper against the geometry of the kiln and an independent geometry library. */
class PlanOutlineTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    private static Polygon polygon(PlanOutline o) {
        Coordinate[] c = new Coordinate[o.size() + 1];
        for (int i = 0; i <= o.size(); i++) {
            c[i] = new Coordinate(o.x(i), o.y(i));
        }
        return JTS.createPolygon(c);
    }

    @Test
    void agreesWithTheKilnsShapes() {
        for (String name : Starters.names()) {
            Design d = Starters.find(name).orElseThrow().read().design();
            KilnGeometry kiln = KilnGeometry.of(d);
            PlanOutline inner = PlanOutline.of(d.kiln().plan());
            same(name, inner, kiln.inner().points());
            same(
                    name,
                    inner.grown(d.kiln().wall().thickness().mm()),
                    kiln.wallOuter().points());
            same(
                    name,
                    inner.grown(d.kiln().wall().thickness().mm()
                            + d.kiln().lid().overhang().mm()),
                    kiln.slab(On.LID).points());
            for (int k = 1; k <= inner.size(); k++) {
                assertThat(inner.panelWidth(k))
                        .as(name)
                        .isCloseTo(kiln.panels().get(k - 1).width(), within(1e-9));
            }
        }
    }

    private static void same(String name, PlanOutline a, List<Pt> b) {
        assertThat(a.size()).as(name).isEqualTo(b.size());
        for (int i = 0; i < b.size(); i++) {
            assertThat(Math.hypot(a.x(i) - b.get(i).x(), a.y(i) - b.get(i).y()))
                    .as("%s corner %d", name, i)
                    .isLessThan(1e-9);
        }
    }

    @Test
    void insideDistanceAreaAndCrossingAgreeWithTheLibrary() {
        long seed = 4711;
        Random random = new Random(seed);
        int plain = 0;
        for (int n = 0; n < 2000; n++) {
            int corners = 4 + random.nextInt(5);
            double[] x = random.doubles(corners, -100, 100).toArray();
            double[] y = random.doubles(corners, -100, 100).toArray();
            PlanOutline o = PlanOutline.of(x, y);
            Polygon p = polygon(o);
            assertThat(o.crossing() == null).as("seed %d case %d", seed, n).isEqualTo(p.isValid());
            if (!p.isValid()) {
                continue;
            }
            plain++;
            assertThat(Math.abs(o.area())).isCloseTo(p.getArea(), within(1e-8));
            assertThat(o.area() > 0)
                    .as("seed %d case %d", seed, n)
                    .isEqualTo(!org.locationtech.jts.algorithm.Orientation.isCCW(p.getCoordinates()));
            double px = random.nextDouble() * 200 - 100;
            double py = random.nextDouble() * 200 - 100;
            var point = JTS.createPoint(new Coordinate(px, py));
            assertThat(o.contains(px, py)).as("seed %d case %d", seed, n).isEqualTo(p.contains(point));
            assertThat(o.distanceToRim(px, py)).isCloseTo(p.getExteriorRing().distance(point), within(1e-9));
        }
        assertThat(plain).isGreaterThan(200);
    }

    @Test
    void theOddOnes() {
        assertThat(PlanOutline.regular(6, 270, 0, 0).area()).isCloseTo(270 * 270 * Math.sqrt(3) / 2, within(1e-6));
        PlanOutline back = PlanOutline.of(new double[] {0, 100, 50, 0}, new double[] {0, 0, 0, -50});
        assertThat(back.crossing())
                .as("a side that folds back on its neighbour")
                .isNotNull();
        PlanOutline square = PlanOutline.of(new double[] {-10, 10, 10, -10}, new double[] {10, 10, -10, -10});
        assertThat(square.narrowest()).isCloseTo(20, within(1e-12));
        assertThat(square.contains(10, 0)).isTrue();
        assertThat(square.holds(PlanOutline.regular(8, 19.9, 0, 0))).isTrue();
        assertThat(square.holds(PlanOutline.regular(8, 20, 0, 0))).isFalse();
        PlanOutline oval = PlanOutline.regular(10, 200, 90, 0);
        assertThat(oval.panelWidth(1) - oval.panelWidth(2)).isCloseTo(90, within(1e-9));
        assertThat(oval.panelWidth(6) - oval.panelWidth(2)).isCloseTo(90, within(1e-9));
    }
}
