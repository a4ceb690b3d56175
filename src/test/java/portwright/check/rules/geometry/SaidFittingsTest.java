package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.geometry.FittingShape;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Kiln;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Size2;
import portwright.source.Standing;
import portwright.units.Quantity;

/**
 * Room between holes and fittings, and flames at probes and spyholes, each rule asked alone: distances are the rule book's own judgement, the jet's half angle of 11°
 * is the IFRF's. Amounts worked by hand on the square chamber of 600 mm; a hole of 40 mm is drilled up to 42.
 */
class SaidFittingsTest {
    private static final Rule CLEAR = new FittingClearance();
    private static final Rule FLAME = new FlameOnFitting();
    private static final double TAN = Math.tan(Math.toRadians(11));
    private static final double COS = Math.cos(Math.toRadians(11));

    private static TestKiln kiln() {
        return AtTheLimitTest.square();
    }

    private static TestKiln with(TestKiln k, Fitting f) {
        k.fittings.add(f);
        return k;
    }

    private static Fitting fitting(
            FittingKind kind, On on, Integer panel, Place at, Double d, Size2 size, Double turn, Double reach) {
        return new Fitting(
                "thing",
                kind,
                null,
                null,
                on,
                panel,
                at,
                d == null ? null : mm(d),
                size,
                turn == null ? null : TestKiln.deg(turn),
                null,
                null,
                reach == null ? null : mm(reach),
                null);
    }

    private static Fitting clear(Quantity clear) {
        return new Fitting(
                "thing",
                FittingKind.LEG,
                null,
                null,
                On.FLOOR,
                null,
                at(0, 0),
                mm(20),
                null,
                null,
                null,
                null,
                null,
                clear);
    }

    // ---- fitting-clearance ----

    private static TestKiln hinge(double x) {
        return kiln().fitting("thing", FittingKind.HINGE, On.LID, null, at(0, 0), 20)
                .flue("F", x, 0, 40);
    }

    /** 71 − 10 − 21 = 40 of 50. */
    @Test
    void tooNearAFitting() {
        Finding f = Alone.one(CLEAR, hinge(71), CAUTION, "F", "thing");
        Alone.mm(f, 40, 50);
        Alone.by(f, "hinge");
        Alone.says(
                f,
                "40.0 mm (1 9/16 in) between F and thing; 50.0 mm (1 15/16 in) wanted.",
                "Move F 10.0 mm (7/16 in) away from the centre.");
        Alone.mark(f, new Pt(71, 0), new Pt(10, 0));
        Alone.silent(CLEAR, hinge(81));
        Alone.one(CLEAR, hinge(80.99), CAUTION, "F", "thing");
    }

    /** 51 − 31 = 20 of 25, half of what is wanted: 30 lack to 50. */
    @Test
    void muchTooNearAFitting() {
        Finding f = Alone.one(CLEAR, hinge(51), STOP, "F", "thing");
        Alone.mm(f, 20, 25);
        Alone.by(f, "hinge");
        Alone.says(
                f,
                "20.0 mm (13/16 in) between F and thing; at least 25.0 mm (1 in) needed, 50.0 mm (1 15/16 in) wanted.",
                "Move F 30.0 mm (1 3/16 in) away from the centre.");
        Alone.mm(Alone.one(CLEAR, hinge(56), CAUTION, "F", "thing"), 25, 50);
        Finding cut = Alone.one(CLEAR, hinge(25), STOP, "F", "thing");
        Alone.mm(cut, -6, 25);
        assertThat(cut.message()).isEqualTo("F cuts into thing; 50.0 mm (1 15/16 in) between them wanted.");
        assertThat(Alone.one(CLEAR, hinge(31), STOP, "F", "thing").message()).startsWith("0.0 mm (0 in) between F and");
    }

    /** 24.99 of 25 mm would read like what is needed. */
    @Test
    void aHairUnderWhatIsNeeded() {
        assertThat(Alone.one(CLEAR, hinge(55.99), STOP, "F", "thing").message())
                .startsWith("24.99 mm (0.984 in) between F and thing; at least 25.0 mm (1 in) needed,");
    }

