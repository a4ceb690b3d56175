package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;
import static portwright.check.Severity.CAUTION;
import static portwright.check.Severity.NOTE;
import static portwright.check.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.FiringPlan;
import portwright.model.FiringStep;
import portwright.model.Groove;
import portwright.model.Heat;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.source.Standing;

/**
 * Flames at coils, shelves, posts and flues, each rule asked alone. A jet widens by tan 11° on each side (IFRF, isothermal free jet); distances are the rule book's own
 * judgement and common practice. Amounts worked by hand on the square chamber of 600 mm.
 */
class SaidFlamesTest {
    private static final Rule COIL = new FlameOnElement();
    private static final Rule WALL = new FlameAtWall();
    private static final Rule PATH = new FlamePath();
    private static final Rule FLUE = new FlueOverInlet();
    private static final Rule SHELF = new ShelfOverInlet();
    private static final Rule POST = new PostInFlame();
    private static final double TAN = Math.tan(Math.toRadians(11));
    private static final double COS = Math.cos(Math.toRadians(11));

    private static TestKiln kiln() {
        return AtTheLimitTest.square();
    }

    private static TestKiln inlet(double d) {
        return kiln().inlet("A", 0, 0, d);
    }

    private static Shelf plate(String name, double width, double depth, Double height, Double thick, Place at) {
        return new Shelf(
                name,
                ShelfShape.RECTANGLE,
                null,
                null,
                null,
                mm(width),
                mm(depth),
                null,
                height == null ? null : mm(height),
                thick == null ? null : mm(thick),
                at,
                List.of(),
                mm(40));
    }

    private static TestKiln shelf(TestKiln k, double width, double height) {
        k.shelves.add(plate("shelf", width, width, height, 16.0, at(0, 0)));
        return k;
    }

    // ---- flame-on-element ----

    /** The middle of a coil of 12 mm is at x = 310 and 100 up; the flame's side stands (310 − x − 20 − 100 tan 11°) cos 11° off it. */
    private static TestKiln beside(double left) {
        double x = 310 - 20 - 100 * TAN - (left + 6) / COS;
        return kiln().wallElement("E1", 100, 16, 20, 0, List.of(2)).inlet("A", x, 0, 40);
    }

    /** 15 of 25 mm: moved by m it gains m cos 11°, 10.19 mm, told up, 0.40 in. */
    @Test
    void aFlameNearACoil() {
        assertThat(10 / COS).isBetween(10.1, 10.2);
        Finding f = Alone.one(COIL, beside(15), CAUTION, "A", "E1");
        assertThat(f.measured().value()).isCloseTo(15, within(1e-6));
        assertThat(f.limit().value()).isEqualTo(25);
        Alone.by(f, "caution");
        assertThat(f.marks()).isEmpty();
        Alone.says(
                f,
                "15.0 mm (9/16 in) between the flame of A and coil E1; 25.0 mm (1 in) wanted.",
                "Set a shelf over A, move A 10.2 mm (7/16 in) toward the centre, or use a smaller hole.");
        Alone.silent(COIL, beside(25.001));
        Alone.one(COIL, beside(24.99), CAUTION, "A", "E1");
        Alone.one(COIL, beside(10.001), CAUTION, "A", "E1");
    }

    @Test
    void aFlameMuchTooNearACoil() {
        Finding f = Alone.one(COIL, beside(9), STOP, "A", "E1");
        assertThat(f.measured().value()).isCloseTo(9, within(1e-6));
        assertThat(f.limit().value()).isEqualTo(10);
        Alone.by(f, "stop");
        assertThat(f.message())
                .isEqualTo("9.0 mm (11/32 in) between the flame of A and coil E1; 10.0 mm (3/8 in) wanted.");
        Finding in = Alone.one(COIL, beside(-1), STOP, "A", "E1");
        assertThat(in.message()).isEqualTo("The flame of A strikes coil E1.");
        Finding own = Alone.one(COIL, beside(12).limit("flame-on-element", "stop", 13), STOP, "A", "E1");
        assertThat(own.limitSetByUser()).isTrue();
    }

