package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.mm;
import static portwright.check.Severity.CAUTION;
import static portwright.check.Severity.STOP;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Rule;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Role;
import portwright.model.Slab;
import portwright.model.Wall;

/**
 * Holes at rims, panel edges, walls and one another, each rule asked alone; limits are the rule book's own judgement, amounts worked by hand. The chamber is 600
 * mm square and 450 high, walls and slabs 60 mm, the slabs' rims at 360; a hole of 40 mm is drilled up to 42 mm wide.
 */
class SaidEdgesTest {
    private static final Rule EDGE = new EdgeDistance();
    private static final Rule INSIDE = new InsideChamber();
    private static final Rule SPACING = new PortSpacing();

    private static TestKiln kiln() {
        return AtTheLimitTest.square();
    }

    // ---- edge-distance ----

    /** 360 − 279 − 21 = 60 of 75 mm wanted, 15 lack: 0.59 in, the next sixteenth up 5/8. */
    @Test
    void tooNearTheRim() {
        Finding f = Alone.one(EDGE, kiln().inlet("A", 279, 0, 40), CAUTION, "A", "floor rim");
        Alone.mm(f, 60, 75);
        Alone.by(f, "caution");
        Alone.says(
                f,
                "60.0 mm (2 3/8 in) of brick between A and the rim of the floor; 75.0 mm (2 15/16 in) wanted.",
                "Move A 15.0 mm (5/8 in) toward the centre.");
        Alone.mark(f, new Pt(279, 0), new Pt(360, 0));
        Alone.silent(EDGE, kiln().inlet("A", 264, 0, 40));
        Alone.one(EDGE, kiln().inlet("A", 0, -264.01, 40), CAUTION, "A", "floor rim");
    }

    /** A lid that stays 30 mm behind the wall's outside has its rim at 330: 330 − 269 − 21 = 40 of 50. */
    @Test
    void muchTooNearTheRim() {
        TestKiln k = kiln().flue("F", 0, 269, 40);
        k.lid = new Slab(mm(60), "ifb-23", mm(-30), null, null);
        Finding f = Alone.one(EDGE, k, STOP, "F", "lid rim");
        Alone.mm(f, 40, 50);
        Alone.by(f, "stop");
        Alone.says(
                f,
                "40.0 mm (1 9/16 in) of brick between F and the rim of the lid; at least 50.0 mm (1 15/16 in) needed, 75.0 mm (2 15/16 in) wanted.",
                "Move F 35.0 mm (1 7/16 in) toward the centre.");
        Alone.mark(f, new Pt(0, 269), new Pt(0, 330));
    }

    /** A hole of 60 mm, drilled 62, wants 90 and needs 60. */
    @Test
    void aWideHoleWantsMoreByItsDiameter() {
        Finding f = Alone.one(EDGE, kiln().inlet("A", 360 - 31 - 80, 0, 60), CAUTION, "A", "floor rim");
        Alone.mm(f, 80, 90);
        Alone.mm(Alone.one(EDGE, kiln().inlet("A", 360 - 31 - 59, 0, 60), STOP, "A", "floor rim"), 59, 60);
        Alone.mm(Alone.one(EDGE, kiln().inlet("A", 360 - 31 - 61, 0, 60), CAUTION, "A", "floor rim"), 61, 90);
    }

    /** In a floor of 110 mm a hole wants 110; its lid of 60 mm still 75. */
    @Test
    void aThickSlabWantsItsOwnThickness() {
        TestKiln k = kiln().inlet("A", 360 - 21 - 100, 0, 40).flue("F", 360 - 21 - 80, 0, 40);
        k.floor = new Slab(mm(110), "ifb-23", mm(0), true, null);
        Alone.mm(Alone.one(EDGE, k, CAUTION, "A", "floor rim"), 100, 110);
    }

    /** A stop of the owner's that passes what is wanted takes its place. */
    @Test
    void anOwnStopBeyondTheCaution() {
        Finding f = Alone.one(
                EDGE, kiln().inlet("A", 259, 0, 40).limit("edge-distance", "stop", 90), STOP, "A", "floor rim");
        Alone.mm(f, 80, 90);
        assertThat(f.limitSetByUser()).isTrue();
        Alone.says(
                f,
                "80.0 mm (3 1/8 in) of brick between A and the rim of the floor; 90.0 mm (3 9/16 in) wanted.",
                "Move A 10.0 mm (7/16 in) toward the centre.");
    }

