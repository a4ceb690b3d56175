package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;
import static portwright.check.Severity.CAUTION;
import static portwright.check.Severity.STOP;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.ElementRun;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.Tails;
import portwright.units.Quantity;

/**
 * Holes and fittings at grooves, coils and tails, each rule asked alone: 25 mm of sound brick at least, 35 wanted (common practice, no source), 6 mm beside a probe,
 * 10 mm between grooves (own judgement). Amounts worked by hand on the square chamber of 600 mm; a hole of 40 mm is drilled up to 42.
 */
class SaidElementsTest {
    private static final Rule CLEAR = new ElementClearance();
    private static final Rule GROOVE = new GrooveRoom();
    /** Hole 42, groove 16 and 25 of brick on both sides: 108 mm. */
    private static final String BETWEEN_ROWS =
            " Between element rows a port rarely passes (A needs rows 108.0 mm (4 5/16 in) apart): look for a panel without elements.";

    private static final String ASKED = " needed, 35.0 mm (1 3/8 in) wanted.";

    private static TestKiln kiln() {
        return AtTheLimitTest.square();
    }

    private static TestKiln with(TestKiln k, ElementRun e) {
        k.elements.add(e);
        return k;
    }

    private static Quantity q(Double v) {
        return v == null ? null : mm(v);
    }

    private static ElementRun wall(Groove groove, Double coil, List<Integer> panels, Tails tails) {
        return new ElementRun("E1", On.WALL, mm(200), panels, null, groove, q(coil), tails);
    }

    private static Groove groove(double height, double depth) {
        return new Groove(mm(height), null, mm(depth), deg(0));
    }

    private static final Tails FAR = new Tails(3, at(-250, 420), mm(10));

    // ---- element-clearance: groove of the same part ----

    private static TestKiln strip(double x) {
        return kiln().slabElement("EF", On.FLOOR, 16, 20, at(100, -150), at(100, 150))
                .inlet("A", x, 0, 40);
    }

