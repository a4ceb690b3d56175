package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.len;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.LimitsInForce;
import portwright.check.Severity;
import portwright.check.rules.fire.FlueInletRatio;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.Wall;
import portwright.review.Review;

/** Figures of the trade, each with where it comes from. */
class TradeTest {
    /**
     * One 9 in brick a side, mitred: across-flats from the 9 × 4 1/2 in module that a supplier's guide calls the module of the trade; the table was
     * computed from that module apart from this program and given to a tenth of an inch.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "6,2.5,10.6",
        "7,2.5,13.7",
        "8,2.5,16.7",
        "9,2.5,19.7",
        "10,2.5,22.7",
        "12,2.5,28.6",
        "6,3,9.6",
        "7,3,12.7",
        "8,3,15.7",
        "9,3,18.7",
        "10,3,21.7",
        "12,3,27.6"
    })
    void acrossFlatsByTheBrick(int sides, double wallIn, double acrossFlatsIn) {
        TestKiln k = TestKiln.polygon(sides, acrossFlatsIn + " in");
        k.wall = new Wall(len(wallIn + " in"), "ifb-23");
        assertThat(GeoBench.of(k.limit("facet-rule", "limit", 0.05 * 25.4 + 0.01), "facet-rule"))
                .isEmpty();
        k.limits.clear();
        TestKiln off = TestKiln.polygon(sides, acrossFlatsIn + 1.6 + " in");
        off.wall = k.wall;
        assertThat(GeoBench.of(off, "facet-rule")).hasSize(1);
    }

    /** A potters' mailing list (2004): a 3 in wall in the same kiln takes a 20 in round shelf in place of the 21 in one, so one inch less across the flats. */
    @Test
    @Tag("published")
    void thickerWallTakesAShelfOneInchSmaller() {
        double thin = byBrick(10, 2.5);
        assertThat(byBrick(10, 3)).isCloseTo(thin - 25.4, within(1e-9));
    }

    /** The rule's own across-flats, read from its finding on a kiln far off it. */
    private static double byBrick(int sides, double wallIn) {
        TestKiln k = TestKiln.polygon(sides, "100 in");
        k.wall = new Wall(len(wallIn + " in"), "ifb-23");
        return 2540 - GeoBench.of(k, "facet-rule").get(0).measured().value();
    }

    /** 23 in decagon, 21 in round shelf: 430 − 346 = 83 in² left at the wall (worked by hand to whole square inches). */
    @Test
    @Tag("published")
    void gapOfADecagonShelf() {
        KilnGeometry g = KilnGeometry.of(TestKiln.polygon(10, "23 in")
                .roundShelf("shelf", 21 * 25.4, 75, 40)
                .build());
        ShelfLevel level = ShelfLevel.of(g).get(0);
        assertThat(g.inner().area() / 645.16).isCloseTo(430, within(0.5));
        assertThat(level.freeArea() / 645.16).isCloseTo(83, within(0.5));
        assertThat(level.gap()).isCloseTo(25.4, within(1e-9));
    }

    /**
     * Built kilns. Equal areas: 1 1/2 in in and out (potters' mailing list 2001; the same with double floor and lid 2000), 2 in laid on its side with a
     * stack (2000). 90 ft³ car kiln of the same list (2000): two inlets of 4 1/2 × 6 in, 54 in² in all, flue 7 × 10 = 70 in², 1.30. Flue twice the burner holes,
     * later covered down (a blog, 2013): 2.0.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"1.77,1.77,1.0", "3.14,3.14,1.0", "54,70,1.30", "1,2,2.0"})
    void builtAreasAreAccepted(double inletIn2, double flueIn2, double ratio) {
        TestKiln k =
                TestKiln.polygon(12, "60 in").inlet("A", 0, 0, width(inletIn2)).flue("F", 0, 0, width(flueIn2));
        assertThat(Review.geometryOnly(k.build()).figures().flueToInletRatio()).isCloseTo(ratio, within(0.005));
        assertThat(ratio(k)).isEmpty();
    }

    private static double width(double in2) {
        return Math.sqrt(4 / Math.PI * in2) * 25.4;
    }

    private static List<Finding> ratio(TestKiln k) {
        Findings out = new Findings();
        new FlueInletRatio()
                .check(Review.geometryOnly(k.build()), new LimitsInForce(LimitTable.load(), k.build()), out);
        return out.findings();
    }

    /** Common practice, no source: two 1 1/4 in floor ports with two 1 1/4 in lid flues on an ordinary decagon kiln. */
    @Test
    void twoAndTwoOnADecagonIsAccepted() {
        TestKiln k = TestKiln.polygon(10, "23 in");
        k.height = len("27 in");
        for (int i = 0; i < 2; i++) {
            k.port(
                    "inlet " + "AB".charAt(i),
                    Role.INLET,
                    On.FLOOR,
                    null,
                    TestKiln.polar("5 in", 90 + 180.0 * i),
                    len("1 1/4 in"));
            k.port(
                    "flue " + "AB".charAt(i),
                    Role.FLUE,
                    On.LID,
                    null,
                    TestKiln.polar("5 in", 180.0 * i),
                    len("1 1/4 in"));
        }
        k.roundShelf(
                "shelf",
                21 * 25.4,
                76.2,
                38,
                TestKiln.polar("8 in", 0),
                TestKiln.polar("8 in", 135),
                TestKiln.polar("8 in", 225));
        assertThat(ratio(k)).isEmpty();
        assertThat(Review.geometryOnly(k.build()).figures().flueToInletRatio()).isCloseTo(1, within(1e-12));
        assertThat(GeoBench.check(k.build()).findings()).noneMatch(f -> f.severity() == Severity.STOP);
    }
}