    /** The jet of a wall port ends at the opposite wall; a coil's middle lies 10 mm behind that wall's face, its skin 4. */
    @Test
    void aWallFlameAtTheOppositeCoil() {
        TestKiln k = kiln().wallElement("E1", 200, 16, 20, 0, List.of(3)).wallInlet("A", 1, 0, 200, 40);
        Finding f = Alone.one(COIL, k, STOP, "A", "E1");
        assertThat(f.message())
                .isEqualTo("4.0 mm (5/32 in) between the flame of A and coil E1; 10.0 mm (3/8 in) wanted.");
        assertThat(f.remedy()).startsWith("Move A ").endsWith(" up, or use a smaller hole.");
        TestKiln low = kiln().wallElement("E1", 75, 16, 20, 0, List.of(3)).wallInlet("A", 1, 0, 75, 40);
        low.height = mm(150);
        assertThat(Alone.one(COIL, low, STOP, "A", "E1").remedy())
                .isEqualTo("Choose another place for A, or use a smaller hole.");
    }

    /** A lid inlet blows down: no shelf helps. */
    @Test
    void aFlameFromTheLid() {
        TestKiln k = kiln().wallElement("E1", 350, 16, 20, 0, List.of(2))
                .port("A", Role.INLET, On.LID, null, at(310 - 20 - 100 * TAN - 21 / COS, 0), mm(40));
        Finding f = Alone.one(COIL, k, CAUTION, "A", "E1");
        assertThat(f.measured().value()).isCloseTo(15, within(1e-6));
        assertThat(f.remedy()).isEqualTo("Move A 10.2 mm (7/16 in) toward the centre, or use a smaller hole.");
    }

    /** A piece of 10 mm of coil in the floor, its middle 10 mm down and 53.54 mm off: √(10² + 33.54²) = 35 from the hole's rim, 29 from its skin. */
    private static TestKiln piece(double off, double half) {
        TestKiln k = inlet(40);
        k.elements.add(new ElementRun(
                "EF",
                On.FLOOR,
                null,
                null,
                List.of(at(off, -half), at(off, half)),
                new Groove(null, mm(16), mm(20), null),
                mm(12),
                null));
        return k;
    }

    @Test
    void aShortCoilIsMeasuredToItself() {
        double off = 20 + Math.sqrt(35 * 35 - 100);
        KilnGeometry g = KilnGeometry.of(piece(off, 5).build());
        assertThat(FlameOnElement.room(g, g.holes().get(0), g.coils().get(0), 40))
                .isCloseTo(29, within(1e-6));
        Alone.silent(COIL, piece(off, 5));
        Alone.mm(Alone.one(COIL, piece(20 + Math.sqrt(30 * 30 - 100), 0.5), CAUTION, "A", "EF"), 24, 25);
    }

    /** A coil of 20 mm whose middle lies 10 mm under the hole just touches the flame. */
    @Test
    void aFlameThatJustTouchesStrikes() {
        TestKiln k = inlet(40);
        k.elements.add(new ElementRun(
                "EF",
                On.FLOOR,
                null,
                null,
                List.of(at(0, -5), at(0, 5)),
                new Groove(null, mm(20), mm(20), null),
                mm(20),
                null));
        Finding f = Alone.one(COIL, k, STOP, "A", "EF");
        assertThat(f.measured().value()).isZero();
        assertThat(f.message()).isEqualTo("The flame of A strikes coil EF.");
    }

    private static FiringStep step(Heat heat) {
        return new FiringStep(null, null, null, false, null, heat, null, false, null, null);
    }

    private static Design fired(TestKiln k, FiringPlan plan) {
        Design d = k.build();
        return Changed.of(d).drilling(null).burners(null).firing(plan).design();
    }

    private static FiringPlan plan(Heat... heats) {
        List<FiringStep> steps = new ArrayList<>();
        for (Heat h : heats) {
            steps.add(step(h));
        }
        return new FiringPlan(null, null, steps, null);
    }