    /** An oblong of 60 × 80 mm reaches 50 mm round: 83.5 − 50 − 21 is just half of 25. */
    @ParameterizedTest
    @CsvSource({"83.5, false", "83.49, true"})
    void anOblongThatMayJustReach(double y, boolean asked) {
        Findings out = Alone.ask(
                CLEAR,
                with(
                        kiln().inlet("A", 0, y, 40),
                        fitting(
                                FittingKind.OTHER,
                                On.FLOOR,
                                null,
                                at(0, 0),
                                null,
                                new Size2(mm(60), mm(80)),
                                null,
                                null)));
        Alone.lacks(CLEAR, out, asked ? new String[] {"kiln.fittings[0].turn"} : new String[0]);
        assertThat(out.findings()).hasSize(1);
        Alone.is(out.findings().get(0), CLEAR, CAUTION, "A", "thing");
    }

    @Test
    void anOwnClearance() {
        Finding f = Alone.one(CLEAR, with(kiln().inlet("A", 91, 0, 40), clear(mm(80))), CAUTION, "A", "thing");
        Alone.mm(f, 60, 80);
        assertThat(f.limitSetByUser()).isTrue();
        Finding limit = Alone.one(
                CLEAR,
                with(kiln().inlet("A", 91, 0, 40), clear(null)).limit("fitting-clearance", "leg", 70),
                CAUTION,
                "A",
                "thing");
        Alone.mm(limit, 60, 70);
        assertThat(limit.limitSetByUser()).isTrue();
        Finding table = Alone.one(CLEAR, with(kiln().inlet("A", 51, 0, 40), clear(null)), CAUTION, "A", "thing");
        Alone.by(table, "leg");
    }

    /** A box outside the wall, its near face at 300 + 60 + 25 = 385: 385 − 244 − 21 = 120 of 150 to a hole of the floor, without a mark. */
    @Test
    void aBoxOutsideTheWall() {
        TestKiln k = kiln().box("box", FittingKind.CONTROL_BOX, On.WALL, 2, at(0, 100), 200, 200, 25.0)
                .inlet("A", 244, 0, 40);
        Finding f = Alone.one(CLEAR, k, CAUTION, "A", "box");
        assertThat(f.measured().value()).isCloseTo(120, within(1e-6));
        assertThat(f.limit().value()).isEqualTo(150);
        assertThat(f.marks()).isEmpty();
        Alone.says(
                f,
                "120.0 mm (4 3/4 in) between A and box; 150.0 mm (5 7/8 in) wanted.",
                "Move A 30.0 mm (1 3/16 in) toward the centre.");
        KilnGeometry g = KilnGeometry.of(k.build());
        assertThat(FittingClearance.room(g, g.holes().get(0), g.fittings().get(0), 150))
                .isCloseTo(120, within(1e-6));
    }

    @Test
    void theRoomOnOnePart() {
        KilnGeometry g = KilnGeometry.of(hinge(71).build());
        assertThat(FittingClearance.room(g, g.holes().get(0), g.fittings().get(0), 50))
                .isEqualTo(40);
    }

    /** A strap of 400 × 20 mm reaches √(400² + 20²) / 2 = 200.25 round: with 21 and half of 25 a hole nearer than 233.75 is not cleared until its turn is given. */
    @ParameterizedTest
    @CsvSource({"233.74, true", "233.76, false", "-233.74, true"})
    void aStrapThatMayLieEitherWay(double y, boolean asked) {
        TestKiln k = with(
                kiln().inlet("A", 0, 0, 40).fitting("far", FittingKind.LEG, On.FLOOR, null, at(-250, -250), 20),
                fitting(FittingKind.OTHER, On.FLOOR, null, at(0, y), null, new Size2(mm(400), mm(20)), null, null));
        Alone.lacks(CLEAR, k, asked ? new String[] {"kiln.fittings[1].turn"} : new String[0]);
        assertThat(Math.hypot(400, 20) / 2 + 21 + 12.5).isCloseTo(233.75, within(0.001));
    }

