package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The minutes with open ports where gas is lit and put out are part of the firing: the step after them begins from what they leave. */
class OpenMinutesTest {
    private static final double LOST_AIR = 0.006;

    private static Step gas(Step.Goal goal) {
        return new Step(goal, Step.FULL, true, true, 0.6, true, new Step.Share(0.6));
    }

    private static FiringRun run(double powerW, double idleKgPerS, Numerics n, Step... steps) {
        return Simulation.run(
                TestKilns.decagon(powerW, 1.1, 70, TestKilns.FIVE_PORTS),
                new AvailableHeat(4000, 0.9, idleKgPerS),
                List.of(steps),
                List.of(),
                n);
    }

    private static FiringRun full(double powerW, double idleKgPerS, Numerics n) {
        return run(
                powerW,
                idleKgPerS,
                n,
                Step.electric(TestKilns.to(907), 100 / 3600.0),
                gas(TestKilns.to(960)),
                gas(TestKilns.to(1050)),
                TestKilns.full(TestKilns.to(1080)),
                TestKilns.full(new Step.Hold(1200)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {8000, 11500})
    void aStepBeginsWhereTheMinutesEnd(double powerW) {
        FiringRun r = full(powerW, LOST_AIR, Numerics.STANDARD);
        assertThat(r.reached()).isTrue();
        assertThat(r.openSpells()).extracting(OpenSpell::step).containsExactly(1, 3);
        assertThat(r.openSpells()).extracting(OpenSpell::lighting).containsExactly(true, false);
        for (int i = 1; i < r.steps().size(); i++) {
            StepResult a = r.steps().get(i - 1);
            StepResult b = r.steps().get(i);
            OpenSpell s = r.before(i).orElse(null);
            assertThat(b.startS() - a.endS())
                    .as("step %d: ten minutes open, five of clean fire", i)
                    .isCloseTo(s == null ? 0 : s.lighting() ? 900 : 600, within(1e-6));
            assertThat(b.startK()).isEqualTo(s == null ? a.endK() : s.endK());
            if (s != null) {
                assertThat(s.fromK()).isEqualTo(a.endK());
            }
        }
    }

    @Test
    void clockHeatAndGasAreThoseOfStepsAndMinutes() {
        FiringRun r = full(11500, LOST_AIR, Numerics.STANDARD);
        double s = 0;
        double electric = 0;
        double fuel = 0;
        for (StepResult x : r.steps()) {
            s += x.seconds();
            electric += x.electricJ();
            fuel += x.fuelKg();
        }
        for (OpenSpell x : r.openSpells()) {
            s += x.endS() - x.startS();
            electric += x.electricJ() + x.cleanElectricJ();
            fuel += x.cleanFuelKg();
        }
        assertThat(r.endS()).isCloseTo(s, within(1e-6));
        assertThat(r.electricJ()).isCloseTo(electric, within(1e-6 * electric));
        assertThat(r.fuelKg()).isCloseTo(fuel, within(1e-9));
        assertThat(r.energy().fuelNetJ())
                .isCloseTo(fuel * 46.34e6, within(1e-3 * r.energy().fuelNetJ()));
        assertThat(Math.abs(r.energy().closure())).isLessThan(1e-9);
        assertThat(r.samples().stream()
                        .filter(Sample::between)
                        .mapToInt(Sample::step)
                        .distinct())
                .containsExactly(1, 3);
    }

    /** By hand: what the air carries out in ten minutes has to be made up for, by the elements in the minutes or by a longer next step. */
    @Test
    void whatIsLostTheNextStepsWinBack() {
        FiringRun none = full(8000, 0, Numerics.STANDARD);
        FiringRun lost = full(8000, LOST_AIR, Numerics.STANDARD);
        StepResult a = none.steps().get(3);
        StepResult b = lost.steps().get(3);
        assertThat(b.startK()).isLessThan(a.startK() - 20);
        assertThat(b.seconds()).isGreaterThan(a.seconds() + 300);
        double hand = 600 * LOST_AIR * 1100 * (1323.15 - 293.15) + 600 * LOST_AIR * 1100 * (1180 - 293.15);
        double air = 0;
        for (int i = 0; i < 2; i++) {
            air += lost.openSpells().get(i).lostJ() - none.openSpells().get(i).lostJ();
        }
        assertThat(air).isCloseTo(hand, within(0.06 * hand));
        assertThat(lost.electricJ() - none.electricJ())
                .as("and walls for longer")
                .isGreaterThan(hand);
    }

    @Test
    void aHoldGetsBackToWhatTheGasLeftWhereThePowerIsThere() {
        Step[] steps = {
            Step.electric(TestKilns.to(907), 100 / 3600.0),
            gas(TestKilns.to(1050)),
            Step.electric(new Step.Hold(2400), Step.FULL)
        };
        assertThat(run(11500, LOST_AIR, Numerics.STANDARD, steps).endK()).isCloseTo(1323.15, within(0.5));
        StepResult weak = run(6500, LOST_AIR, Numerics.STANDARD, steps).last();
        assertThat(weak.startK()).isLessThan(1323.15 - 30);
        assertThat(weak.endK()).isBetween(weak.startK(), 1323.15 - 5);
    }

    @Test
    void aCoolingStepThatTheMinutesOvertakeIsOverAndDoesNotHeat() {
        Step down = new Step(TestKilns.to(1040), Step.FULL, true, false, Step.CONTROLLER, false, new Step.Share(1));
        StepResult r = run(
                        11500,
                        0.02,
                        Numerics.STANDARD,
                        Step.electric(TestKilns.to(907), 100 / 3600.0),
                        gas(TestKilns.to(1050)),
                        down)
                .last();
        assertThat(r.reached()).isTrue();
        assertThat(r.seconds()).isZero();
        assertThat(r.endK()).isLessThan(1313.15);
    }

    @Test
    void halvingTheTimeStepChangesLittle() {
        FiringRun a = full(8000, LOST_AIR, Numerics.STANDARD);
        FiringRun b = full(8000, LOST_AIR, Numerics.STANDARD.halfStep());
        assertThat(a.endS()).isCloseTo(b.endS(), within(0.005 * b.endS()));
        for (int i = 0; i < 2; i++) {
            assertThat(a.openSpells().get(i).toK())
                    .isCloseTo(b.openSpells().get(i).toK(), within(1.0));
        }
    }

    @Test
    void withoutGasTheKilnStaysShut() {
        FiringRun r = run(
                9600,
                LOST_AIR,
                Numerics.STANDARD,
                Step.electric(TestKilns.to(907), 100 / 3600.0),
                TestKilns.full(TestKilns.to(1000)));
        assertThat(r.openSpells()).isEmpty();
        assertThat(r.samples()).noneMatch(Sample::between);
    }
}
