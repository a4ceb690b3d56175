package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.open;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Replay.Setting;

/** A record of a small kiln beside its plan; powers by hand from its 36 kJ/K: 100 °C/h are 1 kW. */
class FollowedTest {
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 300, 520);
    }

    @Test
    void powerAlongAStraightClimb() {
        Followed f = climb().by(share(full(1200), 0.4));
        assertThat(f.intervals()).isEqualTo(60);
        assertThat(f.share(10, 5)).isCloseTo(0.1, within(0.001));
        assertThat(f.climb(10, 20) * 3600).isCloseTo(100, within(1e-6));
        // 4 kW are asked, 1 kW is there: 3 of 10 are missing
        assertThat(f.missing(20, true)).isCloseTo(0.3, within(0.001));
        assertThat(f.missing(20, false)).isCloseTo(0.3, within(0.001));
        assertThat(f.damperLogged).isFalse();
        assertThat(f.planned).isSameAs(f.logged);
        assertThat(f.planned.get(20)).isNotNull();
    }

    @Test
    void loggedAndPlannedDamper() {
        Followed f = climb().damper(0, 0.8).gas(0, 2740).by(gas(share(full(1200), 0.4)));
        assertThat(f.damperLogged).isTrue();
        assertThat(f.logged.get(20).flow().lambda()).isCloseTo(1.6, within(1e-9));
        assertThat(f.planned.get(20).flow().lambda()).isCloseTo(0.9, within(1e-9));
        assertThat(f.setting(20, true)).isEqualTo(new Setting(true, true, 0.8));
        assertThat(f.setting(20, false)).isEqualTo(new Setting(true, true, 0.45));
    }

    @Test
    void howGasPortsAndPlateStand() {
        assertThat(climb().by(full(1200)).setting(20, true)).isEqualTo(Setting.PLUGGED);
        assertThat(climb().by(open(full(1200))).setting(20, true)).isEqualTo(new Setting(false, true, 0.45));
        // not forecast: all open
        assertThat(climb().plannedDamper(Double.NaN).by(open(full(1200))).setting(20, true))
                .isEqualTo(new Setting(false, true, 1));
        // gas behind the last step keeps the last plate; without gas all is plugged
        Followed f = climb().gas(0, 2740).plannedDamper(0.2, 0.3).by(gas(full(300)), gas(full(400)));
        assertThat(f.tracker.step[55]).isEqualTo(-1);
        assertThat(f.setting(55, true)).isEqualTo(new Setting(true, true, 0.3));
        assertThat(climb().by(open(full(400))).setting(55, true)).isEqualTo(Setting.PLUGGED);
    }

    /** To 600 °C at 60 °C/h, point 60 at 300 min; then gas. Ten minutes open, five of clean fire (kiln practice, safety_numbers.csv). */
    @Test
    void whileTheKilnStandsOpenThePlateIsOff() {
        Followed f = SmallFiring.every(60, 0, 300, 400, 700)
                .plannedDamper(Double.NaN, 0.3)
                .by(to(600, 60), gas(to(900, 60)));
        assertThat(f.setting(59, true)).isEqualTo(Setting.PLUGGED);
        assertThat(f.setting(60, true)).isEqualTo(new Setting(false, true, 1));
        assertThat(f.setting(61, true)).isEqualTo(new Setting(false, true, 1));
        assertThat(f.setting(62, true)).isEqualTo(new Setting(true, true, 1));
        assertThat(f.setting(63, true)).isEqualTo(new Setting(true, true, 0.3));
        assertThat(List.of(60, 61, 62, 63).stream().map(f::gasOn)).containsExactly(false, false, true, true);
    }

    @Test
    void gasByTheLogOrByThePlan() {
        Followed f = climb().by(gas(full(1200)));
        assertThat(f.gasOn(20)).isTrue();
        f.grid.gasPa()[20] = 0;
        assertThat(f.gasOn(20)).isFalse();
        assertThat(f.otherwise(20)).isTrue();
        f.grid.gasPa()[20] = 1;
        assertThat(f.gasOn(20)).isTrue();
        assertThat(f.otherwise(20)).isFalse();
        assertThat(f.otherwise(21)).isFalse();
        f.tracker.step[20] = -1;
        assertThat(f.gasOn(20)).isTrue();
        assertThat(f.otherwise(20)).isFalse();
        f.tracker.step[21] = -1;
        assertThat(f.gasOn(21)).isFalse();
        assertThat(climb().by(full(1200)).gasOn(20)).isFalse();
    }

    @Test
    void flowGoesAsTheRootOfPressure() {
        Followed f = climb().by(gas(full(1200)));
        assertThat(f.gasScale(4 * 2740.0)).isCloseTo(2, within(1e-12));
        assertThat(f.gasScale(Double.NaN)).isEqualTo(1);
        assertThat(f.gasScale(0.0)).isEqualTo(1);
        assertThat(f.gasScale(-5.0)).isEqualTo(1);
        f.grid.gasPa()[3] = 2740 / 4.0;
        assertThat(f.gasScale(3)).isCloseTo(0.5, within(1e-12));
        assertThat(climb().designPa(Double.NaN).by(gas(full(1200))).gasScale(100.0))
                .isEqualTo(1);
        assertThat(climb().designPa(0).by(gas(full(1200))).gasScale(100.0)).isEqualTo(1);
    }

    /** To 600 °C at point 60; by a probe 4.7 % low since point 55, which two points of smoothing before it show. */
    @Test
    void theLeastThatIsAskedWhereTwoStepsMayBeOn() {
        Followed f =
                SmallFiring.every(60, 0, 20, 580, 600, 700, 720).by(share(to(600, 60), 0.6), share(to(900, 60), 0.3));
        int change = f.tracker.begin[1];
        assertThat(f.asked[20]).isEqualTo(6000);
        assertThat(f.leastAsked[20]).isEqualTo(6000);
        assertThat(f.asked[change - 4]).isNaN();
        assertThat(f.leastAsked[change - 4]).isCloseTo(3000, within(1e-6));
        assertThat(f.leastAsked[change - 1]).isNaN();
    }

    @Test
    void missingByTheLoggedOrThePlannedPlate() {
        Followed f = climb().damper(0, 0.8).by(share(full(1200), 0.4));
        Replay.Need n = f.planned.get(20);
        f.planned.set(20, new Replay.Need(n.timeS(), n.chamberK(), 2000, n.begin(), n.flow()));
        assertThat(f.missing(20, true)).isCloseTo(0.3, within(0.001));
        assertThat(f.missing(20, false)).isCloseTo(0.2, within(0.001));
    }

    /** 24 min without a row: blind from the last reading to as long after the next, an hour at most. */
    @Test
    void gapsAreBlind() {
        Followed f = climb().without(100, 124).by(full(1200));
        assertThat(f.gaps).hasSize(1);
        assertThat(f.gapAt(6000)).isFalse();
        assertThat(f.gapAt(6001)).isTrue();
        assertThat(f.gapAt(7439)).isTrue();
        assertThat(f.gapAt(7440)).isFalse();
        // point 19 ends at 100 min where it begins; until 148 min: point 29 begins at 145
        assertThat(f.blind[19]).isFalse();
        assertThat(f.blind[20]).isTrue();
        assertThat(f.blind[29]).isTrue();
        assertThat(f.blind[30]).isFalse();
        // 90 min: an hour more
        f = climb().without(100, 190).by(full(1200));
        assertThat(f.blind[49]).isTrue();
        assertThat(f.blind[50]).isFalse();
        assertThat(climb().by(full(1200)).blind).containsOnly(false);
    }

    /** 80 min at the very same figure from 200 min on. */
    private static SmallFiring stands(double minutes) {
        return SmallFiring.every(60, 0, 20, 200, 420, 200 + minutes, 420, 400, 700);
    }

    @Test
    void aFigureThatStandsIsBlindUnlessAHoldMayBeOn() {
        Followed f = stands(80).by(to(1000, 100));
        assertThat(f.frozen).hasSize(1);
        // eight minutes of smoothing before 200 min; an hour behind 280 min
        assertThat(f.blind[37]).isFalse();
        assertThat(f.blind[38]).isTrue();
        assertThat(f.blind[67]).isTrue();
        assertThat(f.blind[68]).isFalse();
        assertThat(stands(80).by(to(420, 100), hold(80), to(1000, 100)).frozen).isEmpty();
        // by a probe that reads low the hold of 440 °C may be on
        assertThat(stands(80).by(to(430, 100), hold(80), to(1000, 100)).frozen).isEmpty();
        assertThat(stands(80).by(to(600, 100), hold(80), to(1000, 100)).frozen).hasSize(1);
        // behind the last step
        assertThat(stands(80).by(to(400, 100)).frozen).hasSize(1);
        assertThat(new Followed(stands(80).beside(to(1000, 100)).unplanned(), true).frozen)
                .isEmpty();
    }

    @Test
    void aStepBegunInAGap() {
        Followed f = climb().by(full(1200));
        assertThat(f.vague(0)).isFalse();
        f.blind[0] = true;
        assertThat(f.vague(0)).isTrue();
    }

    @Test
    void fallsOutsideAStepThatIsToCool() {
        // 3 °C/h and more is a fall
        Followed f = climb().by(full(1200));
        assertThat(f.falls(0, 10)).isFalse();
        f.grid.climbKPerS()[20] = -3.1 / 3600;
        assertThat(f.falls(11, 9)).isFalse();
        assertThat(f.falls(11, 10)).isTrue();
        assertThat(f.falls(20, 1)).isTrue();
        assertThat(f.falls(21, 9)).isFalse();
        f.grid.climbKPerS()[20] = -2.9 / 3600;
        assertThat(f.falls(11, 10)).isFalse();
        f.grid.climbKPerS()[20] = -1;
        f.tracker.step[20] = -1;
        assertThat(f.falls(20, 1)).isFalse();
        f = climb().by(full(1200));
        f.grid.climbKPerS()[20] = -1;
        f.kelvin[0] = 1201 + 273.15;
        assertThat(f.falls(20, 1)).isFalse();
        f.kelvin[0] = 1200 + 273.15;
        assertThat(f.falls(20, 1)).isTrue();
        f = climb().by(hold(600));
        f.grid.climbKPerS()[59] = -1;
        assertThat(f.falls(55, 10)).isTrue();
    }

    @Test
    void medians() {
        assertThat(Followed.median(List.of())).isNaN();
        assertThat(Followed.median(List.of(Double.NaN))).isNaN();
        assertThat(Followed.median(List.of(3.0, 1.0, Double.NaN, 2.0))).isEqualTo(2);
        assertThat(Followed.median(List.of(1.0, 2.0, 4.0, 9.0))).isEqualTo(3);
    }

    @Test
    void lessThanTwentyMinutes() {
        assertThatThrownBy(() -> SmallFiring.every(60, 0, 20, 14, 40).by(full(1200)))
                .isInstanceOf(LogException.class)
                .hasMessage("the log covers less than 20 minutes; nothing can be said of it");
        assertThat(SmallFiring.every(60, 0, 20, 15, 40).by(full(1200)).intervals())
                .isEqualTo(3);
    }

    @Test
    void readingsPutRightByTheCones() {
        // cone 05 is down at 1031 °C in a climb of 60 °C/h (cone chart, from memory); here it is noted at 1001
        RecordCase c = SmallFiring.every(60, 0, 401, 700, 1101).cone(600, "05").beside(to(1200, 60));
        assertThat(new Followed(c, true).kelvin[120] - 273.15).isCloseTo(1031, within(1.0));
        assertThat(new Followed(c, false).kelvin[120] - 273.15).isCloseTo(1001, within(1e-6));
        assertThat(new Followed(c, true).offsets).hasSize(1);
        // 200 °C off cannot be
        RecordCase no = SmallFiring.every(60, 0, 401, 700, 1101).cone(400, "05").beside(to(1200, 60));
        assertThat(new Followed(no, true).offsets).isEmpty();
        assertThat(new Followed(no, true).doubtedCones).hasSize(1);
        assertThat(new Followed(no, true).kelvin[120] - 273.15).isCloseTo(1001, within(1e-6));
    }

    /** A note tells of another firing: it is followed without the plan, which is kept beside it. */
    @Test
    void anotherFiringThanThePlans() {
        Followed f = Followed.of(climb().note(0, "bisque firing").beside(to(1200, 100), gas(full(1280))));
        assertThat(f.other).isEqualTo(OtherFiring.Why.NOTE);
        assertThat(f.c.planned()).isFalse();
        assertThat(f.plan.c.planned()).isTrue();
        Followed plan = Followed.of(climb().beside(to(1200, 100), gas(full(1280))));
        assertThat(plan.other).isEqualTo(OtherFiring.Why.NOT);
        assertThat(plan.c.planned()).isTrue();
        assertThat(plan.plan).isNull();
    }

    /** Five times the plan's rate from a cold start: another firing, unless it took more than 1.25 of all the elements for half an hour over 450 °C. */
    @Test
    void whatElectricityAloneCouldNotHaveGiven() {
        SmallFiring fast = SmallFiring.every(60, 0, 20, 120, 1220);
        assertThat(Followed.of(fast.elements(6000).beside(to(1250, 100), gas(full(1280)))).other)
                .isEqualTo(OtherFiring.Why.FAST_START);
        // 600 °C/h are 6 kW: of 4.7 kW 1.28, of 4.9 kW 1.22
        assertThat(Followed.of(fast.elements(4900).beside(to(1250, 100), gas(full(1280)))).other)
                .isEqualTo(OtherFiring.Why.FAST_START);
        assertThat(Followed.of(fast.elements(4700).beside(to(1250, 100), gas(full(1280)))).other)
                .isEqualTo(OtherFiring.Why.NOT);
        assertThat(Followed.of(fast.elements(4700).note(0, "bisque firing").beside(to(1250, 100), gas(full(1280))))
                        .other)
                .isEqualTo(OtherFiring.Why.NOTE);
    }

    @Test
    void theSameRecordWithAnotherKiln() {
        RecordCase c = climb().beside(share(full(1200), 0.4));
        Followed f = new Followed(c, true);
        Followed heavy = f.with(c.with(c.kiln().withLoad(72_000), c.gas()));
        // twice the load takes twice the power
        assertThat(heavy.logged.get(20).neededW()).isCloseTo(2000, within(5.0));
        assertThat(heavy.planned).isSameAs(heavy.logged);
        assertThat(heavy.asked).isSameAs(f.asked);
        assertThat(Arrays.equals(heavy.kelvin, f.kelvin)).isTrue();
    }
}
