package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/** Power that comes on while a controller leads, and what stays on in a firing at a pace of its own. */
class StuckJumpTest {
    /** 100 K/h asked and climbed by half the power for 200 minutes, then 180 K/h by 0.9. */
    private static Followed jump(Step... steps) {
        return new HandLog(20).climb(200, 100).climb(120, 180).followed(steps);
    }

    private static int from(Followed f) {
        return new StuckPower(f).from(f.tracker.byProbe);
    }

    @Test
    void powerThatComesOn() {
        assertThat(from(jump(HandLog.rate(1200, 100)))).isEqualTo(40);
    }

    /** Only while a controller leads an electric climb: at a share, all on, or with gas, more power may be asked. */
    @Test
    void onlyUnderAController() {
        assertThat(from(jump(HandLog.full(1200)))).isEqualTo(-1);
        Step shared = new Step(new Step.To(1473), 100 / 3600.0, true, false, 0.9, false, new Step.Share(1));
        assertThat(from(jump(shared))).isEqualTo(-1);
        Step gas = new Step(new Step.To(1473), 100 / 3600.0, true, true, Step.CONTROLLER, true, new Step.Share(1));
        assertThat(from(jump(gas))).isNotEqualTo(40);
        Step off = new Step(new Step.To(1473), 100 / 3600.0, false, false, Step.CONTROLLER, false, new Step.Share(1));
        assertThat(from(jump(off))).isEqualTo(-1);
        Followed unsure = jump(HandLog.rate(1200, 100));
        Arrays.fill(unsure.tracker.unsure, true);
        assertThat(from(unsure)).isEqualTo(40);
        Step hold =
                new Step(new Step.Hold(90_000), 100 / 3600.0, true, false, Step.CONTROLLER, false, new Step.Share(1));
        Followed held = jump(hold);
        Arrays.fill(held.tracker.unsure, true);
        assertThat(from(held)).isEqualTo(-1);
    }

    /** Another step possible half an hour before or after, or gas burning then, and it may be that step. */
    @Test
    void nothingElseThereabouts() {
        for (int i : new int[] {32, 44}) {
            Followed late = jump(HandLog.rate(1200, 100));
            Arrays.fill(late.tracker.unsure, true);
            late.tracker.byProbe.last()[i] = 1;
            assertThat(from(late)).isEqualTo(i == 32 ? 41 : -1);
            Followed early = jump(HandLog.rate(1200, 100));
            Arrays.fill(early.tracker.unsure, true);
            early.tracker.byProbe.first()[i] = -1;
            assertThat(from(early)).isEqualTo(i == 32 ? 41 : -1);
            Followed gas = jump(HandLog.rate(1200, 100));
            Arrays.fill(gas.tracker.unsure, true);
            gas.grid.gasPa()[i] = 2000;
            assertThat(from(gas)).isEqualTo(i == 32 ? 41 : -1);
        }
    }

    /** A firing of its own that holds at 500 °C by 0.3 of full power and then climbs, where the plan holds. */
    private static Followed own() {
        Followed f = new HandLog(500).climb(300, 60).followed(HandLog.hold(600), HandLog.full(1200));
        HandLog.gave(f, 0, f.intervals(), 0.3);
        return f;
    }

    private static int own(Followed f, int until, boolean fast) {
        return new StuckPower(f, until, fast).from(f.tracker.byRows);
    }

    /** Six in a row, before the step from which on gas may burn. */
    @Test
    void sixInARow() {
        assertThat(own(own(), 1, false)).isEqualTo(5);
        assertThat(own(own(), 0, false)).isEqualTo(-1);
        Followed five = own();
        HandLog.gave(five, 10, 60, 0.2);
        assertThat(own(five, 1, false)).isEqualTo(-1);
        HandLog.gave(five, 10, 11, 0.3);
        assertThat(own(five, 1, false)).isEqualTo(5);
        Followed later = own();
        Arrays.fill(later.tracker.byProbe.last(), 1);
        assertThat(own(later, 1, false)).isEqualTo(-1);
        assertThat(own(later, 2, false)).isEqualTo(5);
        Followed over = own();
        Arrays.fill(over.tracker.step, -1);
        assertThat(own(over, 1, false)).isEqualTo(-1);
    }

    /** Faster than the plan from its first minute: then only behind a climb that a controller led. */
    @Test
    void fastFromTheStart() {
        assertThat(own(own(), 1, true)).isEqualTo(-1);
        // Led at 100 K/h over four hours, then at 0.6 of the power: far over the 65 K/h that a plan of 50 leaves it.
        Followed led = new HandLog(20)
                .of(HandLog.kiln(1, 5))
                .climb(240, 100)
                .fire(240, 0.6, 5)
                .followed(HandLog.rate(1200, 50));
        assertThat(own(led, 1, true)).isEqualTo(48);
        Arrays.fill(led.blind, true);
        assertThat(own(led, 1, true)).isEqualTo(-1);
    }

    /** What a controller leads itself is no power that stays on. */
    @Test
    void notWhatIsLed() {
        Followed led = new HandLog(20).of(HandLog.kiln(1, 5)).climb(480, 100).followed(HandLog.rate(1200, 50));
        assertThat(own(led, 1, false)).isEqualTo(-1);
        HandLog.gave(led, 0, led.intervals(), 0.5);
        assertThat(own(led, 1, false)).isPositive();
    }

    /** Of its own a controller's pace may be slower than the plan's: 60 K/h led, 100 planned, then 90 K/h stands over it. */
    @Test
    void overItsOwnSlowPace() {
        Followed f = new HandLog(20).of(HandLog.kiln(1, 5)).climb(300, 60).followed(HandLog.rate(1200, 100));
        HandLog.gave(f, 0, 0, 0);
        assertThat(own(f, 1, false)).isEqualTo(-1);
        Followed then = new HandLog(20)
                .of(HandLog.kiln(1, 5))
                .climb(300, 60)
                .climb(120, 90)
                .followed(HandLog.rate(1200, 100));
        HandLog.gave(then, 60, then.intervals(), 0.5);
        // 30 K/h apart: 20 K after 40 min, interval 68; the plan's own firing may go at 100 K/h.
        assertThat(own(then, 1, false)).isBetween(68, 70);
        assertThat(from(then)).isEqualTo(-1);
    }
}
