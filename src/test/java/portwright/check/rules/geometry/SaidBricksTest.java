package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;
import static portwright.check.Severity.CAUTION;
import static portwright.check.Severity.NOTE;
import static portwright.check.Severity.STOP;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.geometry.Pt;
import portwright.model.Bond;
import portwright.model.FittingKind;
import portwright.model.Joints;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Role;
import portwright.model.Slab;
import portwright.model.Wall;
import portwright.source.Standing;

/**
 * Bricks, joints, saws, sizes and the balance of the ports, each rule asked alone: limits are the rule book's (common practice and own judgement; a hole saw cuts 1 7/8
 * in, product data), amounts worked by hand on the square chamber of 600 mm; a hole of 40 mm is drilled up to 42.
 */
class SaidBricksTest {
    private static final Rule JOINT = new JointSliver();
    private static final Rule ONE = new OneBrick();
    private static final Rule KIND = new BrickKind();
    private static final Rule JACKET = new Jacket();
    private static final Rule FACET = new FacetRule();
    private static final Rule DEPTH = new SawDepth();
    private static final Rule SAW = new SawSize();
    private static final Rule SIZE = new PortSize();
    private static final Rule BALANCE = new PortBalance();
    private static final Rule SECTION = new WeakestSectionRule();

    private static TestKiln kiln() {
        return AtTheLimitTest.square();
    }

    private static TestKiln inlet(double d) {
        return kiln().inlet("A", 0, 0, d);
    }

    /** Bricks of 200 × 100 mm, a corner at the origin. */
    private static TestKiln bricks(TestKiln k, On on) {
        return k.joints(on, 200, 100, Bond.STACKED, 0, 0, 0);
    }

    // ---- joint-sliver ----

    private static TestKiln overJoint(double y) {
        return bricks(kiln().inlet("A", 100, y, 40), On.FLOOR);
    }

    private static final String SO = ", so that it cuts well into the joint or leaves enough brick.";

    /** The row's joint at y = 0: 35 − 21 = 14 of 20 stay; 6 off it, or 20 to cut it by 5. */
    @Test
    void aSliverBesideAJoint() {
        Finding f = Alone.one(JOINT, overJoint(35), CAUTION, "A", "floor joint");
        Alone.mm(f, 14, 20);
        Alone.by(f, "limit");
        Alone.mark(f, new Pt(100, 35), new Pt(100, 0));
        Alone.says(
                f,
                "14.0 mm (9/16 in) of brick would stand between A and a brick joint.",
                "Move A 6.0 mm (1/4 in) to the back" + SO);
        Alone.silent(JOINT, overJoint(41));
        Alone.one(JOINT, overJoint(40.99), CAUTION, "A", "floor joint");
    }

    /** 18 off the joint a hole of 40 mm cuts 2 mm over it, 5 wanted: 3 toward it, or 23 off it. */
    @Test
    void aJointThatIsJustCut() {
        Finding f = Alone.one(JOINT, overJoint(18), CAUTION, "A", "floor joint");
        Alone.mm(f, 2, 5);
        Alone.by(f, "cut");
        Alone.says(
                f,
                "A reaches only 2.0 mm (0.079 in) over a brick joint: a saw that wanders leaves a thin sliver there.",
                "Move A 3.0 mm (1/8 in) to the front" + SO);
        Alone.silent(JOINT, overJoint(15));
        Alone.one(JOINT, overJoint(15.01), CAUTION, "A", "floor joint");
        Finding own = Alone.one(JOINT, overJoint(15).limit("joint-sliver", "cut", 7), CAUTION, "A", "floor joint");
        Alone.mm(own, 5, 7);
        assertThat(own.limitSetByUser()).isTrue();
    }

