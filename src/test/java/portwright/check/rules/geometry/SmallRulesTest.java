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
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.geometry.KilnGeometry;
import portwright.model.Bond;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.Fuel;
import portwright.model.Jet;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Role;
import portwright.model.Slab;
import portwright.model.Wall;

/** One brick, bare jet, saw size, jacket, brick kind, balance, and the second terms of edge and spacing. */
class SmallRulesTest {
    /** Bricks 200 × 100 with a corner at the origin; the hole in the middle of one: 50 − 21 = 29, moved 4 up: 25. */
    @Test
    void oneBrickKeepsTwentyFiveMillimetres() {
        GeoBench.edge(
                "one-brick",
                Severity.NOTE,
                Forbids.NOTHING,
                t -> AtTheLimitTest.square()
                        .joints(On.FLOOR, 200, 100, Bond.STACKED, 0, 0, 0)
                        .inlet("A", 100, 54 - t, 40),
                "A");
        assertThat(GeoBench.of(
                                AtTheLimitTest.square()
                                        .joints(On.FLOOR, 200, 100, Bond.STACKED, 0, 0, 0)
                                        .inlet("A", 100, 0, 40),
                                "one-brick")
                        .get(0)
                        .message())
                .contains("cuts a brick joint");
    }

    /** From where the largest hole reaches the joint, 21 mm off, it counts as cut: too little up to 5 mm beyond its own 20 mm, well from there. */
    @Test
    void aJointIsCutWellOrNotAtAll() {
        GeoBench.edge(
                "joint-sliver",
                Severity.CAUTION,
                Forbids.NOTHING,
                t -> AtTheLimitTest.square()
                        .joints(On.LID, 200, 100, Bond.STACKED, 0, 0, 0)
                        .flue("F", 100, 20 - 5 - t, 40),
                "F",
                "lid joint");
        assertThat(beside(20.99).message()).contains("only touches a brick joint");
        assertThat(beside(19.5).message()).contains("reaches only 0.5 mm (0.02 in) over a brick joint");
        assertThat(beside(21.1).message())
                .contains("0.1 mm (0.004 in) of brick would stand between F and a brick joint");
    }

    private static Finding beside(double off) {
        return GeoBench.of(
                        AtTheLimitTest.square()
                                .joints(On.LID, 200, 100, Bond.STACKED, 0, 0, 0)
                                .flue("F", 100, off, 40),
                        "joint-sliver")
                .get(0);
    }

    /** 2 tan 11° (12.7 + 60) + 0.7: the bare jet just touches a hole of that width, and clears one a micrometre wider. */
    @Test
    void bareJetTouchesTheHole() {
        double wide = 2 * Math.tan(Math.toRadians(11)) * (12.7 + 60) + 0.7;
        assertThat(bare(wide, BurnerHead.BARE)).hasSize(1);
        assertThat(bare(wide, BurnerHead.BARE).get(0).parts()).containsExactly("A", "burner");
        assertThat(bare(wide + 1e-3, BurnerHead.BARE)).isEmpty();
        assertThat(bare(wide, BurnerHead.VENTURI)).isEmpty();
    }

