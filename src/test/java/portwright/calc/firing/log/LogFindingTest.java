package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.LogFinding.Kind;

/** What is said of a finding more closely changes that and nothing else. */
class LogFindingTest {
    private static final LogFinding PLAIN =
            new LogFinding(Kind.OVER, 60, 900, 500, 0.1, 7, true, false, false, false, "8", "9", false, false, 30);

    @Test
    void theShortFormLeavesTheRestOpen() {
        assertThat(new LogFinding(Kind.OVER, 60, 900, 500, 7, true, true))
                .isEqualTo(new LogFinding(
                        Kind.OVER,
                        60,
                        900,
                        500,
                        Double.NaN,
                        7,
                        true,
                        true,
                        false,
                        false,
                        null,
                        null,
                        false,
                        false,
                        Double.NaN));
    }

    @Test
    void aDeadProbeBeginsWithItsSpell() {
        LogFinding x = LogFinding.ofProbe(Kind.FROZEN, new DeadSpell(3, 9, 120, 900, 700));
        assertThat(x).isEqualTo(new LogFinding(Kind.FROZEN, 120, 700, Double.NaN, Double.NaN, false, true));
    }

    /** A third of 9 kW are 3 kW (arithmetic). */
    @Test
    void bothFiguresOfElementsComeFromTheShare() {
        assertThat(PLAIN.ofElements(0.25, 9000))
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 2250, 0.25, 7, true, false, false, false, "8", "9", false, false, 30));
    }

    @Test
    void eachWordChangesOneThing() {
        assertThat(PLAIN.doubted())
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 500, 0.1, 7, true, true, false, false, "8", "9", false, false, 30));
        assertThat(PLAIN.fromTheStart())
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 500, 0.1, 7, true, false, true, false, "8", "9", false, false, 30));
        assertThat(PLAIN.toldBehind())
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 500, 0.1, 7, true, false, false, false, "8", "9", true, false, 30));
        assertThat(PLAIN.orByAir())
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 500, 0.1, 7, true, false, false, false, "8", "9", false, true, 30));
        assertThat(PLAIN.withCones(true, "5", "6"))
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 500, 0.1, 7, true, false, false, true, "5", "6", false, false, 30));
    }

    /** What begins after a sound time was not so from the start; what begins at an opening is no share of the elements. */
    @Test
    void someWordsTakeOthersBack() {
        assertThat(PLAIN.fromTheStart().soundUntil(45))
                .isEqualTo(new LogFinding(
                        Kind.OVER, 60, 900, 500, 0.1, 7, true, false, false, false, "8", "9", false, false, 45));
        assertThat(PLAIN.orByAir().byOpening())
                .isEqualTo(new LogFinding(
                        Kind.AIR_OR_ELEMENT,
                        60,
                        900,
                        500,
                        Double.NaN,
                        7,
                        true,
                        false,
                        false,
                        false,
                        "8",
                        "9",
                        false,
                        false,
                        30));
    }
}
