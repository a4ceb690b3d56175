package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.calc.firing.log.SmallFiring.cone;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.to;

import org.junit.jupiter.api.Test;

/**
 * Which step a record is in, and which it may be in, along straight lines at 60 °C/h (5 °C a point of five minutes): plain counting. How near a goal counts as
 * met, how far readings may be off and how late a step may begin are this project's judgement (no source).
 */
class TrackerTest {
    private static final int MINUTE = 60;

    /** From 300 °C to 600 °C in five hours, then level. */
    private static SmallFiring level(double untilMinute) {
        return SmallFiring.every(60, 0, 300, 300, 600, untilMinute, 600);
    }

    private static int firstOf(int[] of, int step) {
        int i = 0;
        while (i < of.length && of[i] != step) {
            i++;
        }
        return i == of.length ? -1 : i;
    }

    @Test
    void likeliestFirstAndLastStep() {
        Tracker t = level(480).tracked(to(600, 60), hold(60), to(700, 60));
        // smoothing rounds the corner at point 60 off by 60 °C/h · 2.1 min = 2 °C, and three are near enough
        assertThat(t.begin).containsExactly(0, 60, 72);
        assertThat(t.over).isEqualTo(3);
        assertThat(t.reached).isFalse();
        // by the rows: the hold at most 8 min shorter, each step at most an hour later where 602 °C is never met
        assertThat(firstOf(t.byRows.last(), 1)).isEqualTo(60);
        assertThat(firstOf(t.byRows.last(), 2)).isEqualTo(71);
        assertThat(firstOf(t.byRows.first(), 1)).isEqualTo(72);
        assertThat(firstOf(t.byRows.first(), 2)).isEqualTo(84);
        // a probe that reads 60/1285 low: 597/1.0467 = 570.4 °C, point 55, and 52 min later point 66; one 1.5 % high:
        // never
        assertThat(firstOf(t.byProbe.last(), 1)).isEqualTo(55);
        assertThat(firstOf(t.byProbe.last(), 2)).isEqualTo(66);
        assertThat(firstOf(t.byProbe.first(), 1)).isEqualTo(-1);
        assertThat(t.byProbe.first()[0]).isZero();
    }

    @Test
    void aSureStepIsNoLaterThanTheRowsHaveIt() {
        // on to 660 °C: 602 °C is met at 302 min, point 61
        Tracker t = SmallFiring.every(60, 0, 300, 360, 660).tracked(to(600, 60), to(700, 60));
        assertThat(t.begin).containsExactly(0, 60);
        assertThat(firstOf(t.byRows.first(), 1)).isEqualTo(61);
        // 1.5 % high: 597/0.985 = 606.1 °C, point 62
        assertThat(firstOf(t.byProbe.first(), 1)).isEqualTo(62);
    }

    @Test
    void theLastStepMayBeEndingForLong() {
        // behind the last goal nothing counts as surely over
        Tracker t = level(480).tracked(to(600, 60));
        assertThat(t.step[60]).isEqualTo(-1);
        assertThat(t.step[59]).isZero();
        assertThat(t.byRows.first()[90]).isZero();
        assertThat(t.byRows.last()[60]).isEqualTo(1);
        assertThat(t.reached).isTrue();
    }

    @Test
    void rowsFarApartWidenTheRange() {
        // a row each 20 min: point 55 (275 min) rests on the row at 300 min too, point 54 does not
        Tracker t = SmallFiring.every(1200, 0, 300, 360, 660).tracked(to(600, 60), to(700, 60));
        assertThat(t.begin[1]).isEqualTo(60);
        assertThat(firstOf(t.byRows.last(), 1)).isEqualTo(55);
        // surely begun at point 61; points up to 65 (325 min) rest on the row at 300 min, point 66 does not
        assertThat(firstOf(t.byRows.first(), 1)).isEqualTo(66);
    }

    @Test
    void aLastRowBehindTheLastPoint() {
        // a row each 21 min to 378 min: the last point is at 375
        Tracker t = SmallFiring.every(1260, 0, 300, 378, 678).tracked(to(600, 60), to(700, 60));
        assertThat(t.begin[1]).isEqualTo(60);
        assertThat(t.byRows.last()[75]).isEqualTo(1);
        assertThat(t.byRows.first()[75]).isEqualTo(1);
    }

    @Test
    void goalsMetInTheLastRow() {
        // 598 °C: two under it, three minutes behind the last point
        assertThat(SmallFiring.every(60, 0, 300, 298, 598).tracked(to(600, 60)).reached)
                .isTrue();
        assertThat(SmallFiring.every(60, 0, 300, 296, 596).tracked(to(600, 60)).reached)
                .isFalse();
        // an hour of hold from point 60 on, which may have begun five minutes earlier
        assertThat(level(359).tracked(to(600, 60), hold(60)).reached).isTrue();
        assertThat(level(354).tracked(to(600, 60), hold(60)).reached).isFalse();
        assertThat(level(480).tracked(to(600, 60), hold(60)).reached).isTrue();
        // the step before the last is not enough
        assertThat(SmallFiring.every(60, 0, 300, 298, 598).tracked(to(600, 60), hold(60)).reached)
                .isFalse();
    }

