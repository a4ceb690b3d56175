package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.ElementRun;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Tails;

/**
 * Obstacles in another part than the hole, square kiln of 600 mm: the nearest places are the rims at the hot faces, apart by two sides of a
 * right-angled triangle (3 : 4 : 5).
 */
class AcrossPartsTest {
    /** A bore of radius 21 in panel 2, so far from the corner to panel 1; in panel 2 left is toward the back. */
    private static TestKiln wallPort(double fromCorner) {
        return AtTheLimitTest.square().wallInlet("A", 2, -(300 - 21 - fromCorner), 200, 40);
    }

    @Test
    void wallPortToAFittingOnTheNeighbouringPanel() {
        for (FittingKind kind : List.of(FittingKind.THERMOCOUPLE, FittingKind.SPYHOLE, FittingKind.VENT)) {
            GeoBench.edge(
                    "fitting-clearance",
                    Severity.CAUTION,
                    Forbids.DRILLING,
                    t -> wallPort(30 * (1 + t / 50))
                            .fitting("f", kind, On.WALL, 1, at(300 - 10 - 40 * (1 + t / 50), 200), 20),
                    "A",
                    "f");
        }
    }

    @Test
    void wallPortToTailsOnTheNeighbouringPanel() {
        GeoBench.edge(
                "element-clearance",
                Severity.STOP,
                Forbids.DRILLING,
                t -> {
                    TestKiln k = wallPort(15 * (1 + t / 25));
                    k.elements.add(new ElementRun(
                            "E1",
                            On.WALL,
                            mm(400),
                            null,
                            null,
                            new Groove(mm(16), null, mm(20), TestKiln.deg(0)),
                            mm(12),
                            new Tails(1, at(300 - 5 - 20 * (1 + t / 25), 200), mm(10))));
                    return k;
                },
                "A",
                "E1");
    }

    @Test
    void floorHoleToASpyholeInTheWall() {
        GeoBench.edge(
                "fitting-clearance",
                Severity.STOP,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .inlet("A", 300 - 21 - 15 * (1 + t / 25), 0, 40)
                        .fitting("spyhole", FittingKind.SPYHOLE, On.WALL, 2, at(0, 10 + 20 * (1 + t / 25)), 20),
                "A",
                "spyhole");
    }

    @Test
    void lidHoleToAThermocoupleInTheWall() {
        GeoBench.edge(
                "fitting-clearance",
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .flue("F", 300 - 21 - 30 * (1 + t / 50), 0, 40)
                        .fitting("probe", FittingKind.THERMOCOUPLE, On.WALL, 2, at(0, 450 - 3 - 40 * (1 + t / 50)), 6),
                "F",
                "probe");
    }

    @Test
    void floorHoleToTailsInTheWall() {
        GeoBench.edge(
                "element-clearance",
                Severity.STOP,
                Forbids.DRILLING,
                t -> {
                    TestKiln k = AtTheLimitTest.square().inlet("A", 300 - 21 - 15 * (1 + t / 25), 0, 40);
                    k.elements.add(new ElementRun(
                            "E1",
                            On.WALL,
                            mm(400),
                            null,
                            null,
                            new Groove(mm(16), null, mm(20), TestKiln.deg(0)),
                            mm(12),
                            new Tails(2, at(0, 5 + 20 * (1 + t / 25)), mm(10))));
                    return k;
                },
                "A",
                "E1");
    }

    /** Coil of 50 mm in a groove of 16: its middle 10 mm behind the hot face, its side 25 mm nearer, 3 : 4 : 5 from the rim of the bore. */
    @Test
    void floorHoleToACoilWiderThanItsGrooveInTheWall() {
        GeoBench.edge(
                "element-clearance",
                Severity.STOP,
                Forbids.DRILLING,
                t -> {
                    double far = 1 + t / 50;
                    TestKiln k = AtTheLimitTest.square().inlet("A", 300 + 10 - 21 - 30 * far, 0, 40);
                    k.elements.add(new ElementRun(
                            "E1",
                            On.WALL,
                            mm(40 * far),
                            List.of(2),
                            null,
                            new Groove(mm(16), null, mm(20), TestKiln.deg(0)),
                            mm(50),
                            new Tails(4, at(0, 400), mm(10))));
                    return k;
                },
                "A",
                "E1");
    }

    /** A coil that its groove holds takes no more brick than the groove. */
    @Test
    void aCoilInsideItsGrooveChangesNothingAcrossParts() {
        for (double coil : new double[] {1, 16}) {
            TestKiln k = AtTheLimitTest.square().inlet("A", 250, 0, 40);
            k.elements.add(new ElementRun(
                    "E1",
                    On.WALL,
                    mm(20),
                    List.of(2),
                    null,
                    new Groove(mm(16), null, mm(20), TestKiln.deg(0)),
                    mm(coil),
                    new Tails(4, at(0, 400), mm(10))));
            assertThat(GeoBench.of(k, "element-clearance").get(0).measured().value())
                    .as("coil %s mm", coil)
                    .isCloseTo(Math.hypot(300 - 250 - 21, 12), within(1e-9));
        }
    }

    @Test
    void wallPortToAVentInTheFloor() {
        GeoBench.edge(
                "fitting-clearance",
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .wallInlet("A", 2, 0, 21 + 40 * (1 + t / 50), 40)
                        .fitting("vent", FittingKind.VENT, On.FLOOR, null, at(300 - 25 - 30 * (1 + t / 50), 0), 50),
                "A",
                "vent");
    }

    /** A vent 100 × 20 on one line with a hole of 200 (d+ 202): at least 302 of 720 mm are lost, at most the slot's round ends more. */
    @Test
    void aVentGivenBySizeCountsInTheWeakestLine() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 150, 0, 200)
                .box("vent", FittingKind.VENT, On.FLOOR, null, at(-150, 0), 100, 20, null);
        double share = GeoBench.of(k, "weakest-section").get(0).measured().value();
        assertThat(share).isBetween(302 / 720.0, 322 / 720.0);
        // square to its length the slot is as wide as the vent
        TestKiln across = AtTheLimitTest.square()
                .inlet("A", 150, 0, 200)
                .box("vent", FittingKind.VENT, On.FLOOR, null, at(-150, 0), 20, 200, null);
        assertThat(GeoBench.of(across, "weakest-section").get(0).measured().value())
                .isCloseTo(222 / 720.0, within(6 / 720.0));
    }

    /** The flame ends under the lowest shelf that covers it; a post of a higher shelf beside that shelf is out of it. */
    @Test
    void aLowerShelfCutsTheFlameBeforeAPost() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, 40).roundShelf("top", 400, 430, 20, at(110, 0));
        assertThat(GeoBench.of(k, "post-in-flame")).hasSize(1);
        k.roundShelf("low", 170, 60, 20);
        assertThat(GeoBench.of(k, "post-in-flame")).isEmpty();
    }
}
