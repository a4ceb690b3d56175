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
import portwright.geometry.KilnGeometry;
import portwright.model.ElementRun;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Tails;

/** What is told of places: holes among one another, beside fittings, grooves and tails, and off the axis. Worked by hand; a hole of 40 mm is drilled up to 42 mm wide. */
class SaidPlacesTest {
    private static Finding only(TestKiln k, String rule) {
        List<Finding> all = GeoBench.of(k, rule);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static void says(Finding f, Severity severity, String message, double value, double limit) {
        assertThat(f.message()).isEqualTo(message);
        assertThat(f.severity()).isEqualTo(severity);
        assertThat(f.measured().value()).isCloseTo(value, within(1e-9));
        assertThat(f.limit().value()).isCloseTo(limit, within(1e-9));
    }

    private static TestKiln two(double x) {
        return AtTheLimitTest.square().inlet("A", 0, 0, 40).inlet("B", x, 0, 40);
    }

    @Test
    void theBrickBetweenTwoHoles() {
        says(
                only(two(72), "port-spacing"),
                Severity.CAUTION,
                "30.0 mm (1 3/16 in) of brick between A and B; 60.0 mm (2 3/8 in) wanted.",
                30,
                60);
        Finding f = only(two(59.5), "port-spacing");
        says(
                f,
                Severity.STOP,
                "17.5 mm (11/16 in) of brick between A and B; at least 25.0 mm (1 in) needed, 60.0 mm (2 3/8 in) wanted.",
                17.5,
                25);
        assertThat(f.marks()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"1, 2, true", "2, 1, true", "3, 4, true", "1, 4, true", "4, 1, true", "1, 3, false", "2, 4, false"})
    void panelsSideBySide(int a, int b, boolean neighbours) {
        KilnGeometry g = KilnGeometry.of(AtTheLimitTest.square()
                .wallInlet("A", a, 0, 200, 40)
                .wallInlet("B", b, 0, 200, 40)
                .build());
        assertThat(PortSpacing.neighbours(g, g.holes().get(0), g.holes().get(1)))
                .isEqualTo(neighbours);
        assertThat(PortSpacing.near(g, g.holes().get(0), g.holes().get(1))).isEqualTo(neighbours);
    }

    @Test
    void holesOfFloorAndLidAreNotNear() {
        KilnGeometry g = KilnGeometry.of(
                AtTheLimitTest.square().inlet("A", 0, 0, 40).flue("F", 0, 0, 40).build());
        assertThat(PortSpacing.near(g, g.holes().get(0), g.holes().get(1))).isFalse();
    }

    /** Areas as 4 to 1: the middle lies at (4 · 90 − 60) / 5 = 60 of 300 mm. A flue in the floor is no inlet. */
    @Test
    void howFarTheMiddleOfTheInletsLiesOffTheAxis() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 90, 0, 40)
                .inlet("B", -60, 0, 20)
                .port("low flue", Role.FLUE, On.FLOOR, null, at(-200, 0), mm(60))
                .port("high inlet", Role.INLET, On.LID, null, at(-200, 0), mm(60))
                .flue("F", 0, -75, 40);
        List<Finding> all = GeoBench.of(k, "port-balance");
        assertThat(all).hasSize(2);
        says(
                all.get(0),
                Severity.CAUTION,
                "The middle of the floor inlets lies 60.0 mm (2 3/8 in) off the axis, 20 % of the radius; at most 15 % wanted.",
                0.2,
                0.15);
        assertThat(all.get(0).remedy()).startsWith("Shift them 15.0 mm (5/8 in) together toward the axis");
        says(
                all.get(1),
                Severity.CAUTION,
                "The middle of the flues lies 75.0 mm (2 15/16 in) off the axis, 25 % of the radius; at most 15 % wanted.",
                0.25,
                0.15);
    }

    /** 600² − 590² = 11 900 mm² past the shelf, two inlets of 100 mm have 15 708. */
    @Test
    void theWayPastAShelf() {
        TestKiln k = AtTheLimitTest.square().inlet("A", -150, 0, 100).inlet("B", 150, 0, 100);
        k.shelves.add(new Shelf(
                "shelf",
                ShelfShape.RECTANGLE,
                null,
                null,
                null,
                mm(590),
                mm(590),
                null,
                mm(75),
                mm(16),
                at(0, 0),
                List.of(),
                mm(40)));
        assertThat(GeoBench.of(k, "flame-path"))
                .anySatisfy(f -> assertThat(f.message()).contains(" has 0.76 times the inlets' area; "));
    }

    private static TestKiln leg(double x) {
        return AtTheLimitTest.square()
                .inlet("A", 0, 0, 40)
                .fitting("leg", FittingKind.LEG, On.FLOOR, null, at(x, 0), 30);
    }

    @Test
    void theRoomToALeg() {
        says(
                only(leg(60), "fitting-clearance"),
                Severity.CAUTION,
                "24.0 mm (15/16 in) between A and leg; 25.0 mm (1 in) wanted.",
                24,
                25);
        says(
                only(leg(47.1), "fitting-clearance"),
                Severity.STOP,
                "11.1 mm (7/16 in) between A and leg; at least 12.5 mm (1/2 in) needed, 25.0 mm (1 in) wanted.",
                11.1,
                12.5);
        says(
                only(leg(30), "fitting-clearance"),
                Severity.STOP,
                "A cuts into leg; 25.0 mm (1 in) between them wanted.",
                -6,
                12.5);
        assertThat(GeoBench.of(leg(61), "fitting-clearance")).isEmpty();
    }

    private static TestKiln row() {
        return AtTheLimitTest.square().inlet("A", 0, 0, 40).wallElement("E1", 300, 16, 20, 0, null);
    }

    @Test
    void aProbeAndAnOblongVentBesideAGroove() {
        says(
                only(row().fitting("probe", FittingKind.THERMOCOUPLE, On.WALL, 1, at(0, 316), 6), "groove-room"),
                Severity.CAUTION,
                "5.0 mm (3/16 in) of brick between probe and the groove of E1; 6.0 mm (1/4 in) wanted.",
                5,
                6);
        says(
                only(row().box("vent", FittingKind.VENT, On.WALL, 1, at(0, 323), 20, 20, null), "groove-room"),
                Severity.CAUTION,
                "5.0 mm (3/16 in) of brick between vent and the groove of E1; 6.0 mm (1/4 in) wanted.",
                5,
                6);
    }

    @Test
    void aRibBetweenTwoGrooves() {
        says(
                only(row().wallElement("E2", 322, 16, 20, 0, null), "groove-room"),
                Severity.CAUTION,
                "6.0 mm (1/4 in) of brick between the grooves of E1 and E2; 10.0 mm (3/8 in) wanted.",
                6,
                10);
        says(
                only(row().wallElement("E2", 278, 16, 20, 0, null), "groove-room"),
                Severity.CAUTION,
                "6.0 mm (1/4 in) of brick between the grooves of E1 and E2; 10.0 mm (3/8 in) wanted.",
                6,
                10);
        says(
                only(row().wallElement("E2", 310, 16, 20, 0, null), "groove-room"),
                Severity.CAUTION,
                "The grooves of E1 and E2 run into each other.",
                -6,
                10);
        says(
                only(
                        AtTheLimitTest.square()
                                .slabElement("E1", On.FLOOR, 16, 20, at(-100, 0), at(100, 0))
                                .slabElement("E2", On.FLOOR, 16, 20, at(-100, 22), at(100, 22)),
                        "groove-room"),
                Severity.CAUTION,
                "6.0 mm (1/4 in) of brick between the grooves of E1 and E2; 10.0 mm (3/8 in) wanted.",
                6,
                10);
    }

    private static TestKiln tails(List<Integer> panels, int panel, double v) {
        TestKiln k = AtTheLimitTest.square();
        k.elements.add(new ElementRun(
                "E1",
                On.WALL,
                mm(300),
                panels,
                null,
                new Groove(mm(16), null, mm(20), TestKiln.deg(0)),
                mm(12),
                new Tails(panel, at(0, v), mm(12))));
        return k.wallElement("E2", 340, 16, 20, 0, null);
    }

    @Test
    void tailsOffTheirOwnGroove() {
        Finding off = only(tails(null, 1, 333), "groove-room");
        assertThat(off.message()).endsWith(" is 25.0 mm (1 in) off its groove.");
        assertThat(off.measured().value()).isCloseTo(25, within(1e-9));
        Finding elsewhere = only(tails(List.of(1, 2), 3, 300), "groove-room");
        assertThat(elsewhere.message()).endsWith(" pass a panel where E1 has no groove.");
        assertThat(elsewhere.measured()).isNull();
        assertThat(GeoBench.of(tails(List.of(1, 2), 2, 300), "groove-room")).isEmpty();
    }
}
