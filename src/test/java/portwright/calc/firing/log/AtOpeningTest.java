package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.LogFinding.Kind;

/** A loss that begins where ports are opened may be air: twenty minutes about it, and 16 % of the power, are this project's judgement (no source). */
class AtOpeningTest {
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 300, 520);
    }

    private static LogFinding lost(double timeS, double share) {
        return new LogFinding(Kind.ELEMENT, timeS, 900, 1000, Double.NaN, false, false).ofElements(share, 10000);
    }

    /** Ports open from 300 min on (point 60). */
    @Test
    void lossesWhereThePlanOpensPorts() {
        SmallFiring up = SmallFiring.every(60, 0, 300, 400, 700);
        Followed f = up.by(to(600, 60), SmallFiring.open(share(full(900), 0.6)));
        // twenty minutes about the time
        assertThat(AtOpening.told(f, lost(18000 - 1200, 0.3)).map(LogFinding::kind))
                .containsExactly(Kind.AIR_OR_ELEMENT);
        assertThat(AtOpening.told(f, lost(18000 - 1201, 0.3)).map(LogFinding::kind))
                .containsExactly(Kind.ELEMENT);
        assertThat(AtOpening.told(f, lost(23000, 0.3)).map(LogFinding::kind)).containsExactly(Kind.AIR_OR_ELEMENT);
        // less than 16 % may be what open holes draw
        assertThat(AtOpening.told(f, lost(18000, 0.159))).isEmpty();
        assertThat(AtOpening.told(f, lost(18000, 0.16))).hasSize(1);
        assertThat(AtOpening.told(f, lost(10000, 0.159))).hasSize(1);
        // told by other means, or another kind
        LogFinding behind = lost(18000, 0.1).toldBehind();
        assertThat(AtOpening.told(f, behind)).containsExactly(behind);
        LogFinding stuck = new LogFinding(Kind.STUCK, 18000, 900, 0, Double.NaN, false, false);
        assertThat(AtOpening.told(f, stuck)).containsExactly(stuck);
        // nowhere open
        assertThat(AtOpening.told(up.by(to(600, 60), full(900)), lost(18000, 0.1)))
                .hasSize(1);
    }

    @Test
    void withGasOnlyWhereThePortsAreOpened() {
        SmallFiring up =
                SmallFiring.every(60, 0, 300, 400, 700).gas(0, 0).gas(300, 2740).damper(300, 0.5);
        Followed f = up.by(to(600, 60), gas(share(full(900), 0.6)));
        assertThat(AtOpening.told(f, lost(18300 + 1199, 0.1))).isEmpty();
        assertThat(AtOpening.told(f, lost(18300 + 1200, 0.1))).hasSize(1);
        assertThat(AtOpening.told(f, lost(23000, 0.1))).hasSize(1);
    }

    @Test
    void fromTheStartWithPortsOpen() {
        Followed f = climb().by(SmallFiring.open(share(full(1200), 0.6)));
        Followed later =
                SmallFiring.every(60, 0, 300, 400, 700).by(to(600, 60), SmallFiring.open(share(full(900), 0.6)));
        LogFinding x = lost(0, 0.1).fromTheStart();
        assertThat(AtOpening.told(f, x)).isEmpty();
        // the first that is known of the power lies behind the opening
        assertThat(AtOpening.told(later, x)).isEmpty();
        assertThat(AtOpening.told(later, lost(0, 0.1))).hasSize(1);
        later.asked[3] = 5000;
        assertThat(AtOpening.told(later, x)).hasSize(1);
        Arrays.fill(later.asked, Double.NaN);
        assertThat(AtOpening.told(later, x)).hasSize(1);
        Followed burning = climb().by(gas(share(full(1200), 0.6)));
        assertThat(AtOpening.told(burning, lost(9000, 0.1).fromTheStart())).hasSize(1);
    }
}
