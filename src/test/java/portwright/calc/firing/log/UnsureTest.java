package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.HandLog.Lines;

/**
 * What one input that is off moves, against the one line of the hand-made kiln: power = C dT/dt + factor U (T − room), all as shares of full power. The deviations
 * (loss, load 10 %, power 3 %, gas 15 %, air 10 %, leak 60 % or 3 cm², lag 60 s) are this project's judgement.
 */
class UnsureTest {
    private static final double CLIMB_K_PER_S = 120 / 3600.0;
    private static final double WALL = 5;
    private static final double FACTOR = 1.2;
    /** The replay takes loss at the end of each of its steps of a minute: half a step of climb. */
    private static final double LATE_K = 30 * CLIMB_K_PER_S;

    /** A steady climb of 120 K/h from 20 to 820 °C. */
    private static Followed climb(HandLog h, Step... steps) {
        return h.of(HandLog.kiln(FACTOR, WALL)).climb(400, 120).followed(steps);
    }

    private static Followed electric() {
        return climb(new HandLog(20), HandLog.full(1200));
    }

    private static int[] all(Followed f) {
        return IntStream.range(0, f.intervals()).toArray();
    }

    private static double overRoom(int i) {
        return CLIMB_K_PER_S * (i + 0.5) * 300 + LATE_K;
    }

    @Test
    void theHandMadeKilnIsOneLine() {
        Followed f = electric();
        for (int i : all(f)) {
            double watts = HandLog.LOAD_J_PER_K * CLIMB_K_PER_S + FACTOR * WALL * overRoom(i);
            assertThat(f.logged.get(i).neededW()).isCloseTo(watts, within(20.0));
            assertThat(f.asked[i]).isEqualTo(HandLog.FULL_W);
        }
    }

    @Test
    void lossLoadAndPower() {
        Followed f = electric();
        Unsure u = new Unsure(f, new int[] {10, 40, 70});
        int[] at = {10, 40, 70};
        f.asked[40] = 4000;
        for (int k = 0; k < 3; k++) {
            assertThat(u.loss()[k]).isCloseTo(0.1 * FACTOR * WALL * overRoom(at[k]) / HandLog.FULL_W, within(2e-4));
            assertThat(u.load()[k])
                    .isCloseTo(0.1 * HandLog.LOAD_J_PER_K * CLIMB_K_PER_S / HandLog.FULL_W, within(2e-4));
        }
        assertThat(u.power()).containsExactly(new double[] {0.03, 0.012, 0.03}, within(1e-12));
    }

    /** A minute of lag is 2 K at 120 K/h: the chamber's climb is the same, its walls lose so much more. */
    @Test
    void aProbeThatLags() {
        Followed f = electric();
        assertThat(new Unsure(f, new int[] {60}).lagging()[0])
                .isCloseTo(FACTOR * WALL * 60 * CLIMB_K_PER_S / HandLog.FULL_W, within(1e-5));
    }

    /** A reading low by a share: chamber and climb are higher by it. Base metal, 60 °C at 1285 °C of which half is a standard deviation, or a drift that begins at 600 °C. */
    @Test
    void aProbeThatIsOff() {
        Followed f = electric();
        double sd = 30 / 1285.0;
        int[] at = {20, 70};
        var columns = new Unsure(f, at).probe();
        assertThat(columns).hasSize(2);
        for (int k = 0; k < 2; k++) {
            double climbs = HandLog.LOAD_J_PER_K * CLIMB_K_PER_S;
            double celsius = 20 + overRoom(at[k]);
            assertThat(columns.get(0)[k])
                    .isCloseTo(sd * (climbs + FACTOR * WALL * celsius) / HandLog.FULL_W, within(2e-4));
            double drift = sd * 1285 / (1285 - 600);
            assertThat(columns.get(1)[k])
                    .isCloseTo(
                            celsius < 600 ? 0 : drift * (climbs + FACTOR * WALL * (celsius - 600)) / HandLog.FULL_W,
                            within(2e-4));
        }
    }

    /** Gas of 4 kW known to 15 % is 0.06 of 10 kW where it burns, nothing where it does not. */
    @Test
    void lessGas() {
        HandLog h = new HandLog(20).of(new Lines(4000, 2, 0, 0)).plannedDamper(0.5);
        Followed f = climb(h.gasPa(2000.0), HandLog.gas(1200));
        assertThat(new Unsure(f, new int[] {50}).gas()[0]).isCloseTo(0.06, within(1e-9));
        Followed off = climb(new HandLog(20).of(new Lines(4000, 2, 0, 0)).gasPa(0.0), HandLog.full(1200));
        assertThat(new Unsure(off, new int[] {50}).gas()[0]).isZero();
    }

    /** A tenth more air than at half open: 0.05 of 2 W/K; all open already it cannot be more. */
    @Test
    void moreDraught() {
        for (double open : new double[] {0.5, 0.95, 1}) {
            HandLog h = new HandLog(20).of(new Lines(4000, 2, 0, 0)).plannedDamper(open);
            Followed f = climb(h.gasPa(2000.0), HandLog.gas(1200));
            double more = Math.min(1, 1.1 * open) - open;
            assertThat(new Unsure(f, new int[] {50}).draught()[0])
                    .isCloseTo(more * 2 * overRoom(50) / HandLog.FULL_W, within(1e-4));
        }
    }

    /** With the ports plugged a damper draws nothing, however leaky the kiln. */
    @Test
    void noDraughtWithPluggedPorts() {
        Followed f = climb(new HandLog(20).of(new Lines(4000, 2, 0.5, 0)), HandLog.full(1200));
        assertThat(new Unsure(f, new int[] {50}).draught()[0]).isZero();
    }

    /** A leak of half a W/K a cm²: 0.6 of the stated 4 cm² more; 3 cm² where none is stated. */
    @Test
    void moreLeak() {
        Followed tight = electric();
        assertThat(new Unsure(tight, new int[] {50}).leak(HandLogFits::draft, Double.NaN)[0])
                .isCloseTo(3 * HandLogFits.PLUGGED * overRoom(50) / HandLog.FULL_W, within(2e-4));
        Followed leaky = climb(new HandLog(20).of(HandLogFits.draft(4e-4)), HandLog.full(1200));
        assertThat(new Unsure(leaky, new int[] {50}).leak(HandLogFits::draft, 4e-4)[0])
                .isCloseTo(2.4 * HandLogFits.PLUGGED * overRoom(50) / HandLog.FULL_W, within(2e-4));
    }
}
