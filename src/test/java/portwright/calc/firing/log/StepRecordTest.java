package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.off;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/** Steps as they went, along straight lines: plain arithmetic. Ten minutes open before gas, five of clean fire (kiln practice, safety_numbers.csv). */
class StepRecordTest {
    private static final int MINUTE = 60;

    private static List<StepRecord> of(SmallFiring f, Step... steps) {
        double[] gas = new double[steps.length];
        for (int i = 0; i < gas.length; i++) {
            gas[i] = i + 0.5;
        }
        return StepRecord.of(f.by(steps), gas);
    }

    private static SmallFiring level(double untilMinute) {
        return SmallFiring.every(60, 0, 300, 300, 600, untilMinute, 600);
    }

    private static void went(StepRecord r, int index, double start, double startC, double end, double endC) {
        assertThat(r.index()).isEqualTo(index);
        assertThat(r.startS()).isEqualTo(start * MINUTE);
        assertThat(r.endS()).isEqualTo(end * MINUTE);
        assertThat(r.startK() - 273.15).isCloseTo(startC, within(0.05));
        assertThat(r.endK() - 273.15).isCloseTo(endC, within(0.05));
        if (end > start) {
            assertThat(r.climbKPerS() * 3600).isCloseTo((endC - startC) / (end - start) * 60, within(0.05));
        }
        assertThat(r.gasKg()).isEqualTo(index + 0.5);
    }

    @Test
    void climbHoldAndWhatFollows() {
        // the corner is rounded off by 60 °C/h · 2.12 min
        List<StepRecord> all = of(level(480), to(600, 60), hold(60), to(700, 60), hold(10));
        assertThat(all).hasSize(3);
        went(all.get(0), 0, 0, 300, 300, 597.88);
        went(all.get(1), 1, 300, 597.88, 360, 600);
        went(all.get(2), 2, 360, 600, 480, 600);
        assertThat(all).allMatch(r -> r.sagK() == 0 && !r.sags());
        Followed alone = new Followed(level(480).beside(to(600, 60), hold(60)).unplanned(), true);
        assertThat(StepRecord.of(alone, new double[1])).isEmpty();
    }

    @Test
    void oneOfNoLength() {
        List<StepRecord> all = of(level(480), to(600, 60), hold(0), to(700, 60));
        went(all.get(1), 1, 300, 597.88, 300, 597.88);
        assertThat(all.get(1).climbKPerS()).isNaN();
        went(all.get(2), 2, 300, 597.88, 480, 600);
    }

    @Test
    void aHoldThatSags() {
        // down 20 °C in an hour: the corner is rounded off by 80 °C/h · 2.12 min, 597.18
        SmallFiring f = SmallFiring.every(60, 0, 300, 300, 600, 360, 580);
        assertThat(of(f, to(600, 60), hold(600)).get(1).sagK()).isCloseTo(17.18, within(0.05));
        assertThat(of(f, to(600, 60), hold(600)).get(1).sags()).isTrue();
        // two minutes behind the last point
        SmallFiring on = SmallFiring.every(60, 0, 300, 300, 600, 363, 579);
        assertThat(of(on, to(600, 60), hold(600)).get(1).sagK()).isCloseTo(18.18, within(0.05));
        // with gas alone it is to be kept too; with neither nothing keeps it
        assertThat(of(f, to(600, 60), off(gas(hold(600)))).get(1).sagK()).isGreaterThan(10);
        assertThat(of(f, to(600, 60), off(hold(600))).get(1).sagK()).isZero();
        assertThat(of(f, to(600, 60), to(700, 60)).get(1).sagK()).isZero();
        // a hold by itself, from its own start
        assertThat(of(SmallFiring.every(60, 0, 600, 60, 580), hold(600)).get(0).sagK())
                .isCloseTo(20, within(0.05));
        StepRecord ten = new StepRecord(0, 0, 1, 1, 1, 1, 0, 10);
        assertThat(ten.sags()).isFalse();
        assertThat(new StepRecord(0, 0, 1, 1, 1, 1, 0, 10.1).sags()).isTrue();
    }

    @Test
    void fromTheTroughAndToThePeak() {
        SmallFiring f = SmallFiring.every(60, 0, 300, 300, 600, 310, 580, 450, 720);
        List<StepRecord> all = of(f, to(600, 60), gas(to(900, 60)));
        went(all.get(0), 0, 0, 300, 300, 600);
        went(all.get(1), 1, 310, 580, 450, 720);
        // what was kept is the peak before
        SmallFiring low = SmallFiring.every(60, 0, 300, 300, 600, 310, 580, 450, 585);
        assertThat(of(low, to(600, 60), gas(hold(600))).get(1).sagK()).isCloseTo(15, within(0.05));
    }

    private static SmallFiring goesOn(double perHour) {
        return SmallFiring.every(60, 0, 300, 300, 600, 420, 600 + 2 * perHour);
    }

    @Test
    void heldWhileItStandsOpen() {
        // level from 300 min: to the end of the fifteen minutes
        assertThat(of(level(480), to(600, 60), gas(to(900, 60))).get(1).startS())
                .isEqualTo(315.0 * MINUTE);
        // climbing at once: from the start
        assertThat(of(SmallFiring.every(60, 0, 300, 400, 700), to(600, 60), gas(to(900, 60)))
                        .get(1)
                        .startS())
                .isEqualTo(300.0 * MINUTE);
        // held to 310 min, then 70 °C/h: the line is 2.5 °C up there already
        assertThat(of(SmallFiring.every(60, 0, 300, 300, 600, 310, 600, 400, 705), to(600, 60), gas(to(900, 60)))
                        .get(1)
                        .startS())
                .isEqualTo(305.0 * MINUTE);
        // no faster than 15 °C/h it is held: five minutes behind the corner a ninth of the change before it still
        // shows, 9 + 5.5 and 11 + 5.3
        assertThat(of(goesOn(9), to(600, 60), gas(to(900, 60))).get(1).startS()).isGreaterThan(300.0 * MINUTE);
        assertThat(of(goesOn(11), to(600, 60), gas(to(900, 60))).get(1).startS())
                .isEqualTo(300.0 * MINUTE);
        assertThat(of(level(480), to(600, 60), to(900, 60)).get(1).startS()).isEqualTo(300.0 * MINUTE);
        // the end of the record comes first
        assertThat(of(level(315), to(600, 60), gas(to(900, 60))).get(1).startS())
                .isEqualTo(310.0 * MINUTE);
    }
}