    /** 55 − 21 = 34 of 40 mm to the floor. */
    @Test
    void tooNearAPanelsEdge() {
        Finding f = Alone.one(EDGE, kiln().wallInlet("A", 3, 0, 55, 40), CAUTION, "A", "wall 3 (front)");
        Alone.mm(f, 34, 40);
        Alone.by(f, "panel-caution");
        Alone.says(
                f,
                "34.0 mm (1 5/16 in) of brick between A and the edge of wall 3 (front); 40.0 mm (1 9/16 in) wanted.",
                "Move A 6.0 mm (1/4 in) up.");
        Alone.mark(f, new Pt(0, 55), new Pt(0, 0));
        Alone.silent(EDGE, kiln().wallInlet("A", 3, 0, 61, 40));
        Alone.one(EDGE, kiln().wallInlet("A", 3, 0, 60.99, 40), CAUTION, "A", "wall 3 (front)");
    }

    /** 300 − 265 − 21 = 14 of 25 mm to the mitre line; 26 lack to 40. A wide hole wants no more there. */
    @ParameterizedTest
    @CsvSource({"265, 40, left", "-265, 40, right", "255, 60, left"})
    void muchTooNearAPanelsSide(double u, double d, String way) {
        Finding f = Alone.one(EDGE, kiln().wallInlet("A", 2, u, 200, d), STOP, "A", "wall 2 (right)");
        Alone.mm(f, 14, 25);
        Alone.by(f, "panel-stop");
        Alone.says(
                f,
                "14.0 mm (9/16 in) of brick between A and the edge of wall 2 (right); at least 25.0 mm (1 in) needed, 40.0 mm (1 9/16 in) wanted.",
                "Move A 26.0 mm (1 1/16 in) to the " + way + ", seen from inside.");
        Alone.mark(f, new Pt(u, 200), new Pt(Math.signum(u) * 300, 200));
    }

    /** In a chamber 100 mm high, and in one 100 mm wide, no place leaves a hole of 60 mm enough. */
    @Test
    void noPlaceKeepsOffTheEdges() {
        TestKiln low = kiln().wallInlet("A", 1, 0, 50, 60);
        low.height = mm(100);
        assertThat(Alone.one(EDGE, low, STOP, "A", "wall 1 (back)").remedy())
                .isEqualTo(
                        "No straight move of A within the panel gives that room and keeps clear of all else: choose another panel or a smaller hole.");
        TestKiln small = TestKiln.of(new PlanShape.RectanglePlan(mm(100), mm(100), null))
                .port("F", Role.FLUE, On.LID, null, TestKiln.at(0, 0), mm(60));
        small.wall = new Wall(mm(60), "ifb-23");
        assertThat(Alone.one(EDGE, small, CAUTION, "F", "lid rim").remedy())
                .isEqualTo(
                        "No straight move of F within the chamber gives that room and keeps clear of all else: choose another place or a smaller hole.");
    }

    @Test
    void brickToTheRimInFigures() {
        var g = KilnGeometry.of(
                kiln().inlet("A", 100, 0, 40).wallInlet("B", 1, 0, 100, 40).build());
        assertThat(EdgeDistance.room(g, g.holes().get(0))).isEqualTo(360 - 100 - 21);
        assertThat(EdgeDistance.room(g, g.holes().get(1))).isEqualTo(100 - 21);
    }

    // ---- inside-chamber ----

    /** 290 + 21 − 300 = 11 mm under the wall. */
    @Test
    void aHoleUnderTheWall() {
        Finding f = Alone.one(INSIDE, kiln().inlet("A", 290, 0, 40), STOP, "A", "wall");
        Alone.mm(f, -11, 0);
        Alone.by(f, "stop");
        Alone.says(f, "A reaches 11.0 mm (7/16 in) under the wall.", "Move A 11.0 mm (7/16 in) toward the centre.");
        Alone.mark(f, new Pt(290, 0), new Pt(300, 0));
        Alone.silent(INSIDE, kiln().inlet("A", 279, 0, 40));
    }

    /** 11 mm past the side; 25 mm of brick are needed to the panel's edge besides. */
    @Test
    void aHolePastItsPanel() {
        Finding f = Alone.one(INSIDE, kiln().wallInlet("A", 1, 290, 200, 40), STOP, "A", "wall 1 (back)");
        Alone.mm(f, -11, 0);
        Alone.says(
                f,
                "A reaches 11.0 mm (7/16 in) past the edge of its panel.",
                "Move A 36.0 mm (1 7/16 in) to the left, seen from inside.");
        Alone.mark(f, new Pt(290, 200), new Pt(300, 200));
        Alone.silent(INSIDE, kiln().wallInlet("A", 1, 279, 200, 40));
    }

