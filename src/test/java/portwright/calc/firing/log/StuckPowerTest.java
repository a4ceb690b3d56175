package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/**
 * Power where a controller gives none. Limits are this project's judgement: a quarter of full power 20 K over the line, a fixed share and 0.18, three intervals in a
 * row, five behind the end.
 */
class StuckPowerTest {
    private static int from(Followed f) {
        return new StuckPower(f).from(f.tracker.byRows);
    }

    private static Followed gives(HandLog h, double share, Step... steps) {
        Followed f = h.followed(steps);
        HandLog.gave(f, 0, f.intervals(), share);
        return f;
    }

    /** 120 K/h where 60 are asked, of which 78 may be a pace of its own: 42 K/h apart, 20 K after 29 min, interval 6. */
    @Test
    void overTheLine() {
        Followed f = gives(new HandLog(20).climb(300, 120), 0.26, HandLog.rate(1200, 60));
        assertThat(from(f)).isEqualTo(6);
        assertThat(from(gives(new HandLog(20).climb(300, 120), 0.25, HandLog.rate(1200, 60))))
                .isEqualTo(-1);
        HandLog.gave(f, 8, 0.2);
        assertThat(from(f)).isEqualTo(9);
        HandLog.gave(f, 0, 60, 0.2);
        HandLog.gave(f, 57, 60, 0.3);
        assertThat(from(f)).isEqualTo(57);
        HandLog.gave(f, 57, 0.2);
        assertThat(from(f)).isEqualTo(-1);
    }

    /** 20 K over the line, not at it: 78 K/h asked and climbed never are; 100 K/h are after 0.91 h, interval 11. */
    @Test
    void howFarOverTheLine() {
        assertThat(from(gives(new HandLog(20).climb(300, 78), 0.5, HandLog.rate(1200, 60))))
                .isEqualTo(-1);
        assertThat(from(gives(new HandLog(20).climb(300, 100), 0.5, HandLog.rate(1200, 60))))
                .isEqualTo(11);
    }

    /** A controller that led at 70 K/h until then is held to that, not to 78. Smoothing makes 70.9 of it where the climb bends: 104 K/h are 33 K/h apart, 3.6 and 20 K after 43 min. */
    @Test
    void overTheRateAtWhichItWasLed() {
        Followed led = new HandLog(20)
                .of(HandLog.kiln(1, 5))
                .climb(240, 70)
                .climb(60, 104)
                .followed(HandLog.rate(1200, 60));
        assertThat(from(led)).isEqualTo(48 + 9);
        Followed flat = new HandLog(20)
                .of(HandLog.kiln(1, 5))
                .climb(240, 70)
                .climb(60, 104)
                .followed(HandLog.rate(1200, 60));
        HandLog.gave(flat, 0, flat.intervals(), 0.5);
        // Never led, it may go at 78 K/h: 70 K/h leave it 32 K behind, made good by 26 K/h and 20 K more in over two
        // hours.
        assertThat(from(flat)).isEqualTo(-1);
    }

    /** Where the plan holds, 20 K over where the hold began. */
    @Test
    void overAHold() {
        Followed f = gives(new HandLog(500).climb(300, 60), 0.3, HandLog.hold(600));
        assertThat(from(f)).isEqualTo(5);
        assertThat(from(gives(new HandLog(500).climb(15, 60).climb(280, 1e-6), 0.3, HandLog.hold(600))))
                .isEqualTo(-1);
    }

    /** A line that falls at 60 K/h from 900 °C, half an hour late, to 600 °C; a reading that falls at 40 K/h stands 20 K over it after 2.5 h. */
    @Test
    void overAFallingLine() {
        Followed f = gives(new HandLog(900).climb(420, -40), 0.3, HandLog.rate(600, 60));
        // 60 (t − 0.5) − 40 t = 20 at 2.5 h.
        assertThat(from(f)).isEqualTo(31);
        Followed slow = gives(new HandLog(900).climb(240, -100).climb(300, 50), 0.3, HandLog.rate(420, 60));
        // From 500 °C up again at 50 K/h: the line stands at 900 − 60 · 4.5 = 660 °C by 5 h; the reading stands 20 K
        // over it at 5.91 h.
        double t = 4 + (900 - 60 * 3.5 - 500 + 20) / 110.0;
        assertThat(from(slow)).isEqualTo((int) Math.floor(t * 12) + 1);
        Followed low = gives(new HandLog(900).climb(240, -100).climb(600, 10), 0.3, HandLog.rate(495.5, 120));
        // The line ends at 495.5 °C: 500 °C and 10 K/h stand 20 K over it after 93 min.
        assertThat(from(low)).isEqualTo((4 * 60 + 93) / 5 + 1);
    }

    @Test
    void overAFixedShare() {
        assertThat(from(gives(new HandLog(20).climb(300, 100), 0.681, HandLog.share(1200, 0.5))))
                .isEqualTo(1);
        assertThat(from(gives(new HandLog(20).climb(300, 100), 0.679, HandLog.share(1200, 0.5))))
                .isEqualTo(-1);
    }