    /** At 20.5 the drilled hole, 21, may touch, the one to size, 20, does not: it reaches nothing. At 19.96 it reaches 0.04: that is touching, 0.05 is reaching. */
    @ParameterizedTest
    @CsvSource({
        "20.5, 0, only touches",
        "21, 0, only touches",
        "19.96, 0.04, only touches",
        "19.94, 0.06, reaches only 0.1 mm (0.002 in) over"
    })
    void aJointThatIsTouched(double y, double cuts, String words) {
        Finding f = Alone.one(JOINT, overJoint(y), CAUTION, "A", "floor joint");
        Alone.mm(f, cuts, 5);
        Alone.by(f, "cut");
        assertThat(f.message())
                .isEqualTo("A " + words + " a brick joint: a saw that wanders leaves a thin sliver there.");
    }

    /** A hole of 12 mm is cut by a quarter of it, 3 mm, well enough. */
    @Test
    void aSmallHoleIsCutByAQuarter() {
        Alone.silent(JOINT, bricks(kiln().inlet("A", 100, 3, 12), On.FLOOR));
        Finding f = Alone.one(JOINT, bricks(kiln().inlet("A", 100, 4, 12), On.FLOOR), CAUTION, "A", "floor joint");
        Alone.mm(f, 2, 3);
        assertThat(f.remedy()).isEqualTo("Move A 1.0 mm (1/16 in) to the front" + SO);
    }

    /** 14 of 20 mm to the brick's end at x = 200 is worse than 16 of 20 to its row; a cut of 4 of 5 is worse than 18 of 20. */
    @Test
    void theWorstJointIsTold() {
        Finding f = Alone.one(JOINT, bricks(kiln().flue("F", 200 - 35, 37, 40), On.LID), CAUTION, "F", "lid joint");
        Alone.mm(f, 14, 20);
        Alone.mark(f, new Pt(165, 37), new Pt(200, 37));
        Finding cut = Alone.one(JOINT, bricks(kiln().flue("F", 200 - 39, 16, 40), On.LID), CAUTION, "F", "lid joint");
        Alone.mm(cut, 4, 5);
        Alone.mark(cut, new Pt(161, 16), new Pt(161, 0));
        // 4.5 of 5 mm of a cut are little lacking, 10 of 20 mm of brick are much
        Finding brick =
                Alone.one(JOINT, bricks(kiln().flue("F", 200 - 31, 15.5, 40), On.LID), CAUTION, "F", "lid joint");
        Alone.mm(brick, 10, 20);
    }

    /** Rows 40 mm apart: a hole of 40 mm that cuts one joint by 5 is 25 mm or less off the next, where 41 would clear it. */
    @Test
    void noPlaceAmongJoints() {
        TestKiln k = kiln().inlet("A", 0, 0, 40).joints(On.FLOOR, 2000, 40, Bond.STACKED, 0, 0, 0);
        assertThat(Alone.one(JOINT, k, CAUTION, "A", "floor joint").remedy())
                .isEqualTo("Slide the brick pattern, or choose another diameter.");
    }

    @Test
    void whatTheJointsLack() {
        TestKiln k = kiln().inlet("A", 100, 50, 40).flue("F", 0, 0, 40);
        Alone.lacks(JOINT, k, "kiln.floor.joints", "kiln.lid.joints");
        Alone.silent(JOINT, kiln().wallInlet("A", 1, 0, 200, 40));
        k.lid = new Slab(mm(60), "ifb-23", mm(0), null, new Joints(mm(200), mm(100), null, null, null));
        Findings out = Alone.ask(JOINT, k);
        Alone.lacks(
                JOINT,
                out,
                "kiln.floor.joints",
                "kiln.lid.joints.bond",
                "kiln.lid.joints.turn",
                "kiln.lid.joints.offset");
        TestKiln said = kiln().flue("F", 100, 50, 40);
        said.lid = new Slab(mm(60), "ifb-23", mm(0), null, new Joints(mm(200), mm(100), Bond.STACKED, deg(0), null));
        Alone.lacks(JOINT, said, "kiln.lid.joints.offset");
        // joints of a part without a hole are not asked after
        TestKiln other = bricks(kiln().inlet("A", 100, 50, 40), On.FLOOR);
        other.lid = new Slab(mm(60), "ifb-23", mm(0), null, new Joints(mm(200), mm(100), null, null, null));
        Alone.silent(JOINT, other);
    }