    /** Groove's edge at x = 92: 92 − 41 − 21 = 30 of 35. */
    @Test
    void tooNearAGrooveOfTheFloor() {
        Finding f = Alone.one(CLEAR, strip(41), CAUTION, "A", "EF");
        Alone.mm(f, 30, 35);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "30.0 mm (1 3/16 in) of brick between A and groove EF; 35.0 mm (1 3/8 in) wanted.",
                "Move A 5.0 mm (1/4 in) toward the centre.");
        Alone.mark(f, new Pt(41, 0), new Pt(92, 0));
        Alone.silent(CLEAR, strip(36));
        Alone.one(CLEAR, strip(36.01), CAUTION, "A", "EF");
    }

    /** 92 − 51 − 21 = 20 of 25: 15 lack to 35. The owner's 20 with a factor of 1.5 wants 30. */
    @Test
    void muchTooNearAGrooveOfTheFloor() {
        Finding f = Alone.one(CLEAR, strip(51), STOP, "A", "EF");
        Alone.mm(f, 20, 25);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "20.0 mm (13/16 in) of brick between A and groove EF; at least 25.0 mm (1 in)" + ASKED,
                "Move A 15.0 mm (5/8 in) toward the centre.");
        Alone.mm(Alone.one(CLEAR, strip(46), CAUTION, "A", "EF"), 25, 35);
        Finding own = Alone.one(
                CLEAR,
                strip(45).limit("element-clearance", "limit", 20).limit("element-clearance", "caution-factor", 1.5),
                CAUTION,
                "A",
                "EF");
        Alone.mm(own, 26, 30);
        assertThat(own.limitSetByUser()).isTrue();
        Finding same = Alone.one(CLEAR, strip(51).limit("element-clearance", "caution-factor", 1), STOP, "A", "EF");
        assertThat(same.message()).endsWith(" and groove EF; 25.0 mm (1 in) wanted.");
    }

    /** A row of 16 mm at 200: 192 − 142 − 21 = 29 of 35; 6 lack, downward. No coil stands before the flame. */
    @Test
    void underARowOfTheWall() {
        TestKiln k = with(kiln(), wall(groove(16, 20), 12.0, List.of(1), FAR)).wallInlet("A", 1, 0, 142, 40);
        Finding f = Alone.one(CLEAR, k, CAUTION, "A", "E1");
        Alone.mm(f, 29, 35);
        Alone.says(
                f,
                "29.0 mm (1 1/8 in) of brick between A and groove E1; 35.0 mm (1 3/8 in) wanted.",
                "Move A 6.0 mm (1/4 in) down." + BETWEEN_ROWS);
        Alone.mark(f, new Pt(0, 142), new Pt(0, 192));
    }

    /** A chamber 150 mm high has no room under or over its row. */
    @Test
    void noPlaceOnAPanelWithARow() {
        TestKiln k = kiln().wallInlet("A", 1, 0, 40, 40);
        k.height = mm(150);
        k.elements.add(new ElementRun("E1", On.WALL, mm(75), null, null, groove(16, 20), mm(12), FAR_LOW));
        assertThat(Alone.one(CLEAR, k, STOP, "A", "E1").remedy())
                .isEqualTo(
                        "No straight move of A within the panel gives that room and keeps clear of all else: choose another panel or a smaller hole."
                                + BETWEEN_ROWS);
    }

    private static final Tails FAR_LOW = new Tails(3, at(-250, 75), mm(10));

    // ---- coils ----

    /** A coil of 24 mm stands out of its groove of 16: 12 + 21 + 27 mm from the middle line. One of 16 is told by its groove. */
    @Test
    void aCoilOfTheFloor() {
        TestKiln k = kiln().inlet("A", 40, 0, 40);
        k.elements.add(new ElementRun(
                "EF",
                On.FLOOR,
                null,
                null,
                List.of(at(-200, 200), at(100, 200), at(100, -150)),
                new Groove(null, mm(16), mm(20), null),
                mm(24),
                null));
        Finding f = Alone.one(CLEAR, k, CAUTION, "A", "EF");
        Alone.mm(f, 27, 35);
        assertThat(f.message())
                .isEqualTo("27.0 mm (1 1/16 in) of brick between A and coil EF; 35.0 mm (1 3/8 in) wanted.");
        Alone.mark(f, new Pt(40, 0), new Pt(100, 0));
        TestKiln even = kiln().inlet("A", 41, 0, 40);
        even.elements.add(new ElementRun(
                "EF",
                On.FLOOR,
                null,
                null,
                List.of(at(100, -150), at(100, 150)),
                new Groove(null, mm(16), mm(20), null),
                mm(16),
                null));
        assertThat(Alone.one(CLEAR, even, CAUTION, "A", "EF").message()).contains("between A and groove EF;");
    }

    /** A coil of 30 mm in the wall at 200, its groove not known: 15 + 21 + 24 mm below. Its u is the hole's. Between two: 42 + 30 + 50. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void aCoilOfTheWall(int panel) {
        TestKiln k = with(kiln(), wall(null, 30.0, List.of(panel), null)).wallInlet("A", panel, 50, 140, 40);
        Findings out = Alone.ask(CLEAR, k);
        Alone.lacks(CLEAR, out, "kiln.elements[0].groove", "kiln.elements[0].tails");
        assertThat(out.findings()).hasSize(1);
        Finding f = out.findings().get(0);
        Alone.is(f, CLEAR, STOP, "A", "E1");
        Alone.mm(f, 24, 25);
        assertThat(f.message())
                .isEqualTo("24.0 mm (15/16 in) of brick between A and coil E1; at least 25.0 mm (1 in)" + ASKED);
        assertThat(f.remedy())
                .isEqualTo("Move A 11.0 mm (7/16 in) down."
                        + BETWEEN_ROWS.replace("108.0 mm (4 5/16 in)", "122.0 mm (4 13/16 in)"));
        Alone.mark(f, new Pt(50, 140), new Pt(50, 200));
        assertThat(Alone.ask(
                                CLEAR,
                                with(kiln(), wall(null, 30.0, List.of(panel), null))
                                        .wallInlet("A", panel % 4 + 1, 50, 200, 40))
                        .findings())
                .isEmpty();
    }

    /** A floor hole 25 mm off the wall's face, a coil of 30 mm half out of it at height 20: √(25² + 20²) − 15 = 17.0. It has no mark: it is in another part. */
    @Test
    void aWideCoilOfAnotherPart() {
        TestKiln k = kiln().inlet("A", 300 - 25 - 21, 0, 40);
        k.elements.add(new ElementRun("E1", On.WALL, mm(20), List.of(2), null, null, mm(30), FAR));
        Findings out = Alone.ask(CLEAR, k);
        assertThat(out.findings()).hasSize(1);
        Finding f = out.findings().get(0);
        assertThat(f.measured().value()).isCloseTo(Math.hypot(25, 20) - 15, within(1e-6));
        assertThat(f.message()).contains("of brick between A and coil E1; at least 25.0 mm");
        assertThat(f.marks()).isEmpty();
        // lost in its groove it takes no more room than that: √(25² + 12²) to the groove's floor
        TestKiln deep = kiln().inlet("A", 254, 0, 40);
        deep.elements.add(new ElementRun("E1", On.WALL, mm(20), List.of(2), null, groove(16, 20), mm(12), FAR));
        Finding g = Alone.one(CLEAR, deep, CAUTION, "A", "E1");
        assertThat(g.measured().value()).isCloseTo(Math.hypot(25, 12), within(1e-6));
        assertThat(g.message()).contains("between A and groove E1;");
        assertThat(g.marks()).isEmpty();
        assertThat(g.remedy()).doesNotContain("panel");
    }

    // ---- tails ----

    /** Tails of 10 mm at (100, 350), 60 mm beside the hole: 60 − 5 − 21 = 34. */
    @Test
    void tailsOfTheSamePanel() {
        TestKiln k = with(kiln(), wall(groove(16, 20), 12.0, null, new Tails(3, at(100, 350), mm(10))))
                .wallInlet("A", 3, 40, 350, 40);
        Finding f = Alone.one(CLEAR, k, CAUTION, "A", "E1");
        Alone.mm(f, 34, 35);
        Alone.says(
                f,
                "34.0 mm (1 5/16 in) of brick between A and tails of E1; 35.0 mm (1 3/8 in) wanted.",
                "Move A 1.0 mm (1/16 in) to the left, seen from inside." + BETWEEN_ROWS);
        Alone.mark(f, new Pt(40, 350), new Pt(100, 350));
    }

    /** Through the corner: a floor hole 20 mm off the wall's face, the tails' lower rim 15 mm over the floor: √(20² + 15²) = 25, of 35. */
    @Test
    void tailsOfAnotherPart() {
        TestKiln k = with(kiln(), wall(groove(16, 20), 12.0, null, new Tails(2, at(0, 20), mm(10))))
                .inlet("A", 300 - 20 - 21, 0, 40);
        Finding f = Alone.one(CLEAR, k, CAUTION, "A", "E1");
        assertThat(f.measured().value()).isCloseTo(25, within(1e-6));
        assertThat(f.message()).contains("between A and tails of E1;");
        assertThat(f.marks()).isEmpty();
    }

    // ---- of more elements ----

    @Test
    void eachElementIsToldByItself() {
        TestKiln k = kiln().slabElement("E1", On.FLOOR, 16, 20, at(100, -150), at(100, 150))
                .slabElement("E2", On.FLOOR, 16, 20, at(-100, -150), at(-100, 150))
                .inlet("A", 45, 0, 40)
                .inlet("B", -41, 150, 40);
        List<Finding> all = Alone.all(CLEAR, k);
        assertThat(all).hasSize(2);
        Alone.is(all.get(0), CLEAR, CAUTION, "A", "E1");
        Alone.mm(all.get(0), 26, 35);
        Alone.is(all.get(1), CLEAR, CAUTION, "B", "E2");
        Alone.mm(all.get(1), 30, 35);
    }

    @Test
    void whatIsKnownOfAnElementCounts() {
        KilnGeometry g = KilnGeometry.of(with(
                        with(
                                kiln().slabElement("grooved", On.FLOOR, 16, 20, at(100, -150), at(100, 150))
                                        .inlet("A", 41, 0, 40),
                                new ElementRun("coiled", On.WALL, mm(200), null, null, null, mm(12), null)),
                        new ElementRun("tailed", On.WALL, null, null, null, null, null, FAR))
                .build());
        assertThat(ElementClearance.names(g)).containsExactly("grooved", "coiled", "tailed");
        assertThat(ElementClearance.room(g, g.holes().get(0), "grooved", 35)).isEqualTo(30);
        assertThat(ElementClearance.room(g, g.holes().get(0), "nothing", 35)).isInfinite();
        for (Groove groove : new Groove[] {groove(16, 20), null}) {
            KilnGeometry one =
                    KilnGeometry.of(with(kiln(), wall(groove, null, null, null)).build());
            assertThat(ElementClearance.names(one)).hasSize(groove == null ? 0 : 1);
        }
    }

    // ---- what lacks ----

    @Test
    void whatTheClearanceLacks() {
        TestKiln none = kiln().inlet("A", 0, 0, 40);
        none.elements = null;
        Alone.lacks(CLEAR, none, "kiln.elements");
        Groove sloped = groove(16, 20);
        Groove unsloped = new Groove(mm(16), null, mm(20), null);
        ElementRun floor = new ElementRun(
                "EF",
                On.FLOOR,
                null,
                null,
                List.of(at(-250, -250), at(250, -250)),
                new Groove(null, mm(16), mm(20), null),
                mm(12),
                null);
        Alone.lacks(
                CLEAR,
                with(with(kiln(), floor), wall(unsloped, 12.0, null, null)).wallInlet("A", 1, 0, 100, 40),
                "kiln.elements[1].tails kiln.elements[1].groove.slope");
        Alone.lacks(
                CLEAR,
                with(kiln(), wall(sloped, 12.0, null, null)).wallInlet("A", 1, 0, 100, 40),
                "kiln.elements[0].tails");
        Alone.lacks(
                CLEAR,
                with(kiln(), wall(unsloped, 12.0, null, FAR)).wallInlet("A", 1, 0, 100, 40),
                "kiln.elements[0].groove.slope");
        Alone.silent(CLEAR, with(kiln(), floor).wallInlet("A", 1, 0, 100, 40));
        Alone.silent(CLEAR, with(kiln(), wall(unsloped, 12.0, null, null)).inlet("A", 0, 0, 40));
    }

    /** From 35 mm off the wall's face, 21 of the hole, tails and slope do not matter: 300 − 56 = 244. */
    @ParameterizedTest
    @CsvSource({"LID, 244, ''", "LID, 244.01, tails", "FLOOR, 244.01, tails groove.slope"})
    void atTheWall(On on, double x, String fields) {
        TestKiln k = with(kiln(), wall(new Groove(mm(16), null, mm(20), null), 12.0, null, null))
                .port("A", on == On.LID ? Role.FLUE : Role.INLET, on, null, at(x, 0), mm(40));
        Alone.lacks(
                CLEAR,
                k,
                fields.isEmpty()
                        ? new String[0]
                        : new String[] {"kiln.elements[0]." + fields.replace(" ", " kiln.elements[0].")});
    }

    // ---- groove-room ----

    private static TestKiln row() {
        return kiln().wallElement("E1", 300, 16, 20, 0, null);
    }

    private static final String HOLDS =
            "Measure its place again, or put it between two grooves: nothing holds the coil where it breaks in.";

    /** A hole of 30 mm whose rim is 5 mm over the row's roof at 308. A probe's remedy tells of the mains. */
    @ParameterizedTest
    @CsvSource({"SPYHOLE", "VENT", "OTHER", "THERMOCOUPLE"})
    void aHoleBesideAGroove(FittingKind kind) {
        Finding f = Alone.one(GROOVE, row().fitting("thing", kind, On.WALL, 1, at(0, 328), 30), CAUTION, "thing", "E1");
        Alone.mm(f, 5, 6);
        Alone.by(f, "fitting");
        Alone.says(
                f,
                "5.0 mm (3/16 in) of brick between thing and the groove of E1; 6.0 mm (1/4 in) wanted.",
                kind == FittingKind.THERMOCOUPLE
                        ? "Measure its place again, or put it between two grooves: a probe that touches a live coil carries the mains, and beside a coil it reads the coil."
                        : HOLDS);
        Alone.silent(GROOVE, row().fitting("thing", kind, On.WALL, 1, at(0, 329), 30));
        Finding in =
                Alone.one(GROOVE, row().fitting("thing", kind, On.WALL, 1, at(0, 323), 30), CAUTION, "thing", "E1");
        Alone.mm(in, 0, 6);
        assertThat(in.message()).isEqualTo("thing lies in the groove of E1.");
        assertThat(Alone.one(GROOVE, row().fitting("thing", kind, On.WALL, 1, at(0, 323.5), 30), CAUTION, "thing", "E1")
                        .message())
                .isEqualTo("0.5 mm (0.02 in) of brick between thing and the groove of E1; 6.0 mm (1/4 in) wanted.");
    }

    /** What stands off the wall, another panel's row and an element that is far do not count; a latch is no hole. */
    @Test
    void whatDoesNotReachTheGroove() {
        Alone.silent(GROOVE, row().box("box", FittingKind.OTHER, On.WALL, 1, at(0, 300), 20, 20, 5.0));
        Alone.silent(GROOVE, row().fitting("latch", FittingKind.LATCH, On.WALL, 1, at(0, 300), 20));
        Alone.silent(
                GROOVE,
                kiln().wallElement("E1", 300, 16, 20, 0, List.of(2))
                        .fitting("thing", FittingKind.VENT, On.WALL, 1, at(0, 300), 20));
        Finding f = Alone.one(
                GROOVE,
                row().wallElement("E2", 100, 16, 20, 0, null)
                        .fitting("latch", FittingKind.LATCH, On.WALL, 1, at(0, 300), 20)
                        .fitting("thing", FittingKind.VENT, On.WALL, 1, at(0, 100), 20),
                CAUTION,
                "thing",
                "E2");
        Alone.mm(f, -8 - 10, 6);
    }

    /** An oblong of 40 × 20 mm whose side is 4 mm from the second piece of a path. */
    @Test
    void anOblongBesideAPath() {
        TestKiln k = kiln().slabElement("EF", On.FLOOR, 16, 20, at(-200, -200), at(100, -200), at(100, 150))
                .box("vent", FittingKind.VENT, On.FLOOR, null, at(68, 0), 40, 20, null);
        Finding f = Alone.one(GROOVE, k, CAUTION, "vent", "EF");
        assertThat(f.measured().value()).isCloseTo(4, within(1e-6));
        assertThat(f.limit().value()).isEqualTo(6);
    }

    private static final String RIB =
            "Measure both again: two elements seldom share a groove, and a thin rib of brick between them breaks out.";

    /** Rows of 16 mm: 308 to 316 leaves 8. One that falls by 45° over 20 mm of depth reaches 20 mm lower, 345 − 8 − 20 = 317. */
    @ParameterizedTest
    @CsvSource({"324, 0, 8", "276, 0, 8", "345, 45, 9"})
    void ribsBetweenRows(double v, double slope, double left) {
        Finding f = Alone.one(GROOVE, row().wallElement("E2", v, 16, 20, slope, null), CAUTION, "E1", "E2");
        assertThat(f.measured().value()).isCloseTo(left, within(1e-9));
        assertThat(f.limit().value()).isEqualTo(10);
        Alone.by(f, "groove");
        assertThat(f.message()).contains(" of brick between the grooves of E1 and E2; 10.0 mm (3/8 in) wanted.");
        assertThat(f.remedy()).isEqualTo(RIB);
    }

    @Test
    void rowsThatRunIntoEachOther() {
        Finding f = Alone.one(GROOVE, row().wallElement("E2", 316, 16, 20, 0, null), CAUTION, "E1", "E2");
        Alone.mm(f, 0, 10);
        Alone.says(f, "The grooves of E1 and E2 run into each other.", RIB);
        Alone.silent(GROOVE, row().wallElement("E2", 326, 16, 20, 0, null));
        Alone.silent(GROOVE, row().wallElement("E1", 304, 16, 20, 0, null));
        Alone.silent(
                GROOVE,
                kiln().wallElement("E1", 300, 16, 20, 0, List.of(1)).wallElement("E2", 304, 16, 20, 0, List.of(2)));
        Finding own = Alone.one(
                GROOVE,
                row().wallElement("E2", 326, 16, 20, 0, null).limit("groove-room", "groove", 12),
                CAUTION,
                "E1",
                "E2");
        assertThat(own.limitSetByUser()).isTrue();
    }

    /** The third element is near the first, the second is far. */
    @Test
    void everyPairOfGrooves() {
        TestKiln k = row().wallElement("E2", 100, 16, 20, 0, null).wallElement("E3", 324, 16, 20, 0, null);
        Alone.one(GROOVE, k, CAUTION, "E1", "E3");
        TestKiln slabs = kiln().slabElement("E1", On.LID, 16, 20, at(-100, 0), at(100, 0))
                .slabElement("E2", On.LID, 16, 20, at(-200, 100), at(-125, 100), at(-125, 0));
        Finding f = Alone.one(GROOVE, slabs, CAUTION, "E1", "E2");
        assertThat(f.measured().value()).isCloseTo(9, within(1e-6));
    }

    private static TestKiln tails(List<Integer> panels, int panel, double v) {
        return with(kiln(), wall(groove(16, 20), 12.0, panels, new Tails(panel, at(0, v), mm(10))));
    }

    private static final String TAILS =
            "Measure the holes of the tails again: clearances to live tails are worked out from this place.";

    /** The row's roof is at 208. */
    @Test
    void tailsOffTheirRow() {
        Finding f = Alone.one(GROOVE, tails(null, 2, 220), CAUTION, "E1");
        Alone.mm(f, 12, 0);
        Alone.by(f, "tails");
        Alone.says(f, "The middle of E1 tails is 12.0 mm (1/2 in) off its groove.", TAILS);
        Alone.silent(GROOVE, tails(null, 2, 208));
        Finding elsewhere = Alone.one(GROOVE, tails(List.of(1), 2, 200), CAUTION, "E1");
        assertThat(elsewhere.measured()).isNull();
        assertThat(elsewhere.limit()).isNull();
        Alone.says(elsewhere, "E1 tails pass a panel where E1 has no groove.", TAILS);
    }

    /** Of a groove that is not known, or that lies in the floor, tails are not told off. */
    @Test
    void tailsOfAnUnknownGroove() {
        Findings out = Alone.ask(GROOVE, with(kiln(), wall(null, 12.0, null, new Tails(1, at(0, 300), mm(10)))));
        assertThat(out.findings()).isEmpty();
        Alone.lacks(GROOVE, out, "kiln.elements[0].groove");
        ElementRun floor = new ElementRun(
                "EF",
                On.FLOOR,
                null,
                null,
                List.of(at(-250, -250), at(250, -250)),
                new Groove(null, mm(16), mm(20), null),
                mm(12),
                new Tails(1, at(0, 100), mm(10)));
        Alone.silent(GROOVE, with(kiln(), floor));
    }

    @Test
    void whatTheGroovesLack() {
        TestKiln none = row();
        none.fittings = null;
        Alone.lacks(GROOVE, none, "kiln.fittings");
        none.elements = null;
        Alone.lacks(GROOVE, none, "kiln.elements", "kiln.fittings");
        TestKiln k = row().fitting("thing", FittingKind.VENT, On.WALL, 1, at(0, 300), 20);
        k.shapeless("plate", FittingKind.OTHER, On.LID, at(0, 0));
        Findings out = Alone.ask(GROOVE, k);
        Alone.lacks(GROOVE, out, "kiln.fittings[1].diameter");
        assertThat(out.findings()).hasSize(1);
    }
}