    /** Cone 10 is down at 1285 °C in a climb of 60 °C/h (cone chart, from memory); its work counts 3 °C higher, so at 1282. */
    @Test
    void aConeInTheLastRows() {
        // the last point is at 1279 °C
        assertThat(SmallFiring.every(60, 0, 664, 619, 1283).tracked(cone("10", 60)).reached)
                .isTrue();
        // 0.896 at the last point, 1279.3 °C, and three minutes at 1283.8 add 0.116
        assertThat(SmallFiring.every(60, 0, 664.3, 618, 1282.3).tracked(cone("10", 60)).reached)
                .isTrue();
        assertThat(SmallFiring.every(60, 0, 664, 617, 1281).tracked(cone("10", 60)).reached)
                .isFalse();
        assertThat(SmallFiring.every(60, 0, 664, 630, 1294).tracked(cone("10", 60)).reached)
                .isTrue();
    }

    @Test
    void aGoalMetAndLeftAtOnce() {
        // to 600 °C at 120 °C/h and down again: the line lies 8.5 °C under the peak, the two highest readings at 600
        // and 598
        SmallFiring f = SmallFiring.every(60, 0, 200, 200, 600, 300, 400);
        assertThat(f.tracked(to(600, 120), hold(60)).begin[1]).isEqualTo(40);
        assertThat(f.tracked(to(601.9, 120), hold(60)).begin[1]).isEqualTo(40);
        assertThat(f.tracked(to(602.1, 120), hold(60)).begin[1]).isEqualTo(-1);
        // one high reading alone is no peak: 603.5 and 598 are 600.75
        f.celsius(200, 603.5);
        assertThat(f.tracked(to(603.7, 120), hold(60)).begin[1]).isEqualTo(40);
        assertThat(f.tracked(to(603.8, 120), hold(60)).begin[1]).isEqualTo(-1);
        // nor in a straight climb
        SmallFiring up = SmallFiring.every(60, 0, 200, 201, 602);
        assertThat(up.tracked(to(604, 120), hold(60)).begin[1]).isEqualTo(-1);
    }

    @Test
    void aNotedConeEndsItsStep() {
        // a row each ten minutes; noted at 400 min, so it may have fallen since 390
        Tracker t = SmallFiring.every(600, 0, 600, 500, 1100).cone(400, "05").tracked(cone("05", 60), to(1200, 60));
        assertThat(t.earlyS[0]).isEqualTo(390 * MINUTE);
        assertThat(t.earlyS[1]).isNaN();
        assertThat(t.lateS[1]).isEqualTo(400 * MINUTE);
        assertThat(t.begin[1]).isEqualTo(78);
        assertThat(t.unsure[77]).isFalse();
        assertThat(t.unsure[78]).isTrue();
        assertThat(t.unsure[80]).isTrue();
        assertThat(t.unsure[81]).isFalse();
        // another cone is none of the plan's; of the same one twice the first counts
        Tracker other =
                SmallFiring.every(600, 0, 600, 500, 1100).cone(400, "04").tracked(cone("05", 60), to(1200, 60));
        assertThat(other.earlyS[0]).isNaN();
        assertThat(other.unsure).containsOnly(false);
        Tracker twice = SmallFiring.every(600, 0, 600, 500, 1100)
                .cone(400, "05")
                .cone(450, "05")
                .tracked(cone("05", 60), to(1200, 60));
        assertThat(twice.lateS[1]).isEqualTo(400 * MINUTE);
    }

    @Test
    void whenEachStepBeganAtTheLatest() {
        Tracker t = level(480).tracked(to(600, 60), hold(60), to(700, 60));
        assertThat(t.lateS).containsExactly(0, 300 * MINUTE, 360 * MINUTE, 0);
        t = level(480).tracked(to(600, 60), hold(60));
        assertThat(t.lateS).containsExactly(0, 300 * MINUTE, 360 * MINUTE);
    }

    @Test
    void aConeNotedWhenAllIsOff() {
        // gas off at 400 min, the cone seen at 460: from three points behind the end of the gas the firing is over
        // whenever it fell
        SmallFiring f = SmallFiring.every(600, 0, 600, 400, 1100, 480, 1000)
                .gas(0, 2740)
                .gas(400, 0)
                .cone(460, "04");
        Tracker t = f.tracked(gas(cone("04", 60)));
        assertThat(t.earlyS[0]).isEqualTo(400 * MINUTE);
        // point 81 rests on rows up to a quarter of an hour before it, point 82 on ten minutes
        assertThat(t.unsure[80]).isTrue();
        assertThat(t.unsure[81]).isTrue();
        assertThat(t.unsure[82]).isFalse();
        assertThat(t.unsure[92]).isFalse();
        // the same cone in a step that is not the last
        t = f.tracked(gas(cone("04", 60)), to(600, 60));
        assertThat(t.unsure[g(t.earlyS[0])]).isTrue();
        assertThat(t.unsure[92]).isTrue();
        // gas that was never lit is not put out
        t = SmallFiring.every(600, 0, 600, 400, 1100, 480, 1000)
                .gas(0, 0)
                .cone(460, "04")
                .tracked(cone("04", 60));
        assertThat(t.unsure[92]).isTrue();
    }

