package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Nearly all power gone where a step asks for plenty; limits are this project's judgement: 0.15 is nothing, 0.3 little, 0.65 plenty, 0.4 asked at least. */
class GonePowerTest {
    /** Twenty intervals at full power asked, of which the elements give a share. */
    private static Followed gives(double... shares) {
        Followed f = new HandLog(20).climb(100, 200).followed(HandLog.full(1200));
        assertThat(f.intervals()).isEqualTo(20);
        HandLog.gave(f, 0, 20, 0.5);
        for (int i = 0; i < shares.length; i++) {
            HandLog.gave(f, 5 + i, shares[i]);
        }
        return f;
    }

    private static int from(double... shares) {
        return new GonePower(gives(shares)).from();
    }

    @Test
    void twoIntervalsWithHardlyAny() {
        assertThat(from(0.14, 0.14)).isEqualTo(5);
        assertThat(from(0.14, 0.15)).isEqualTo(-1);
        assertThat(from(0.15, 0.14)).isEqualTo(-1);
        assertThat(from(0.14, 0.5, 0.14)).isEqualTo(-1);
        assertThat(from(0, 0)).isEqualTo(5);
        assertThat(from(0.5, 0.5)).isEqualTo(-1);
    }

    @Test
    void twoSpellsWithPlentyBetween() {
        assertThat(from(0.29, 0.66, 0.29)).isEqualTo(5);
        assertThat(from(0.29, 0.65, 0.29)).isEqualTo(-1);
        assertThat(from(0.3, 0.66, 0.29)).isEqualTo(-1);
        assertThat(from(0.29, 0.66, 0.3)).isEqualTo(-1);
        assertThat(from(0.66, 0.29, 0.29)).isEqualTo(-1);
        assertThat(from(0.29, 0.29, 0.66, 0.5, 0.29)).isEqualTo(5);
        assertThat(from(0.66, 0.5, 0.29, 0.66, 0.29)).isEqualTo(7);
    }

    /** The last interval alone is none; the last two are. */
    @Test
    void atTheEnd() {
        Followed f = gives();
        HandLog.gave(f, 19, 0);
        assertThat(new GonePower(f).from()).isEqualTo(-1);
        HandLog.gave(f, 18, 0);
        assertThat(new GonePower(f).from()).isEqualTo(18);
        Followed first = gives();
        HandLog.gave(first, 0, 2, 0);
        assertThat(new GonePower(first).from()).isZero();
    }

    @Test
    void fromTheFirstIntervalInSpells() {
        Followed f = gives();
        HandLog.gave(f, 0, 0.2);
        HandLog.gave(f, 1, 0.7);
        HandLog.gave(f, 2, 0.2);
        assertThat(new GonePower(f).from()).isZero();
    }

    @Test
    void whereLittleIsAsked() {
        Followed f = gives(0, 0, 0);
        Arrays.fill(f.leastAsked, 0.4 * HandLog.FULL_W);
        assertThat(new GonePower(f).from()).isEqualTo(-1);
        Arrays.fill(f.leastAsked, 0.41 * HandLog.FULL_W);
        assertThat(new GonePower(f).from()).isEqualTo(5);
        Arrays.fill(f.leastAsked, Double.NaN);
        assertThat(new GonePower(f).from()).isEqualTo(-1);
    }

    @Test
    void whereNothingIsTold() {
        Followed f = gives(0, 0, 0);
        Arrays.fill(f.blind, true);
        assertThat(new GonePower(f).from()).isEqualTo(-1);
    }

    /** Twice 0.15 in any later interval, and it came back. */
    @Test
    void whetherItStaysSo() {
        Followed f = gives();
        HandLog.gave(f, 5, 20, 0.1);
        assertThat(new GonePower(f).lastsToEnd(5)).isTrue();
        assertThat(new GonePower(f).lastsToEnd(4)).isFalse();
        HandLog.gave(f, 19, 0.3);
        assertThat(new GonePower(f).lastsToEnd(5)).isTrue();
        HandLog.gave(f, 19, 0.301);
        assertThat(new GonePower(f).lastsToEnd(5)).isFalse();
    }
}
