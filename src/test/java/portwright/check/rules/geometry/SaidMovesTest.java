package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.Limits;
import portwright.check.LimitsInForce;
import portwright.data.LimitTable;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.FiringPlan;
import portwright.model.FiringStep;
import portwright.model.FittingKind;
import portwright.model.Heat;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Slab;
import portwright.model.Wall;

/**
 * Which move of a hole is told for a need made up in the test, and what forbids a place. Worked by hand: millimetres are told up to the next tenth, inches up to the next
 * sixteenth, and both have to content; way and words are common practice with a tape.
 */
class SaidMovesTest {
    private static final LimitTable TABLE = LimitTable.load();
    private static final String ABOVE = ", seen from above";
    private static final String INSIDE = ", seen from inside";

    private static TestKiln kiln() {
        return AtTheLimitTest.square();
    }

    /** A kiln with the hole, drilled 42 mm wide, as its first. */
    private record Site(KilnGeometry kiln, Limits limits, Hole hole) {
        String move(ToDoubleFunction<Hole> lacks) {
            return Move.of(kiln, limits, hole, lacks);
        }

        boolean blocked(double x, double y) {
            return Blocked.at(kiln, limits, hole.at(new Pt(x, y)));
        }

        double lacks(double x, double y) {
            return Blocked.lacks(kiln, limits, hole.at(new Pt(x, y)));
        }
    }

    private static Site site(TestKiln k, boolean quick) {
        Design d = k.build();
        KilnGeometry g = KilnGeometry.of(d);
        return new Site(g, new LimitsInForce(TABLE, d, quick), g.holes().get(0));
    }

    private static Site floor(double x, double y) {
        return site(kiln().inlet("A", x, y, 40), false);
    }

    private static Site wall(double u, double v) {
        return site(kiln().wallInlet("A", 1, u, v, 40), false);
    }

    /** Lacks what is left to a line square to a bearing, so far from the middle. */
    private static ToDoubleFunction<Hole> beyond(double bearing, double far) {
        double b = Math.toRadians(bearing);
        return h -> {
            double lacks = far - h.centre().x() * Math.sin(b) - h.centre().y() * Math.cos(b);
            return lacks > 1e-9 ? lacks : 0;
        };
    }

    /** Content straight to the right only, from x on. */
    private static ToDoubleFunction<Hole> rightOf(double x) {
        return h ->
                Math.abs(h.centre().y()) > 1 ? 500 : Math.max(0, x - h.centre().x());
    }

    // ---- ways and words ----

    @ParameterizedTest
    @CsvSource({"0, to the back", "90, to the right", "180, to the front", "270, to the left"})
    void alongTheAxes(double bearing, String words) {
        assertThat(floor(0, 0).move(beyond(bearing, 100)))
                .isEqualTo("move A 100.0 mm (3 15/16 in) " + words
                        + (words.contains("right") || words.contains("left") ? ABOVE : ""));
    }

    /** 100 mm by the clock; along an axis it would be 100 / cos 15° = 103.5 or more. */
    @ParameterizedTest
    @CsvSource({
        "15, half past 12", "30, 1 o'clock", "45, half past 1", "60, 2 o'clock", "75, half past 2",
        "105, half past 3", "120, 4 o'clock", "135, half past 4", "150, 5 o'clock", "165, half past 5",
        "195, half past 6", "210, 7 o'clock", "225, half past 7", "240, 8 o'clock", "255, half past 8",
        "285, half past 9", "300, 10 o'clock", "315, half past 10", "330, 11 o'clock", "345, half past 11"
    })
    void byTheClock(double bearing, String words) {
        assertThat(floor(0, 0).move(beyond(bearing, 100)))
                .isEqualTo("move A 100.0 mm (3 15/16 in) toward " + words + ABOVE + " with 12 o'clock at the back");
    }