    // ---- one-brick ----

    /** In a brick of 200 × 100: 40 − 21 = 19 of 25 below. */
    @Test
    void oneBrickWithLittleLeft() {
        Finding f = Alone.one(ONE, overJoint(40), NOTE, "A");
        Alone.mm(f, 19, 25);
        Alone.by(f, "limit");
        Alone.mark(f, new Pt(100, 40), new Pt(100, 40));
        Alone.says(
                f,
                "19.0 mm (3/4 in) of its brick left beside A; 25.0 mm (1 in) keeps one brick whole.",
                "Drill slowly, and harden the rim with a thin wash.");
        Alone.silent(ONE, overJoint(46));
        Alone.one(ONE, overJoint(45.99), NOTE, "A");
        Finding at = Alone.one(ONE, overJoint(21), NOTE, "A");
        assertThat(at.message()).startsWith("0.0 mm (0 in) of its brick left beside A;");
        assertThat(at.remedy()).startsWith("Drill slowly");
    }

    @Test
    void oneBrickThatIsCut() {
        Finding f = Alone.one(ONE, overJoint(15), NOTE, "A");
        Alone.mm(f, -6, 25);
        Alone.says(f, "A cuts a brick joint.", "Cement both bricks at the cut with a thin wash.");
        Alone.silent(ONE, kiln().wallInlet("A", 1, 0, 200, 40));
        TestKiln k = kiln().inlet("A", 0, 0, 40).wallInlet("W", 1, 0, 200, 40).flue("F", 0, 0, 40);
        Findings out = Alone.ask(ONE, bricks(k, On.LID));
        Alone.lacks(ONE, out, "kiln.floor.joints");
        assertThat(out.findings())
                .singleElement()
                .satisfies(x -> assertThat(x.parts()).containsExactly("F"));
    }

    // ---- brick-kind ----

    private static final String MAKER =
            "Ask the maker of the material. Old board or gasket may hold asbestos: have it tested before drilling.";

    private static TestKiln of(String floor, String wall, String lid) {
        TestKiln k = kiln();
        k.floor = new Slab(mm(60), floor, mm(0), true, null);
        k.wall = new Wall(mm(60), wall);
        k.lid = new Slab(mm(60), lid, mm(0), null, null);
        return k;
    }

    @Test
    void partsOfFibreOrOfUnknownBrick() {
        Finding f = Alone.one(KIND, of("fibre-board", "ifb-23", "ifb-23").inlet("A", 0, 0, 40), CAUTION, "floor");
        Alone.measuresNothing(f);
        assertThat(f.source().standing()).isEqualTo(Standing.JUDGEMENT);
        Alone.says(f, "The floor is of ceramic fibre: strength and drilling limits here do not hold for it.", MAKER);
        Finding unknown =
                Alone.one(KIND, of("ifb-23", "sandstone", "ifb-23").wallInlet("A", 1, 0, 200, 40), CAUTION, "wall");
        Alone.says(
                unknown,
                "The wall is of \"sandstone\", which the brick table does not hold: strength and drilling limits here do not hold for it.",
                MAKER);
        List<Finding> all = Alone.all(
                KIND, of("sandstone", "fibre", "clay").inlet("A", 0, 0, 40).flue("F", 0, 0, 40));
        assertThat(all).hasSize(2);
        assertThat(all.stream().map(x -> x.parts().get(0)).toList()).containsExactlyInAnyOrder("floor", "lid");
        Alone.silent(KIND, of("sandstone", "fibre", "ifb-23").flue("F", 0, 0, 40));
        Alone.silent(KIND, of("sandstone", "fibre", "clay"));
    }

    @Test
    void aBrickThatIsNotSaid() {
        Alone.lacks(KIND, of(null, null, null).flue("F", 0, 0, 40), "kiln.lid.brick");
        Alone.lacks(KIND, of(null, null, null).wallInlet("A", 1, 0, 200, 40), "kiln.wall.brick");
    }

