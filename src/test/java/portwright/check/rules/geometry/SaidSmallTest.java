package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Bond;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.Joints;
import portwright.model.On;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Slab;
import portwright.model.Wall;

/** What the small rules tell of sizes, depths, shelves and edges, and from which limit: worked by hand on the square chamber of 600 mm. */
class SaidSmallTest {
    private static final LimitTable TABLE = LimitTable.load();

    private static Finding only(TestKiln k, String rule) {
        List<Finding> all = GeoBench.of(k, rule);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static void says(Finding f, Severity severity, String message, double value, double limit) {
        assertThat(f.severity()).isEqualTo(severity);
        assertThat(f.message()).isEqualTo(message);
        assertThat(f.measured().value()).isCloseTo(value, within(1e-9));
        assertThat(f.limit().value()).isCloseTo(limit, within(1e-9));
    }

    private static void by(Finding f, String limit) {
        assertThat(f.source())
                .isEqualTo(TABLE.find(f.rule(), limit).orElseThrow().source());
    }

    private static TestKiln inlet(double d) {
        return AtTheLimitTest.square().inlet("A", 0, 0, d);
    }

    @Test
    void aHoleOfAnUnusualSize() {
        Finding small = only(inlet(10), "port-size");
        says(small, Severity.CAUTION, "A is 10.0 mm (3/8 in) wide; under 19.0 mm (3/4 in) is unusual.", 10, 19);
        by(small, "least");
        Finding large = only(inlet(120), "port-size");
        says(large, Severity.CAUTION, "A is 120.0 mm (4 3/4 in) wide; over 102.0 mm (4 in) is unusual.", 120, 102);
        by(large, "most");
        assertThat(large.remedy()).startsWith("Cut it with a jig");
    }

    /** 60 mm are two cuts of 48, 110 mm are not: 110 − 96 = 14 stay. A part without a hole is not sawn. */
    @Test
    void aSawThatDoesNotReachThrough() {
        TestKiln k = inlet(40);
        k.wall = new Wall(mm(200), "ifb-23");
        Finding f = only(k, "saw-depth");
        says(
                f,
                Severity.NOTE,
                "The floor is 60.0 mm (2 3/8 in) thick, an ordinary hole saw cuts about 48.0 mm (1 7/8 in).",
                60,
                48);
        assertThat(f.remedy()).contains("then saw from the hot face half way and from the cold face the rest");
        assertThat(f.parts()).containsExactly("A");
        k.floor = new Slab(mm(110), "ifb-23", mm(0), true, null);
        assertThat(only(k, "saw-depth").remedy()).contains("Sawn from both faces 14.0 mm (9/16 in) stay uncut");
        k.floor = new Slab(mm(48), "ifb-23", mm(0), true, null);
        assertThat(GeoBench.of(k, "saw-depth")).isEmpty();
    }

    /** 44.225 mm lies half way from 44 mm to 1 3/4 in: a kiln in millimetres asks for the saw in millimetres. */
    @Test
    void theSeriesOfTheDesignsOwnUnits() {
        assertThat(only(inlet(44.225), "saw-size").message()).contains("The nearest saw to A is 44 mm");
    }

    private static Shelf plate(double width, double height) {
        return new Shelf(
                "shelf",
                ShelfShape.RECTANGLE,
                null,
                null,
                null,
                mm(width),
                mm(width),
                null,
                mm(height),
                mm(16),
                at(0, 0),
                List.of(),
                mm(40));
    }

    /** 600² − 590² = 11 900 mm² past the shelf; two inlets of 100 mm have 15 708, twice that is 31 416: 19 516 lack. 5 mm all round, 14 lack to 19. */
    @Test
    void howMuchSmallerAShelfIsWanted() {
        TestKiln k = AtTheLimitTest.square().inlet("A", -150, 0, 100).inlet("B", 150, 0, 100);
        k.shelves.add(plate(590, 200));
        List<Finding> all = GeoBench.of(k, "flame-path");
        assertThat(all).hasSize(2);
        by(all.get(0), "stop");
        assertThat(all.get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(all.get(0).remedy()).startsWith("Use a smaller shelf: 195 cm²");
        by(all.get(1), "gap");
        assertThat(all.get(1).remedy()).startsWith("Move or shorten the shelf by 14.0 mm (9/16 in).");
    }

    /** Posts of 9 mm under a shelf over a hole of 40: under a quarter, 20: under one, 50: under one and a half diameters. */
    @ParameterizedTest
    @CsvSource({"9, STOP, stop, 10", "20, CAUTION, caution, 40", "50, NOTE, note, 60"})
    void aShelfCloseOverAnInlet(double height, Severity severity, String limit, double least) {
        TestKiln k = inlet(40);
        k.shelves.add(plate(300, height));
        Finding f = only(k, "shelf-over-inlet");
        assertThat(f.severity()).isEqualTo(severity);
        assertThat(f.limit().value()).isCloseTo(least, within(1e-9));
        assertThat(f.message().endsWith("it chokes the port.")).isEqualTo(severity == Severity.STOP);
        assertThat(f.remedy()).startsWith("Put it on posts of 60");
        by(f, limit);
    }

    /** 40 + 40 mm wanted off the axis, 30 are there. */
    @Test
    void aFlueNearlyOverAnInlet() {
        Finding f = only(inlet(40).flue("F", 30, 0, 40), "flue-over-inlet");
        assertThat(f.measured().value()).isCloseTo(30, within(1e-9));
        assertThat(f.limit().value()).isCloseTo(80, within(1e-9));
        assertThat(f.remedy()).contains("or move F 50.0 mm (2 in) farther off the axis of A");
    }

    /** Panel 1 is the back, 600 mm wide inside and 450 high, its left edge where u is −300. */
    @ParameterizedTest
    @CsvSource({"-270, 200, -300, 200", "270, 200, 300, 200", "0, 30, 0, 0", "0, 420, 0, 450"})
    void theEdgeOfAPanelThatIsNearest(double u, double v, double edgeU, double edgeV) {
        Finding f = only(AtTheLimitTest.square().wallInlet("A", 1, u, v, 40), "edge-distance");
        assertThat(f.marks()).hasSize(1);
        assertThat(f.marks().get(0).b().distance(new Pt(edgeU, edgeV))).isLessThan(1e-9);
        assertThat(f.marks().get(0).a().distance(new Pt(u, v))).isLessThan(1e-9);
        by(f, "panel-stop");
    }

    /** 9 mm of brick in a floor whose rim lies 60 mm outside the chamber: 300 + 60 − 330 − 21. */
    @Test
    void anEdgeOfTheFloorGoesByTheFloorsLimit() {
        by(only(AtTheLimitTest.square().inlet("A", 270, 0, 40), "edge-distance"), "caution");
    }

    @Test
    void aPortBetweenElementRowsIsToldOfPanels() {
        TestKiln k = AtTheLimitTest.square().wallElement("E1", 200, 20, 20, 0, List.of(1));
        assertThat(only(k.wallInlet("A", 1, 0, 240, 20), "element-clearance").remedy())
                .contains("look for a panel without elements");
        TestKiln floor = AtTheLimitTest.square()
                .slabElement("E2", On.FLOOR, 20, 20, at(-200, 0), at(200, 0))
                .inlet("A", 0, 35, 40);
        assertThat(only(floor, "element-clearance").remedy()).doesNotContain("panel");
    }

    /** A window of 30 × 40 mm counts as wide as its diagonal: 25 mm to each side; it does not reach in. */
    @Test
    void aWindowInTheFlame() {
        KilnGeometry g = KilnGeometry.of(AtTheLimitTest.square()
                .box("spyhole", FittingKind.SPYHOLE, On.WALL, 1, at(0, 200), 30, 40, null)
                .build());
        List<FlameOnFitting.Body> bodies = FlameOnFitting.bodies(g);
        assertThat(bodies).hasSize(1);
        assertThat(bodies.get(0).radius()).isCloseTo(25, within(1e-9));
        assertThat(bodies.get(0).line().a()).isEqualTo(bodies.get(0).line().b());
    }

    @Test
    void whatIsNotSaidOfJointsIsAskedFor() {
        TestKiln k = inlet(40);
        k.floor = new Slab(
                mm(60), "ifb-23", mm(0), true, new Joints(mm(230), mm(114), Bond.STACKED, TestKiln.deg(0), null));
        Design d = k.build();
        assertThat(GeoBench.check(d).notChecked())
                .filteredOn(n -> n.rule().equals("joint-sliver"))
                .anySatisfy(n -> assertThat(n.needs()).containsExactly("kiln.floor.joints.offset"));
    }
}
