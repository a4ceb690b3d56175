package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Elements;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.HandLog.Lines;
import portwright.calc.firing.log.LogFinding.Kind;

/** What air, gas, relays that stay on and the thermocouple do to a record written by hand. Limits are this project's judgement. */
class DiagnosisAirTest {
    private static LogFinding only(Followed f) {
        return DiagnosisTest.only(f);
    }

    /** 120 K/h with 3 kW of gas from an interval on; a damper all open draws 8 W/K. Asked is just what was given. */
    private static Followed gas(Double damper, double from) {
        return gas(damper, from, 500);
    }

    private static Followed gas(Double damper, double from, double minutes) {
        HandLog h = new HandLog(20)
                .of(HandLog.kiln(1.2, 1))
                .of(new Lines(3000, 8, 0, 0))
                .plannedDamper(0.5)
                .damper(damper)
                .gasPa(from > 0 ? 0.0 : 2000.0)
                .climb(from * 5, 120)
                .gasPa(2000.0)
                .climb(minutes - from * 5, 120);
        return HandLog.lost(h.followed(HandLog.gas(1300)), 0, 0);
    }

    /** With gas and no damper in the log nobody knows whether an element or air takes it: heat, not a share. */
    @Test
    void gasWithoutADamper() {
        Followed f = HandLog.lost(gas(null, 0), 65, 0.33);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT_OR_AIR);
        assertThat(x.timeS()).isEqualTo(65 * 300);
        assertThat(x.lostW()).isCloseTo(0.33 * f.asked[65], within(1e-5));
        assertThat(x.lostShare()).isNaN();
        Diagnosis d = Diagnosis.of(f);
        Evidence.Loss open = new Evidence(f, f.intervals(), true).air(4, false);
        assertThat(d.smallestAir()).isCloseTo(4 * open.sd(), within(1e-12));
    }

    /** Twenty minutes before gas comes a loss may be its edge; earlier it is an element, or the air of the ports that the plan has open. */
    @Test
    void gasSoonAfter() {
        for (int at : new int[] {66, 67}) {
            Followed f = HandLog.lost(gas(null, 70), at, 0.35);
            assertThat(f.gasOn(70)).isFalse();
            assertThat(f.gasOn(71)).isTrue();
            assertThat(only(f).kind()).isEqualTo(at + 4 < 71 ? Kind.AIR_OR_ELEMENT : Kind.ELEMENT_OR_AIR);
        }
    }

    /** Within twenty minutes of the gas three deviations do, later four are asked. */
    @Test
    void sureSoonerAtTheGas() {
        for (int gas : new int[] {46, 47}) {
            Followed f = HandLog.lost(gas(0.5, gas, 300), 52, 0.135);
            assertThat(f.gasOn(gas)).isFalse();
            assertThat(f.gasOn(gas + 1)).isTrue();
            Evidence.Loss loss = new Evidence(f, f.intervals(), false).strongest(true, 4, 4);
            assertThat(loss.at()).isEqualTo(52);
            assertThat(loss.sigmas()).isBetween(3.0, 4.0);
            assertThat(Diagnosis.of(f).findings()).hasSize(gas + 1 + 4 >= 52 ? 1 : 0);
        }
    }

    /** A damper in the log clears the air where more of it cannot take so much; where it can, both are named. */
    @Test
    void gasWithADamper() {
        LogFinding x = only(HandLog.lost(gas(0.5, 0), 65, 0.5));
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.lostShare()).isCloseTo(0.5, within(1e-9));
        assertThat(x.orAir()).isFalse();
        assertThat(only(HandLog.lost(gas(0.5, 0), 65, 0.2)).orAir()).isTrue();
        assertThat(Diagnosis.of(HandLog.lost(gas(0.5, 0), 65, 0.2)).smallestAir())
                .isNaN();
        // Without gas about, no air is in question.
        assertThat(only(HandLog.lost(gas(0.5, 97), 65, 0.2)).orAir()).isFalse();
    }

    /** A plate logged all open from interval 65 on explains what is missing against the plan: air, no element, for the lean flame tells it. */
    @Test
    void aDamperTooFarOpen() {
        HandLog h = new HandLog(20)
                .of(HandLog.kiln(1.2, 1))
                .of(new Lines(3000, 8, 0, 0))
                .plannedDamper(0.5)
                .gasPa(2000.0)
                .damper(0.5)
                .climb(325, 120)
                .damper(1.0)
                .climb(175, 120);
        Followed f = HandLog.lost(h.followed(HandLog.gas(1300)), 0, 0);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.TOO_MUCH_AIR);
        // Lambda is twice the share here: 2 against 1 planned.
        assertThat(x.timeS()).isEqualTo(66 * 300);
        assertThat(x.lostW()).isCloseTo(4 * (120 * 66.5 / 12 + 1), within(5.0));
        assertThat(x.lostShare()).isNaN();
        assertThat(x.orProbe()).isFalse();
        // Without elements it is said all the same.
        Followed none =
                h.of(HandLog.kiln(1.2, 1).withElements(Elements.fresh(0))).followed(HandLog.gas(1300));
        assertThat(only(none).kind()).isEqualTo(Kind.TOO_MUCH_AIR);
    }

    /** A plate a little farther open than planned is no lean flame; what it takes against the plan is still seen when the rest is sound. */
    @Test
    void aDamperThatTakesTheHeat() {
        HandLog h = new HandLog(20)
                .of(HandLog.kiln(1.2, 1))
                .of(new Lines(3000, 30, 0, 0))
                .plannedDamper(0.3)
                .gasPa(2000.0)
                .damper(0.3)
                .climb(325, 120)
                .damper(0.37)
                .climb(175, 120);
        Followed f = HandLog.lost(h.followed(HandLog.gas(1300)), 0, 0);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.TOO_MUCH_AIR);
        assertThat(x.timeS()).isBetween(62.0 * 300, 68.0 * 300);
        assertThat(x.orProbe()).isFalse();
    }

    /** Air that is not logged: no element is sure, but what is missing grows as the air of a plate farther open, 0.2 of the way to all open. */
    @Test
    void airThatIsNotLogged() {
        for (double way : new double[] {0.1, 0.2}) {
            Followed f = gas(null, 0);
            for (int i = 0; i < f.intervals(); i++) {
                double gone = Math.max(0, Math.min(1, 0.5 + (i - 90) / 4.0));
                f.asked[i] += gone * way * 4 * (120 * (i + 0.5) / 12 + 1);
            }
            Evidence e = new Evidence(f, f.intervals(), true);
            assertThat(e.strongest(true, 4, 4).share()).isLessThan(0.12);
            assertThat(e.air(4, false).sigmas() > 4).isEqualTo(way > 0.15);
            if (way < 0.15) {
                assertThat(Diagnosis.of(f).findings()).isEmpty();
            } else {
                LogFinding x = only(f);
                assertThat(x.kind()).isEqualTo(Kind.ELEMENT_OR_AIR);
                assertThat(x.timeS()).isEqualTo(90 * 300);
                assertThat(x.lostW()).isCloseTo(0.5 * 0.2 * 4 * (120 * 90.5 / 12 + 1), within(1e-6));
                assertThat(x.lostShare()).isNaN();
                assertThat(x.orProbe()).isTrue();
            }
        }
    }

    /** An element that goes where the plan opens the ports may be air through them; a small share is within what open holes draw. */
    @Test
    void whereThePortsAreOpened() {
        for (double share : new double[] {0.15, 0.3}) {
            Step open = new Step(new Step.To(1573), Step.FULL, true, false, Step.CONTROLLER, true, new Step.Share(0.5));
            HandLog h = new HandLog(20).of(HandLog.kiln(1.2, 1)).climb(500, 120);
            Followed f = HandLog.lost(h.followed(HandLog.full(670), open), 65, share);
            List<LogFinding> found = Diagnosis.of(f).findings();
            assertThat(found).hasSize(share < 0.16 ? 0 : 1);
            if (share > 0.16) {
                assertThat(found.get(0).kind()).isEqualTo(Kind.AIR_OR_ELEMENT);
                assertThat(found.get(0).lostShare()).isNaN();
            }
        }
    }

    /** Power that stays on over a fixed share. Where the rows alone tell it, the thermocouple may be wrong; cones rule that out. */
    @Test
    void whatStaysOn() {
        Followed f = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5));
        HandLog.gave(f, 60, f.intervals(), 0.75);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.STUCK);
        assertThat(x.timeS()).isEqualTo(60 * 300);
        assertThat(x.lostW()).isNaN();
        assertThat(x.lostShare()).isNaN();
        assertThat(x.orProbe()).isFalse();
        Followed rows = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5), HandLog.full(1300));
        HandLog.gave(rows, 60, rows.intervals(), 0.75);
        Arrays.fill(rows.asked, Double.NaN);
        Arrays.fill(rows.tracker.byProbe.last(), 1);
        assertThat(only(rows).kind()).isEqualTo(Kind.STUCK);
        assertThat(only(rows).orProbe()).isTrue();
    }

    /** Where rows are too few for it to be seen coming on, the level tells. */
    @Test
    void moreThanAShare() {
        Followed f = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5));
        HandLog.gave(f, 0, f.intervals(), 0.66);
        assertThat(only(f).kind()).isEqualTo(Kind.MORE_POWER);
    }

    /** What stays on hides what is lost behind it; what is lost before is told beside it. */
    @Test
    void whatIsLostBeforeIt() {
        Followed f = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5));
        HandLog.lost(f, 60, 0.3);
        HandLog.gave(f, 85, f.intervals(), 0.75);
        List<LogFinding> found = Diagnosis.of(f).findings();
        assertThat(found).extracting(LogFinding::kind).containsExactly(Kind.STUCK, Kind.ELEMENT);
        assertThat(found.get(1).timeS()).isEqualTo(60 * 300);
        HandLog.lost(f, 89, 0.4);
        HandLog.gave(f, 85, 88, 0.75);
        HandLog.gave(f, 88, f.intervals(), 0.5);
        assertThat(only(f).kind()).isEqualTo(Kind.STUCK);
    }
}
