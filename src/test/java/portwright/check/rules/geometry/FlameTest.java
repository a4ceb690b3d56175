package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.On;

/** Flame on coils and fittings, the note on the flame under a shelf, the flue over an inlet. Half angle 11°: IFRF free jet, cone about 22°. */
class FlameTest {
    private static final double TAN = Math.tan(Math.toRadians(11));
    private static final double COS = Math.cos(Math.toRadians(11));

    /** A probe of 6 mm at height 100 reaches 25 mm into the chamber: the flame's side touches its tip. */
    @ParameterizedTest
    @EnumSource(
            value = FittingKind.class,
            names = {"THERMOCOUPLE", "SPYHOLE"})
    void flameMeetsProbeAndSpyhole(FittingKind kind) {
        assertThat(meets(kind, 1e-3)).isEmpty();
        List<Finding> f = meets(kind, -1e-3);
        assertThat(f).hasSize(1);
        assertThat(f.get(0).parts()).containsExactly("A", "thing");
        assertThat(f.get(0).severity()).isEqualTo(Severity.CAUTION);
    }

    private static List<Finding> meets(FittingKind kind, double left) {
        double x = 300 - 25 - 20 - 100 * TAN - (left + 3) / COS;
        TestKiln k = AtTheLimitTest.square().inlet("A", x, 0, 40);
        k.fittings.add(new Fitting(
                "thing", kind, null, null, On.WALL, 2, at(0, 100), mm(6), null, null, null, null, mm(25), null));
        return GeoBench.of(k, "flame-on-fitting");
    }

    @Test
    void otherFittingsDoNotMindTheFlame() {
        assertThat(meets(FittingKind.OTHER, -20)).isEmpty();
    }

    /** The jet of a wall port runs to the opposite wall; a coil there is struck. */
    @Test
    void wallPortStrikesTheOppositeCoil() {
        TestKiln k = AtTheLimitTest.square()
                .wallElement("E1", 150, 16, 20, 0, List.of(3))
                .wallInlet("A", 1, 0, 150, 40);
        List<Finding> f = GeoBench.of(k, "flame-on-element", Severity.STOP);
        assertThat(f).hasSize(1);
        assertThat(f.get(0).parts()).containsExactly("A", "E1");
        // 600 mm on, the jet reaches 20 + 600 tan 11° up: a coil 25 + 6 above it is clear
        double clear = 150 + 20 + 600 * TAN + 40;
        assertThat(GeoBench.of(
                        AtTheLimitTest.square()
                                .wallElement("E1", clear, 16, 20, 0, List.of(3))
                                .wallInlet("A", 1, 0, 150, 40),
                        "flame-on-element"))
                .isEmpty();
    }

    @Test
    void aShelfShieldsTheCoilsAboveIt() {
        TestKiln bare =
                AtTheLimitTest.square().wallElement("E1", 300, 16, 20, 0, null).inlet("A", 220, 0, 40);
        assertThat(GeoBench.of(bare, "flame-on-element", Severity.STOP)).hasSize(1);
        assertThat(GeoBench.of(bare.roundShelf("shelf", 560, 75, 40), "flame-on-element"))
                .isEmpty();
    }

    /** The part of a flame that passes the shelf's edge goes on. */
    @Test
    void aShelfThatCoversHalfTheFlameShieldsNothing() {
        TestKiln k = AtTheLimitTest.square()
                .wallElement("E1", 300, 16, 20, 0, null)
                .inlet("A", 220, 0, 40)
                .roundShelf("shelf", 440, 75, 40);
        assertThat(GeoBench.of(k, "flame-on-element", Severity.STOP)).hasSize(1);
    }

    @Test
    void underAShelfTheFlameClimbsTheWall() {
        assertThat(GeoBench.of(AtTheLimitTest.square().inlet("A", 0, 0, 40), "flame-at-wall"))
                .isEmpty();
        List<Finding> f = GeoBench.of(
                AtTheLimitTest.square().inlet("A", 0, 0, 40).roundShelf("shelf", 400, 75, 40), "flame-at-wall");
        assertThat(f).hasSize(1);
        assertThat(f.get(0).parts()).containsExactly("A", "shelf");
        assertThat(f.get(0).severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void aShelfBetweenInletAndFlueEndsTheShortCircuit() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, 0, 40).flue("F", 0, 0, 40);
        assertThat(GeoBench.of(k, "flue-over-inlet")).hasSize(1);
        assertThat(GeoBench.of(k.roundShelf("shelf", 400, 75, 40), "flue-over-inlet"))
                .isEmpty();
    }
}