    @Test
    void whatLiesOneWayIsNotAsked() {
        Size2 strap = new Size2(mm(400), mm(20));
        Alone.silent(
                CLEAR,
                with(
                        kiln().inlet("A", 0, 0, 40),
                        fitting(FittingKind.OTHER, On.FLOOR, null, at(0, 200), null, strap, 0.0, null)));
        // a square is the same either way: 100 wide, 15 off
        Size2 square = new Size2(mm(100), mm(100));
        Alone.mm(
                Alone.one(
                        CLEAR,
                        with(
                                kiln().inlet("A", 0, 0, 40),
                                fitting(FittingKind.OTHER, On.FLOOR, null, at(0, 86), null, square, null, null)),
                        CAUTION,
                        "A",
                        "thing"),
                15,
                25);
        // where it is a stop already nothing more is asked
        Alone.one(
                CLEAR,
                with(
                        kiln().inlet("A", 0, 0, 40),
                        fitting(FittingKind.OTHER, On.FLOOR, null, at(0, 41), null, strap, null, null)),
                STOP,
                "A",
                "thing");
        // nor of what is in another part
        Alone.silent(
                CLEAR,
                with(
                        kiln().inlet("A", 0, 0, 40),
                        fitting(FittingKind.OTHER, On.LID, null, at(0, 200), null, strap, null, null)));
    }

    @Test
    void theDiscOfAnyTurn() {
        KilnGeometry g = KilnGeometry.of(with(
                        kiln().inlet("A", 0, 0, 40).fitting("round", FittingKind.LEG, On.FLOOR, null, at(0, 100), 20),
                        fitting(
                                FittingKind.OTHER,
                                On.FLOOR,
                                null,
                                at(30, 160),
                                null,
                                new Size2(mm(60), mm(80)),
                                null,
                                null))
                .build());
        FittingShape round = g.fittings().get(0);
        FittingShape oblong = g.fittings().get(1);
        assertThat(FittingClearance.unturned(round)).isFalse();
        assertThat(FittingClearance.unturned(oblong)).isTrue();
        assertThat(FittingClearance.anyWayRound(oblong).circle().radius()).isEqualTo(50);
        assertThat(FittingClearance.anyWayRound(oblong).circle().centre()).isEqualTo(new Pt(30, 160));
        assertThat(FittingClearance.otherWayRound(g.holes().get(0), oblong))
                .isCloseTo(Math.hypot(30, 160) - 50 - 21, within(1e-9));
        assertThat(FittingClearance.otherWayRound(g.holes().get(0), round)).isInfinite();
    }

    // ---- whether that is all ----

    private static Design stated(TestKiln k, Boolean complete) {
        Design d = k.build();
        Kiln o = d.kiln();
        Kiln kiln = new Kiln(
                o.plan(),
                o.height(),
                o.wall(),
                o.floor(),
                o.lid(),
                null,
                o.elements(),
                o.fittings(),
                null,
                null,
                null,
                null,
                complete);
        return Changed.of(d).kiln(kiln).drilling(null).burners(null).design();
    }

    private static final String ROUND =
            "Go round the kiln, add what is missing, then state that the list is complete (kiln.fittingsComplete).";

