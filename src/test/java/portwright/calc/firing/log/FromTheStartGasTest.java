package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.HandLog.Lines;
import portwright.calc.firing.log.LogFinding.Kind;

/** Power that is missing while gas burns, and from rows far apart. Limits are this project's judgement. */
class FromTheStartGasTest {
    private static final Step LED = HandLog.rate(1400, 100);

    /** 100 K/h from 20 °C: 200 °C are passed behind interval 21. Nothing is asked until a test says so. */
    private static Followed record(HandLog h, Step... steps) {
        Followed f = h.climb(400, 100).followed(steps);
        Arrays.fill(f.asked, Double.NaN);
        return f;
    }

    /** Intervals in a step, where full power is asked and a share of it is missing. */
    private static void tell(Followed f, int from, int many, int step, double missing) {
        for (int i = from; i < from + many; i++) {
            f.tracker.step[i] = step;
            f.asked[i] = HandLog.FULL_W;
            HandLog.gave(f, i, 1 - missing);
        }
    }

    private static LogFinding of(Followed f) {
        return FromTheStart.of(f, f.intervals());
    }

    /** While gas burns, air may have taken it: without a logged damper no share of the elements is told, but heat. */
    @Test
    void withGasAndNoDamperLogged() {
        Followed f = record(new HandLog(20).gasPa(2000.0), HandLog.gas(1400));
        tell(f, 30, 5, 0, 0.3);
        Arrays.fill(f.asked, 30, 35, 8000);
        HandLog.gave(f, 30, 35, 0.5);
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT_OR_AIR);
        assertThat(x.lostW()).isCloseTo(3000, within(1e-6));
        assertThat(x.lostShare()).isNaN();
        assertThat(x.fromStart()).isTrue();
    }

    /** A damper logged at half: would all open take the 3 kW that are missing? */
    @Test
    void asWellByAir() {
        for (double air : new double[] {15, 25}) {
            HandLog h =
                    new HandLog(20).of(new Lines(3000, air, 0, 0)).gasPa(2000.0).damper(0.5);
            Followed f = h.climb(400, 100).followed(HandLog.gas(1400));
            Arrays.fill(f.asked, Double.NaN);
            for (int i = 40; i < 45; i++) {
                f.asked[i] = f.logged.get(i).neededW() + 3000;
            }
            // Half of 15 W/K over 354 K is 2660 W, half of 25 W/K 4430 W.
            assertThat(of(f).kind()).isEqualTo(Kind.ELEMENT);
            assertThat(of(f).orAir()).isEqualTo(air > 20);
            f.grid.gasPa()[42] = 0;
            assertThat(of(f).orAir()).isFalse();
        }
    }

    /** Under a controller with gas full power is asked only where the kiln has fallen behind: nothing tells of the time before, and the step that tells most counts. */
    @Test
    void aControllerThatHasFallenBehind() {
        Followed f = record(new HandLog(20).gasPa(2000.0).damper(0.5), LED, HandLog.full(1500));
        tell(f, 30, 4, 0, 0.3);
        tell(f, 40, 9, 1, 0.5);
        LogFinding x = of(f);
        assertThat(x.soundS()).isZero();
        assertThat(x.timeS()).isEqualTo(40 * 300);
        assertThat(x.lostShare()).isCloseTo(0.5, within(1e-9));
        Followed electric = record(new HandLog(20), LED, HandLog.full(1500));
        tell(electric, 30, 4, 0, 0.3);
        assertThat(of(electric).fromStart()).isTrue();
        assertThat(FromTheStart.led(LED)).isTrue();
        assertThat(FromTheStart.led(HandLog.hold(10))).isTrue();
        assertThat(FromTheStart.led(HandLog.full(900))).isFalse();
        assertThat(FromTheStart.led(HandLog.share(900, 0.5))).isFalse();
    }

    /** Rows 40 minutes apart: intervals that rest on three of them tell no more than these do. */
    @Test
    void fewRows() {
        Followed f = record(new HandLog(20).every(2400), HandLog.full(1400));
        // From 12 600 to 14 100 s the rows of 12 000, 14 400 and 16 800 s; at 12 300 s that of 9 600 s, too.
        tell(f, 42, 5, 0, 0.3);
        assertThat(of(f)).isNull();
        tell(f, 41, 1, 0, 0.3);
        assertThat(of(f)).isNotNull();
        Followed close = record(new HandLog(20), HandLog.full(1200));
        tell(close, 78, 2, 0, 0.3);
        assertThat(of(close)).isNotNull();
    }
}
