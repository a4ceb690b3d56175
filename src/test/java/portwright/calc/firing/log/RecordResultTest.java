package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.off;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.Step;

/** What a record of the small kiln says, by hand. Bands of lambda are this project's proposal, limits of falls and stands its judgement (no source). */
class RecordResultTest {
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 300, 520);
    }

    private static RecordResult of(SmallFiring f, Step... steps) {
        return RecordResult.of(f.beside(steps));
    }

    @Test
    void powerGasAndTime() {
        RecordResult r = of(climb().gas(0, 2740).note(100, "new cylinder"), gas(share(full(1200), 0.4)));
        // 1 of 4 kW, all 300 minutes
        assertThat(r.powerShare()).isCloseTo(0.25, within(0.001));
        assertThat(r.telling()).isEqualTo(300);
        assertThat(r.topK()).isCloseTo(793.15, within(1e-6));
        // 6 g a minute; 200 min since the refill
        assertThat(r.gasKg()).isCloseTo(1.8, within(1e-9));
        assertThat(r.gasSinceRefill().kg()).isCloseTo(1.2, within(1e-9));
        assertThat(r.gasLogged()).isTrue();
        assertThat(r.damperLogged()).isFalse();
        assertThat(r.elements()).isTrue();
        assertThat(r.reached()).isFalse();
        assertThat(r.scaleDoubted()).isFalse();
        assertThat(r.own()).isNull();
        assertThat(r.steps()).hasSize(1);
        assertThat(r.steps().get(0).gasKg()).isCloseTo(1.8, within(1e-9));
        assertThat(of(climb(), gas(share(full(1200), 0.4))).gasSinceRefill()).isNull();
        assertThat(of(climb(), gas(share(full(1200), 0.4))).gasLogged()).isFalse();
        assertThat(of(climb().elements(0), gas(full(1200))).elements()).isFalse();
    }

    private static Map<AtmosphereLevel, Double> air(double damper) {
        return of(climb().gas(0, 2740).damper(0, damper), gas(full(1200))).atmosphereS();
    }

    @Test
    void timeInEachAtmosphere() {
        assertThat(air(0.45)).containsExactly(Map.entry(AtmosphereLevel.MEDIUM, 18000.0));
        assertThat(air(0.5)).containsExactly(Map.entry(AtmosphereLevel.NEUTRAL, 18000.0));
        assertThat(air(0.6)).containsExactly(Map.entry(AtmosphereLevel.OXIDIZING, 18000.0));
        // from 100 min on at 0.9
        RecordResult r = of(climb().gas(0, 0).gas(100, 2740), full(1200));
        assertThat(r.atmosphereS().values().stream().mapToDouble(d -> d).sum() + r.unknownAtmosphereS())
                .isEqualTo(12000);
        assertThat(of(climb(), full(1200)).atmosphereS()).isEmpty();
    }

    private static double unknown(SmallFiring f) {
        return of(f, gas(full(1200))).unknownAtmosphereS();
    }

    @Test
    void timeInWhichItIsNotKnown() {
        assertThat(unknown(climb().gas(0, 2740))).isZero();
        // flow as the root of pressure: 8 % off is known, more is not
        assertThat(unknown(climb().gas(0, 2740 * 1.079 * 1.079))).isZero();
        assertThat(unknown(climb().gas(0, 2740 * 1.081 * 1.081))).isEqualTo(18000);
        assertThat(unknown(climb().gas(0, 2740 * 0.919 * 0.919))).isEqualTo(18000);
        // no air at all
        assertThat(unknown(climb().gas(0, 2740).damper(0, 0))).isEqualTo(18000);
        // in a gap, by the middle of an interval
        assertThat(unknown(climb().gas(0, 2740).without(100, 130))).isEqualTo(1800);
        assertThat(unknown(climb().gas(0, 2740).gas(125, 0).without(100, 125))).isEqualTo(1500);
    }

    /** A tenth more or less air and 15 % of gas: hypot 18 %, in four parts each way. */
    @Test
    void leastAndMostInEachAtmosphere() {
        Map<AtmosphereLevel, double[]> b =
                of(climb().gas(0, 2740).damper(0, 0.45), gas(full(1200))).atmosphereBandS();
        // 0.9 · (1 ± 0.18 k/4): 0.738 0.778 0.819 0.859 0.9 0.941 0.981 1.022 1.062
        for (AtmosphereLevel l : AtmosphereLevel.values()) {
            assertThat(b.get(l)).containsExactly(0, 18000);
        }
        b = of(climb().gas(0, 2740).damper(0, 0.6), gas(full(1200))).atmosphereBandS();
        // 1.2: from 0.984 to 1.416
        assertThat(b.get(AtmosphereLevel.OXIDIZING)).containsExactly(0, 18000);
        assertThat(b.get(AtmosphereLevel.NEUTRAL)).containsExactly(0, 18000);
        assertThat(b.get(AtmosphereLevel.LIGHT)).containsExactly(0, 0);
        // 0.85: 0.965 by three parts of four, 1.003 by all
        b = of(climb().gas(0, 2740).damper(0, 0.425), gas(full(1200))).atmosphereBandS();
        assertThat(b.get(AtmosphereLevel.OXIDIZING)).containsExactly(0, 18000);
        assertThat(b.get(AtmosphereLevel.NEUTRAL)).containsExactly(0, 0);
        b = of(climb().gas(0, 2740).damper(0, 0.8), gas(full(1200))).atmosphereBandS();
        assertThat(b.get(AtmosphereLevel.OXIDIZING)).containsExactly(18000, 18000);
    }

    @Test
    void timeWithGasInWhichAControllerHasPowerToSpare() {
        assertThat(of(climb().gas(0, 2740), gas(to(1200, 100))).ledGasS()).isEqualTo(18000);
        assertThat(of(climb().gas(0, 2740), gas(full(1200))).ledGasS()).isZero();
        assertThat(of(climb().gas(0, 2740), gas(off(to(1200, 100)))).ledGasS()).isZero();
        assertThat(of(climb(), to(1200, 100)).ledGasS()).isZero();
        // left behind from the fourth point on all elements are on: 60 of 100 °C/h
        assertThat(of(SmallFiring.every(60, 0, 20, 300, 320).gas(0, 2740), gas(to(1200, 100)))
                        .ledGasS())
                .isEqualTo(1200);
    }

    /** 100 °C/h to 520 °C, what comes then, and 100 °C/h again. */
    private static SmallFiring then(double minutes, double celsius) {
        return SmallFiring.every(60, 0, 20, 300, 520, 300 + minutes, celsius, 480, 900);
    }

    @Test
    void standsAndFalls() {
        // level for an hour: smoothing leaves 10.8 °C/h five minutes from either end
        RecordResult r = of(then(60, 520), to(1200, 100));
        assertThat(r.spells()).hasSize(1);
        Spell s = r.spells().get(0);
        assertThat(s.falls()).isFalse();
        assertThat(s.fromS()).isEqualTo(62 * 300.0);
        assertThat(s.toS()).isEqualTo(70 * 300.0);
        assertThat(s.fromK() - 273.15).isCloseTo(520, within(0.2));
        // half an hour of it: six points
        assertThat(of(then(45, 520), to(1200, 100)).spells()).hasSize(1);
        assertThat(of(then(40, 520), to(1200, 100)).spells()).isEmpty();
        // 5 °C/h is a stand, or half of a slower rate
        assertThat(of(then(60, 524), to(1200, 100)).spells()).hasSize(1);
        assertThat(of(then(60, 526), to(1200, 100)).spells()).isEmpty();
        SmallFiring slow = SmallFiring.every(60, 0, 20, 300, 520, 420, 528, 480, 628);
        assertThat(of(slow, to(520, 100), to(1200, 60)).spells()).hasSize(1);
        assertThat(of(slow, to(520, 100), to(1200, 7)).spells()).isEmpty();
        // a hold is to stand
        assertThat(of(then(60, 520), to(520, 100), hold(60), to(1200, 100)).spells())
                .isEmpty();
        // half an hour from the begin of a step counts for nothing
        assertThat(of(then(45, 520), to(520, 100), to(1200, 100)).spells()).isEmpty();
        assertThat(of(SmallFiring.every(60, 0, 20, 25, 20.5, 300, 520), to(1200, 100))
                        .spells())
                .isEmpty();
    }

    @Test
    void aFall() {
        RecordResult r = of(then(30, 490), to(1200, 100));
        assertThat(r.spells()).hasSize(1);
        Spell s = r.spells().get(0);
        assertThat(s.falls()).isTrue();
        assertThat(s.fromS()).isEqualTo(61 * 300.0);
        assertThat(s.toS()).isEqualTo(65 * 300.0);
        assertThat(s.fromK()).isGreaterThan(s.toK());
        // a quarter of an hour of it, and three degrees
        assertThat(of(then(20, 500), to(1200, 100)).spells()).hasSize(1);
        assertThat(of(then(15, 505), to(1200, 100)).spells()).isEmpty();
        assertThat(of(then(30, 517.6), to(1200, 100)).spells()).isEmpty();
        // in a hold three times as fast: 9 °C/h
        assertThat(of(then(60, 512), to(520, 100), hold(600)).spells()).isEmpty();
        assertThat(of(then(60, 505), to(520, 100), hold(600)).spells()).hasSize(1);
        // to cool is no fall, nor what comes behind the last step
        assertThat(of(SmallFiring.every(60, 0, 20, 300, 520, 400, 300), to(520, 100), to(200, 100))
                        .spells())
                .isEmpty();
        assertThat(of(SmallFiring.every(60, 0, 20, 300, 520, 400, 300), to(520, 100))
                        .spells())
                .isEmpty();
    }

    @Test
    void aFiringOfItsOwnIsSwitchedOffInTheEnd() {
        SmallFiring f = SmallFiring.every(60, 0, 20, 300, 520, 400, 300).note(0, "bisque firing");
        assertThat(of(f, to(1200, 100)).own().why()).isEqualTo(OtherFiring.Why.NOTE);
        assertThat(of(f, to(1200, 100)).spells()).isEmpty();
        f = SmallFiring.every(60, 0, 20, 300, 520, 400, 300, 460, 400).note(0, "bisque firing");
        assertThat(of(f, to(1200, 100)).spells()).hasSize(1);
    }

    @Test
    void wherePortsStandOpenOrReadingsLackNothingIsSaid() {
        // 597 °C at point 60: open ten minutes, clean five, half an hour level
        assertThat(of(SmallFiring.every(60, 0, 300, 300, 600, 330, 570, 480, 720), to(600, 60), gas(to(900, 60)))
                        .spells())
                .isEmpty();
        assertThat(of(then(60, 460).without(305, 355), to(1200, 100)).spells()).isEmpty();
    }

    @Test
    void aGoalThatIsReached() {
        assertThat(of(climb(), to(520, 100)).reached()).isTrue();
        assertThat(of(climb(), to(524, 100)).reached()).isFalse();
        assertThat(of(climb(), to(524, 100)).goalKnown()).isTrue();
        // 1430 °C and more no kiln of brick reaches
        SmallFiring hot = SmallFiring.every(60, 0, 20, 300, 1431);
        assertThat(of(hot, to(1400, 280)).reached()).isFalse();
        assertThat(of(hot, to(1400, 280)).goalKnown()).isFalse();
        assertThat(of(SmallFiring.every(60, 0, 20, 300, 1429), to(1400, 280)).reached())
                .isTrue();
    }

    @Test
    void aHoldThatKeepsItsGoal() {
        assertThat(of(then(30, 520), to(520, 100)).kept()).isTrue();
        assertThat(of(SmallFiring.every(60, 0, 300, 300, 600, 360, 598), to(600, 60), hold(60))
                        .kept())
                .isTrue();
        assertThat(of(SmallFiring.every(60, 0, 300, 300, 600, 360, 580), to(600, 60), hold(60))
                        .kept())
                .isFalse();
    }

    @Test
    void aDoubtedScaleIsReadNoFurther() {
        RecordResult r = of(climb().doubted().damper(0, 0.5).without(100, 150), full(1200));
        assertThat(r.findings()).extracting(LogFinding::kind).containsExactly(LogFinding.Kind.SCALE);
        assertThat(r.findings().get(0).falls()).isFalse();
        assertThat(r.findings().get(0).orProbe()).isFalse();
        assertThat(r.gas().kg()).isNaN();
        assertThat(r.topK()).isNaN();
        assertThat(r.telling()).isZero();
        assertThat(r.unknownAtmosphereS()).isZero();
        assertThat(r.ledGasS()).isZero();
        assertThat(r.reached()).isFalse();
        assertThat(r.gasLogged()).isFalse();
        assertThat(r.damperLogged()).isTrue();
        assertThat(r.gaps()).hasSize(1);
        assertThat(r.elements()).isTrue();
        assertThat(r.scaleDoubted()).isTrue();
        assertThat(r.gasDoubted()).isFalse();
        assertThat(of(climb().doubted().elements(0), full(1200)).elements()).isFalse();
        assertThat(of(climb().doubted(), full(1200)).damperLogged()).isFalse();
    }
}