    /** Common practice, no source: one hole takes one burner. */
    @Test
    void twoBurnersInOnePortAreAStop() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, 40).inlet("B", 0, 150, 40);
        k.burners = List.of(burner("left", "A", BurnerHead.PORTED), burner("right", "B", BurnerHead.PORTED));
        assertThat(GeoBench.of(k, "burner-fit")).isEmpty();
        k.burners = List.of(burner("left", "A", BurnerHead.PORTED), burner("right", "A", BurnerHead.PORTED));
        assertThat(GeoBench.of(k, "burner-fit")).hasSize(1).allSatisfy(f -> {
            assertThat(f.severity()).isEqualTo(Severity.STOP);
            assertThat(f.forbids()).isEqualTo(Forbids.LIGHTING);
            assertThat(f.parts()).containsExactly("A", "left", "right");
        });
    }

    private static List<Finding> bare(double d, BurnerHead head) {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, d);
        k.burners = List.of(burner("burner", "A", head));
        return GeoBench.of(k, "jet-in-hole");
    }

    private static Burner burner(String name, String port, BurnerHead head) {
        return new Burner(
                name,
                port,
                Fuel.PROPANE,
                null,
                new Jet("0.7 mm", mm(0.7), null),
                null,
                null,
                null,
                null,
                null,
                head,
                mm(10),
                mm(20),
                mm(12.7),
                mm(150),
                null,
                null,
                null);
    }

    /** 5 1/2 in is the last saw but one of the inch series; 0.2 mm off it is not worth a word. */
    @Test
    void sawTwoTenthsOff() {
        Finding f = GeoBench.edge(
                "saw-size",
                Severity.NOTE,
                Forbids.NOTHING,
                t -> AtTheLimitTest.square().inlet("A", 0, 0, 6 * 25.4 + 0.2 - Math.min(t, 0.2)),
                "A");
        assertThat(f.remedy()).contains("6 in");
    }

    @ParameterizedTest
    @CsvSource({"1 1/4 in", "1 3/8 in", "1 1/2 in", "2 in", "35 mm"})
    void sizesThatAreSoldPassWithoutAWord(String size) {
        TestKiln k = AtTheLimitTest.square().port("A", Role.INLET, On.FLOOR, null, at(0, 0), TestKiln.len(size));
        assertThat(GeoBench.of(k, "saw-size")).isEmpty();
    }

    @Test
    void jacketAndPan() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 0, 0, 40)
                .wallInlet("W", 1, 0, 200, 40)
                .flue("F", 0, 0, 40);
        assertThat(GeoBench.of(k, "jacket")).extracting(Finding::parts).containsExactly(List.of("A"), List.of("W"));
        k.floor = new Slab(mm(60), "ifb-23", mm(0), false, null);
        assertThat(GeoBench.of(k, "jacket")).extracting(Finding::parts).containsExactly(List.of("W"));
    }

    @Test
    void fibreAndUnknownBrick() {
        TestKiln k =
                AtTheLimitTest.square().inlet("A", 0, 0, 40).flue("F", 0, 0, 40).wallInlet("W", 1, 0, 200, 40);
        assertThat(GeoBench.of(k, "brick-kind")).isEmpty();
        k.floor = new Slab(mm(60), "fibre-board", mm(0), true, null);
        k.lid = new Slab(mm(60), "mystery", mm(0), null, null);
        k.wall = new Wall(mm(60), null);
        assertThat(GeoBench.of(k, "brick-kind"))
                .allMatch(f -> f.severity() == Severity.CAUTION)
                .extracting(Finding::parts)
                .containsExactlyInAnyOrder(List.of("floor"), List.of("lid"));
        assertThat(GeoBench.lacks(k, "brick-kind").get(0).needs()).containsExactly("kiln.wall.brick");
    }

    /** 40 at x = 90 and 40·√2 at x = −45 balance each other: areas stand as 1 to 2. */
    @Test
    void balanceGoesByArea() {
        assertThat(GeoBench.of(
                        AtTheLimitTest.square().inlet("A", 90, 0, 40).inlet("B", -45, 0, 40 * Math.sqrt(2)),
                        "port-balance"))
                .isEmpty();
        assertThat(GeoBench.of(AtTheLimitTest.square().flue("A", 90, 0, 40).flue("B", 90, 0, 40), "port-balance"))
                .hasSize(1);
        assertThat(GeoBench.of(AtTheLimitTest.square().wallInlet("W", 1, 0, 200, 40), "port-balance"))
                .allMatch(f -> f.severity() == Severity.NOTE)
                .hasSize(1);
    }

    /**
     * A U of 600 by 600 with a slot of 200 by 350 from the back, whose centre of area lies in the slot. By hand: centre 70 000·125/290 000 = 30.17 to
     * the front; the widest circle touches two outer walls and a corner of the slot, so (200 − r)² + (250 − r)² = r², r = 450 − √100 000.
     */
    @Test
    void balanceOfAUKnowsItsRadius() {
        double r = 450 - Math.sqrt(100_000);
        double back = -70_000 * 125 / 290_000.0;
        assertThat(KilnGeometry.of(TestKiln.u().build()).shortWidth()).isCloseTo(2 * r, within(0.05));
        assertThat(GeoBench.of(TestKiln.u().flue("F", 0, -170, 50), "port-balance"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(f.measured().value()).isCloseTo((170 + back) / r, within(5e-4));
                });
        assertThat(GeoBench.of(TestKiln.u().inlet("A", -200, back, 32).inlet("B", 200, back, 32), "port-balance"))
                .isEmpty();
    }

    /** In a slab of 100 mm the brick between two holes, and to the rim, is asked by the thickness. */
    @Test
    void thicknessRulesEdgeAndSpacing() {
        GeoBench.edge(
                "port-spacing",
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> thick().inlet("A", 0, 0, 40).inlet("B", 42 + 100 + t, 0, 40),
                "A",
                "B");
        GeoBench.edge(
                "edge-distance",
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> thick().inlet("A", 360 - 21 - 100 - t, 0, 40),
                "A",
                "floor rim");
    }

    private static TestKiln thick() {
        TestKiln k = AtTheLimitTest.square();
        k.floor = new Slab(mm(100), "ifb-23", mm(0), true, null);
        return k;
    }

    /** A lid smaller than the wall brings its rim nearer: overhang −30 puts it at 330. */
    @Test
    void overhangMovesTheRim() {
        GeoBench.edge(
                "edge-distance",
                Severity.STOP,
                Forbids.DRILLING,
                t -> {
                    TestKiln k = AtTheLimitTest.square().flue("F", 330 - 21 - 50 - t, 0, 40);
                    k.lid = new Slab(mm(60), "ifb-23", mm(-30), null, null);
                    return k;
                },
                "F",
                "lid rim");
    }

    /** Where the outline turns inward a panel narrows outward: the cold face sets the limit. */
    @Test
    void recessNarrowsThePanelAtItsColdFace() {
        GeoBench.edge(
                "inside-chamber",
                Severity.STOP,
                Forbids.DRILLING,
                t -> {
                    TestKiln k = TestKiln.of(new PlanShape.OutlinePlan(
                            List.of(at(0, 0), at(0, 600), at(600, 600), at(600, 300), at(300, 300), at(300, 0))));
                    k.wall = new Wall(mm(60), "ifb-23");
                    // panel 4 is 300 wide at the hot face, u −150 to 150; its right end at the cold face is 60 less
                    return k.wallInlet("A", 4, 150 - 60 - 21 - t, 200, 40);
                },
                "A",
                "wall 4 (front)");
    }

    /** A hole whose middle lies past the narrow end is sent back onto its panel, and on by the 25 mm without which the panel's edge would forbid it. */
    @Test
    void recessSendsTheHoleBack() {
        TestKiln k = TestKiln.of(new PlanShape.OutlinePlan(
                List.of(at(0, 0), at(0, 600), at(600, 600), at(600, 300), at(300, 300), at(300, 0))));
        k.wall = new Wall(mm(60), "ifb-23");
        Finding f = GeoBench.alone(k.wallInlet("A", 4, 100, 200, 40), "inside-chamber")
                .get(0);
        assertThat(f.remedy()).isEqualTo("Move A 56.0 mm (2 1/4 in) to the left, seen from inside.");
    }

    @Test
    void oversizeOfTheDesignIsUsed() {
        GeoBench.edge(
                "inside-chamber",
                Severity.STOP,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square().oversize(6).inlet("A", 300 - 23 - t, 0, 40),
                "A",
                "wall");
        GeoBench.edge(
                "inside-chamber",
                Severity.STOP,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square().oversize(0).inlet("A", 300 - 20 - t, 0, 40),
                "A",
                "wall");
    }
}
