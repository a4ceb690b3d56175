package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;
import static portwright.check.Severity.CAUTION;
import static portwright.check.Severity.NOTE;
import static portwright.check.Severity.STOP;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.geometry.Pt;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.FittingKind;
import portwright.model.Fuel;
import portwright.model.Jet;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Role;
import portwright.model.Slab;
import portwright.source.Standing;
import portwright.units.Quantity;

/**
 * Burner, stand and hole, each rule asked alone; limits are those of the rule book (common practice: a quarter inch, at least 6 mm, or a quarter of the tip all
 * round; set back by half an inch or a quarter of the tip; 50 mm for hose and bend), amounts worked by hand. The chamber is 600 mm square.
 */
class SaidBurnersTest {
    private static final Rule FIT = new BurnerFit();
    private static final Rule ROOM = new BurnerRoom();
    private static final Rule JET = new JetInHole();
    private static final Pt MIDDLE = new Pt(0, 0);

    private static Quantity q(Double v) {
        return v == null ? null : mm(v);
    }

    private static Burner burner(String name, String port, Double tip, Double body, Double setback, Double length) {
        return headed(name, port, BurnerHead.PORTED, new Jet("1 mm", mm(1), null), tip, body, setback, length);
    }

    private static Burner headed(
            String name,
            String port,
            BurnerHead head,
            Jet jet,
            Double tip,
            Double body,
            Double setback,
            Double length) {
        return new Burner(
                name,
                port,
                Fuel.PROPANE,
                null,
                jet,
                null,
                null,
                null,
                null,
                null,
                head,
                q(tip),
                q(body),
                q(setback),
                q(length),
                null,
                null,
                null);
    }