    /** 30 mm at 15° are 31.06 along the axis: it saves less than a sixteenth, 1.59 mm. 50 are 51.76, it saves more. */
    @Test
    void theClockMustSaveASixteenth() {
        assertThat(floor(0, 0).move(beyond(15, 30))).isEqualTo("move A 31.1 mm (1 1/4 in) to the back");
        assertThat(floor(0, 0).move(beyond(15, 50))).startsWith("move A 50.0 mm (2 in) toward half past 12");
        // of two ways by the clock the shorter is told, also where the later one saves little
        assertThat(floor(0, 0).move(beyond(33, 100))).startsWith("move A 100.2 mm (4 in) toward 1 o'clock");
        assertThat(floor(0, 0).move(beyond(29, 100))).startsWith("move A 100.1 mm (4 in) toward 1 o'clock");
        assertThat(floor(0, 0).move(beyond(40, 100))).startsWith("move A 100.4 mm (4 in) toward half past 1");
    }

    @Test
    void whereAHandDragsOnlyTheAxesAreSought() {
        assertThat(site(kiln().inlet("A", 0, 0, 40), true).move(beyond(30, 100)))
                .isEqualTo("move A 115.5 mm (4 9/16 in) to the back");
    }

    @Test
    void towardAcrossAndAwayFromTheCentre() {
        Site s = floor(100, 0);
        assertThat(s.move(beyond(270, -60))).isEqualTo("move A 40.0 mm (1 5/8 in) toward the centre");
        assertThat(s.move(beyond(270, 0))).isEqualTo("move A 100.0 mm (3 15/16 in) toward the centre");
        assertThat(s.move(beyond(270, 20))).isEqualTo("move A 120.0 mm (4 3/4 in) across the centre");
        assertThat(s.move(beyond(90, 140))).isEqualTo("move A 40.0 mm (1 5/8 in) away from the centre");
        Site slant = floor(60, 80);
        assertThat(slant.move(h -> Math.max(0, h.centre().distance(new Pt(0, 0)) - 70)))
                .isEqualTo("move A 30.0 mm (1 3/16 in) toward the centre");
        assertThat(slant.move(h -> Math.max(0, 130 - h.centre().distance(new Pt(0, 0)))))
                .isEqualTo("move A 30.0 mm (1 3/16 in) away from the centre");
        assertThat(floor(1, 0).move(beyond(270, 50))).isEqualTo("move A 51.0 mm (2 1/16 in) to the left" + ABOVE);
        assertThat(floor(1.1, 0).move(beyond(270, 50))).isEqualTo("move A 51.1 mm (2 1/16 in) across the centre");
    }

    @ParameterizedTest
    @CsvSource({"0, up", "180, down", "90, to the right", "270, to the left"})
    void alongAPanel(double bearing, String words) {
        double v = words.equals("up") ? 250 : words.equals("down") ? -150 : 50;
        assertThat(wall(0, 200).move(beyond(bearing, v)))
                .isEqualTo("move A 50.0 mm (2 in) " + words + (words.startsWith("to ") ? INSIDE : ""));
    }

    @Test
    void aSentenceOfIt() {
        Site s = floor(0, 0);
        assertThat(Move.sentence(
                        s.kiln(), s.limits(), s.hole(), 100, h -> h.centre().x()))
                .isEqualTo("Move A 100.0 mm (3 15/16 in) to the right" + ABOVE + ".");
        assertThat(Move.forRoom(
                        s.kiln(), s.limits(), s.hole(), 100, h -> h.centre().x()))
                .isEqualTo("move A 100.0 mm (3 15/16 in) to the right" + ABOVE);
        assertThat(Move.sentence(s.kiln(), s.limits(), s.hole(), 100, h -> 0))
                .isEqualTo(
                        "No straight move of A within the chamber gives that room and keeps clear of all else: choose another place or a smaller hole.");
        Site w = wall(0, 200);
        assertThat(Move.sentence(w.kiln(), w.limits(), w.hole(), 100, h -> 0))
                .isEqualTo(
                        "No straight move of A within the panel gives that room and keeps clear of all else: choose another panel or a smaller hole.");
    }

    // ---- how far ----

