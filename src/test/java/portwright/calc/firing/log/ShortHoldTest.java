package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.off;
import static portwright.calc.firing.log.SmallFiring.open;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/** A last hold that stands short: over 10 °C under, a quarter of the power missing, not falling 60 °C/h at the end (this project's judgement, no source). */
class ShortHoldTest {
    /** To 600 °C in five hours, then down to a temperature in an hour. */
    private static SmallFiring sinks(double celsius) {
        return SmallFiring.every(60, 0, 300, 300, 600, 360, celsius);
    }

    /** Full power asked in points 62 to 65, so many W found. */
    private static Followed asked(SmallFiring f, double watts, Step last) {
        Followed out = f.by(to(600, 60), last);
        Arrays.fill(out.asked, Double.NaN);
        Arrays.fill(out.asked, 62, 66, 10_000);
        for (int i = 0; i < out.intervals(); i++) {
            Replay.Need n = out.logged.get(i);
            out.logged.set(i, new Replay.Need(n.timeS(), n.chamberK(), watts, n.begin(), n.flow()));
        }
        return out;
    }

    @Test
    void aCircuitThatIsOut() {
        LogFinding x = ShortHold.of(asked(sinks(580), 7000, hold(600)), 72);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.lostShare()).isCloseTo(0.3, within(1e-9));
        assertThat(x.lostW()).isCloseTo(3000, within(1e-6));
        assertThat(x.timeS()).isEqualTo(62 * 300.0);
        // 20 °C/h down from 600 at 300 min
        assertThat(x.kelvin() - 273.15).isCloseTo(600 - 10 / 3.0, within(0.1));
        assertThat(x.behind()).isTrue();
        assertThat(x.orProbe()).isTrue();
        assertThat(x.falls()).isFalse();
    }

    @Test
    void lessMissingOrNothingKnown() {
        assertThat(ShortHold.of(asked(sinks(580), 7550, hold(600)), 72)).isNotNull();
        assertThat(ShortHold.of(asked(sinks(580), 7650, hold(600)), 72)).isNull();
        assertThat(ShortHold.of(asked(sinks(580), 7000, hold(600)), 63)).isNotNull();
        assertThat(ShortHold.of(asked(sinks(580), 7000, hold(600)), 62)).isNull();
    }

    @Test
    void aHoldThatKeepsItsGoal() {
        assertThat(ShortHold.of(asked(sinks(586), 7000, hold(600)), 72)).isNotNull();
        assertThat(ShortHold.of(asked(sinks(590), 7000, hold(600)), 72)).isNull();
    }

    @Test
    void onlyALastHoldThatAControllerLeads() {
        assertThat(ShortHold.of(asked(sinks(580), 7000, share(hold(600), 0.9)), 72))
                .isNull();
        assertThat(ShortHold.of(asked(sinks(580), 7000, open(hold(600))), 72)).isNull();
        assertThat(ShortHold.of(asked(sinks(580), 7000, gas(hold(600))), 72)).isNull();
        assertThat(ShortHold.of(asked(sinks(580), 7000, off(hold(600))), 72)).isNull();
        assertThat(ShortHold.of(asked(sinks(580), 7000, to(700, 60)), 72)).isNull();
        // not begun, or not followed by the plan
        Followed f = SmallFiring.every(60, 0, 300, 290, 590).by(to(600, 60), hold(600));
        assertThat(ShortHold.of(f, 50)).isNull();
        Followed none = new Followed(sinks(580).beside(to(600, 60), hold(600)).unplanned(), true);
        assertThat(ShortHold.of(none, 72)).isNull();
    }

    @Test
    void aKilnThatWasSwitchedOff() {
        // 590 at 350 min, ten minutes later: 9 °C are 54 °C/h, 11 are 66
        assertThat(ShortHold.of(asked(ends(581), 7000, hold(600)), 72)).isNotNull();
        assertThat(ShortHold.of(asked(ends(579), 7000, hold(600)), 72)).isNull();
        // what it did before counts for nothing
        assertThat(ShortHold.of(
                        asked(SmallFiring.every(60, 0, 300, 300, 600, 330, 575, 360, 572), 7000, hold(600)), 72))
                .isNotNull();
    }

    private static SmallFiring ends(double celsius) {
        return SmallFiring.every(60, 0, 300, 300, 600, 350, 590, 360, celsius);
    }
}
