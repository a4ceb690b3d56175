package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.off;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/**
 * Power that the steps ask of elements of 10 kW. From when it is known (eight minutes of smoothing, 12 °C of lag, 6 of a hold, 70 % of a rate) is this
 * project's judgement (no source).
 */
class AskedPowerTest {
    /** 100 °C/h for five hours from 20 °C. */
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 300, 520);
    }

    private static final Step SIXTY = share(full(1200), 0.6);

    private static double of(Followed f, int i) {
        return new AskedPower(f).of(i);
    }

    @Test
    void aFixedShareAndFullPower() {
        Followed f = climb().by(SIXTY);
        assertThat(f.asked).hasSize(60).containsOnly(6000.0);
        assertThat(f.leastAsked).containsOnly(6000.0);
        assertThat(climb().by(full(1200)).asked).containsOnly(10000.0);
        assertThat(climb().by(to(1200, 100)).asked).containsOnly(Double.NaN);
        assertThat(climb().by(off(full(1200))).asked).containsOnly(Double.NaN);
        Followed other = new Followed(climb().beside(SIXTY).unplanned(), true);
        assertThat(other.asked).containsOnly(Double.NaN);
        assertThat(other.leastAsked).containsOnly(Double.NaN);
    }

    @Test
    void aKilnThatWasWarmTakesAnHour() {
        assertThat(SmallFiring.every(60, 0, 99, 300, 599).by(SIXTY).asked[0]).isEqualTo(6000);
        Followed f = SmallFiring.every(60, 0, 101, 300, 601).by(SIXTY);
        assertThat(f.asked[11]).isNaN();
        assertThat(f.asked[12]).isEqualTo(6000);
    }

    @Test
    void whatLeavesItOpen() {
        Followed f = climb().by(SIXTY);
        f.blind[20] = true;
        f.tracker.unsure[22] = true;
        f.tracker.step[40] = -1;
        assertThat(of(f, 20)).isNaN();
        assertThat(of(f, 21)).isEqualTo(6000);
        assertThat(of(f, 22)).isNaN();
        assertThat(of(f, 40)).isNaN();
        // gas that the log states where the step asks none
        f.grid.gasPa()[24] = 2740;
        assertThat(of(f, 24)).isNaN();
        f.grid.gasPa()[24] = 0;
        assertThat(of(f, 24)).isEqualTo(6000);
    }

    @Test
    void gasFarOffTheDesigns() {
        Followed f = climb().gas(0, 2740).by(gas(SIXTY));
        assertThat(of(f, 20)).isEqualTo(6000);
        f.grid.gasPa()[20] = 2740 * 1.149 * 1.149;
        assertThat(of(f, 20)).isEqualTo(6000);
        f.grid.gasPa()[20] = 2740 * 1.151 * 1.151;
        assertThat(of(f, 20)).isNaN();
        f.grid.gasPa()[20] = 2740 * 0.849 * 0.849;
        assertThat(of(f, 20)).isNaN();
        f.grid.gasPa()[20] = 0;
        assertThat(of(f, 20)).isNaN();
    }

    @Test
    void withinReachOfAnotherStepNothing() {
        Followed f = climb().by(SIXTY, share(full(1300), 0.6));
        f.tracker.step[30] = 1;
        for (int i : new int[] {28, 29, 31, 32}) {
            assertThat(of(f, i)).isNaN();
        }
        assertThat(of(f, 27)).isEqualTo(6000);
        assertThat(of(f, 33)).isEqualTo(6000);
        // behind a time without a step it is known at once, before one not
        f.tracker.step[30] = -1;
        assertThat(of(f, 29)).isNaN();
        assertThat(of(f, 31)).isEqualTo(6000);
        // readings twenty minutes apart reach five points far
        f.tracker.step[30] = 1;
        f.grid.reachS()[24] = 1200;
        assertThat(of(f, 24)).isEqualTo(6000);
        f.grid.reachS()[25] = 1200;
        assertThat(of(f, 25)).isNaN();
        assertThat(of(f, 24)).isEqualTo(6000);
        f.grid.reachS()[26] = 1200;
        assertThat(of(f, 26)).isNaN();
        assertThat(of(f, 27)).isEqualTo(6000);
        f.grid.reachS()[28] = 1200;
        assertThat(of(f, 27)).isNaN();
    }

    /** A step of 60 % in force, and another one that may be. */
    private static Followed or(Step other) {
        Followed f = climb().by(SIXTY, other);
        f.tracker.begin[1] = -1;
        Arrays.fill(f.tracker.byProbe.last(), 30, 61, 1);
        Arrays.fill(f.leastAsked, Double.NaN);
        return f;
    }

    private static void least(Step other, double watts) {
        Followed f = or(other);
        assertThat(of(f, 30)).isNaN();
        if (Double.isNaN(watts)) {
            assertThat(f.leastAsked[30]).isNaN();
        } else {
            assertThat(f.leastAsked[30]).isCloseTo(watts, within(1e-6));
        }
    }

    @Test
    void theLeastThatMayBeAsked() {
        least(share(full(1300), 0.3), 3000);
        least(share(hold(60), 0.3), 3000);
        least(off(full(1300)), 0);
        least(to(1300, 60), Double.NaN);
        least(hold(60), Double.NaN);
        // more, as much, and nearly as much
        assertThat(of(or(full(1300)), 30)).isEqualTo(6000);
        assertThat(of(or(share(full(1300), 0.9)), 30)).isEqualTo(6000);
        assertThat(of(or(share(full(1300), 0.551)), 30)).isEqualTo(6000);
        least(share(full(1300), 0.549), 5490);
        // two points before it
        Followed f = or(share(full(1300), 0.3));
        assertThat(of(f, 28)).isNaN();
        assertThat(of(f, 27)).isEqualTo(6000);
        // behind the last step nobody knows
        Arrays.fill(f.tracker.byProbe.last(), 30, 61, 2);
        Arrays.fill(f.leastAsked, Double.NaN);
        assertThat(of(f, 30)).isNaN();
        assertThat(f.leastAsked[30]).isNaN();
    }

    @Test
    void aStepBeforeThatMayStillBe() {
        Followed f = climb().by(share(full(1200), 0.4), share(full(1300), 0.7));
        Arrays.fill(f.tracker.step, 1);
        f.tracker.begin[1] = 0;
        Arrays.fill(f.tracker.byProbe.last(), 1);
        Arrays.fill(f.tracker.byProbe.first(), 1);
        assertThat(of(f, 30)).isEqualTo(7000);
        Arrays.fill(f.tracker.byProbe.first(), 0, 31, 0);
        assertThat(of(f, 32)).isNaN();
        assertThat(f.leastAsked[32]).isCloseTo(4000, within(1e-6));
        assertThat(of(f, 33)).isEqualTo(7000);
    }

    /** A controller that lost 24 °C and more of what it had gives all there is, unless it is to cool. */
    @Test
    void aControllerThatHasFallenBehind() {
        Followed f = or(to(1300, 60));
        f.kelvin[10] = f.kelvin[30] + 24.1;
        assertThat(of(f, 30)).isEqualTo(6000);
        f.kelvin[10] = f.kelvin[30] + 23.9;
        assertThat(of(f, 30)).isNaN();
        f = or(hold(60));
        f.kelvin[10] = f.kelvin[30] + 24.1;
        assertThat(of(f, 30)).isEqualTo(6000);
        f = or(to(200, 60));
        f.kelvin[10] = f.kelvin[30] + 24.1;
        assertThat(of(f, 30)).isNaN();
        // it began colder than its goal
        f.tracker.begin[1] = 5;
        assertThat(of(f, 30)).isEqualTo(6000);
    }

    @Test
    void aHoldThatSinks() {
        Followed f = SmallFiring.every(60, 0, 20, 300, 520).by(hold(600));
        // begun at 20 °C, it climbs
        assertThat(f.asked).containsOnly(Double.NaN);
        f.kelvin[0] = f.kelvin[30] + 6.1;
        assertThat(of(f, 30)).isEqualTo(10000);
        f.kelvin[0] = f.kelvin[30] + 5.9;
        assertThat(of(f, 30)).isNaN();
        // begun in a gap, nobody knows at what
        f.kelvin[0] = f.kelvin[30] + 6.1;
        f.blind[0] = true;
        assertThat(of(f, 30)).isNaN();
    }

    @Test
    void aRampThatIsLeftBehind() {
        // 60 °C/h where 100 are asked: 13.3 °C behind after 20 min, 10 after 15
        Followed f = SmallFiring.every(60, 0, 20, 300, 320).by(to(1200, 100));
        assertThat(f.asked[3]).isNaN();
        assertThat(f.asked[4]).isEqualTo(10000);
        assertThat(f.asked[50]).isEqualTo(10000);
        // behind, but at over 70 % of the rate
        f = SmallFiring.every(60, 0, 20, 300, 375).by(to(1200, 100));
        assertThat(f.asked[50]).isNaN();
        f = SmallFiring.every(60, 0, 20, 300, 365).by(to(1200, 100));
        assertThat(f.asked[50]).isEqualTo(10000);
        // no more is asked than the goal
        f = SmallFiring.every(60, 0, 20, 300, 320).by(to(400, 100));
        f.kelvin[50] = 400 - 12.1 + 273.15;
        assertThat(of(f, 50)).isEqualTo(10000);
        f.kelvin[50] = 400 - 11.9 + 273.15;
        assertThat(of(f, 50)).isNaN();
        // a step begun in a gap has no line
        f = SmallFiring.every(60, 0, 20, 300, 320).by(to(1200, 100));
        f.blind[0] = true;
        assertThat(of(f, 50)).isNaN();
    }

    @Test
    void theLineBeginsWhereTheKilnIsReady() {
        Followed f = SmallFiring.every(60, 0, 20, 300, 320).by(to(1200, 100));
        f.tracker.readyS[0] = 46 * 300;
        // 20 min behind it 13.3 °C are missing
        assertThat(of(f, 49)).isNaN();
        assertThat(of(f, 50)).isEqualTo(10000);
    }

    @Test
    void aStepThatIsToCoolAsksNothingKnown() {
        Followed f = climb().by(full(500));
        f.tracker.begin[0] = 12;
        f.kelvin[12] = 900;
        assertThat(of(f, 30)).isNaN();
        f.kelvin[12] = 500;
        assertThat(of(f, 30)).isEqualTo(10000);
    }
}