    /** 10 mm content, 7/16 in, 11.11 mm, does not; from 20 on, 13/16 in, both do. */
    @Test
    void millimetresAndSixteenthsBothContent() {
        assertThat(floor(0, 0).move(h -> {
                    double x = h.centre().x();
                    return Math.abs(h.centre().y()) > 1 ? 500 : x < 10 ? 10 - x : x <= 10.05 || x >= 20 ? 0 : 20 - x;
                }))
                .isEqualTo("move A 20.0 mm (13/16 in) to the right" + ABOVE);
    }

    @Test
    void amountsAreToldUp() {
        assertThat(floor(0, 0).move(rightOf(20.01))).isEqualTo("move A 20.1 mm (13/16 in) to the right" + ABOVE);
        assertThat(floor(0, 0).move(rightOf(0.3))).isEqualTo("move A 1.0 mm (1/16 in) to the right" + ABOVE);
    }

    /** The hole of 42 mm stays inside to x = 279: 277.8 mm are 10 15/16 in, 277.81; 278 are 11 in, 279.4, under the wall. */
    @Test
    void theWallEndsAMove() {
        assertThat(floor(0, 0).move(rightOf(277.8))).isEqualTo("move A 277.8 mm (10 15/16 in) to the right" + ABOVE);
        assertThat(floor(0, 0).move(rightOf(278))).isNull();
        assertThat(floor(0, 0).move(rightOf(285))).isNull();
        Site out = floor(290, 0);
        assertThat(out.move(beyond(270, -200))).isEqualTo("move A 90.0 mm (3 9/16 in) toward the centre");
        Site w = wall(0, 200);
        assertThat(w.move(beyond(90, 285))).isNull();
        assertThat(wall(290, 200).move(beyond(270, -200))).isEqualTo("move A 90.0 mm (3 9/16 in) to the left" + INSIDE);
    }

    /** In a U a move through the slot leaves the chamber and is none, though the other leg would do. */
    @Test
    void aMoveDoesNotLeaveTheChamber() {
        TestKiln k = TestKiln.u().inlet("A", -200, 100, 40);
        k.wall = new Wall(mm(60), "ifb-23");
        Site s = site(k, false);
        assertThat(s.move(h -> Math.max(0, Math.min(3, 150 - h.centre().x())))).isNull();
        assertThat(s.move(h -> Math.max(0, h.centre().y() - 50))).contains("move A 50.0 mm (2 in) to the front");
    }