    private static TestKiln kiln(double hole, Burner... burners) {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, hole);
        k.stand = mm(400);
        k.burners = List.of(burners);
        return k;
    }

    private static TestKiln fit(double hole, Double tip, Double setback) {
        return kiln(hole, burner("torch", "A", tip, 40.0, setback, 150.0));
    }

    // ---- burner-fit ----

    /** (50 − 40) / 2 = 5 of 10 = 40 / 4 wanted: a hole of 40 + 2 · 10 = 60 mm, 2.36 in, the next sixteenth up 2 3/8. */
    @Test
    void aRingTooNarrowByTheTipsQuarter() {
        Finding f = Alone.one(FIT, fit(50, 40.0, 20.0), CAUTION, "A", "torch");
        Alone.mm(f, 5, 10);
        Alone.by(f, "gap");
        Alone.says(
                f,
                "Ring gap 5.0 mm (3/16 in) round the tip of torch; 10.0 mm (3/8 in) wanted for air.",
                "Use a hole of 60.0 mm (2 3/8 in), or a burner with a smaller tip.");
        Alone.silent(FIT, fit(60, 40.0, 20.0));
        Alone.one(FIT, fit(59.99, 40.0, 20.0), CAUTION, "A", "torch");
        assertThat(f.marks()).isEmpty();
    }

    /** A tip of 20 has a quarter of 5: 6 mm hold. (31 − 20) / 2 = 5.5. */
    @Test
    void aRingTooNarrowByTheLeast() {
        Finding f = Alone.one(FIT, fit(31, 20.0, 20.0), CAUTION, "A", "torch");
        Alone.mm(f, 5.5, 6);
        Alone.says(
                f,
                "Ring gap 5.5 mm (7/32 in) round the tip of torch; 6.0 mm (1/4 in) wanted for air.",
                "Use a hole of 32.0 mm (1 5/16 in), or a burner with a smaller tip.");
        Alone.silent(FIT, fit(32, 20.0, 20.0));
        Alone.one(FIT, fit(31.99, 20.0, 20.0), CAUTION, "A", "torch");
    }

    @Test
    void aTipThatFillsItsHole() {
        for (double tip : new double[] {40, 44}) {
            Finding f = Alone.one(FIT, fit(40, tip, 20.0), STOP, "A", "torch");
            Alone.mm(f, (40 - tip) / 2, 0);
            Alone.by(f, "gap");
            assertThat(f.message()).isEqualTo("The tip of torch is as wide as A.");
        }
        assertThat(Alone.one(FIT, fit(40, 40.0, 20.0), STOP, "A", "torch").remedy())
                .isEqualTo("Use a hole of 60.0 mm (2 3/8 in), or a burner with a smaller tip.");
        Alone.one(FIT, fit(40, 39.99, 20.0), CAUTION, "A", "torch");
    }

    @Test
    void anOwnRingGapIsSaid() {
        Finding f = Alone.one(FIT, fit(40, 20.0, 20.0).limit("burner-fit", "gap", 12), CAUTION, "A", "torch");
        Alone.mm(f, 10, 12);
        assertThat(f.limitSetByUser()).isTrue();
        Finding share =
                Alone.one(FIT, fit(40, 20.0, 20.0).limit("burner-fit", "gap-share", 0.6), CAUTION, "A", "torch");
        Alone.mm(share, 10, 12);
    }

    /** A tip of 40 has a quarter of 10: half an inch holds. One of 80 wants 20. */
    @Test
    void aTipTooNearTheKiln() {
        Finding f = Alone.one(FIT, fit(80, 40.0, 11.0), CAUTION, "A", "torch");
        Alone.mm(f, 11, 12.7);
        Alone.by(f, "setback");
        Alone.says(
                f,
                "The tip of torch stands 11.0 mm (7/16 in) off the kiln; 12.7 mm (1/2 in) wanted.",
                "Set it back by 1.7 mm (1/8 in).");
        Alone.silent(FIT, fit(80, 40.0, 12.7));
        Alone.one(FIT, fit(80, 40.0, 12.69), CAUTION, "A", "torch");
        Finding wide = Alone.one(FIT, fit(150, 80.0, 14.0), CAUTION, "A", "torch");
        Alone.mm(wide, 14, 20);
        Alone.says(
                wide,
                "The tip of torch stands 14.0 mm (9/16 in) off the kiln; 20.0 mm (13/16 in) wanted.",
                "Set it back by 6.0 mm (1/4 in).");
        Alone.silent(FIT, fit(150, 80.0, 20.0));
        Alone.one(FIT, fit(80, 40.0, 0.0), CAUTION, "A", "torch");
    }

    @Test
    void aTipInsideItsHole() {
        Finding f = Alone.one(FIT, fit(80, 40.0, -12.0), STOP, "A", "torch");
        Alone.mm(f, -12, 0);
        Alone.by(f, "setback");
        Alone.says(f, "The tip of torch stands 12.0 mm (1/2 in) inside A.", "Set it back by 24.7 mm (1 in).");
        Finding own = Alone.one(FIT, fit(80, 40.0, 13.0).limit("burner-fit", "setback", 16), CAUTION, "A", "torch");
        Alone.mm(own, 13, 16);
        assertThat(own.limitSetByUser()).isTrue();
    }

    @Test
    void threeBurnersOfOnePort() {
        TestKiln k = kiln(
                        60,
                        burner("a", "A", 20.0, 40.0, 20.0, 150.0),
                        burner("b", "A", 20.0, 40.0, 20.0, 150.0),
                        burner("c", "B", 20.0, 40.0, 20.0, 150.0),
                        burner("d", "A", 20.0, 40.0, 20.0, 150.0))
                .inlet("B", 150, 0, 60);
        Finding f = Alone.one(FIT, k, STOP, "A", "a", "b", "d");
        Alone.measuresNothing(f);
        Alone.by(f, "gap");
        Alone.says(
                f,
                "a and b and d name one and the same port, A: their tips stand in one another. The fire is computed with the gas of all of them in that hole.",
                "Give each burner a port of its own, or state one burner with the heat of all.");
    }

    @Test
    void whatTheFitLacks() {
        TestKiln none = kiln(60);
        none.burners = null;
        Alone.lacks(FIT, none, "burners");
        none.ports.clear();
        Alone.silent(FIT, none.flue("F", 0, 0, 40));
        Alone.silent(FIT, kiln(60));
        Alone.silent(FIT, kiln(60, burner("torch", "nowhere", null, null, null, null)));
        Alone.lacks(
                FIT,
                kiln(60, burner("x", "nowhere", null, null, null, null), burner("torch", "A", null, 40.0, null, 150.0)),
                "burners[1].tip");
        // the ring is judged without the set-back
        Findings out = Alone.ask(FIT, fit(50, 40.0, null));
        Alone.lacks(FIT, out, "burners[0].setback");
        assertThat(out.findings()).singleElement().satisfies(f -> Alone.mm(f, 5, 10));
        // a later burner is judged though an earlier one lacks its tip or its hole
        Findings later = Alone.ask(
                FIT,
                kiln(
                                60,
                                burner("x", "nowhere", 20.0, null, null, null),
                                burner("y", "A", null, 40.0, 20.0, 150.0),
                                burner("torch", "B", 40.0, 40.0, 20.0, 150.0))
                        .inlet("B", 150, 0, 50));
        Alone.lacks(FIT, later, "burners[1].tip");
        assertThat(later.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.parts()).containsExactly("B", "torch"));
    }

    // ---- burner-room ----

    private static TestKiln room(double stand, Double setback, Double length) {
        TestKiln k = kiln(40, burner("torch", "A", 20.0, 40.0, setback, length));
        k.stand = mm(stand);
        return k;
    }

    /** 200 − 15 − 150 = 35 of 50: 15 lack. */
    @Test
    void tooLittleUnderABurner() {
        Finding f = Alone.one(ROOM, room(200, 15.0, 150.0), CAUTION, "torch", "stand");
        Alone.mm(f, 35, 50);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "Only 35.0 mm (1 3/8 in) under torch for hose and bend; 50.0 mm (1 15/16 in) wanted.",
                "Raise the kiln 15.0 mm (5/8 in) and level it again, or use a shorter burner.");
        Alone.silent(ROOM, room(215, 15.0, 150.0));
        Alone.one(ROOM, room(214.99, 15.0, 150.0), CAUTION, "torch", "stand");
        Alone.one(ROOM, room(165, 15.0, 150.0), CAUTION, "torch", "stand");
    }

    /** 140 − 15 − 150 = −25: 75 lack. */
    @Test
    void aBurnerLongerThanTheStandIsHigh() {
        Finding f = Alone.one(ROOM, room(140, 15.0, 150.0), STOP, "torch", "stand");
        Alone.mm(f, -25, 0);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "torch is 25.0 mm (1 in) too long for the stand.",
                "Raise the kiln 75.0 mm (3 in) and level it again, or use a shorter burner.");
        Finding own =
                Alone.one(ROOM, room(215, 15.0, 150.0).limit("burner-room", "limit", 60), CAUTION, "torch", "stand");
        assertThat(own.limitSetByUser()).isTrue();
    }

    private static TestKiln beside(FittingKind kind, On on, double x) {
        return kiln(40, burner("torch", "A", 20.0, 40.0, 15.0, 150.0)).fitting("foot", kind, on, null, at(x, 0), 30);
    }

    /** A foot of 30 mm at 75 mm: 75 − 15 − 20 = 40 of 50, so 10 to the left. */
    @ParameterizedTest
    @EnumSource(
            value = FittingKind.class,
            names = {"LEG", "STAND_BAR"})
    void aFootBesideABurner(FittingKind kind) {
        Finding f = Alone.one(ROOM, beside(kind, On.FLOOR, 75), CAUTION, "torch", "foot");
        Alone.mm(f, 40, 50);
        Alone.by(f, "limit");
        Alone.says(
                f,
                "40.0 mm (1 9/16 in) between torch and foot; 50.0 mm (1 15/16 in) wanted.",
                "Turn the stand, or move A 10.0 mm (7/16 in) to the left, seen from above.");
        Alone.mark(f, MIDDLE, new Pt(60, 0));
        Alone.silent(ROOM, beside(kind, On.FLOOR, 85));
        Alone.one(ROOM, beside(kind, On.FLOOR, 84.99), CAUTION, "torch", "foot");
        Alone.one(ROOM, beside(kind, On.FLOOR, 35), CAUTION, "torch", "foot");
        Finding in = Alone.one(ROOM, beside(kind, On.FLOOR, 34.9), STOP, "torch", "foot");
        Alone.mm(in, -0.1, 0);
        Alone.by(in, "limit");
        assertThat(in.message()).isEqualTo("torch does not fit beside foot.");
    }

    @Test
    void whatIsNoFootDoesNotCount() {
        for (FittingKind kind : FittingKind.values()) {
            if (kind != FittingKind.LEG && kind != FittingKind.STAND_BAR && kind != FittingKind.CRACK) {
                Alone.silent(ROOM, beside(kind, On.FLOOR, 40));
            }
        }
        Alone.silent(ROOM, beside(FittingKind.LEG, On.LID, 40));
        Alone.one(
                ROOM,
                beside(FittingKind.VENT, On.FLOOR, 40).fitting("bar", FittingKind.LEG, On.FLOOR, null, at(-75, 0), 30),
                CAUTION,
                "torch",
                "bar");
    }

    /** In a chamber of 140 mm no place keeps a burner of 40 mm 50 mm off a foot in its middle. */
    @Test
    void noPlaceBesideAFoot() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(140), mm(140), null))
                .inlet("A", 45, 0, 20)
                .fitting("foot", FittingKind.LEG, On.FLOOR, null, at(0, 0), 30);
        k.stand = mm(400);
        k.burners = List.of(burner("torch", "A", 10.0, 40.0, 15.0, 150.0));
        assertThat(Alone.one(ROOM, k, CAUTION, "torch", "foot").remedy())
                .isEqualTo("Turn the stand, or choose another place for A.");
    }

    @Test
    void whatTheRoomLacks() {
        TestKiln none = kiln(40);
        none.burners = null;
        Alone.lacks(ROOM, none, "burners");
        none.ports.clear();
        Alone.silent(ROOM, none.flue("F", 0, 0, 40));
        Burner bare = burner("torch", "A", 20.0, 40.0, null, null);
        TestKiln k = kiln(40, bare);
        k.stand = null;
        Alone.lacks(ROOM, k, "kiln.stand.height");
        Alone.lacks(ROOM, kiln(40, bare), "burners[0].length");
        Alone.lacks(ROOM, kiln(40, burner("torch", "A", 20.0, 40.0, 15.0, null)), "burners[0].length");
        Alone.lacks(ROOM, kiln(40, burner("torch", "A", 20.0, 40.0, null, 150.0)), "burners[0].setback");
        Alone.lacks(
                ROOM,
                kiln(40, burner("x", "nowhere", null, null, null, null), burner("torch", "A", 20.0, null, 15.0, 150.0)),
                "burners[1].body");
        TestKiln unlisted = room(400, 15.0, 150.0);
        unlisted.fittings = null;
        Alone.lacks(ROOM, unlisted, "kiln.fittings");
        unlisted.burners = List.of(burner("torch", "A", 20.0, null, 15.0, 150.0));
        Alone.lacks(ROOM, unlisted, "burners[0].body");
        Findings out = Alone.ask(ROOM, shapeless(beside(FittingKind.LEG, On.FLOOR, 75)));
        Alone.lacks(ROOM, out, "kiln.fittings[1].diameter");
        assertThat(out.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.parts()).containsExactly("torch", "foot"));
    }

    private static TestKiln shapeless(TestKiln k) {
        k.shapeless("plate", FittingKind.LEG, On.FLOOR, at(-200, 0));
        return k;
    }

    /** A burner in the wall or in no hole has no stand under it; one after it is judged. */
    @Test
    void onlyBurnersUnderTheFloorNeedRoomBelow() {
        TestKiln k = kiln(40, burner("torch", "W", null, null, null, null)).wallInlet("W", 1, 0, 200, 40);
        Alone.silent(ROOM, k);
        k.burners = List.of(
                burner("torch", "W", null, null, null, null),
                burner("lost", "nowhere", null, null, null, null),
                burner("last", "A", 20.0, 40.0, 15.0, 400.0));
        Alone.one(ROOM, k, STOP, "last", "stand");
    }

    // ---- jet-in-hole ----

    private static TestKiln bare(double hole, BurnerHead head, Jet jet, Double setback) {
        return kiln(hole, headed("torch", "A", head, jet, 10.0, 40.0, setback, 150.0));
    }

    /** IFRF: a free jet is a cone of 22°. Through 60 mm of floor and 15 mm of air 2 · 75 · tan 11° = 29.16 mm, and the jet's own 1 mm. */
    @Test
    void aBareJetThatStrikesItsHole() {
        double wide = 2 * 75 * Math.tan(Math.toRadians(11)) + 1;
        Finding f = Alone.one(JET, bare(29, BurnerHead.BARE, new Jet("1 mm", mm(1), null), 15.0), NOTE, "A", "torch");
        Alone.mm(f, wide, 29);
        assertThat(f.source().standing()).isEqualTo(Standing.PUBLISHED);
        assertThat(f.limitSetByUser()).isFalse();
        assertThat(wide).isCloseTo(30.16, org.assertj.core.api.Assertions.within(0.005));
        Alone.says(
                f,
                "The bare jet of torch is 30.2 mm (1 3/16 in) wide at the chamber: it may strike the wall of A.",
                "Bring the jet nearer, or widen the hole toward the chamber.");
        Alone.one(JET, bare(wide, BurnerHead.BARE, new Jet("1 mm", mm(1), null), 15.0), NOTE, "A", "torch");
        Alone.silent(JET, bare(wide + 0.001, BurnerHead.BARE, new Jet("1 mm", mm(1), null), 15.0));
    }

    /** A number drill 60 is 0.040 in, as drill tables have it: 1.016 mm. */
    @Test
    void aJetByItsDrill() {
        double wide = 2 * 75 * Math.tan(Math.toRadians(11)) + 1.016;
        Finding f = Alone.one(JET, bare(29, BurnerHead.BARE, new Jet("#60", null, 60), 15.0), NOTE, "A", "torch");
        Alone.mm(f, wide, 29);
    }

    /** A wall is 60 mm thick here, too; a lid of 80 mm counts for a hole in the lid. */
    @Test
    void thePartTheHoleIsInCounts() {
        TestKiln k = kiln(
                        60,
                        headed("torch", "L", BurnerHead.BARE, new Jet("1 mm", mm(1), null), 10.0, 40.0, 15.0, 150.0))
                .port("L", Role.INLET, On.LID, null, at(0, 0), mm(30));
        k.lid = new Slab(mm(80), "ifb-23", mm(0), null, null);
        Finding f = Alone.one(JET, k, NOTE, "L", "torch");
        Alone.mm(f, 2 * 95 * Math.tan(Math.toRadians(11)) + 1, 30);
    }

    @ParameterizedTest
    @CsvSource({"'', 15, head", "BARE, , setback"})
    void whatAJetLacks(String head, Double setback, String field) {
        BurnerHead h = head.isEmpty() ? null : BurnerHead.valueOf(head);
        Alone.lacks(JET, bare(29, h, new Jet("1 mm", mm(1), null), setback), "burners[0]." + field);
    }

    @Test
    void whatElseAJetLacks() {
        TestKiln none = kiln(40);
        none.burners = null;
        Alone.lacks(JET, none, "burners");
        none.ports.clear();
        Alone.silent(JET, none.flue("F", 0, 0, 40));
        Alone.lacks(JET, bare(29, BurnerHead.BARE, null, null), "burners[0].jet");
        Alone.lacks(JET, bare(29, null, null, null), "burners[0].head");
        Alone.silent(JET, bare(29, BurnerHead.PORTED, null, null));
        Jet jet = new Jet("1 mm", mm(1), null);
        TestKiln k = kiln(
                29,
                headed("lost", "nowhere", null, null, null, null, null, null),
                headed("venturi", "A", BurnerHead.VENTURI, jet, 10.0, 40.0, 15.0, 150.0),
                headed("unsaid", "A", null, jet, 10.0, 40.0, 15.0, 150.0),
                headed("torch", "A", BurnerHead.BARE, jet, 10.0, 40.0, 15.0, 150.0));
        Findings out = Alone.ask(JET, k);
        Alone.lacks(JET, out, "burners[2].head");
        assertThat(out.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.parts()).containsExactly("A", "torch"));
    }
}
