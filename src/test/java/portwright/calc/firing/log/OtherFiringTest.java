package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.OtherFiring.Why;

/** What tells another firing than the plan's, each from both sides; the limits are this project's judgement (no source). 100 °C/h take 1 of 10 kW. */
class OtherFiringTest {
    /** 100 °C/h from 20 °C for five hours; leaks take more and more: 10 W/K, so that a controller gives 1 kW more each hour. */
    private static SmallFiring led() {
        return climb(100).leaks(c -> 10 * c);
    }

    private static SmallFiring climb(double perHour) {
        return SmallFiring.every(60, 0, 20, 300, 20 + 5 * perHour);
    }

    private static Why why(SmallFiring f, Step... steps) {
        return OtherFiring.of(f.by(steps));
    }

    @Test
    void aNoteTellsIt() {
        assertThat(why(climb(100).note(0, "bisque firing"), to(1200, 100))).isEqualTo(Why.NOTE);
        assertThat(why(climb(100), to(1200, 100))).isEqualTo(Why.NOT);
        // gas that burns, and a doubted scale, speak against it
        assertThat(why(climb(100).note(0, "bisque firing").gas(200, 1), to(1200, 100)))
                .isEqualTo(Why.NOT);
        assertThat(why(climb(100).note(0, "bisque firing").gas(200, 0), to(1200, 100)))
                .isEqualTo(Why.NOTE);
        assertThat(why(climb(100).note(0, "bisque firing").doubted(), to(1200, 100)))
                .isEqualTo(Why.NOT);
    }

    @Test
    void whatThePaceAloneTells() {
        assertThat(Why.OWN_RATE.guessed()).isTrue();
        assertThat(Why.FAST_START.guessed()).isTrue();
        assertThat(Why.NOT.guessed()).isFalse();
        assertThat(Why.NOTE.guessed()).isFalse();
        assertThat(Why.NO_GAS.guessed()).isFalse();
    }