    // ---- jacket ----

    @Test
    void theMetalRoundAHole() {
        String cut = "Cut the metal first with its own saw, deburr it, then drill the brick.";
        TestKiln k = kiln().inlet("A", 0, 0, 40).inlet("B", 100, 0, 40).flue("F", 0, 0, 40);
        Finding f = Alone.one(JACKET, k, NOTE, "A", "B");
        Alone.measuresNothing(f);
        assertThat(f.source().standing()).isEqualTo(Standing.PRACTICE);
        Alone.says(
                f, "A metal pan lies under the floor: its holes are 12 to 25 mm wider than those in the brick.", cut);
        k.floor = new Slab(mm(60), "ifb-23", mm(0), null, null);
        assertThat(Alone.one(JACKET, k, NOTE, "A", "B").message())
                .isEqualTo(
                        "If a metal pan lies under the floor: its holes are 12 to 25 mm wider than those in the brick.");
        k.floor = new Slab(mm(60), "ifb-23", mm(0), false, null);
        Alone.silent(JACKET, k);
        Finding wall = Alone.one(JACKET, k.wallInlet("W", 1, 0, 200, 40), NOTE, "W");
        Alone.says(wall, "The wall's metal jacket: its holes are 12 to 25 mm wider than those in the brick.", cut);
    }

    // ---- facet-rule ----

    private static TestKiln facets(int sides, double across) {
        TestKiln k = TestKiln.of(new PlanShape.PolygonPlan(sides, mm(across), deg(0)));
        k.wall = new Wall(mm(60), "ifb-23");
        return k;
    }

    /** Bricks of 228.6 mm a side outside: 228.6 / tan(180° / n) across, less two walls: 276 for six, 431.9 for eight. */
    @ParameterizedTest
    @CsvSource({"6", "8", "12"})
    void oneBrickASide(int sides) {
        double by = 228.6 / Math.tan(Math.PI / sides) - 120;
        for (double off : new double[] {-45, 45}) {
            Finding f = Alone.one(FACET, facets(sides, by + off), NOTE, "kiln");
            Alone.mm(f, 45, 38);
            Alone.by(f, "limit");
            assertThat(f.remedy()).isEqualTo("It may be right. Measure again from hot face to hot face.");
            Alone.silent(FACET, facets(sides, by + off * 0.84));
        }
        if (sides == 6) {
            assertThat(Alone.one(FACET, facets(6, 350), NOTE, "kiln").message())
                    .isEqualTo(
                            "One 9 in brick a side would make 275.9 mm (10 7/8 in) across the flats; 350.0 mm (13 3/4 in) is typed.");
        }
    }

    @Test
    void fewSidesAreNotOfWholeBricks() {
        Alone.silent(FACET, facets(5, 900));
        Alone.silent(FACET, kiln());
    }

    // ---- saw-depth, saw-size, port-size ----