    /** In a chamber of 4 m: under a metre is told. */
    @Test
    void aMetreIsTooFar() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(4000), mm(4000), null))
                .inlet("A", 0, 0, 40);
        Site s = site(k, false);
        assertThat(s.move(rightOf(990))).startsWith("move A 990.0 mm (39 in) to the right");
        assertThat(s.move(rightOf(1000))).isNull();
    }

    /** A need that tells a millimetre at a time is followed 200 times: to 199 mm. */
    @ParameterizedTest
    @CsvSource({"199, true", "200, false"})
    void aNeedThatGivesLittleAwayIsGivenUp(double x, boolean found) {
        String move = floor(0, 0).move(h -> h.centre().x() < x - 1e-9 ? 1 : 0);
        if (found) {
            assertThat(move).startsWith("move A 199.0 mm (7 7/8 in) to the right");
        } else {
            assertThat(move).isNull();
        }
    }

    /** What lacks less than the tape shows still leads on by a tenth. */
    @Test
    void aNeedUnderTheTapeLeadsOnByATenth() {
        assertThat(floor(0, 0).move(h -> {
                    double x = h.centre().x();
                    return Math.abs(h.centre().y()) > 1 ? 500 : x < 10 ? 10 - x : x < 10.05 ? 1e-10 : 0;
                }))
                .isEqualTo("move A 10.1 mm (7/16 in) to the right" + ABOVE);
    }

    // ---- what else forbids a place ----

    /** A leg of 30 mm at x = 60 forbids, at half of its 25 mm, from 11.5 to 108.5; from 50 on in steps of 3 the first free place is 110. */
    @Test
    void aMoveGoesOnPastWhatForbidsThePlace() {
        Site s =
                site(kiln().inlet("A", 0, 0, 40).fitting("leg", FittingKind.LEG, On.FLOOR, null, at(60, 0), 30), false);
        assertThat(s.move(rightOf(50))).isEqualTo("move A 110.0 mm (4 3/8 in) to the right" + ABOVE);
    }

    /** B 40 mm wide at x = 100 needs 25 mm of brick: from 33 to 167. */
    @Test
    void aMoveGoesOnPastAnotherHole() {
        Site s = site(kiln().inlet("A", 0, 0, 40).inlet("B", 100, 0, 40), false);
        assertThat(s.move(rightOf(50))).isEqualTo("move A 167.0 mm (6 5/8 in) to the right" + ABOVE);
        assertThat(s.move(rightOf(31))).isEqualTo("move A 31.0 mm (1 1/4 in) to the right" + ABOVE);
    }

    /** Where all places that content are forbidden, in floor and lid the move is told with that, in a wall not at all. */
    @Test
    void whereOnlyForbiddenPlacesContent() {
        ToDoubleFunction<Hole> window = h -> {
            double x = h.centre().x();
            return Math.abs(h.centre().y()) > 1 || x > 56 ? 500 : Math.max(0, 50 - x);
        };
        TestKiln k = kiln().inlet("A", 0, 0, 40).fitting("leg", FittingKind.LEG, On.FLOOR, null, at(55, 0), 30);
        assertThat(site(k, false).move(window))
                .isEqualTo(
                        "move A 50.0 mm (2 in) to the right" + ABOVE + ", though another clearance is too short there");
        assertThat(site(k, true).move(window)).isEqualTo("move A 50.0 mm (2 in) to the right" + ABOVE);
        ToDoubleFunction<Hole> onWall = h -> {
            double u = h.centre().x();
            return Math.abs(h.centre().y() - 200) > 1 || u > 56 ? 500 : Math.max(0, 50 - u);
        };
        TestKiln w =
                kiln().wallInlet("A", 1, 0, 200, 40).fitting("probe", FittingKind.OTHER, On.WALL, 1, at(55, 200), 30);
        assertThat(site(w, false).move(onWall)).isNull();
        assertThat(site(w, true).move(onWall)).isNull();
        w.fittings.clear();
        assertThat(site(w, false).move(onWall)).isEqualTo("move A 50.0 mm (2 in) to the right" + INSIDE);
    }

    /** Up is the way of 50 mm, but a vent is there; down is one of 60. */
    @Test
    void anotherWayWhereTheFirstIsForbidden() {
        Site s = site(
                kiln().wallInlet("A", 1, 0, 200, 40).fitting("vent", FittingKind.VENT, On.WALL, 1, at(0, 250), 30),
                false);
        assertThat(s.move(h -> {
                    double v = h.centre().y() - 200;
                    return Math.abs(h.centre().x()) > 1 ? 500 : v > 0 ? Math.max(0, 50 - v) : Math.max(0, 60 + v);
                }))
                .isEqualTo("move A 60.0 mm (2 3/8 in) down");
    }

    // ---- Blocked ----

    /** To the wall nothing, to the rim 50, of a panel 25, between holes 25. */
    @Test
    void howFarAPlaceHasToBeMovedOn() {
        Site s = site(kiln().inlet("A", 0, 0, 40).inlet("B", 150, 0, 40).flue("F", -100, 0, 40), false);
        assertThat(s.lacks(0, 0)).isZero();
        assertThat(s.lacks(-100, 0)).isZero();
        assertThat(s.lacks(83, 0)).isZero();
        assertThat(s.lacks(90, 0)).isCloseTo(7, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(s.lacks(0, 279)).isZero();
        assertThat(s.lacks(0, 285)).isCloseTo(6, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(s.lacks(0, 295)).isCloseTo(16, org.assertj.core.api.Assertions.within(1e-9));
        TestKiln small = kiln().inlet("A", 0, 0, 40);
        small.floor = new Slab(mm(60), "ifb-23", mm(-40), true, null);
        assertThat(site(small, false).lacks(0, 260)).isCloseTo(11, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(wall(0, 200).lacks(0, 30)).isCloseTo(16, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(wall(0, 200).lacks(0, 46)).isZero();
    }

    /** A probe wants 50 mm, 25 forbid: 21 + 25 + 10 between the middles. */
    @ParameterizedTest
    @CsvSource({"55.9, true", "56, false", "-55.9, true", "-56, false"})
    void aFittingForbidsAtHalfItsClearance(double off, boolean blocked) {
        Site s = site(
                kiln().inlet("A", -200, -200, 40)
                        .fitting("vent", FittingKind.VENT, On.FLOOR, null, at(0, 0), 20)
                        .fitting("hinge", FittingKind.HINGE, On.LID, null, at(200, 0), 20),
                false);
        assertThat(s.blocked(off, 0)).isEqualTo(blocked);
        assertThat(s.blocked(0, off)).isEqualTo(blocked);
    }

    /** Round the corner 25 mm are needed between holes of neighbouring panels: e √2 at e from the corner. */
    @Test
    void aHoleRoundTheCornerForbids() {
        double e = 25 / Math.sqrt(2);
        Site s = site(
                kiln().wallInlet("A", 1, 0, 200, 40)
                        .wallInlet("B", 2, -279 + e, 200, 40)
                        .wallInlet("C", 3, -279 + e, 200, 40),
                false);
        assertThat(s.blocked(279 - e - 0.01, 200)).isFalse();
        assertThat(s.blocked(279 - e + 0.01, 200)).isTrue();
        assertThat(s.blocked(-279 + e - 5, 200)).isFalse();
        Site parts = site(kiln().inlet("A", 0, 0, 40).flue("F", 0, 0, 40), false);
        assertThat(parts.blocked(0, 0)).isFalse();
    }

    /** A groove of 16 mm: 8 + 25 + 21 between the middles. */
    @ParameterizedTest
    @CsvSource({"53.9, true", "54, false"})
    void aGrooveForbids(double off, boolean blocked) {
        Site s = site(
                kiln().flue("F", -200, 0, 40).slabElement("EL", On.LID, 16, 20, at(100, -150), at(100, 150)), false);
        assertThat(s.blocked(100 - off, 0)).isEqualTo(blocked);
    }

    /** The flame of a floor inlet keeps 10 mm off a coil of 12, its middle at x = 310 and 300 up; a flue has none. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0.01})
    void aFlameOnACoilForbids(double more) {
        double x = 310 - 20 - 300 * Math.tan(Math.toRadians(11)) - (10 + 6 + more) / Math.cos(Math.toRadians(11));
        TestKiln k = kiln().inlet("A", 0, 0, 40).wallElement("E1", 300, 16, 20, 0, java.util.List.of(2));
        assertThat(site(k, false).blocked(x, 0)).isEqualTo(more < 0);
        k.ports.clear();
        assertThat(site(k.flue("F", 0, 0, 40), false).blocked(x, 0)).isFalse();
    }

    @Test
    void coilsThatAreOffForbidNothing() {
        TestKiln k = kiln().inlet("A", 0, 0, 40).wallElement("E1", 300, 16, 20, 0, java.util.List.of(2));
        Design d = k.build();
        Design off = Changed.of(d)
                .drilling(null)
                .burners(null)
                .firing(new FiringPlan(
                        null,
                        null,
                        java.util.List.of(
                                new FiringStep(null, null, null, false, null, Heat.GAS, null, false, null, null)),
                        null))
                .design();
        KilnGeometry g = KilnGeometry.of(off);
        Hole h = g.holes().get(0).at(new Pt(250, 0));
        assertThat(Blocked.at(g, new LimitsInForce(TABLE, off), h)).isFalse();
        KilnGeometry on = KilnGeometry.of(d);
        assertThat(Blocked.at(on, new LimitsInForce(TABLE, d), h)).isTrue();
    }

    // ---- comparisons and amounts ----

    @Test
    void atALimitARulePasses() {
        assertThat(Geo.under(25, 25)).isFalse();
        assertThat(Geo.over(25, 25)).isFalse();
        assertThat(Geo.under(25 - 2e-8, 25)).isFalse();
        assertThat(Geo.under(25 - 3e-8, 25)).isTrue();
        assertThat(Geo.over(25 + 2e-8, 25)).isFalse();
        assertThat(Geo.over(25 + 3e-8, 25)).isTrue();
        assertThat(Geo.under(-1e-9, 0)).isFalse();
        assertThat(Geo.over(1e-9, 0)).isFalse();
        assertThat(Geo.under(-2e-9, 0)).isTrue();
        assertThat(Geo.over(2e-9, 0)).isTrue();
        assertThat(Geo.over(5e-10, 0)).isFalse();
        assertThat(Geo.under(-25 - 3e-8, -25)).isTrue();
        assertThat(Geo.over(-25 + 3e-8, -25)).isTrue();
    }

    @Test
    void lengthsInWords() {
        assertThat(Geo.mm(17)).isEqualTo("17.0 mm (11/16 in)");
        assertThat(Geo.mm(-17)).isEqualTo("−17.0 mm (−11/16 in)");
        assertThat(Geo.mm(24.99, 25)).isEqualTo("24.99 mm (0.984 in)");
        assertThat(Geo.mm(24.99, 40, 25)).isEqualTo("24.99 mm (0.984 in)");
        assertThat(Geo.mm(24.9996, 25)).isEqualTo("24.9996 mm (0.984 in)");
        assertThat(Geo.mm(25, 25)).isEqualTo("25.0 mm (1 in)");
        assertThat(Geo.mm(24.94, 25)).startsWith("24.9 mm (");
        assertThat(Geo.both(17)).isEqualTo("17.0 mm (11/16 in)");
        assertThat(Geo.both(17.01)).isEqualTo("17.1 mm (11/16 in)");
        assertThat(Geo.both(0.2)).isEqualTo("1.0 mm (1/16 in)");
        assertThat(Geo.both(1.7)).isEqualTo("1.7 mm (1/8 in)");
        assertThat(Geo.tenths(17.0000001)).isEqualTo(17.0);
        assertThat(Geo.sixteenths(25.4)).isEqualTo(16);
        assertThat(Geo.sixteenths(25.5)).isEqualTo(17);
    }

    @Test
    void whatIsNeededAndWanted() {
        assertThat(Geo.asked(true, 25, 35)).isEqualTo("at least 25.0 mm (1 in) needed, 35.0 mm (1 3/8 in) wanted");
        assertThat(Geo.asked(true, 35, 35)).isEqualTo("35.0 mm (1 3/8 in) wanted");
        assertThat(Geo.asked(false, 25, 35)).isEqualTo("35.0 mm (1 3/8 in) wanted");
    }

    /** Half a unit in the last place told decides: beside its limit a share or factor that would read like it gets further decimals, four at most. */
    @Test
    void sharesAndFactors() {
        assertThat(Geo.percent(0.2567)).isEqualTo("25.7 %");
        assertThat(Geo.percent(0.2567, 0.25)).isEqualTo("25.7 %");
        assertThat(Geo.percent(0.2502, 0.25)).isEqualTo("25.02 %");
        assertThat(Geo.percent(0.2498, 0.25)).isEqualTo("24.98 %");
        assertThat(Geo.percent(0.250001, 0.25)).isEqualTo("25.0001 %");
        assertThat(Geo.percent(0.2500001, 0.25)).isEqualTo("25 %");
        assertThat(Geo.percent(0.25, 0.25)).isEqualTo("25 %");
        assertThat(Geo.factor(1.236)).isEqualTo("1.24");
        assertThat(Geo.factor(10)).isEqualTo("10");
        assertThat(Geo.factor(10.26)).isEqualTo("10.3");
        assertThat(Geo.factor(9.96)).isEqualTo("9.96");
        assertThat(Geo.factor(10.04)).isEqualTo("10");
        assertThat(Geo.factor(1.236, 2)).isEqualTo("1.24");
        assertThat(Geo.factor(1.998, 2)).isEqualTo("1.998");
        assertThat(Geo.factor(10.26, 2)).isEqualTo("10.3");
        assertThat(Geo.factor(9.96, 2)).isEqualTo("9.96");
    }
}
