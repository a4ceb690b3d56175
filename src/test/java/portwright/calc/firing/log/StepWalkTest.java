package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.cone;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.StepWalk.Ready;
import portwright.calc.firing.log.StepWalk.Way;

/**
 * Ways through the steps along points of five minutes written by hand. What ends a step within how many degrees is this project's judgement (no source); the
 * rest is counting.
 */
class StepWalkTest extends SmallWalk {
    @Test
    void temperaturesAndTimes() {
        celsius = new double[] {500, 596.9, 597, 600, 600, 600, 590, 503.1, 503, 500};
        StepWalk w = walk(to(600, 900), hold(15), to(500, 600), to(400, 600));
        // 597 is near enough at point 2; fifteen minutes later point 5; 503 is near enough at point 8
        assertThat(w.begin).containsExactly(0, 2, 5, 8);
        assertThat(w.step).containsExactly(0, 0, 1, 1, 1, 2, 2, 2, 3, 3);
        assertThat(w.readyS).containsExactly(0, 600, 1500, 2400);
        assertThat(w.s).isEqualTo(3);
        assertThat(w.startK).isCloseTo(503 + 273.15, within(1e-9));
    }

    @Test
    void behindTheLastStep() {
        celsius = new double[] {500, 550, 600, 605, 610};
        StepWalk w = walk(to(600, 900));
        assertThat(w.step).containsExactly(0, 0, 1, 1, 1);
        assertThat(w.overS).isEqualTo(600);
        assertThat(w.s).isEqualTo(1);
        w = walk(to(700, 900), hold(5));
        assertThat(w.begin).containsExactly(0, -1);
        assertThat(w.overS).isZero();
    }

    @Test
    void oneAfterAnotherAtOnePoint() {
        celsius = new double[] {500, 550, 600, 650, 700};
        StepWalk w = walk(to(600, 900), hold(0), to(700, 600));
        assertThat(w.begin).containsExactly(0, 2, 2);
        assertThat(w.step).containsExactly(0, 0, 2, 2, 3);
    }

    @Test
    void aSecondMoreOrLessOfAHold() {
        celsius = new double[] {600, 600, 600, 600, 600};
        assertThat(walk(hold(10 + 1 / 60.0), hold(60)).begin[1]).isEqualTo(2);
        assertThat(walk(hold(10 + 2 / 60.0), hold(60)).begin[1]).isEqualTo(3);
        // begun as much earlier as readings lie apart: 8 min
        way = new Way(1, 3, 0, true, Ready.AT_ONCE);
        assertThat(walk(hold(18), hold(60)).begin[1]).isEqualTo(2);
    }

    @Test
    void readingsThatMayBeOff() {
        celsius = new double[] {500, 560, 580, 600, 620};
        way = new Way(1.05, 3, 0, false, Ready.AT_ONCE);
        // 1.05 · 580 = 609 but 1.05 · 560 = 588
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(2);
        way = new Way(0.97, 3, 0, false, Ready.AT_ONCE);
        // 0.97 · 600 = 582, 0.97 · 620 = 601.4
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(4);
        way = new Way(1, -2, 0, false, Ready.PLANNED);
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(4);
    }

    @Test
    void aPeakOverTheLineCounts() {
        celsius = new double[] {500, 560, 580, 560, 540};
        peak = new double[] {0, 0, 17, 0, 0};
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(2);
        peak[2] = 16.9;
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(-1);
        way = new Way(1.01, 3, 0, false, Ready.AT_ONCE);
        // 1.01 · 580 + 1.01 · 11.2 = 597.1
        peak[2] = 11.2;
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(2);
    }

    /** Cone 10 at 1285 °C: 60 K/h · S, S = ln 4/34 K: 6.796e-4 of it a second, down in 1472 s; at 1295 °C S' = ln 2.5/20: 1.207e-3, down in 828 s. */
    @Test
    void heatWork() {
        celsius = line(1285, 1285, 12);
        StepWalk w = walk(cone("10", 60), hold(60));
        assertThat(w.begin[1]).isEqualTo(5);
        assertThat(w.work[0]).isCloseTo(5 * 300 * 6.7955e-4, within(1e-4));
        way = new Way(1, 3, 10, false, Ready.AT_ONCE);
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(3);
        way = SEEN;
        put = 10;
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(3);
        put = 0;
        way = new Way(1295 / 1285.0, 3, 0, false, Ready.AT_ONCE);
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(3);
        // a later step's cone takes the work of the steps before it, one that was left takes no more
        way = SEEN;
        w = walk(hold(10), cone("10", 60), hold(60));
        assertThat(w.begin).containsExactly(0, 2, 5);
        assertThat(w.work[1]).isCloseTo(5 * 300 * 6.7955e-4, within(1e-4));
        assertThat(walk(cone("10", 60), hold(60)).workWith(SmallFiring.work("10"), 100, 1285 + 273.15))
                .isCloseTo(0.067955, within(1e-5));
        w = walk(cone("10", 600));
        assertThat(w.overS).isEqualTo(1500);
    }

    /** A peak that smoothing has rounded off to 887 °C ends its climb where the line turns down, not on the way up to it: the fall begins there. */
    @Test
    void aSharpTurnIsAtItsTop() {
        celsius = new double[] {859, 869, 880, 887, 881, 872, 863, 860, 860};
        assertThat(walk(to(900, 120), to(860, 120), hold(60)).begin).containsExactly(0, 3, 6);
        // and a dip to 873 °C for 860
        celsius = new double[] {901, 891, 880, 873, 879, 888, 897, 900, 900};
        assertThat(walk(to(860, 120), to(900, 120), hold(60)).begin).containsExactly(0, 3, 6);
    }