    private static int g(double seconds) {
        return (int) (seconds / 300);
    }

    /** To 1100 °C with gas, which goes out at 300 min; what the readings do then, °C at 420 min. */
    private static Tracker out(double then, double levelUntil) {
        return SmallFiring.every(60, 0, 800, 300, 1100, levelUntil, 1100, 420, then)
                .gas(0, 2740)
                .gas(300, 0)
                .tracked(gas(to(1200, 60)));
    }

    @Test
    void shutDownWhereGasGoesOutAndTheKilnCoolsToTheEnd() {
        Tracker t = out(800, 301);
        assertThat(t.step[59]).isZero();
        assertThat(t.step[60]).isEqualTo(-1);
        assertThat(t.step[80]).isEqualTo(-1);
        assertThat(t.reached).isFalse();
        // no faster than 20 °C/h may be gas that is low
        assertThat(out(1062, 301).step[80]).isZero();
        assertThat(out(1056, 301).step[80]).isEqualTo(-1);
        // a quarter of an hour later it falls by something else
        assertThat(out(800, 306).step[80]).isEqualTo(-1);
        assertThat(out(800, 325).step[80]).isZero();
        // it climbs again at the end
        assertThat(SmallFiring.every(60, 0, 800, 300, 1100, 360, 1000, 420, 1050)
                        .gas(0, 2740)
                        .gas(300, 0)
                        .tracked(gas(to(1200, 60)))
                        .step[62])
                .isZero();
        // without a gas column, and of a step by electricity, nothing tells
        assertThat(SmallFiring.every(60, 0, 800, 300, 1100, 420, 800).tracked(gas(to(1200, 60))).step[80])
                .isZero();
        assertThat(SmallFiring.every(60, 0, 800, 300, 1100, 420, 800)
                        .gas(0, 2740)
                        .gas(300, 0)
                        .tracked(to(1200, 60))
                        .step[80])
                .isZero();
    }

    /** Ten minutes open before gas and five of clean fire after lighting (kiln practice, safety_numbers.csv). */
    @Test
    void theMinutesWithTheKilnOpen() {
        Tracker t = SmallFiring.every(60, 0, 300, 400, 700).tracked(to(600, 60), gas(to(900, 60)));
        int begin = 300 * MINUTE;
        assertThat(t.begin[1]).isEqualTo(60);
        assertThat(t.opensFor(begin - 1)).isEqualTo(-1);
        assertThat(t.opensFor(begin)).isEqualTo(1);
        assertThat(t.opensFor(begin + 899)).isEqualTo(1);
        assertThat(t.opensFor(begin + 900)).isEqualTo(-1);
        assertThat(t.unlit(begin + 599)).isTrue();
        assertThat(t.unlit(begin + 600)).isFalse();
        assertThat(t.unlit(begin - 1)).isFalse();
        // from eight minutes before to eight after; it may have begun at 602 °C, point 61: 305 + 15 + 8 = 328 min
        assertThat(t.opening(57)).isFalse();
        assertThat(t.opening(58)).isTrue();
        assertThat(t.opening(65)).isTrue();
        assertThat(t.opening(66)).isFalse();
        // never surely begun: an hour later at most, 360 + 15 + 8 = 383 min
        t = level(480).tracked(to(600, 60), gas(to(900, 60)));
        assertThat(t.opening(76)).isTrue();
        assertThat(t.opening(77)).isFalse();
        // no gas: no opening
        t = level(480).tracked(to(600, 60), to(900, 60));
        assertThat(t.opensFor(begin)).isEqualTo(-1);
        assertThat(t.unlit(begin)).isFalse();
        assertThat(t.opening(60)).isFalse();
    }

    @Test
    void openMinutesThatTheReadingsShow() {
        // trough at 310 min: 315 with the clean fire, and eight more
        Tracker t = SmallFiring.every(60, 0, 300, 300, 600, 310, 580, 450, 720).tracked(to(600, 60), gas(to(900, 60)));
        // the climb ends behind point 59, five degrees under the goal
        assertThat(t.begin[1]).isEqualTo(59);
        assertThat(t.opensFor(314.9 * MINUTE)).isEqualTo(1);
        assertThat(t.opensFor(315 * MINUTE)).isEqualTo(-1);
        assertThat(t.unlit(309.9 * MINUTE)).isTrue();
        assertThat(t.unlit(310 * MINUTE)).isFalse();
        assertThat(t.opening(64)).isTrue();
        assertThat(t.opening(65)).isFalse();
        assertThat(t.readyS[1]).isEqualTo(315.0 * MINUTE);
    }
}