    @Test
    void whetherThatIsAll() {
        TestKiln k = kiln().fitting("thing", FittingKind.LEG, On.FLOOR, null, at(0, 0), 20);
        Findings out = Alone.ask(CLEAR, stated(k, null));
        assertThat(out.notChecked()).isEmpty();
        assertThat(out.findings()).hasSize(1);
        Finding f = out.findings().get(0);
        Alone.is(f, CLEAR, NOTE);
        Alone.measuresNothing(f);
        assertThat(f.source().standing()).isEqualTo(Standing.JUDGEMENT);
        Alone.says(
                f,
                "1 fitting is listed; is that all? Not among them: hinge, latch, handle, vent, thermocouple, spyhole, terminals, control-box. No room is kept to what is not listed.",
                ROUND);
        k.fitting("other", FittingKind.CRACK, On.FLOOR, null, at(100, 0), 20);
        assertThat(Alone.ask(CLEAR, stated(k, null)).findings().get(0).message())
                .startsWith("2 fittings are listed; is that all? Not among them: hinge,");
        assertThat(Alone.ask(CLEAR, stated(k, true)).findings()).isEmpty();
        Findings open = Alone.ask(CLEAR, stated(k, false));
        Alone.lacks(CLEAR, open, "kiln.fittingsComplete");
        assertThat(open.findings()).hasSize(1);
        k.fittings.clear();
        assertThat(Alone.ask(CLEAR, stated(k, null)).findings()).isEmpty();
        k.fittings = null;
        assertThat(Alone.ask(CLEAR, stated(k, null)).findings()).isEmpty();
    }

    @Test
    void whereAllThatIsUsualIsListed() {
        TestKiln k = kiln();
        for (FittingKind kind : FittingKind.values()) {
            if (kind != FittingKind.CRACK && kind != FittingKind.STAND_BAR && kind != FittingKind.OTHER) {
                k.fitting(kind.id(), kind, On.LID, null, at(0, 0), 10);
            }
        }
        assertThat(k.fittings).hasSize(9);
        assertThat(Alone.ask(CLEAR, stated(k, null)).findings().get(0).message())
                .isEqualTo("9 fittings are listed; is that all? No room is kept to what is not listed.");
    }

    @Test
    void whatTheClearanceLacks() {
        TestKiln none = kiln().inlet("A", 0, 0, 40);
        none.fittings = null;
        Alone.lacks(CLEAR, none, "kiln.fittings");
        TestKiln k = with(
                hinge(71).flue("G", -200, 0, 40),
                fitting(FittingKind.OTHER, On.LID, null, at(-200, 0), null, null, null, null));
        Findings out = Alone.ask(CLEAR, k);
        Alone.lacks(CLEAR, out, "kiln.fittings[1].diameter");
        assertThat(out.findings()).hasSize(1);
    }

    // ---- flame-on-fitting ----

    /** A probe of 6 mm at height 100, reaching 25 mm in: its tip at 275, the flame's side leans by 11°. */
    private static TestKiln probe(double left) {
        return with(
                kiln().inlet("A", 275 - 20 - 100 * TAN - (3 + left) / COS, 0, 40),
                fitting(FittingKind.THERMOCOUPLE, On.WALL, 2, at(0, 100), 6.0, null, null, 25.0));
    }

    @Test
    void aProbeInTheFlame() {
        Finding f = Alone.one(FLAME, probe(-0.01), CAUTION, "A", "thing");
        Alone.measuresNothing(f);
        assertThat(f.marks()).isEmpty();
        assertThat(f.source().standing()).isEqualTo(Standing.PRACTICE);
        Alone.says(
                f,
                "The flame of A meets thing.",
                "Its reading is the flame's, not the chamber's. Move the probe or the port.");
        Alone.silent(FLAME, probe(0.01));
        for (double left : new double[] {-2, 5}) {
            KilnGeometry g = KilnGeometry.of(probe(left).build());
            FlameOnFitting.Body b = FlameOnFitting.bodies(g).get(0);
            assertThat(b.name()).isEqualTo("thing");
            assertThat(b.radius()).isEqualTo(3);
            assertThat(b.line().length()).isCloseTo(25, within(1e-9));
            assertThat(FlameOnFitting.room(g, g.holes().get(0), b, 100)).isCloseTo(left, within(1e-6));
        }
    }

    @Test
    void aSpyholeInTheFlame() {
        Finding f = Alone.one(
                FLAME,
                with(
                        kiln().inlet("A", 0, -270, 40),
                        fitting(
                                FittingKind.SPYHOLE,
                                On.WALL,
                                3,
                                at(0, 100),
                                null,
                                new Size2(mm(30), mm(40)),
                                null,
                                null)),
                CAUTION,
                "A",
                "thing");
        Alone.says(f, "The flame of A meets thing.", "Keep it plugged while gas burns, or move the port.");
    }