    /** The same cone along rows that lie a second to 100 s behind the points: its work is counted to the point itself, and at the end to the last row. */
    @Test
    void heatWorkBetweenRows() {
        celsius = line(1285, 1285, 12);
        lateS = 1;
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(5);
        lateS = 100;
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(5);
        celsius = line(1285, 1285, 5);
        StepWalk w = walk(cone("10", 60));
        assertThat(w.s).isZero();
        assertThat(w.work[0]).isCloseTo(1300 * 6.7955e-4, within(1e-4));
        // from 1275 °C at the point to 1295 °C at the row 400 s later: 1290 °C at the next point, 1282.5 °C in the
        // middle
        celsius = new double[] {1275, 1295, 1295};
        assertThat(walk(hold(1), cone("10", 60)).work[1])
                .isCloseTo(
                        300 * SmallFiring.work("10").perSecond(1282.5 + 273.15)
                                + 100 * SmallFiring.work("10").perSecond(1292.5 + 273.15)
                                + 300 * SmallFiring.work("10").perSecond(1295 + 273.15),
                        within(1e-9));
    }

    @Test
    void aNotedConeEndsItsStepInPlaceOfHeatWork() {
        celsius = line(1285, 1285, 12);
        coneS = new double[] {2400, Double.NaN};
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(8);
        coneS[0] = 2401;
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(9);
    }

    /** A climb that stands 10 °C under its goal because the elements were set to the share of the hold after it. */
    @Test
    void setToTheShareOfAHold() {
        celsius = join(line(500, 590, 10), line(590, 590, 6));
        Step kept = share(hold(60), 0.3);
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(9);
        assertThat(walk(to(600.1, 120), kept).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), hold(60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), share(hold(60), 1)).begin[1]).isEqualTo(-1);
        assertThat(walk(share(to(600, 120), 0.5), kept).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), share(to(700, 60), 0.3)).begin[1]).isEqualTo(-1);
        way = PLANNED;
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(-1);
        way = SEEN;
        // a climb that only slows to 4 of 10 °C a point goes on; slower than 20 °C/h it does not tell
        celsius = join(line(500, 590, 10), line(594, 596, 2));
        assertThat(walk(to(606, 120), kept).begin[1]).isEqualTo(-1);
        celsius = join(line(580, 592, 10), line(592, 592, 6));
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(-1);
        celsius = join(line(572, 590, 10), line(590, 590, 6));
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(9);
    }

    /** A fall or climb whose end smoothing rounds off: within 10 °C and what it covers in eight minutes, then back at over 20 °C/h for a quarter of an hour. */
    @Test
    void theReadingsTurn() {
        // down 2 °C/min to 410, then up 1 °C/min
        celsius = join(line(600, 410, 20), line(415, 440, 6));
        StepWalk w = walk(to(400, 120), to(800, 60));
        // from point 18, 420 °C: 10 + 16 °C are left; but it is still to fall ten: 420, 410, 415, 420 gains nothing.
        // From 410 on it gains 15
        assertThat(w.begin[1]).isEqualTo(19);
        // a next goal below goes on down
        assertThat(walk(to(400, 120), to(300, 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(400, 120), hold(60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(400, 120), cone("10", 60)).begin[1]).isEqualTo(19);
        // farther off than 26
        assertThat(walk(to(383.9, 120), to(800, 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(384.1, 120), to(800, 60)).begin[1]).isEqualTo(19);
        // 5 °C in a quarter of an hour are 20 °C/h: no turn
        celsius = join(line(600, 410, 20), line(411.6, 414.9, 3), line(415, 420, 6));
        assertThat(walk(to(400, 120), to(800, 60)).begin[1]).isEqualTo(-1);
        celsius = join(line(600, 410, 20), line(411.8, 415.2, 3), line(417, 420, 6));
        assertThat(walk(to(400, 120), to(800, 60)).begin[1]).isEqualTo(19);
    }

    @Test
    void aTurnInTheLastMinutes() {
        celsius = join(line(600, 410, 20), new double[] {413, 420});
        assertThat(walk(to(400, 120), to(800, 60)).begin[1]).isEqualTo(19);
    }

    @Test
    void aClimbThatTurns() {
        // up 2 °C/min to 590, then down 1 °C/min
        celsius = join(line(400, 590, 20), line(585, 560, 6));
        assertThat(walk(to(600, 120), to(300, 60)).begin[1]).isEqualTo(19);
        assertThat(walk(to(600, 120), to(700, 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), cone("10", 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(615.9, 120), to(300, 60)).begin[1]).isEqualTo(19);
        assertThat(walk(to(616.1, 120), to(300, 60)).begin[1]).isEqualTo(-1);
        // readings 5 % high: 0.95 · 590 = 560.5; 10 + 16 + 0.05 · 610 = 56.5 may be missing of 616
        way = new Way(0.95, 3, 0, false, Ready.AT_ONCE);
        assertThat(walk(to(616, 120), to(300, 60)).begin[1]).isEqualTo(19);
        assertThat(walk(to(620, 120), to(300, 60)).begin[1]).isEqualTo(-1);
    }
}
