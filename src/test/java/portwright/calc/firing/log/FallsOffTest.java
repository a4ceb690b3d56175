package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/** Elements that are all on and give too little, told by a climb that falls off at a power that stays. Limits are this project's judgement. */
class FallsOffTest {
    /** Ten hours at a share of full power in a kiln that loses 5 W/K: T − room = share · 2000 (1 − exp(−t / 10 h)). */
    private static HandLog record(double share) {
        return new HandLog(20).of(HandLog.kiln(1, 5)).fire(600, share, 5);
    }

    private static LogFinding of(Followed f) {
        return FallsOff.of(f, f.c.steps().size(), f.intervals());
    }

    /** 450 °C are passed at 0.3 · …: 1400 (1 − exp(−t/10)) = 430 at 3.67 h, interval 44; the first of two windows begins there. */
    @Test
    void aThirdIsMissing() {
        Followed f = record(0.7).followed(HandLog.full(1300));
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.timeS()).isEqualTo(45 * 300);
        assertThat(x.kelvin()).isCloseTo(293.15 + 1400 * (1 - Math.exp(-0.375)), within(0.5));
        assertThat(x.lostShare()).isCloseTo(0.3, within(1e-3));
        assertThat(x.lostW()).isCloseTo(3000, within(10.0));
        assertThat(x.behind()).isTrue();
        assertThat(x.orProbe()).isTrue();
        assertThat(x.fromStart()).isFalse();
    }

    @Test
    void theLimits() {
        for (double share : new double[] {0.755, 0.765, 0.825, 0.835}) {
            LogFinding x = of(record(share).followed(HandLog.full(1400)));
            Kind kind = x == null ? null : x.kind();
            assertThat(kind).isEqualTo(share < 0.76 ? Kind.ELEMENT : share < 0.83 ? Kind.WEAK : null);
        }
    }

    /** A fixed share of 0.8 asks less: 0.19 missing of it are 0.24 of it, a circuit. */
    @Test
    void ofAFixedShare() {
        LogFinding x = of(record(0.6).followed(HandLog.share(1300, 0.8)));
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.lostShare()).isCloseTo(0.25, within(1e-3));
        assertThat(of(record(0.615).followed(HandLog.share(1300, 0.8))).kind()).isEqualTo(Kind.WEAK);
        assertThat(of(record(0.6).followed(HandLog.share(1300, 0.6)))).isNull();
    }

    /** Of two steps that may be in force the one that asks less is the measure. */
    @Test
    void theLeastThatMayBeAsked() {
        Followed f = record(0.6).followed(HandLog.share(1300, 0.8), HandLog.share(1350, 0.7));
        assertThat(of(f).lostShare()).isCloseTo(0.25, within(1e-3));
        Arrays.fill(f.tracker.byProbe.last(), 1);
        assertThat(of(f)).isNull();
        Followed over = record(0.6).followed(HandLog.share(1300, 0.8));
        Arrays.fill(over.tracker.byProbe.last(), 1);
        assertThat(FallsOff.of(over, 2, over.intervals()).lostShare()).isCloseTo(0.25, within(1e-3));
        Followed led = record(0.6).followed(HandLog.share(1300, 0.8), HandLog.hold(60));
        Arrays.fill(led.tracker.byProbe.last(), 1);
        assertThat(of(led).lostShare()).isCloseTo(0.25, within(1e-3));
    }

    /** Two windows of an hour, ten minutes apart, need 26 intervals before the end. */
    @Test
    void theEnd() {
        Followed f = record(0.7).followed(HandLog.full(1300));
        assertThat(FallsOff.of(f, 1, 45 + 26)).isNotNull();
        assertThat(FallsOff.of(f, 1, 45 + 25)).isNull();
        assertThat(FallsOff.of(f, 1, 5)).isNull();
        f.tracker.step[45 + 26] = -1;
        assertThat(FallsOff.of(f, 1, 45 + 26)).isNotNull();
        f.tracker.step[45 + 25] = -1;
        assertThat(FallsOff.of(f, 1, 45 + 26)).isNull();
    }

    @Test
    void wherePartOfItTellsNothing() {
        Followed gas = record(0.7).followed(HandLog.full(1300));
        assertThat(FallsOff.of(gas, 0, gas.intervals())).isNull();
        Followed over = record(0.7).followed(HandLog.full(1300));
        Arrays.fill(over.tracker.step, -1);
        assertThat(of(over)).isNull();
        Followed cold = record(0.7).followed(HandLog.full(1300));
        Arrays.fill(cold.kelvin, 723.15);
        assertThat(of(cold)).isNull();
        Arrays.fill(cold.kelvin, 723.2);
        assertThat(of(cold).timeS()).isLessThan(45 * 300);
        Followed blind = record(0.7).followed(HandLog.full(1300));
        Arrays.fill(blind.blind, true);
        assertThat(of(blind)).isNull();
        // One interval of the second window alone, again and again.
        Followed spots = record(0.7).followed(HandLog.full(1300));
        for (int i = 11; i < spots.intervals(); i += 12) {
            spots.tracker.byProbe.last()[i] = 7;
        }
        assertThat(of(spots)).isNull();
    }

    /** Behind 0.8 of the rate asked, from where the step began: 1400 (1 − exp(−t / 10)) at 6 h are 632 K, at 10 h 885 K. */
    @Test
    void behindARate() {
        LogFinding fast = of(record(0.7).followed(HandLog.rate(1300, 200)));
        assertThat(fast.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(fast.timeS()).isEqualTo(45 * 300);
        assertThat(of(record(0.7).followed(HandLog.rate(1300, 100)))).isNull();
        // 0.8 · 140 = 112 K/h: 1400 (1 − exp(−t / 10)) falls 8 K behind 112 t at 4.96 h; a window of an hour ends
        // there that begins at 3.96 h or later, interval 48.
        LogFinding some = of(record(0.7).followed(HandLog.rate(1300, 140)));
        assertThat(some.timeS()).isEqualTo(48 * 300);
    }

    /** A controller that led the kiln at 90 K/h and then could not: the plan's 100 K/h is not the measure, its own pace is. */
    @Test
    void behindItsOwnPace() {
        HandLog h = new HandLog(20).of(HandLog.kiln(1, 5)).climb(240, 90);
        Followed f = h.fire(300, 0.52, 5).followed(HandLog.rate(1300, 100));
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        // At 380 °C 1.8 kW are lost; 3.4 kW climb by 68 K/h less 0.5 a quarter of an hour and fall 8 K behind 90 K/h
        // within 20 minutes, so the window that begins when the reading passes 450 °C tells, 5.05 h.
        assertThat(x.timeS()).isBetween(60.0 * 300, 62.0 * 300);
        assertThat(x.lostShare()).isCloseTo(0.48, within(2e-3));
    }

    /** At a pace beyond 1.3 of the plan's rate another programme runs, and only 0.8 of that rate is sure to be asked. */
    @Test
    void farFasterThanThePlan() {
        HandLog h = new HandLog(20).of(HandLog.kiln(1, 5)).climb(240, 90);
        assertThat(of(h.fire(300, 0.52, 5).followed(HandLog.rate(1300, 60)))).isNull();
    }

    /** Led for 75 min at 90 K/h, then 0.66 of the power: 8 K behind 90 K/h, but not yet behind 80. */
    @Test
    void ledForAShortTime() {
        HandLog h = new HandLog(440).of(HandLog.kiln(1, 5)).climb(75, 90);
        LogFinding x = of(h.fire(300, 0.66, 5).followed(HandLog.rate(1300, 100)));
        assertThat(x.timeS()).isBetween(14.0 * 300, 18.0 * 300);
    }

    /** The line begins with the step: at 99 °C after 35 min; 0.8 of 130 K/h from there are 8 K ahead of 1400 (1 − exp(−t / 10)) at 5.88 h. */
    @Test
    void behindALaterStep() {
        Followed f = record(0.7).followed(HandLog.rate(100, 200), HandLog.rate(1300, 130));
        assertThat(f.tracker.begin[1]).isEqualTo(7);
        assertThat(of(f).timeS()).isEqualTo((71 - 12) * 300);
    }

    /** Each interval counts once, however many windows hold it: 15 of 28 at which another step asks less leave no finding, 4 do. */
    @Test
    void eachIntervalCountsOnce() {
        for (int few : new int[] {4, 15}) {
            Followed f = record(0.7).followed(HandLog.full(1300), HandLog.share(1350, 0.8));
            Arrays.fill(f.tracker.byProbe.last(), 45, 45 + Math.min(few, 8), 1);
            Arrays.fill(f.tracker.byProbe.last(), 45 + 28 - Math.max(0, few - 8), 45 + 28, 1);
            LogFinding x = FallsOff.of(f, 2, 45 + 28);
            assertThat(x == null).isEqualTo(few == 15);
        }
    }

    @Test
    void stepsThatDoNotAskForAClimb() {
        assertThat(of(record(0.7).followed(HandLog.hold(900)))).isNull();
        Step off = new Step(new Step.To(1500), Step.FULL, false, false, Double.NaN, false, new Step.Share(1));
        assertThat(of(record(0.7).followed(off))).isNull();
        Followed cools = record(0.7).followed(HandLog.full(1300));
        cools.grid.kelvin()[0] = 1600;
        assertThat(of(cools)).isNull();
        Step byHand = new Step(new Step.Hold(60_000), Step.FULL, true, false, 0.9, false, new Step.Share(1));
        assertThat(of(record(0.7).followed(byHand))).isNull();
    }

    @Test
    void theFirstGas() {
        Followed f = record(0.7).followed(HandLog.full(1300), HandLog.gas(1350));
        assertThat(FallsOff.firstGas(f)).isEqualTo(1);
        assertThat(FallsOff.firstGas(record(0.7).followed(HandLog.gas(1300)))).isZero();
        assertThat(FallsOff.firstGas(record(0.7).followed(HandLog.full(1300)))).isEqualTo(1);
    }

    /** A firing of its own, beside the plan. */
    private static Followed own(double share, OtherFiring.Why why, Step... plan) {
        Followed p = record(share).followed(plan);
        Followed f = new Followed(p.c.unplanned(), true);
        f.plan = p;
        f.other = why;
        return f;
    }

    /** All elements on at 0.9 of their power: full power is asked from 450 °C on, where both windows tell it. */
    @Test
    void fullPowerIsAsked() {
        Followed f = own(0.9, OtherFiring.Why.NO_GAS, HandLog.rate(1300, 60), HandLog.gas(1350));
        FallsOff.ask(f);
        // 1800 (1 − exp(−t / 10)) = 430 at 2.73 h, interval 32.
        assertThat(f.asked[32]).isNaN();
        assertThat(f.asked[33]).isEqualTo(HandLog.FULL_W);
        assertThat(f.asked[100]).isEqualTo(HandLog.FULL_W);
        assertThat(f.asked[f.intervals() - 1]).isEqualTo(HandLog.FULL_W);
    }

    /** What goes on below 450 °C is no measure of it, nor is a record too short for two windows. */
    @Test
    void onlyWhatTellsIsTheMeasure() {
        Followed f = own(0.9, OtherFiring.Why.NO_GAS, HandLog.rate(1300, 60));
        HandLog.gave(f, 0, 25, 0.3);
        FallsOff.ask(f);
        assertThat(f.asked[60]).isEqualTo(HandLog.FULL_W);
        assertThat(f.asked[20]).isNaN();
        HandLog h = new HandLog(500).of(HandLog.kiln(1, 5)).fire(125, 0.9, 5);
        Followed p = h.followed(HandLog.rate(1300, 60));
        Followed brief = new Followed(p.c.unplanned(), true);
        brief.plan = p;
        FallsOff.ask(brief);
        assertThat(brief.asked).containsOnly(Double.NaN);
    }

    /** Under 1 − 0.24 of full power it may be a share set by hand. */
    @Test
    void aShareSetByHand() {
        for (double share : new double[] {0.75, 0.77}) {
            Followed f = own(share, OtherFiring.Why.NO_GAS, HandLog.full(1300));
            FallsOff.ask(f);
            assertThat(Double.isNaN(f.asked[80])).isEqualTo(share < 0.76);
        }
    }

    /** Where the pace alone tells of another firing, the plan's gas may burn from its first step with gas on; a note rules that out. */
    @Test
    void notWhereGasMayBurn() {
        Followed f = own(0.9, OtherFiring.Why.OWN_RATE, HandLog.rate(600, 60), HandLog.gas(1350));
        int gas = 0;
        while (f.plan.tracker.byProbe.last()[gas] < 1) {
            gas++;
        }
        FallsOff.ask(f);
        assertThat(f.asked[gas - 1]).isEqualTo(HandLog.FULL_W);
        assertThat(f.asked[gas]).isNaN();
        Followed told = own(0.9, OtherFiring.Why.NOTE, HandLog.rate(600, 60), HandLog.gas(1350));
        FallsOff.ask(told);
        assertThat(told.asked[gas]).isEqualTo(HandLog.FULL_W);
    }

    @Test
    void nothingIsWrittenIntoAPlansFiring() {
        Followed f = record(0.9).followed(HandLog.rate(1300, 60));
        double[] before = f.asked.clone();
        FallsOff.ask(f);
        assertThat(f.asked).containsExactly(before);
        Followed cold = own(0.9, OtherFiring.Why.NO_GAS, HandLog.full(1300));
        Arrays.fill(cold.kelvin, 700);
        FallsOff.ask(cold);
        assertThat(cold.asked).containsOnly(Double.NaN);
        Followed led = own(0.9, OtherFiring.Why.NO_GAS, HandLog.full(1300));
        Arrays.fill(led.blind, true);
        FallsOff.ask(led);
        assertThat(led.asked).containsOnly(Double.NaN);
    }
}
