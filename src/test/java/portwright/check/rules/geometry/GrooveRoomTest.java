package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import portwright.TestKiln;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.ElementRun;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Tails;

/** A groove 16 mm high round 300 mm reaches from 292 to 308 mm; 6 mm of brick are wanted to a probe, 10 mm to the next groove. */
class GrooveRoomTest {
    private static final String ID = "groove-room";

    private static TestKiln row() {
        return AtTheLimitTest.square().inlet("A", 0, 0, 40).wallElement("E1", 300, 16, 20, 0, null);
    }

    @Test
    void aProbeKeepsSixMillimetresFromTheGroove() {
        GeoBench.edge(
                ID,
                Severity.CAUTION,
                Forbids.NOTHING,
                t -> row().fitting("probe", FittingKind.THERMOCOUPLE, On.WALL, 1, at(0, 308 + 6 + 3 + t), 6),
                "probe",
                "E1");
    }

    @Test
    void aProbeInTheGrooveIsSaidToLieInIt() {
        assertThat(GeoBench.of(row().fitting("probe", FittingKind.THERMOCOUPLE, On.WALL, 1, at(0, 300), 6), ID))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.message()).isEqualTo("probe lies in the groove of E1.");
                    assertThat(f.remedy()).contains("carries the mains");
                });
    }

    @ParameterizedTest
    @EnumSource(
            value = FittingKind.class,
            names = {"CONTROL_BOX", "TERMINALS", "HANDLE", "HINGE", "LATCH", "CRACK"})
    void whatStandsOutsideOrIsNoHoleMayLieOverIt(FittingKind kind) {
        assertThat(GeoBench.of(row().fitting("part", kind, On.WALL, 1, at(0, 300), 40), ID))
                .isEmpty();
    }

    @Test
    void aFittingInTheFloorIsJudgedAgainstFloorGrooves() {
        TestKiln k = AtTheLimitTest.square()
                .slabElement("EF", On.FLOOR, 16, 20, at(-100, 0), at(100, 0))
                .fitting("old vent", FittingKind.VENT, On.FLOOR, null, at(0, 20), 30);
        assertThat(GeoBench.of(k, ID))
                .singleElement()
                .satisfies(f -> assertThat(f.parts()).containsExactly("old vent", "EF"));
    }

    @Test
    void twoRowsKeepARibOfTenMillimetres() {
        GeoBench.edge(
                ID,
                Severity.CAUTION,
                Forbids.NOTHING,
                t -> row().wallElement("E2", 308 + 10 + 8 + t, 16, 20, 0, null),
                "E1",
                "E2");
        assertThat(GeoBench.of(row().wallElement("E2", 304, 16, 20, 0, null), ID))
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("run into each other"));
    }

    @Test
    void floorGroovesThatCrossAreFound() {
        TestKiln k = AtTheLimitTest.square()
                .slabElement("E1", On.FLOOR, 16, 20, at(-100, 0), at(100, 0))
                .slabElement("E2", On.FLOOR, 16, 20, at(0, -100), at(0, 100));
        assertThat(GeoBench.of(k, ID))
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("run into each other"));
    }

    private static TestKiln tails(double v) {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, 40);
        k.elements.add(new ElementRun(
                "E1",
                On.WALL,
                mm(300),
                null,
                null,
                new Groove(mm(16), null, mm(20), null),
                mm(12),
                new Tails(1, at(0, v), mm(12))));
        return k;
    }

    @Test
    void tailsLeaveFromTheirOwnGroove() {
        GeoBench.edge(ID, Severity.CAUTION, Forbids.NOTHING, t -> tails(308 - t), "E1");
        assertThat(GeoBench.of(tails(350), ID))
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .isEqualTo("The middle of E1 tails is 42.0 mm (1 5/8 in) off its groove."));
    }
}