    @Test
    void anHourWithoutTheGasOfThePlan() {
        Step burning = gas(full(1200));
        assertThat(why(climb(100).gas(0, 0), burning)).isEqualTo(Why.NO_GAS);
        assertThat(why(climb(100), burning)).isEqualTo(Why.NOT);
        // twelve intervals in a row, each of over 20 °C/h
        Followed f = climb(100).gas(0, 0).by(burning);
        for (int i = 11; i < 60; i += 12) {
            f.blind[i] = true;
        }
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        f.blind[11] = false;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NO_GAS);
        f = climb(100).gas(0, 0).by(burning);
        for (int i = 12; i < 60; i += 13) {
            f.blind[i] = true;
        }
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NO_GAS);
        assertThat(why(climb(19.9).gas(0, 0), burning)).isEqualTo(Why.NOT);
        assertThat(why(climb(20.1).gas(0, 0), burning)).isEqualTo(Why.NO_GAS);
    }

    @Test
    void fasterThanThePlanFromTheFirstMinute() {
        assertThat(why(climb(151), to(1200, 100))).isEqualTo(Why.FAST_START);
        assertThat(why(climb(149), to(1200, 100))).isEqualTo(Why.NOT);
        // the fastest step of the first hour counts
        assertThat(why(climb(151), to(50, 100), to(1200, 110))).isEqualTo(Why.NOT);
        assertThat(why(climb(151), full(1200))).isEqualTo(Why.NOT);
        assertThat(why(SmallFiring.every(60, 0, 99, 300, 99 + 5 * 151), to(1200, 100)))
                .isEqualTo(Why.FAST_START);
        assertThat(why(SmallFiring.every(60, 0, 101, 300, 101 + 5 * 151), to(1200, 100)))
                .isEqualTo(Why.NOT);
        // an hour is needed, each quarter of it
        assertThat(why(SmallFiring.every(60, 0, 20, 55, 170), to(1200, 100))).isEqualTo(Why.NOT);
        assertThat(why(SmallFiring.every(60, 0, 20, 60, 180), to(1200, 100))).isEqualTo(Why.FAST_START);
        for (int q = 0; q < 12; q += 3) {
            Followed f = climb(160).by(to(1200, 100));
            f.blind[q] = true;
            assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
            f = climb(160).by(to(1200, 100));
            f.grid.kelvin()[q] += 10;
            assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        }
        Followed f = climb(160).by(to(1200, 100));
        f.grid.kelvin()[12] -= 10;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        f = climb(160).by(to(1200, 100));
        f.tracker.step[12] = -1;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        f.tracker.step[12] = 0;
        f.tracker.step[13] = -1;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.FAST_START);
        // a damper in the log, or no elements
        assertThat(why(climb(160).damper(0, 0.5), to(1200, 100))).isEqualTo(Why.NOT);
        assertThat(why(climb(160).elements(0), to(1200, 100))).isEqualTo(Why.NOT);
    }

    @Test
    void aStraightClimbAtARateThatNoStepAsks() {
        // 100 is 17 % less than 120, 11 % less than 112; 14 % more than 88, 11 % more than 90
        assertThat(why(led(), to(1200, 120))).isEqualTo(Why.OWN_RATE);
        assertThat(why(led(), to(1200, 112))).isEqualTo(Why.NOT);
        assertThat(why(led(), to(1200, 88))).isEqualTo(Why.OWN_RATE);
        assertThat(why(led(), to(1200, 90))).isEqualTo(Why.NOT);
        // its power must grow by 3 % from the first half hour to the third
        assertThat(why(climb(100).leaks(c -> 3.1 * c), to(1200, 120))).isEqualTo(Why.OWN_RATE);
        assertThat(why(climb(100).leaks(c -> 2.9 * c), to(1200, 120))).isEqualTo(Why.NOT);
        // 20 °C/h, and hotter than 100 °C
        assertThat(why(climb(21).leaks(c -> 30 * c), to(1200, 60))).isEqualTo(Why.NOT);
        assertThat(why(SmallFiring.every(60, 0, 100, 300, 202.5).leaks(c -> 30 * c), to(1200, 60)))
                .isEqualTo(Why.OWN_RATE);
        assertThat(why(SmallFiring.every(60, 0, 100, 300, 198).leaks(c -> 30 * c), to(1200, 60)))
                .isEqualTo(Why.NOT);
        // over three quarters of full power the kiln may be behind: 1 and 2.3 kW in the third half hour from 100 °C on,
        // 1.1 of 3, 0.73 of 4.5
        assertThat(why(led().elements(3000), to(1200, 120))).isEqualTo(Why.NOT);
        assertThat(why(led().elements(4500), to(1200, 120))).isEqualTo(Why.OWN_RATE);
        assertThat(why(led().elements(0), to(1200, 120))).isEqualTo(Why.NOT);
        assertThat(why(led().damper(0, 0.5), to(1200, 120))).isEqualTo(Why.NOT);
    }

    /** Ninety minutes in all, from 101 °C on: one window, at points 0, 6, 12 and 18. */
    private static Followed window() {
        return SmallFiring.every(60, 0, 101, 90, 251).leaks(c -> 10 * c).by(to(1200, 120));
    }

    @Test
    void straightWithinSixPercent() {
        assertThat(OtherFiring.of(window())).isEqualTo(Why.OWN_RATE);
        for (int point : new int[] {6, 12}) {
            // half an hour: 2.9 °C are 5.8 °C/h, 3.1 are 6.2
            Followed f = window();
            f.grid.kelvin()[point] += 2.9;
            assertThat(OtherFiring.of(f)).isEqualTo(Why.OWN_RATE);
            f.grid.kelvin()[point] += 0.2;
            assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        }
        Followed f = window();
        f.blind[17] = true;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        f = window();
        f.blind[0] = true;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        f = window();
        f.blind[18] = true;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.OWN_RATE);
        f = window();
        f.tracker.step[18] = -1;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
        // slow climbs by 2 °C/h: a degree in half an hour
        f = SmallFiring.every(60, 0, 101, 90, 101 + 37.5).leaks(c -> 30 * c).by(to(1200, 60));
        assertThat(OtherFiring.of(f)).isEqualTo(Why.OWN_RATE);
        f.grid.kelvin()[6] += 0.95;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.OWN_RATE);
        f.grid.kelvin()[6] += 0.4;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.NOT);
    }

    /** 100 °C/h at a power that grows by 1.2 kW an hour. */
    private static Why grown(Step step) {
        Followed f = climb(100).by(step);
        for (int i = 0; i < f.intervals(); i++) {
            Replay.Need n = f.logged.get(i);
            f.logged.set(i, new Replay.Need(n.timeS(), n.chamberK(), 1000 + 100 * i, n.begin(), n.flow()));
        }
        return OtherFiring.of(f);
    }

    @Test
    void whichStepsAskForARate() {
        // gas and a controller at a rate; gas and elements all on, at a fixed share or off climb as straight
        assertThat(grown(gas(to(1200, 120)))).isEqualTo(Why.OWN_RATE);
        assertThat(grown(gas(full(1200)))).isEqualTo(Why.NOT);
        assertThat(grown(gas(share(to(1200, 120), 0.5)))).isEqualTo(Why.NOT);
        assertThat(grown(gas(SmallFiring.off(to(1200, 120))))).isEqualTo(Why.NOT);
        // holds, fixed shares and elements that are off ask for none
        assertThat(grown(share(to(1200, 100), 0.5))).isEqualTo(Why.OWN_RATE);
        assertThat(grown(SmallFiring.off(to(1200, 100)))).isEqualTo(Why.OWN_RATE);
        Step held = new Step(new Step.Hold(1e6), 100 / 3600.0, true, false, Step.CONTROLLER, false, new Step.Share(1));
        assertThat(grown(held)).isEqualTo(Why.OWN_RATE);
        // a step that may be in force counts as well as the likeliest
        Followed f = window();
        Followed two = SmallFiring.every(60, 0, 101, 90, 251).leaks(c -> 10 * c).by(to(1200, 120), to(1300, 100));
        assertThat(OtherFiring.of(two)).isEqualTo(Why.OWN_RATE);
        two.tracker.byProbe.last()[18] = 1;
        assertThat(OtherFiring.of(two)).isEqualTo(Why.NOT);
        two.tracker.byProbe.last()[18] = 0;
        Arrays.fill(two.tracker.step, 1);
        Arrays.fill(two.tracker.byProbe.last(), 1);
        Arrays.fill(two.tracker.byProbe.first(), 1);
        assertThat(OtherFiring.of(two)).isEqualTo(Why.NOT);
        // one behind the last counts for nothing
        f.tracker.byProbe.last()[18] = 1;
        assertThat(OtherFiring.of(f)).isEqualTo(Why.OWN_RATE);
        assertThat(grown(hold(600))).isEqualTo(Why.OWN_RATE);
    }
}
