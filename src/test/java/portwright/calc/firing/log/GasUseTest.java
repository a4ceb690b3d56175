package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.cone;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.to;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/** Gas of a record, by hand: 0.1 g/s at the design's pressure, which is 6 g a minute; flow goes as the root of pressure. */
class GasUseTest {
    private double[] steps;

    private GasUse use(SmallFiring f, double fromS, Step... plan) {
        steps = new double[plan.length];
        return GasUse.of(f.by(plan), fromS, steps);
    }

    private static void is(GasUse u, double least, double kg, double most) {
        assertThat(u.leastKg()).isCloseTo(least, within(1e-9));
        assertThat(u.kg()).isCloseTo(kg, within(1e-9));
        assertThat(u.mostKg()).isCloseTo(most, within(1e-9));
    }

    /** 100 °C/h for five hours, a row a minute. */
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 300, 520);
    }

    @Test
    void sumsAndRests() {
        GasUse a = new GasUse(2, 1.5, 3);
        is(a.plus(new GasUse(1, 0.5, 1.25)), 2, 3, 4.25);
        is(a.less(new GasUse(1, 0.5, 1.25)), 1, 1, 1.75);
        is(GasUse.of(4), 4, 4, 4);
    }

    @Test
    void whetherTheRangeIsWorthTelling() {
        assertThat(new GasUse(1, 0.979, 1).open()).isTrue();
        assertThat(new GasUse(1, 0.981, 1).open()).isFalse();
        assertThat(new GasUse(0.2, 0.1949, 0.2).open()).isTrue();
        assertThat(new GasUse(0.2, 0.1951, 0.2).open()).isFalse();
    }

    @Test
    void betweenTwoRowsItMayHaveTurnedAnyTime() {
        // on in the minute before 100, off in that before 200: 99 to 101 minutes
        is(use(climb().gas(0, 0).gas(100, 2740).gas(200, 0), 0, gas(full(1200))), 0.594, 0.6, 0.606);
        assertThat(steps[0]).isCloseTo(0.6, within(1e-9));
        // a quarter of the pressure is half the flow: 199 min of all, a minute between, 100 min of half
        is(use(climb().gas(0, 2740).gas(200, 685), 0, gas(full(1200))), 1.497, 1.4985, 1.5);
    }

    @Test
    void fromATimeOn() {
        is(use(climb().gas(0, 2740), 6000, gas(full(1200))), 1.2, 1.2, 1.2);
        is(use(climb().gas(0, 2740), 6001, gas(full(1200))), 1.194, 1.194, 1.194);
        is(use(climb(), 6000, gas(full(1200))), 1.2, 1.2, 1.2);
    }

    @Test
    void withoutAColumnAsPlanned() {
        is(use(climb(), 0, gas(full(1200))), 1.8, 1.8, 1.8);
        is(use(climb(), 0, full(1200)), 0, 0, 0);
        // ten minutes open after 300 min (kiln practice, safety_numbers.csv), then gas to 400
        is(use(SmallFiring.every(60, 0, 300, 400, 700), 0, to(600, 60), gas(to(900, 60))), 0.54, 0.54, 0.54);
        assertThat(steps[0]).isZero();
        assertThat(steps[1]).isCloseTo(0.54, within(1e-9));
        // behind the last goal, met at 170 min (297 °C), none
        is(use(climb(), 0, gas(full(300))), 1.02, 1.02, 1.02);
    }

    @Test
    void rowsThatDoNotMeetThePoints() {
        // a row each seven minutes to 399 min, four behind the last point; lit at 310
        SmallFiring f = SmallFiring.every(420, 0, 300, 399, 699);
        is(use(f, 0, to(600, 60), gas(to(900, 60))), 0.534, 0.534, 0.534);
        assertThat(steps[1]).isCloseTo(0.534, within(1e-9));
        // from 350 min on
        is(use(f, 21_000, to(600, 60), gas(to(900, 60))), 0.294, 0.294, 0.294);
    }

    @Test
    void beforeTheFirstPressureItMayHaveBeenOff() {
        // 99 min by the plan or none, a minute in which it came on, 200 min
        is(use(climb().gas(100, 2740), 0, gas(full(1200))), 1.2, 1.797, 1.8);
        is(use(climb().gas(100, 2740), 0, full(1200)), 1.2, 1.203, 1.206);
    }

    @Test
    void behindTheLastGoalUnlessWritten() {
        // the goal is met at point 34, 170 min
        is(use(climb().gas(0, 2740), 0, gas(full(300))), 1.02, 1.8, 1.8);
        is(use(climb().gas(0, 2740).gas(300, 2740), 0, gas(full(300))), 1.026, 1.8, 1.8);
        assertThat(steps[0]).isCloseTo(1.02, within(1e-9));
    }

    @Test
    void inAGapItMayHaveBeenOff() {
        is(use(climb().gas(0, 2740).without(100, 150), 0, gas(full(1200))), 1.5, 1.8, 1.8);
        is(use(climb().without(100, 150), 0, gas(full(1200))), 1.5, 1.8, 1.8);
    }

    /** A row each ten minutes; the cone is noted at 400 min, so it fell between 390 and 400. */
    @Test
    void aConeThatEndsAStepWithGas() {
        SmallFiring f = SmallFiring.every(600, 0, 600, 500, 1100).cone(400, "05");
        is(use(f, 0, gas(cone("05", 60)), to(1200, 60)), 2.34, 2.37, 2.40);
        assertThat(steps[0]).isCloseTo(2.37, within(1e-9));
        assertThat(steps[1]).isZero();
        // the step after it burns on
        is(use(f, 0, gas(cone("05", 60)), gas(to(1200, 60))), 3, 3, 3);
        assertThat(steps[0]).isCloseTo(2.4, within(1e-9));
        assertThat(steps[1]).isCloseTo(0.6, within(1e-9));
        // as the last step
        is(use(f, 0, gas(cone("05", 60))), 2.34, 2.37, 2.40);
        // by electricity; gas after ten minutes open from 390 on
        is(use(f, 0, cone("05", 60), gas(to(1200, 60))), 0.6, 0.6, 0.6);
        assertThat(steps[1]).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void aConeNotedBetweenTwoPoints() {
        // fallen between 402 and 403 min; the next point is at 405
        SmallFiring f = SmallFiring.every(60, 0, 600, 500, 1100).cone(403, "05");
        is(use(f, 0, gas(cone("05", 60)), to(1200, 60)), 2.412, 2.415, 2.418);
        assertThat(steps[0]).isCloseTo(2.415, within(1e-9));
        is(use(f, 0, gas(cone("05", 60)), gas(to(1200, 60))), 3, 3, 3);
        assertThat(steps[1]).isCloseTo(0.582, within(1e-9));
        is(use(f, 0, gas(cone("05", 60))), 2.412, 2.415, 2.418);
    }
}