    /** An oblong spyhole counts as wide as its diagonal, 50 mm, about its middle wherever that lies on its panel. */
    @Test
    void theMiddleOfAnOblong() {
        KilnGeometry g = KilnGeometry.of(with(
                        kiln(),
                        fitting(
                                FittingKind.SPYHOLE,
                                On.WALL,
                                1,
                                at(80, 130),
                                null,
                                new Size2(mm(30), mm(40)),
                                null,
                                12.0))
                .build());
        FlameOnFitting.Body b = FlameOnFitting.bodies(g).get(0);
        assertThat(b.radius()).isCloseTo(25, within(1e-9));
        assertThat(b.line().a().plan().distance(new Pt(80, 300))).isLessThan(1e-9);
        assertThat(b.line().a().z()).isCloseTo(130, within(1e-9));
        assertThat(b.line().b().plan().distance(new Pt(80, 288))).isLessThan(1e-9);
        assertThat(b.line().b().z()).isCloseTo(130, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(FittingKind.class)
    void onlyProbesAndSpyholesInTheWall(FittingKind kind) {
        boolean counts = kind == FittingKind.THERMOCOUPLE || kind == FittingKind.SPYHOLE;
        TestKiln k = with(
                kiln().inlet("A", 270, 0, 40).flue("F", 270, 0, 40),
                fitting(kind, On.WALL, 2, at(0, 20), 20.0, null, null, 10.0));
        if (counts) {
            Alone.one(FLAME, k, CAUTION, "A", "thing");
        } else {
            Alone.silent(FLAME, k);
        }
        Alone.silent(
                FLAME,
                with(kiln().inlet("A", 0, 0, 40), fitting(kind, On.LID, null, at(0, 0), 20.0, null, null, null)));
        k.ports.remove(0);
        Alone.silent(FLAME, k);
    }

    /** A spyhole drawn as a slot has no middle to be met. */
    @Test
    void aSlotIsNoBody() {
        TestKiln k = kiln().inlet("A", 270, 0, 40);
        k.fittings.add(new Fitting(
                "slot",
                FittingKind.SPYHOLE,
                null,
                null,
                On.WALL,
                2,
                null,
                mm(20),
                null,
                null,
                List.of(at(-20, 20), at(20, 20)),
                null,
                null,
                null));
        assertThat(FlameOnFitting.bodies(KilnGeometry.of(k.build()))).isEmpty();
        Alone.silent(FLAME, k);
    }

    @Test
    void whatTheFlameLacks() {
        TestKiln none = kiln().inlet("A", 0, 0, 40);
        none.fittings = null;
        Alone.lacks(FLAME, none, "kiln.fittings");
        Fitting probe = fitting(FittingKind.THERMOCOUPLE, On.WALL, 2, at(0, 400), 6.0, null, null, null);
        TestKiln k = with(
                with(
                        with(
                                kiln().inlet("A", 0, 0, 40),
                                fitting(FittingKind.SPYHOLE, On.WALL, 2, at(0, 400), 6.0, null, null, null)),
                        fitting(FittingKind.THERMOCOUPLE, On.LID, null, at(0, 0), 6.0, null, null, null)),
                probe);
        Alone.lacks(FLAME, k, "kiln.fittings[2].reach");
        k.ports.clear();
        Alone.silent(FLAME, k.flue("F", 0, 0, 40));
        Findings out = Alone.ask(
                FLAME,
                with(
                        kiln().inlet("A", 270, 0, 40).fitting("seen", FittingKind.SPYHOLE, On.WALL, 2, at(0, 20), 20),
                        fitting(FittingKind.OTHER, On.LID, null, at(-200, 0), null, null, null, null)));
        Alone.lacks(FLAME, out, "kiln.fittings[1].diameter");
        assertThat(out.findings()).hasSize(1);
    }
}