    @Test
    void coilsThatAreOffWhileGasBurns() {
        Findings out = Alone.ask(COIL, fired(beside(-1), plan(Heat.ELECTRIC, Heat.GAS)));
        assertThat(out.findings()).hasSize(1);
        Finding f = out.findings().get(0);
        Alone.is(f, COIL, CAUTION, "A", "E1");
        Alone.by(f, "caution");
        assertThat(f.limit().value()).isEqualTo(25);
        assertThat(f.message()).isEqualTo("The flame of A strikes coil E1, which is off while gas burns.");
        assertThat(FlameOnElement.offWithGas(fired(kiln(), plan(Heat.ELECTRIC, Heat.GAS))))
                .isTrue();
        assertThat(FlameOnElement.offWithGas(fired(kiln(), plan(Heat.NONE)))).isTrue();
        assertThat(FlameOnElement.offWithGas(fired(kiln(), plan(Heat.GAS, Heat.BOTH))))
                .isFalse();
        assertThat(FlameOnElement.offWithGas(fired(kiln(), plan(null, Heat.GAS))))
                .isFalse();
        assertThat(FlameOnElement.offWithGas(fired(kiln(), plan()))).isFalse();
        assertThat(FlameOnElement.offWithGas(fired(kiln(), new FiringPlan(null, null, null, null))))
                .isFalse();
        assertThat(FlameOnElement.offWithGas(kiln().build())).isFalse();
    }