    /** Full power asked cannot be exceeded; without elements in the step nothing is said, nor where it begins. */
    @Test
    void whereNothingCanBeSaid() {
        HandLog h = new HandLog(20).climb(300, 120);
        assertThat(from(gives(h, 2, HandLog.full(1200)))).isEqualTo(-1);
        Step off = new Step(new Step.To(1500), 0.01, false, true, Double.NaN, true, new Step.Share(1));
        assertThat(from(gives(h, 2, off))).isEqualTo(-1);
        for (int way = 0; way < 4; way++) {
            Followed f = gives(new HandLog(20).climb(300, 120), 0.9, HandLog.rate(1200, 60));
            boolean[] none = new boolean[f.grid.size()];
            Arrays.fill(none, true);
            switch (way) {
                case 0 -> System.arraycopy(none, 0, f.blind, 0, none.length);
                case 1 -> System.arraycopy(none, 0, f.tracker.unsure, 0, none.length);
                case 2 -> Arrays.fill(f.grid.gasPa(), 2000);
                default -> {
                    for (int i = 0; i < none.length; i++) {
                        f.tracker.step[i] = i % 2;
                    }
                }
            }
            if (way < 3) {
                assertThat(from(f)).as("%d", way).isEqualTo(-1);
            }
        }
    }

    /** A plate turned between rows far apart leaves open what air takes. */
    @Test
    void whereThePlateWasTurned() {
        Step open = new Step(new Step.To(1500), Step.FULL, true, false, 0.3, true, new Step.Share(1));
        HandLog h = new HandLog(20)
                .damper(0.2)
                .climb(20, 120)
                .every(1100)
                .damper(0.8)
                .climb(1100 / 60.0, 120)
                .every(300);
        Followed f = gives(h.climb(60, 120), 0.9, open);
        HandLog.gave(f, 0, 4, 0.3);
        assertThat(from(f)).isEqualTo((1200 + 1100) / 300 + 1);
        Followed same = gives(new HandLog(20).damper(0.2).climb(100, 120), 0.9, open);
        assertThat(from(same)).isEqualTo(1);
    }

    /** Behind the plan's end, five in a row without gas, from the second on. */
    @Test
    void behindTheEnd() {
        Followed f = gives(new HandLog(20).climb(300, 120), 0.2, HandLog.full(1200));
        Arrays.fill(f.tracker.step, 20, f.intervals() + 1, -1);
        Arrays.fill(f.tracker.byRows.first(), 20, f.intervals() + 1, 1);
        Arrays.fill(f.tracker.byRows.last(), 20, f.intervals() + 1, 1);
        HandLog.gave(f, 20, 60, 0.26);
        assertThat(from(f)).isEqualTo(21);
        HandLog.gave(f, 25, 0.2);
        assertThat(from(f)).isEqualTo(26);
        HandLog.gave(f, 20, 60, 0.25);
        assertThat(from(f)).isEqualTo(-1);
        HandLog.gave(f, 20, 60, 0.26);
        HandLog.gave(f, 25, 60, 0.2);
        assertThat(from(f)).isEqualTo(-1);
        HandLog.gave(f, 20, 60, 0.26);
        Arrays.fill(f.grid.gasPa(), 2000);
        assertThat(from(f)).isEqualTo(-1);
        Followed all = gives(new HandLog(20).climb(300, 120), 0.26, HandLog.full(1200));
        Arrays.fill(all.tracker.step, -1);
        Arrays.fill(all.tracker.byRows.first(), 1);
        Arrays.fill(all.tracker.byRows.last(), 1);
        assertThat(from(all)).isEqualTo(1);
    }

    /** Another step that may be in force at a fixed share counts with that; one under a controller leaves nothing to say; the end of the plan does not count. */
    @Test
    void otherStepsInForce() {
        Followed f = gives(new HandLog(20).climb(300, 100), 0.7, HandLog.share(1200, 0.5), HandLog.share(1300, 0.6));
        assertThat(from(f)).isEqualTo(1);
        Arrays.fill(f.tracker.byRows.last(), 1);
        assertThat(from(f)).isEqualTo(-1);
        HandLog.gave(f, 0, 60, 0.79);
        assertThat(from(f)).isEqualTo(1);
        Followed led = gives(new HandLog(20).climb(300, 100), 0.9, HandLog.share(1200, 0.5), HandLog.rate(1300, 60));
        Arrays.fill(led.tracker.byRows.last(), 1);
        assertThat(from(led)).isEqualTo(-1);
        Arrays.fill(led.tracker.byRows.last(), 2);
        Arrays.fill(led.tracker.byRows.first(), 2);
        assertThat(from(led)).isEqualTo(1);
    }

    /** A step that began in a gap has no line. */
    @Test
    void aVagueLine() {
        Followed f = gives(new HandLog(20).climb(300, 120), 0.26, HandLog.rate(1200, 60));
        f.blind[0] = true;
        assertThat(from(f)).isEqualTo(-1);
        Followed hold = gives(new HandLog(500).climb(300, 60), 0.3, HandLog.hold(600));
        hold.blind[0] = true;
        assertThat(from(hold)).isEqualTo(5);
    }

    /** A cone that ends the step before may be noted late: the line begins at the hottest reading until then, and then. */
    @Test
    void aStepThatMayHaveBegunLater() {
        Followed f = gives(new HandLog(20).climb(300, 120), 0.26, HandLog.rate(1200, 60));
        f.tracker.lateS[0] = 3600;
        // From 140 °C at 1 h: 20 K apart after 29 min more, interval 18.
        assertThat(from(f)).isEqualTo(18);
        Followed hold = gives(new HandLog(500).climb(300, 60), 0.3, HandLog.hold(600));
        hold.tracker.lateS[0] = 1800;
        assertThat(from(hold)).isEqualTo(11);
    }
}