    /** A stricter limit of the owner's: 5 mm clear of the wall. */
    @Test
    void anOwnMarginToTheWall() {
        Finding in =
                Alone.one(INSIDE, kiln().inlet("A", 290, 0, 40).limit("inside-chamber", "stop", 5), STOP, "A", "wall");
        Alone.mm(in, -11, 5);
        assertThat(in.limitSetByUser()).isTrue();
        Alone.says(
                in,
                "A reaches 11.0 mm (7/16 in) under the wall; it must stay 5.0 mm (3/16 in) clear of it.",
                "Move A 16.0 mm (11/16 in) toward the centre.");
        for (double left : new double[] {0, 4}) {
            Finding near = Alone.one(
                    INSIDE,
                    kiln().wallInlet("A", 1, 279 - left, 200, 40).limit("inside-chamber", "stop", 5),
                    STOP,
                    "A",
                    "wall 1 (back)");
            Alone.mm(near, left, 5);
            assertThat(near.message())
                    .isEqualTo("A comes within " + (left == 0 ? "0.0 mm (0 in)" : "4.0 mm (5/32 in)")
                            + " of the edge of its panel; at least 5.0 mm (3/16 in) needed.");
        }
    }

    // ---- port-spacing ----

    private static TestKiln two(double x, double d) {
        return kiln().inlet("A", 0, 0, 40).inlet("B", x, 0, d);
    }

    /** 72 − 21 − 21 = 30 of 60, the floor's thickness: 30 more. */
    @Test
    void twoHolesTooNear() {
        Finding f = Alone.one(SPACING, two(72, 40), CAUTION, "A", "B");
        Alone.mm(f, 30, 60);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "30.0 mm (1 3/16 in) of brick between A and B; 60.0 mm (2 3/8 in) wanted.",
                "Move B 30.0 mm (1 3/16 in) away from the centre.");
        Alone.mark(f, new Pt(0, 0), new Pt(72, 0));
        Alone.silent(SPACING, two(102, 40));
        Alone.one(SPACING, two(101.99, 40), CAUTION, "A", "B");
    }

    /** B of 80 mm, drilled 82: half of it, 40, are needed, all of it wanted, whichever comes first. 39 mm would read 1 9/16 in like 40. */
    @Test
    void theWiderHoleCounts() {
        Finding f = Alone.one(SPACING, two(21 + 41 + 39, 80), STOP, "A", "B");
        Alone.mm(f, 39, 40);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "39.0 mm (1.535 in) of brick between A and B; at least 40.0 mm (1 9/16 in) needed, 80.0 mm (3 1/8 in) wanted.",
                "Move B 41.0 mm (1 5/8 in) away from the centre.");
        Alone.mm(Alone.one(SPACING, two(21 + 41 + 79, 80), CAUTION, "A", "B"), 79, 80);
        Alone.mm(Alone.one(SPACING, kiln().inlet("B", 141, 0, 80).inlet("A", 0, 0, 40), CAUTION, "B", "A"), 79, 80);
    }

    /** Two small holes: half of 50 mm are needed; the owner's 90 make it 45. */
    @Test
    void theLeastCountsForSmallHoles() {
        Alone.mm(Alone.one(SPACING, kiln().inlet("A", 0, 0, 20).inlet("B", 46, 0, 20), STOP, "A", "B"), 24, 25);
        Finding own = Alone.one(SPACING, two(42 + 70, 40).limit("port-spacing", "limit", 90), CAUTION, "A", "B");
        Alone.mm(own, 70, 90);
        assertThat(own.limitSetByUser()).isTrue();
        Alone.mm(Alone.one(SPACING, two(42 + 44, 40).limit("port-spacing", "limit", 90), STOP, "A", "B"), 44, 45);
    }

    /** Both holes e = 30 / √2 from the corner are 30 mm apart; B moved on by m is √(e² + (e + m)²) off: 60 from m = 34.9, told up. */
    @Test
    void roundTheCorner() {
        double e = 30 / Math.sqrt(2);
        double m = Math.sqrt(3600 - e * e) - e;
        assertThat(m).isBetween(34.9, 35.0);
        TestKiln k = kiln().wallInlet("A", 1, 279 - e, 200, 40).wallInlet("B", 2, -279 + e, 200, 40);
        Finding f = Alone.one(SPACING, k, CAUTION, "A", "B");
        assertThat(f.measured().value()).isCloseTo(30, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(f.limit().value()).isEqualTo(60);
        assertThat(f.marks()).isEmpty();
        Alone.says(
                f,
                "30.0 mm (1 3/16 in) of brick between A and B; 60.0 mm (2 3/8 in) wanted.",
                "Move B 35.0 mm (1 7/16 in) to the right, seen from inside.");
        Alone.silent(SPACING, kiln().wallInlet("A", 1, 279, 200, 40).wallInlet("B", 3, -279, 200, 40));
    }

    @Test
    void everyPairOfAPart() {
        TestKiln k = kiln().inlet("A", 0, 0, 40)
                .flue("F", 0, 0, 40)
                .inlet("B", 90, 0, 40)
                .inlet("C", 0, 90, 40);
        List<Finding> all = Alone.all(SPACING, k);
        assertThat(all).hasSize(2);
        Alone.is(all.get(0), SPACING, CAUTION, "A", "B");
        Alone.is(all.get(1), SPACING, CAUTION, "A", "C");
    }
}
