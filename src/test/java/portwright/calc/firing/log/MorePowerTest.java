package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/** More power than a fixed share asks, by 0.15 of full power (this project's judgement), over 450 °C. */
class MorePowerTest {
    /** A climb of 100 K/h, half the power, to 853 °C: 450 °C are passed behind interval 51. */
    private static Followed climb(Step step, double asked) {
        Followed f = new HandLog(20).climb(500, 100).followed(step);
        Arrays.fill(f.asked, asked * HandLog.FULL_W);
        HandLog.gave(f, 0, f.intervals(), asked);
        return f;
    }

    private static Followed gives(double more) {
        Followed f = climb(HandLog.share(1200, 0.5), 0.5);
        HandLog.gave(f, 0, f.intervals(), 0.5 + more);
        return f;
    }

    @Test
    void moreByAQuarter() {
        LogFinding x = MorePower.of(gives(0.25));
        assertThat(x.kind()).isEqualTo(LogFinding.Kind.MORE_POWER);
        assertThat(x.timeS()).isEqualTo(52 * 300);
        assertThat(x.kelvin()).isCloseTo(293.15 + 100 * 52 / 12.0, within(1e-6));
        // Under nought: a quarter of full power beyond the half that is asked.
        assertThat(x.lostShare()).isCloseTo(-0.5, within(1e-9));
        assertThat(x.lostW()).isCloseTo(-0.5 * HandLog.FULL_W, within(1e-6));
        assertThat(x.orProbe()).isTrue();
        assertThat(x.falls()).isFalse();
    }

    @Test
    void theLimit() {
        assertThat(MorePower.of(gives(0.151))).isNotNull();
        assertThat(MorePower.of(gives(0.149))).isNull();
        assertThat(MorePower.of(gives(0))).isNull();
        assertThat(MorePower.of(gives(-0.3))).isNull();
    }

    /** All the power that there is cannot be more; without elements, or under a controller, nothing is asked. */
    @Test
    void onlyAFixedShare() {
        for (Step s : new Step[] {HandLog.share(1200, 1), HandLog.full(1200), HandLog.rate(1200, 100)}) {
            Followed f = climb(s, 0.5);
            HandLog.gave(f, 0, f.intervals(), 0.9);
            assertThat(MorePower.of(f)).isNull();
        }
        Step off = new Step(new Step.To(1500), Step.FULL, false, true, 0.5, true, new Step.Share(1));
        Followed f = climb(off, 0.5);
        HandLog.gave(f, 0, f.intervals(), 0.9);
        assertThat(MorePower.of(f)).isNull();
    }

    /** Two intervals are enough, one is not; a first step that shows none leaves the second. */
    @Test
    void howManyTell() {
        Followed f = gives(0.25);
        Arrays.fill(f.asked, Double.NaN);
        f.asked[70] = 5000;
        assertThat(MorePower.of(f)).isNull();
        f.asked[71] = 5000;
        assertThat(MorePower.of(f).timeS()).isEqualTo(70 * 300);
    }

    @Test
    void theStepThatShowsIt() {
        Followed f = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5), HandLog.share(1300, 0.4));
        Arrays.fill(f.asked, 5000);
        HandLog.gave(f, 0, f.intervals(), 0.5);
        for (int i = 80; i < f.intervals(); i++) {
            f.tracker.step[i] = 1;
            f.asked[i] = 4000;
            HandLog.gave(f, i, 0.6);
        }
        LogFinding x = MorePower.of(f);
        assertThat(x.timeS()).isEqualTo(80 * 300);
        assertThat(x.lostShare()).isCloseTo(-0.5, within(1e-9));
    }

    /** Half of what tells must show it: the median. */
    @Test
    void aFewDoNot() {
        Followed f = gives(0.25);
        HandLog.gave(f, 0, 70, 0.5);
        int told = f.intervals() - 52;
        assertThat(2 * (70 - 52)).isLessThan(told);
        assertThat(MorePower.of(f)).isNotNull();
        HandLog.gave(f, 0, 52 + told / 2 + 1, 0.5);
        assertThat(MorePower.of(f)).isNull();
    }

    /** At exactly 450 °C the probe still hides the power. */
    @Test
    void whereItIsWarm() {
        Followed f = gives(0.25);
        Arrays.fill(f.kelvin, 723.15);
        assertThat(MorePower.of(f)).isNull();
        Arrays.fill(f.kelvin, 723.2);
        assertThat(MorePower.of(f).timeS()).isZero();
    }
}
