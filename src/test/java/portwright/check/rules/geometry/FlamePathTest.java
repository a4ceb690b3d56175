package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.Shelf;
import portwright.model.ShelfShape;

/** Chamber 600 × 600 mm. A shelf 562 × 562 leaves 19 mm all round and 360 000 − 315 844 = 44 156 mm². */
class FlamePathTest {
    private static final String RULE = "flame-path";
    private static final double FREE = 44156;

    private static Shelf plate(String name, double width, double depth, double height, double thickness) {
        return new Shelf(
                name,
                ShelfShape.RECTANGLE,
                null,
                null,
                null,
                mm(width),
                mm(depth),
                null,
                mm(height),
                mm(thickness),
                at(0, 0),
                List.of(),
                null);
    }

    private static TestKiln inletOfArea(double area, double t) {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, Math.sqrt(4 * area / Math.PI) - t);
        k.shelves.add(plate("shelf", 562, 562, 300, 16));
        return k;
    }

    @Test
    void onceTheInletsPasses() {
        GeoBench.edge(RULE, Severity.STOP, Forbids.LIGHTING, t -> inletOfArea(FREE, t), "shelf");
    }

    @Test
    void twiceTheInletsPasses() {
        GeoBench.edge(RULE, Severity.CAUTION, Forbids.LIGHTING, t -> inletOfArea(FREE / 2, t), "shelf");
    }

    private static Shelf half(String name, double bearing, double height, double thickness) {
        return new Shelf(
                name,
                ShelfShape.HALF,
                mm(560),
                null,
                null,
                null,
                null,
                deg(bearing),
                mm(height),
                mm(thickness),
                at(0, 0),
                List.of(),
                null);
    }

    /** Two halves of one shelf leave one way up: 360 000 − π/4 · 560². */
    @Test
    void halvesOfOneLevelCountTogether() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 100, 0, 350);
        k.shelves.add(half("left", 270, 76.2, 16));
        k.shelves.add(half("right", 90, 76.2, 16));
        var f = GeoBench.of(k, RULE);
        assertThat(f).hasSize(1);
        assertThat(f.get(0).parts()).containsExactly("left", "right");
        double inlet = Math.PI / 4 * 350 * 350;
        assertThat(f.get(0).measured().value()).isCloseTo((360000 - Math.PI / 4 * 560 * 560) / inlet, within(1e-9));
    }

    /** Halves that stand within each other's thickness still close one level; 76.4 and 76.6 mm are no two ways up. */
    @Test
    void halvesALittleApartStillCountTogether() {
        for (double[] at : new double[][] {{76.4, 76.6}, {75, 90}, {76.2, 76.2001}}) {
            TestKiln k = AtTheLimitTest.square().inlet("A", 100, 0, 350);
            k.shelves.add(half("left", 270, at[0], 16));
            k.shelves.add(half("right", 90, at[1], 16));
            assertThat(GeoBench.of(k, RULE)).as("%s and %s", at[0], at[1]).hasSize(1);
        }
        TestKiln apart = AtTheLimitTest.square().inlet("A", 100, 0, 200);
        apart.shelves.add(half("left", 270, 76, 16));
        apart.shelves.add(half("right", 90, 200, 16));
        assertThat(GeoBench.of(apart, RULE)).isEmpty();
    }

    @Test
    void withoutInletsThereIsNothingToJudge() {
        TestKiln k = AtTheLimitTest.square().flue("F", 0, 0, 40);
        k.shelves.add(plate("shelf", 598, 598, 76, 16));
        assertThat(GeoBench.of(k, RULE)).isEmpty();
    }
}