    @Test
    void partsDeeperThanASaw() {
        TestKiln k = inlet(40).inlet("B", 100, 0, 40).flue("F", 0, 0, 40);
        k.lid = new Slab(mm(48), "ifb-23", mm(0), null, null);
        Finding f = Alone.one(DEPTH, k, NOTE, "A", "B");
        Alone.mm(f, 60, 48);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "The floor is 60.0 mm (2 3/8 in) thick, an ordinary hole saw cuts about 48.0 mm (1 7/8 in).",
                "Drill a pilot hole right through, then saw from the hot face half way and from the cold face the rest.");
        k.floor = new Slab(mm(96), "ifb-23", mm(0), true, null);
        assertThat(Alone.one(DEPTH, k, NOTE, "A", "B").remedy()).contains("then saw from the hot face half way");
        k.floor = new Slab(mm(106), "ifb-23", mm(0), true, null);
        assertThat(Alone.one(DEPTH, k, NOTE, "A", "B").remedy())
                .isEqualTo(
                        "Drill a pilot hole right through. Sawn from both faces 10.0 mm (3/8 in) stay uncut in the middle: break the core out with a chisel and saw on, or take a core bit that long.");
        k.floor = new Slab(mm(48.02), "ifb-23", mm(0), true, null);
        assertThat(Alone.one(DEPTH, k, NOTE, "A", "B").message())
                .startsWith(
                        "The floor is 48.02 mm (1.891 in) thick, an ordinary hole saw cuts about 48.0 mm (1 7/8 in)");
    }

    /** 6 in, 152.4 mm, is the largest saw of the table. */
    @Test
    void theNearestSaw() {
        Finding f = Alone.one(SAW, inlet(158), NOTE, "A");
        Alone.mm(f, 158 - 152.4, 0.2);
        assertThat(f.limitSetByUser()).isFalse();
        Alone.says(
                f,
                "The nearest saw to A is 6 in (152.4 mm), 5.6 mm (7/32 in) smaller.",
                "Type 6 in as its diameter, or open the hole with a rasp.");
        Alone.silent(SAW, inlet(152.4));
        assertThat(Alone.one(SAW, inlet(43.7), NOTE, "A").message())
                .isEqualTo("The nearest saw to A is 44 mm (1 3/4 in), 0.3 mm (0.012 in) larger.");
        Finding larger = Alone.one(SAW, inlet(5), NOTE, "A");
        assertThat(larger.message()).endsWith(" larger.");
        assertThat(larger.measured().value()).isPositive();
    }

    @Test
    void unusualSizes() {
        Finding f = Alone.one(SIZE, inlet(18), CAUTION, "A");
        Alone.mm(f, 18, 19);
        Alone.by(f, "least");
        Alone.says(
                f,
                "A is 18.0 mm (11/16 in) wide; under 19.0 mm (3/4 in) is unusual.",
                "Check the size; a burner needs air round its tip.");
        Finding wide = Alone.one(SIZE, inlet(104), CAUTION, "A");
        Alone.mm(wide, 104, 102);
        Alone.by(wide, "most");
        Alone.says(
                wide,
                "A is 104.0 mm (4 1/8 in) wide; over 102.0 mm (4 in) is unusual.",
                "Cut it with a jig or keyhole saw between drilled holes, or use two smaller ones.");
        Alone.silent(SIZE, inlet(19).inlet("B", 100, 0, 102));
        assertThat(Alone.one(SIZE, inlet(18.98), CAUTION, "A").message())
                .isEqualTo("A is 18.98 mm (0.747 in) wide; under 19.0 mm (3/4 in) is unusual.");
    }

    // ---- port-balance ----

    /** 60 mm off the axis are 20 % of 300; 15 %, 45 mm, are the most. */
    @Test
    void inletsOffTheAxis() {
        Finding f = Alone.one(BALANCE, kiln().inlet("A", 0, 60, 40), CAUTION, "A");
        Alone.measures(f, 0.2, 0.15, "1");
        Alone.by(f, "caution");
        Alone.mark(f, new Pt(0, 0), new Pt(0, 60));
        Alone.says(
                f,
                "The middle of the floor inlets lies 60.0 mm (2 3/8 in) off the axis, 20 % of the radius; at most 15 % wanted.",
                "Shift them 15.0 mm (5/8 in) together toward the axis, or set another opposite.");
        Alone.silent(BALANCE, kiln().inlet("A", 45, 0, 40));
        assertThat(Alone.one(BALANCE, kiln().inlet("A", 45.03, 0, 40), CAUTION, "A")
                        .message())
                .contains("off the axis, 15.01 % of the radius; at most 15 % wanted.");
    }

    /** Areas of 60² and 30² are as 4 to 1: (4 · 100 − 50) / 5 = 70 to the right, (4 · 20 + 120) / 5 = 40 to the back. */
    @Test
    void largeFluesWeighMore() {
        TestKiln k = kiln().flue("F", 100, 20, 60)
                .flue("G", -50, 120, 30)
                .port("low", Role.FLUE, On.FLOOR, null, at(250, 0), mm(60))
                .port("high", Role.INLET, On.LID, null, at(250, 0), mm(60));
        Finding f = Alone.one(BALANCE, k, CAUTION, "F", "G");
        Alone.measures(f, Math.hypot(70, 40) / 300, 0.15, "1");
        Alone.mark(f, new Pt(0, 0), new Pt(70, 40));
        assertThat(f.message())
                .isEqualTo(
                        "The middle of the flues lies 80.6 mm (3 3/16 in) off the axis, 26.9 % of the radius; at most 15 % wanted.");
    }

    @Test
    void aPortInTheWall() {
        Finding f = Alone.one(BALANCE, kiln().wallInlet("A", 2, 0, 200, 40), NOTE, "A");
        Alone.measuresNothing(f);
        assertThat(f.source().standing()).isEqualTo(Standing.JUDGEMENT);
        Alone.says(
                f,
                "A is in the wall: the fire starts from one side.",
                "Turn the ware or the shelves between firings, and watch cones on both sides.");
        Alone.silent(BALANCE, kiln());
    }

    // ---- weakest-section ----

    /** A slab of 720 mm: holes of 80 and 100, drilled 82 and 102, on one line lose 184 of it, 25.6 %. */
    @Test
    void aWeakLineAcrossTheFloor() {
        TestKiln k = kiln().inlet("A", 0, -200, 80).inlet("B", 0, 200, 100).inlet("C", 250, 0, 20);
        Finding f = Alone.one(SECTION, k, CAUTION, "A", "B", "floor");
        assertThat(f.measured().value()).isCloseTo(184 / 720.0, within(1e-6));
        assertThat(f.limit().value()).isCloseTo(0.25, within(1e-9));
        assertThat(f.measured().unit()).isEqualTo("1");
        Alone.by(f, "caution");
        assertThat(f.marks()).hasSize(1);
        assertThat(f.marks().get(0).a().distance(f.marks().get(0).b())).isCloseTo(720, within(0.5));
        assertThat(f.message())
                .isEqualTo(
                        "The weakest line across the floor loses 25.6 % of its 720.0 mm (28 3/8 in) to holes and grooves; at most 25 % wanted.");
        assertThat(f.remedy())
                .isEqualTo("Set the holes off one straight line, farther from grooves, or make them smaller.");
    }

    /** One of 250, drilled 252, in the lid: 35 % of 720. */
    @Test
    void tooWeakALineAcrossTheLid() {
        Finding f = Alone.one(SECTION, kiln().flue("F", 0, 0, 250), STOP, "F", "lid");
        assertThat(f.measured().value()).isCloseTo(252 / 720.0, within(1e-6));
        Alone.by(f, "stop");
        assertThat(f.message()).contains(" loses 35 % of its ").endsWith("; at most 33.3 % wanted.");
        Alone.silent(SECTION, kiln().flue("F", 0, 0, 170).inlet("A", 0, 0, 170));
        Finding own = Alone.one(
                SECTION, kiln().flue("F", 0, 0, 170).limit("weakest-section", "caution", 0.2), CAUTION, "F", "lid");
        assertThat(own.limitSetByUser()).isTrue();
    }

    @Test
    void whatTheSectionLacks() {
        TestKiln none = inlet(40);
        none.elements = null;
        none.fittings = null;
        Alone.lacks(SECTION, none, "kiln.elements kiln.fittings");
        none.ports.clear();
        Alone.silent(SECTION, none.wallInlet("A", 1, 0, 200, 40));
        TestKiln k = kiln().inlet("A", 0, 0, 200);
        k.shapeless("plate", FittingKind.OTHER, On.LID, at(0, 0));
        Findings out = Alone.ask(SECTION, k);
        Alone.lacks(SECTION, out, "kiln.fittings[0].diameter");
        assertThat(out.findings()).hasSize(1);
    }
}
