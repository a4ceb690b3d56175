package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Step;

/** Small questions to a record, each from both sides: all limits are this project's judgement (no source), powers by hand (100 °C/h are 1 kW of 10). */
class SmallDoubtsTest {
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 300, 520);
    }

    private static void needs(Followed f, IntToDoubleFunction watts) {
        for (int i = 0; i < f.intervals(); i++) {
            Replay.Need n = f.logged.get(i);
            f.logged.set(i, new Replay.Need(n.timeS(), n.chamberK(), watts.applyAsDouble(i), n.begin(), n.flow()));
        }
    }

    @Test
    void howFarAThermocoupleMayBeOff() {
        // 60 K at cone 10 (1285 °C, cone chart from memory), twice 0.75 % (standard tolerance); by cones 15 K
        ProbeBand b = ProbeBand.of(List.of());
        assertThat(b.lowShare()).isCloseTo(0.046693, within(1e-6));
        assertThat(b.highShare()).isCloseTo(0.015, within(1e-12));
        assertThat(b.sdShare()).isCloseTo(0.023346, within(1e-6));
        ProbeBand c = ProbeBand.of(List.of(new ConeOffset("10", 0, 1500, 1, 1)));
        assertThat(c.lowShare()).isCloseTo(0.011673, within(1e-6));
        assertThat(c.highShare()).isEqualTo(c.lowShare());
        assertThat(c.sdShare()).isCloseTo(0.0058366, within(1e-6));
    }

    /** The plan's plate gives lambda 0.9. */
    @Test
    void aPlateThatLetsTooMuchAirIn() {
        Step burning = gas(full(1200));
        assertThat(LeanAir.from(
                        climb().gas(0, 2740).damper(0, 0.45).damper(100, 0.53).by(burning)))
                .isEqualTo(20);
        assertThat(LeanAir.from(
                        climb().gas(0, 2740).damper(0, 0.45).damper(100, 0.52).by(burning)))
                .isEqualTo(-1);
        assertThat(LeanAir.from(climb().gas(0, 2740).damper(0, 0.53).by(burning)))
                .isZero();
        // four in a row
        assertThat(LeanAir.from(
                        climb().gas(0, 2740).damper(0, 0.45).damper(280, 0.6).by(burning)))
                .isEqualTo(56);
        assertThat(LeanAir.from(
                        climb().gas(0, 2740).damper(0, 0.45).damper(285, 0.6).by(burning)))
                .isEqualTo(-1);
        // not logged, or without gas
        assertThat(LeanAir.from(climb().gas(0, 2740).plannedDamper(0.9).by(burning)))
                .isEqualTo(-1);
        assertThat(LeanAir.from(climb().gas(0, 0).damper(0, 0.6).by(burning))).isEqualTo(-1);
        assertThat(LeanAir.from(
                        climb().gas(0, 2740).damper(0, 0.6).plannedDamper(0).by(burning)))
                .isEqualTo(-1);
        Followed f = climb().gas(0, 2740).damper(0, 0.6).by(burning);
        f.blind[2] = true;
        assertThat(LeanAir.from(f)).isEqualTo(3);
    }

    /** Rows ten minutes apart with gas; the plate is at half. */
    private static Turned turned(double every, double damper, double pa, Step step) {
        return SmallFiring.every(every * 60, 0, 20, 300, 520)
                .gas(0, 2740)
                .damper(0, 0.5)
                .damper(10 * every, damper)
                .gas(10 * every, pa)
                .by(step)
                .turned;
    }

    @Test
    void settingsTurnedBetweenRowsFarApart() {
        Turned t = turned(10, 0.53, 2740, gas(full(1200)));
        assertThat(t.spans()).containsExactly(new Gap(11, 12, 5400, 6000));
        assertThat(t.at(17)).isFalse();
        assertThat(t.at(18)).isTrue();
        assertThat(t.at(19)).isTrue();
        assertThat(t.at(20)).isFalse();
        assertThat(turned(10, 0.519, 2740, gas(full(1200))).spans()).isEmpty();
        assertThat(turned(10, 0.47, 2740, gas(full(1200))).spans()).hasSize(1);
        // eight minutes part two settings as well as smoothing does
        assertThat(turned(8, 0.9, 2740, gas(full(1200))).spans()).isEmpty();
        // flow as the root of pressure: 1.33 is 15.3 % more, 1.31 14.5 %
        assertThat(turned(10, 0.5, 2740 * 1.33, gas(full(1200))).spans()).hasSize(1);
        assertThat(turned(10, 0.5, 2740 * 1.31, gas(full(1200))).spans()).isEmpty();
        assertThat(turned(10, 0.5, 0, gas(full(1200))).spans()).hasSize(1);
    }

    @Test
    void aPlateMattersWherePortsAreOpenAndGasEverywhere() {
        SmallFiring f =
                SmallFiring.every(600, 0, 20, 300, 520).gas(0, 0).damper(0, 0.5).damper(100, 0.9);
        assertThat(f.by(full(1200)).turned.spans()).isEmpty();
        assertThat(f.by(SmallFiring.open(full(1200))).turned.spans()).hasSize(1);
        f = SmallFiring.every(600, 0, 20, 300, 520).gas(0, 0).gas(100, 100);
        assertThat(f.by(full(1200)).turned.spans()).hasSize(1);
        // the first pressure written is no turn, unless it is far from the design's
        f = SmallFiring.every(600, 0, 20, 300, 520).gas(100, 2740);
        assertThat(f.by(full(1200)).turned.spans()).isEmpty();
        f = SmallFiring.every(600, 0, 20, 300, 520).gas(100, 5000);
        assertThat(f.by(full(1200)).turned.spans()).hasSize(1);
        f = SmallFiring.every(600, 0, 20, 300, 520).gas(0, 5000).damper(0, 0.3);
        assertThat(f.by(gas(full(1200))).turned.spans()).isEmpty();
    }

    /** 4 kW asked and 1 kW found; before point 20 as much as is set. */
    private static Followed sixty(IntToDoubleFunction watts) {
        Followed f = climb().by(share(full(1200), 0.6), share(full(1300), 0.9));
        needs(f, watts);
        return f;
    }

    @Test
    void whatTheMinutesBeforeTheFirstThatTellShow() {
        // 5 kW of 6: a tenth missing, where later half is
        Followed f = sixty(i -> i == 16 || i == 17 ? 5000 : 1000);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isEqualTo(18 * 300.0);
        // a third less the 17 % of a weak kiln
        assertThat(JustBefore.soundS(f, 20, 0.28)).isEqualTo(18 * 300.0);
        assertThat(JustBefore.soundS(f, 20, 0.26)).isNaN();
        assertThat(JustBefore.soundS(sixty(i -> 1000), 20, 0.5)).isNaN();
        assertThat(JustBefore.soundS(sixty(i -> i == 15 || i == 17 ? 5000 : 1000), 20, 0.5))
                .isNaN();
        // nine points back, no farther; not the first that tells itself
        assertThat(JustBefore.soundS(sixty(i -> i == 11 || i == 12 ? 5000 : 1000), 20, 0.5))
                .isEqualTo(13 * 300.0);
        assertThat(JustBefore.soundS(sixty(i -> i == 10 || i == 11 ? 5000 : 1000), 20, 0.5))
                .isNaN();
        assertThat(JustBefore.soundS(sixty(i -> i == 19 || i == 20 ? 5000 : 1000), 20, 0.5))
                .isNaN();
        assertThat(JustBefore.soundS(sixty(i -> i < 2 ? 5000 : 1000), 5, 0.5)).isEqualTo(600.0);
    }

    @Test
    void anotherStepThatMayAskMore() {
        Followed f = sixty(i -> i == 16 || i == 17 ? 5000 : 1000);
        // two points behind one the step of 90 % may be in force: 0.9 − 0.5 is missing there
        Arrays.fill(f.tracker.byProbe.last(), 18, 61, 1);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        Arrays.fill(f.tracker.byProbe.last(), 18, 20, 0);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isEqualTo(18 * 300.0);
        // nor behind the last one: the last step's share counts
        f = sixty(i -> i == 16 || i == 17 ? 7200 : 1000);
        Arrays.fill(f.tracker.byProbe.last(), 18, 61, 2);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isEqualTo(18 * 300.0);
        // a step before that may still be on two points earlier
        f = climb().by(share(full(1200), 0.9), share(full(1300), 0.6));
        needs(f, i -> i == 16 || i == 17 ? 5000 : 1000);
        Arrays.fill(f.tracker.byProbe.last(), 1);
        Arrays.fill(f.tracker.byProbe.first(), 14, 61, 1);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isEqualTo(18 * 300.0);
        Arrays.fill(f.tracker.byProbe.first(), 14, 16, 0);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        // one that a controller leads may ask all
        f = climb().by(to(1200, 100));
        needs(f, i -> i == 16 || i == 17 ? 7200 : 1000);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isEqualTo(18 * 300.0);
        needs(f, i -> i == 16 || i == 17 ? 6600 : 1000);
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
    }

    @Test
    void minutesThatDoNotTell() {
        IntToDoubleFunction watts = i -> i == 16 || i == 17 ? 5000 : 1000;
        Followed f = sixty(watts);
        f.blind[17] = true;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        f = sixty(watts);
        f.tracker.unsure[17] = true;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        f = sixty(watts);
        f.tracker.step[17] = -1;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        f = sixty(watts);
        f.grid.reachS()[17] = 481;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        f = sixty(watts);
        f.tracker.byProbe.last()[17] = 2;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        f = sixty(watts);
        f.grid.gasPa()[17] = 2740;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
        f.grid.gasPa()[20] = 2740;
        f.grid.gasPa()[16] = 2740;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isEqualTo(18 * 300.0);
        f.grid.gasPa()[16] = 2740 * 1.16 * 1.16;
        assertThat(JustBefore.soundS(f, 20, 0.5)).isNaN();
    }

    private static boolean doubted(double share, double leaksW) {
        return GasDoubt.of(climb().leaks(c -> leaksW).by(gas(share(full(1200), share))));
    }

    /** 1 kW is found with the plan's gas; with ports plugged what leaks take comes to it. */
    @Test
    void aLogThatFitsElectricityBetterThanGas() {
        // of 4 kW three quarters are missing with gas; without it nothing, or half of that and less
        assertThat(doubted(0.4, 3000)).isTrue();
        assertThat(doubted(0.4, 1600)).isTrue();
        assertThat(doubted(0.4, 1400)).isFalse();
        assertThat(doubted(0.4, 4400)).isTrue();
        assertThat(doubted(0.4, 4600)).isFalse();
        // 12 % with gas are no news: 1 of 1.15 kW is 13 %, of 1.12 11 %
        assertThat(doubted(0.115, 140)).isTrue();
        assertThat(doubted(0.112, 120)).isFalse();
    }

    @Test
    void whatALogTellsOfGasIsNoDoubt() {
        Step plan = gas(share(full(1200), 0.4));
        assertThat(GasDoubt.of(climb().leaks(c -> 3000).gas(0, 2740).by(plan))).isFalse();
        assertThat(GasDoubt.of(climb().leaks(c -> 3000).damper(0, 0.45).by(plan)))
                .isFalse();
        assertThat(GasDoubt.of(climb().leaks(c -> 3000).by(share(full(1200), 0.4))))
                .isFalse();
        assertThat(GasDoubt.of(
                        new Followed(climb().leaks(c -> 3000).beside(plan).unplanned(), true)))
                .isFalse();
        // six intervals at known power
        Followed f = climb().leaks(c -> 3000).by(plan);
        Arrays.fill(f.asked, 6, 60, Double.NaN);
        assertThat(GasDoubt.of(f)).isTrue();
        f.asked[5] = Double.NaN;
        assertThat(GasDoubt.of(f)).isFalse();
        f.asked[5] = 0;
        assertThat(GasDoubt.of(f)).isFalse();
    }

    /** 600 °C/h take 6 of 10 kW; over 450 °C from 43 min on. */
    @Test
    void whatAFiringOfItsOwnTook() {
        SmallFiring fast = SmallFiring.every(60, 0, 20, 120, 1220);
        assertThat(OwnFiring.of(fast.by(full(1250)))).isNull();
        Followed f = new Followed(fast.beside(full(1250)).unplanned(), true);
        assertThat(OwnFiring.of(f).mostShare()).isCloseTo(0.6, within(0.003));
        assertThat(OwnFiring.of(f).why()).isEqualTo(OtherFiring.Why.NOT);
        // half an hour at 8 kW from point 12 on: its median is first reached from point 10 on, four of six; read in the
        // middle, 20 + 13 · 50 °C
        needs(f, i -> i >= 12 && i < 18 ? 8000 : 3000);
        assertThat(OwnFiring.of(f).mostShare()).isCloseTo(0.8, within(1e-9));
        assertThat(OwnFiring.of(f).mostK() - 273.15).isCloseTo(670, within(0.1));
        // the last half hour counts, a shorter one and one at 450 °C and below do not
        needs(f, i -> i >= 18 ? 8000 : 3000);
        assertThat(OwnFiring.of(f).mostShare()).isCloseTo(0.8, within(1e-9));
        needs(f, i -> i >= 22 ? 8000 : 3000);
        assertThat(OwnFiring.of(f).mostShare()).isCloseTo(0.3, within(1e-9));
        needs(f, i -> i < 9 ? 8000 : 3000);
        assertThat(OwnFiring.of(f).mostShare()).isCloseTo(0.3, within(1e-9));
        needs(f, i -> i >= 12 && i < 18 ? 8000 : 3000);
        Arrays.fill(f.blind, 14, 16, true);
        assertThat(OwnFiring.of(f).mostShare()).isCloseTo(0.3, within(1e-9));
        Followed cold = new Followed(climb().beside(full(1250)).unplanned(), true);
        assertThat(OwnFiring.of(cold).mostShare()).isCloseTo(0.1, within(0.001));
        Followed none = new Followed(
                SmallFiring.every(60, 0, 20, 300, 420).beside(full(1250)).unplanned(), true);
        assertThat(OwnFiring.of(none).mostShare()).isNaN();
        assertThat(OwnFiring.of(none).mostK()).isNaN();
        Followed gas = new Followed(fast.elements(0).beside(full(1250)).unplanned(), true);
        assertThat(OwnFiring.of(gas).mostShare()).isNaN();
    }
}