    @Test
    void whatTheCoilsLack() {
        TestKiln none = inlet(40);
        none.elements = null;
        Alone.lacks(COIL, none, "kiln.elements");
        none.shelves = null;
        Alone.lacks(COIL, none, "kiln.elements", "shelves");
        TestKiln flues = kiln().flue("F", 0, 0, 40);
        flues.elements = null;
        Alone.silent(COIL, flues);
        TestKiln k = beside(15).inlet("B", -200, 0, 40).flue("F", 200, 0, 40);
        k.elements.add(new ElementRun("bare", On.WALL, mm(300), List.of(4), null, null, null, null));
        Findings out = Alone.ask(COIL, k);
        Alone.lacks(COIL, out, "kiln.elements[1].coil");
        assertThat(out.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.parts()).containsExactly("A", "E1"));
    }

    // ---- flame-at-wall ----

    @Test
    void underAShelfTheFlameTurnsOut() {
        Finding f = Alone.one(WALL, shelf(inlet(40), 300, 75), NOTE, "A", "shelf");
        Alone.measuresNothing(f);
        assertThat(f.source().standing()).isEqualTo(Standing.JUDGEMENT);
        Alone.says(
                f,
                "Under shelf the flame of A turns out and climbs the gap at the wall, past every coil.",
                "Keep the shelf's gap even all round, and look at the lowest coils after each firing.");
        Alone.silent(WALL, inlet(40));
        Alone.silent(WALL, shelf(kiln().inlet("A", 160, 0, 40), 300, 75));
        Alone.silent(WALL, shelf(kiln().port("F", Role.FLUE, On.FLOOR, null, at(0, 0), mm(40)), 300, 75));
        Alone.silent(WALL, shelf(kiln().port("L", Role.INLET, On.LID, null, at(0, 0), mm(40)), 300, 75));
    }

    // ---- flame-path ----

    private static TestKiln holes(int n) {
        TestKiln k = kiln();
        for (int i = 0; i < n; i++) {
            k.inlet("A" + i, i * 100 - 200, 0, 60);
        }
        return k;
    }

    /** Past a shelf of 560 mm 600² − 560² = 46 400 mm² are free; a hole of 60 has 2827.4: nine make 25 447, 1.82 times; 2 · 25 447 − 46 400 = 4 494 lack. */
    @Test
    void aNarrowWayPastAShelf() {
        double area = 9 * Math.PI * 900;
        Finding f = Alone.one(PATH, shelf(holes(9), 560, 200), CAUTION, "shelf");
        Alone.measures(f, 46_400 / area, 2, "1");
        Alone.by(f, "caution");
        Alone.says(
                f,
                "The way past shelf has 1.82 times the inlets' area; 2 times wanted.",
                "Use a smaller shelf: 45 cm² (6.97 in²) less.");
        assertThat((2 * area - 46_400) / 645.16).isCloseTo(6.97, within(0.005));
        Alone.silent(PATH, shelf(holes(8), 560, 200));
    }

    /** Seventeen holes have 48 066 mm²: 0.97 times, and 2 · 48 066 − 46 400 = 49 733 lack to twice. */
    @Test
    void tooNarrowAWayPastAShelf() {
        double area = 17 * Math.PI * 900;
        Finding f = Alone.one(PATH, shelf(holes(17), 560, 200), STOP, "shelf");
        Alone.measures(f, 46_400 / area, 1, "1");
        Alone.by(f, "stop");
        Alone.says(
                f,
                "The way past shelf has 0.97 times the inlets' area; 1 times wanted.",
                "Use a smaller shelf: 497 cm² (77.1 in²) less.");
        assertThat((2 * area - 46_400) / 645.16).isCloseTo(77.1, within(0.05));
        Alone.one(PATH, shelf(holes(16), 560, 200), CAUTION, "shelf");
        Finding own = Alone.one(PATH, shelf(holes(1), 560, 200).limit("flame-path", "caution", 17), CAUTION, "shelf");
        assertThat(own.limitSetByUser()).isTrue();
        assertThat(own.message()).isEqualTo("The way past shelf has 16.4 times the inlets' area; 17 times wanted.");
    }

    /** A shelf of 570 mm leaves 15 mm all round, 19 wanted. */
    @Test
    void aNarrowGapAtTheWall() {
        Finding f = Alone.one(PATH, shelf(inlet(40), 570, 200), CAUTION, "shelf");
        Alone.mm(f, 15, 19);
        Alone.by(f, "gap");
        Alone.says(
                f,
                "Only 15.0 mm (9/16 in) between shelf and the wall; 19.0 mm (3/4 in) wanted.",
                "Move or shorten the shelf by 4.0 mm (3/16 in).");
        Alone.silent(PATH, shelf(inlet(40), 562, 200));
        Alone.silent(PATH, shelf(kiln().flue("F", 0, 0, 40), 599, 200));
    }

    @Test
    void whatTheWayLacks() {
        TestKiln none = inlet(40);
        none.shelves = null;
        Alone.lacks(PATH, none, "shelves");
        none.ports.clear();
        Alone.lacks(PATH, none, "shelves");
        TestKiln k = shelf(inlet(40), 570, 200);
        k.shelves.add(plate("other", 300, 300, null, 16.0, at(0, 0)));
        Findings out = Alone.ask(PATH, k);
        Alone.lacks(PATH, out, "shelves[1].height");
        assertThat(out.findings()).hasSize(1);
    }

    // ---- levels of shelves ----

    private static List<ShelfLevel> levels(Shelf... shelves) {
        TestKiln k = kiln();
        k.shelves.addAll(List.of(shelves));
        return ShelfLevel.of(KilnGeometry.of(k.build()));
    }

    /** Two halves of 280 × 500 mm, 10 mm apart: 360 000 − 280 000; the gap at the sides is 15, that of a small one alone 200. */
    @Test
    void shelvesOfOneHeightLeaveOneWay() {
        List<ShelfLevel> all = levels(
                plate("high", 200, 200, 300.0, 16.0, at(0, 0)),
                plate("left", 280, 500, 100.0, 16.0, at(-145, 0)),
                plate("right", 280, 500, 100.0, 16.0, at(145, 0)));
        assertThat(all).hasSize(2);
        assertThat(all.get(0).words()).isEqualTo("left and right");
        assertThat(all.get(0).names()).containsExactly("left", "right");
        assertThat(all.get(0).freeArea()).isCloseTo(80_000, within(1e-6));
        assertThat(all.get(0).gap()).isCloseTo(15, within(1e-9));
        assertThat(all.get(1).words()).isEqualTo("high");
        assertThat(all.get(1).freeArea()).isCloseTo(320_000, within(1e-6));
        assertThat(all.get(1).gap()).isCloseTo(200, within(1e-9));
        assertThat(levels()).isEmpty();
    }

    /** A shelf of 16 mm at 100 reaches to under 116; one without a thickness counts as 1 mm. */
    @ParameterizedTest
    @CsvSource({
        "115.9, 16, low and next",
        "116, 16, low | next",
        "100.9, , low and next",
        "101, , low | next",
        "100, , low and next"
    })
    void whatReachesIntoTheNextLevel(double bottom, Double thick, String words) {
        List<ShelfLevel> all = levels(
                plate("next", 100, 100, bottom, 16.0, at(100, 0)), plate("low", 100, 100, 100.0, thick, at(-100, 0)));
        assertThat(all.stream().map(ShelfLevel::words).sorted().toList()).hasSize(words.contains("|") ? 2 : 1);
        assertThat(String.join(" | ", all.stream().map(ShelfLevel::words).toList())
                        .replace("next and low", "low and next"))
                .isEqualTo(words);
    }

    /** A high one over a low one: the way past both is one where they overlap in height, and the low one's own level is within it. */
    @Test
    void aLevelWithinAFullerOneIsLeftOut() {
        List<ShelfLevel> all = levels(
                plate("a", 100, 100, 100.0, 50.0, at(-150, 0)),
                plate("b", 100, 100, 120.0, 50.0, at(0, 0)),
                plate("c", 100, 100, 155.0, 50.0, at(150, 0)));
        assertThat(all.stream().map(ShelfLevel::words)).containsExactly("a and b", "b and c");
    }

    // ---- flue-over-inlet ----

    private static TestKiln over(double x) {
        return inlet(40).flue("F", x, 0, 30);
    }

    /** 40 + 30 mm wanted off the axis; 45 are there. */
    @Test
    void aFlueNearlyOverAnInlet() {
        Finding f = Alone.one(FLUE, over(45), CAUTION, "A", "F");
        Alone.mm(f, 45, 70);
        assertThat(f.source().standing()).isEqualTo(Standing.JUDGEMENT);
        assertThat(f.limitSetByUser()).isFalse();
        Alone.says(
                f,
                "F stands 45.0 mm (1 3/4 in) off the axis of A with no shelf between: gas goes straight out.",
                "Set a shelf over A, or move F 25.0 mm (1 in) farther off the axis of A.");
        Alone.silent(FLUE, over(70));
        Alone.one(FLUE, over(69.99), CAUTION, "A", "F");
        Alone.silent(FLUE, shelf(over(45), 200, 100));
    }

    @Test
    void onlyFluesOverInlets() {
        Alone.silent(FLUE, inlet(40).port("L", Role.INLET, On.LID, null, at(0, 0), mm(30)));
        Alone.silent(
                FLUE,
                kiln().port("G", Role.FLUE, On.FLOOR, null, at(0, 0), mm(40)).flue("F", 0, 0, 30));
        // a shelf beside does not part them; each pair is told
        TestKiln k = over(45).flue("G", -45, 0, 30).inlet("B", 200, 200, 40);
        k.shelves.add(plate("aside", 100, 100, 100.0, 16.0, at(-200, -200)));
        List<Finding> all = Alone.all(FLUE, k);
        assertThat(all).hasSize(2);
        Alone.is(all.get(1), FLUE, CAUTION, "A", "G");
    }

    @Test
    void whatAFlueLacks() {
        TestKiln k = over(45);
        k.shelves = null;
        Alone.lacks(FLUE, k, "shelves");
        TestKiln far = over(70);
        far.shelves = null;
        Alone.silent(FLUE, far);
    }

    // ---- shelf-over-inlet ----

    /** A hole of 40 mm: 10 mm at least, 40 wanted, 60 well. Under 10 mm inches are told in thirty-seconds; 39 mm would read 1 9/16 in like 40. */
    @ParameterizedTest
    @CsvSource({
        "9.99, STOP, stop, 10, 9.99 mm (13/32 in), 10.0 mm (3/8 in)",
        "10, CAUTION, caution, 40, 10.0 mm (3/8 in), 40.0 mm (1 9/16 in)",
        "39, CAUTION, caution, 40, 39.0 mm (1.535 in), 40.0 mm (1 9/16 in)",
        "40, NOTE, note, 60, 40.0 mm (1 9/16 in), 60.0 mm (2 3/8 in)",
        "59, NOTE, note, 60, 59.0 mm (2 5/16 in), 60.0 mm (2 3/8 in)"
    })
    void aShelfCloseOverAnInlet(
            double height, Severity severity, String limit, double least, String is, String wanted) {
        Finding f = Alone.one(SHELF, shelf(inlet(40), 300, height), severity, "A", "shelf");
        Alone.mm(f, height, least);
        Alone.by(f, limit);
        assertThat(f.message())
                .isEqualTo("shelf stands " + is + " over A; " + wanted + " wanted"
                        + (severity == STOP ? ": it chokes the port." : "."));
        assertThat(f.remedy()).isEqualTo("Put it on posts of 60.0 mm (2 3/8 in).");
    }

    @Test
    void aShelfHighEnoughOrAside() {
        Alone.silent(SHELF, shelf(inlet(40), 300, 60));
        Alone.silent(SHELF, shelf(kiln().inlet("A", 160, 0, 40), 300, 20));
        Alone.silent(SHELF, shelf(kiln().port("F", Role.FLUE, On.FLOOR, null, at(0, 0), mm(40)), 300, 20));
        Alone.silent(SHELF, inlet(40));
        Finding own =
                Alone.one(SHELF, shelf(inlet(40), 300, 70).limit("shelf-over-inlet", "note", 2), NOTE, "A", "shelf");
        Alone.mm(own, 70, 80);
        assertThat(own.limitSetByUser()).isTrue();
        assertThat(own.remedy()).isEqualTo("Put it on posts of 80.0 mm (3 3/16 in).");
    }

    @Test
    void whatTheShelfLacks() {
        TestKiln none = inlet(40);
        none.shelves = null;
        Alone.lacks(SHELF, none, "shelves");
        TestKiln k = shelf(inlet(40), 300, 50);
        k.shelves.add(plate("other", 300, 300, null, 16.0, at(0, 0)));
        Findings out = Alone.ask(SHELF, k);
        Alone.lacks(SHELF, out, "shelves[1].height");
        assertThat(out.findings()).hasSize(1);
    }

    // ---- post-in-flame ----

    private static final double RADIUS = 20 * Math.sqrt(2);

    private static TestKiln post(double height, Place... posts) {
        return inlet(40).roundShelf("shelf", 400, height, 40, posts);
    }

    /** A post of 40 mm square is a circle of 20 √2. Over a hole of 40 at 75 mm the flame widens by 75 tan 11° = 14.58. */
    @Test
    void aPostOverAnInlet() {
        Finding f = Alone.one(POST, post(75, at(0, 44)), STOP, "A", "shelf post 1");
        Alone.mm(f, 44 - RADIUS - 20, 0);
        Alone.by(f, "caution");
        Alone.mark(f, new Pt(0, 0), new Pt(0, 44));
        Alone.says(
                f,
                "shelf post 1 stands 4.3 mm (5/32 in) over A.",
                "Move the post 28.9 mm (1 3/16 in) straight away from A.");
        assertThat(20 + RADIUS - 44 + 75 * TAN + 10).isBetween(28.8, 28.9);
        Alone.one(POST, post(75, at(0, 20 + RADIUS)), CAUTION, "A", "shelf post 1");
    }

    @Test
    void aPostInTheFlameOrBesideIt() {
        double edge = 20 + RADIUS + 75 * TAN;
        Finding in = Alone.one(POST, post(75, at(-200, 150), at(edge - 6, 0)), CAUTION, "A", "shelf post 2");
        Alone.mm(in, -6, 10);
        Alone.by(in, "caution");
        Alone.says(
                in,
                "shelf post 2 stands 6.0 mm (1/4 in) in the flame of A.",
                "Move the post 16.0 mm (11/16 in) straight away from A.");
        Finding near = Alone.one(POST, post(75, at(edge + 6, 0)), CAUTION, "A", "shelf post 1");
        Alone.mm(near, 6, 10);
        Alone.says(
                near,
                "shelf post 1 stands 6.0 mm (1/4 in) from the flame of A.",
                "Move the post 4.0 mm (3/16 in) straight away from A.");
        Alone.silent(POST, post(75, at(edge + 10, 0)));
        Finding own = Alone.one(
                POST, post(75, at(edge + 10, 0)).limit("post-in-flame", "caution", 12), CAUTION, "A", "shelf post 1");
        assertThat(own.limitSetByUser()).isTrue();
    }

    /** A wall port at 200 blows at a post of a shelf at 300, 100 mm before the wall, half behind the wall's face none. */
    @Test
    void aPostBeforeAWallPort() {
        double beside = 20 + RADIUS + 100 * TAN;
        for (double side : new double[] {-1, 1}) {
            TestKiln k = kiln().wallInlet("A", 1, side * 50, 200, 40)
                    .roundShelf("shelf", 400, 300, 40, at(side * (50 + beside + 4), 200));
            Finding f = Alone.one(POST, k, CAUTION, "A", "shelf post 1");
            Alone.mm(f, 4, 10);
            assertThat(f.marks()).isEmpty();
            Alone.says(
                    f,
                    "shelf post 1 stands 4.0 mm (5/32 in) from the flame of A.",
                    "Move the post 6.0 mm (1/4 in) sideways out of the flame of A.");
        }
        Alone.silent(
                POST, kiln().wallInlet("A", 1, 0, 200, 40).roundShelf("shelf", 400, 300, 40, at(beside + 10, 200)));
        // right before the port: it is no hole of the floor that a post could stand over
        Alone.mm(
                Alone.one(
                        POST,
                        kiln().wallInlet("A", 1, 0, 200, 40).roundShelf("shelf", 400, 300, 40, at(0, 200)),
                        CAUTION,
                        "A",
                        "shelf post 1"),
                -beside,
                10);
        // behind the wall's face the jet is as wide as its hole
        Alone.mm(
                Alone.one(
                        POST,
                        kiln().wallInlet("A", 1, 0, 200, 40)
                                .roundShelf("shelf", 400, 300, 40, at(20 + RADIUS + 4, 310)),
                        CAUTION,
                        "A",
                        "shelf post 1"),
                4,
                10);
    }

    /** A post as thin as a line at the rim of the port is neither in the flame nor off it. */
    @Test
    void aPostAtTheFlamesEdge() {
        Finding f = Alone.one(
                POST,
                kiln().wallInlet("A", 1, 0, 200, 40).roundShelf("shelf", 700, 300, 0, at(20, 300)),
                CAUTION,
                "A",
                "shelf post 1");
        Alone.mm(f, 0, 10);
        assertThat(f.message()).isEqualTo("shelf post 1 stands 0.0 mm (0 in) from the flame of A.");
    }

    @Test
    void whatBlowsAtNoPost() {
        // a lid's jet, a flue of the floor, a shelf without posts
        Alone.silent(
                POST,
                kiln().port("L", Role.INLET, On.LID, null, at(0, 0), mm(40))
                        .roundShelf("shelf", 400, 75, 40, at(0, 0)));
        Alone.silent(
                POST,
                kiln().port("F", Role.FLUE, On.FLOOR, null, at(0, 0), mm(40))
                        .roundShelf("shelf", 400, 75, 40, at(0, 0)));
        Alone.silent(POST, post(75));
        // each post and each inlet is judged by itself
        TestKiln k = post(75, at(0, 44), at(0, -44), at(150, 0))
                .port("F", Role.FLUE, On.FLOOR, null, at(150, 0), mm(40))
                .inlet("B", 0, 150, 40);
        List<Finding> all = Alone.all(POST, k);
        assertThat(all).hasSize(2);
        Alone.is(all.get(0), POST, STOP, "A", "shelf post 1");
        Alone.is(all.get(1), POST, STOP, "A", "shelf post 2");
    }

    /** A post stands on the highest shelf under it. */
    @Test
    void aPostOnALowerShelf() {
        TestKiln k = inlet(40).roundShelf("high", 400, 200, 40, at(0, 44));
        assertThat(Alone.one(POST, k, STOP, "A", "high post 1")).isNotNull();
        k.shelves.add(plate("low", 100, 100, 75.0, 16.0, at(0, 44)));
        Alone.silent(POST, k);
        k.shelves.set(1, plate("low", 100, 100, 75.0, 16.0, at(150, 0)));
        Alone.one(POST, k, STOP, "A", "high post 1");
        k.shelves.set(1, plate("level", 100, 100, 200.0, 16.0, at(0, 44)));
        Alone.one(POST, k, STOP, "A", "high post 1");
    }

    /** Where a lower shelf ends the flame at 100 mm, it is no wider than there at a post of a shelf at 300. */
    @Test
    void aFlameThatAShelfEnds() {
        double wide = 20 + RADIUS + 100 * TAN;
        TestKiln k = inlet(40).roundShelf("high", 500, 300, 40, at(wide + 5, 0));
        k.shelves.add(plate("low", 130, 130, 100.0, 16.0, at(0, 0)));
        Finding f = Alone.one(POST, k, CAUTION, "A", "high post 1");
        Alone.mm(f, 5, 10);
    }

    @Test
    void whatThePostsLack() {
        TestKiln none = inlet(40);
        none.shelves = null;
        Alone.lacks(POST, none, "shelves");
        TestKiln k = post(75, at(0, 44));
        k.shelves.add(new Shelf(
                "unsaid",
                ShelfShape.ROUND,
                mm(100),
                null,
                null,
                null,
                null,
                null,
                mm(200),
                mm(16),
                at(200, 0),
                null,
                null));
        Findings out = Alone.ask(POST, k);
        Alone.lacks(POST, out, "shelves[1].posts");
        assertThat(out.findings()).hasSize(1);
    }
}
