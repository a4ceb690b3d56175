package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.full;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Replay;

/** How a kiln was led, by climbs and powers written by hand: 10 kW in all, an hour a window. Limits are this project's judgement (no source). */
class PaceTest {
    private static final double H = 3600;

    private static void needs(Followed f, IntToDoubleFunction watts) {
        for (int i = 0; i < f.intervals(); i++) {
            Replay.Need n = f.logged.get(i);
            f.logged.set(i, new Replay.Need(n.timeS(), n.chamberK(), watts.applyAsDouble(i), n.begin(), n.flow()));
        }
    }

    /** Five hours at a rate, °C/h, from 100 °C; power grows by so many W an interval. */
    private static Followed led(double perHour, double growsW) {
        Followed f = SmallFiring.every(300, 0, 100, 300, 100 + 5 * perHour).by(full(1300));
        needs(f, i -> 1000 + growsW * i);
        return f;
    }

    private static double first(Followed f) {
        return new Pace(f).between(0, 12) * H;
    }

    @Test
    void aStraightClimbWithGrowingPower() {
        Pace p = new Pace(led(100, 10));
        assertThat(p.led).hasSize(60).containsOnly(true);
        assertThat(p.between(0, 60) * H).isCloseTo(100, within(1e-6));
        assertThat(p.first(0, 60) * H).isCloseTo(100, within(1e-6));
        // an hour is needed
        assertThat(p.between(0, 11)).isNaN();
        assertThat(p.between(0, 12)).isNotNaN();
        assertThat(p.first(0, 11)).isNaN();
        assertThat(p.first(0, 12)).isNotNaN();
        assertThat(p.first(48, 60)).isNotNaN();
        assertThat(p.between(48, 60)).isNotNaN();
        assertThat(p.first(49, 70)).isNaN();
        assertThat(p.between(49, 70)).isNaN();
        assertThat(p.between(-9, 12)).isNotNaN();
        assertThat(p.first(-9, 12)).isNotNaN();
    }

    @Test
    void powerThatHardlyGrows() {
        // from the first third to the last eight intervals: 6.08 and 5.92 of a thousand
        assertThat(first(led(100, 7.6))).isNotNaN();
        assertThat(first(led(100, 7.4))).isNaN();
        assertThat(new Pace(led(100, 7.4)).led).containsOnly(false);
    }

    @Test
    void aClimbThatIsNotStraight() {
        // a third is twenty minutes: 0.98 °C are 2.94 °C/h, within 3 %
        Followed f = led(100, 10);
        f.grid.kelvin()[4] += 0.98;
        assertThat(first(f)).isNotNaN();
        f.grid.kelvin()[4] += 0.04;
        assertThat(first(f)).isNaN();
        f.grid.kelvin()[4] -= 2.04;
        assertThat(first(f)).isNaN();
        f = led(100, 10);
        f.grid.kelvin()[8] += 1.02;
        assertThat(first(f)).isNaN();
        // at least 2.5 °C/h: 0.83
        f = led(60, 10);
        f.grid.kelvin()[4] += 0.82;
        assertThat(first(f)).isNotNaN();
        f.grid.kelvin()[4] += 0.03;
        assertThat(first(f)).isNaN();
    }

    @Test
    void slowColdOrBlind() {
        assertThat(first(led(20.5, 10))).isNotNaN();
        assertThat(first(led(19.5, 10))).isNaN();
        Followed f = led(100, 10);
        f.kelvin[0] = 333.2;
        assertThat(first(f)).isNotNaN();
        f.kelvin[0] = 333.1;
        assertThat(first(f)).isNaN();
        f = led(100, 10);
        f.blind[11] = true;
        assertThat(first(f)).isNaN();
        f.blind[11] = false;
        f.blind[12] = true;
        assertThat(first(f)).isNotNaN();
    }

    @Test
    void theFastestAndTheFirst() {
        // 100 °C/h for 150 min, then 150
        Followed f = SmallFiring.every(300, 0, 100, 150, 350, 300, 725).by(full(1300));
        needs(f, i -> 1000 + 10 * i);
        Pace p = new Pace(f);
        assertThat(p.first(0, 60) * H).isCloseTo(100, within(1e-6));
        assertThat(p.between(0, 60) * H).isCloseTo(150, within(1e-6));
        assertThat(p.between(0, 28) * H).isCloseTo(100, within(1e-6));
        assertThat(p.first(31, 60) * H).isCloseTo(150, within(1e-6));
        // where the rate changes nobody leads it straight, but every interval lies in some straight window
        assertThat(p.led).containsOnly(true);
        Followed back = SmallFiring.every(300, 0, 100, 150, 475, 300, 725).by(full(1300));
        needs(back, i -> 1000 + 10 * i);
        assertThat(new Pace(back).between(0, 60) * H).isCloseTo(150, within(1e-6));
        assertThat(new Pace(back).first(0, 60) * H).isCloseTo(150, within(1e-6));
        // with power that falls from the jump on only the first half is led
        needs(f, i -> i < 30 ? 1000 + 10 * i : 1000 - 10 * i);
        p = new Pace(f);
        assertThat(p.led[25]).isTrue();
        assertThat(p.led[40]).isFalse();
    }

    /** Thirds of a window at three climbs, °C/h, and three powers, W. */
    private static boolean flat(double[] climb, double... watts) {
        Followed f = led(100, 0);
        for (int i = 0; i < 12; i++) {
            f.grid.kelvin()[i + 1] = f.grid.kelvin()[i] + climb[i / 4] / 12;
        }
        needs(f, i -> watts[Math.min(2, i / 4)]);
        return new Pace(f).flat(0);
    }

    @Test
    void aClimbThatFallsOffAtOnePower() {
        double[] falls = {100, 97, 94};
        assertThat(flat(falls, 3000, 3000, 3000)).isTrue();
        assertThat(flat(new double[] {100, 98, 95.1}, 3000, 3000, 3000)).isFalse();
        assertThat(flat(new double[] {10.1, 8, 6}, 3000, 3000, 3000)).isTrue();
        assertThat(flat(new double[] {9.9, 8, 6}, 3000, 3000, 3000)).isFalse();
        assertThat(flat(new double[] {30, 10, 0.1}, 3000, 3000, 3000)).isTrue();
        assertThat(flat(new double[] {30, 10, -0.1}, 3000, 3000, 3000)).isFalse();
        // 2 % of full power from the first to the last third, and as much of the middle one off their mean
        assertThat(flat(falls, 3000, 3095, 3190)).isTrue();
        assertThat(flat(falls, 3000, 3105, 3210)).isFalse();
        assertThat(flat(falls, 3000, 2895, 2790)).isFalse();
        assertThat(flat(falls, 3000, 3190, 3000)).isTrue();
        assertThat(flat(falls, 3000, 3210, 3000)).isFalse();
        assertThat(flat(falls, 3000, 2790, 3000)).isFalse();
    }

    @Test
    void ablindWindowIsNotFlat() {
        Followed f = led(100, 0);
        for (int i = 0; i < 12; i++) {
            f.grid.kelvin()[i + 1] = f.grid.kelvin()[i] + (100 - 3 * (i / 4)) / 12.0;
        }
        assertThat(new Pace(f).flat(0)).isTrue();
        f.blind[5] = true;
        assertThat(new Pace(f).flat(0)).isFalse();
    }

    /** 100 °C/h at 3 kW; at point 30 the climb shoots up to 160 and the power to 4.5 kW. */
    private static Followed jump() {
        Followed f = led(100, 0);
        f.grid.climbKPerS()[30] = 160 / H;
        needs(f, i -> i < 30 ? 3000 : 4500);
        return f;
    }

    private static boolean jumps(Followed f, double asked, boolean own) {
        return new Pace(f).jumps(30, asked / H, own);
    }

    @Test
    void powerThatComesOn() {
        assertThat(jumps(jump(), 100, false)).isTrue();
        assertThat(jumps(jump(), 100, true)).isTrue();
        // before it about the rate asked: 1.3 times at most, 1/1.69 at least
        assertThat(jumps(jump(), 77, false)).isTrue();
        assertThat(jumps(jump(), 76, false)).isFalse();
        assertThat(jumps(jump(), 168, false)).isTrue();
        assertThat(jumps(jump(), 170, false)).isFalse();
        Followed f = jump();
        f.grid.climbKPerS()[30] = 149 / H;
        assertThat(jumps(f, 100, false)).isFalse();
        f.grid.climbKPerS()[29] = 151 / H;
        assertThat(jumps(f, 100, false)).isTrue();
        f.grid.climbKPerS()[29] = 100 / H;
        f.grid.climbKPerS()[33] = 151 / H;
        assertThat(jumps(f, 100, false)).isTrue();
        f.grid.climbKPerS()[33] = 100 / H;
        f.grid.climbKPerS()[34] = 151 / H;
        assertThat(jumps(f, 100, false)).isFalse();
    }

    @Test
    void howMuchPowerAndThatItStays() {
        Followed f = jump();
        needs(f, i -> i < 30 ? 3000 : 4010);
        assertThat(jumps(f, 100, false)).isTrue();
        needs(f, i -> i < 30 ? 3000 : 3990);
        assertThat(jumps(f, 100, false)).isFalse();
        // gone again half an hour later, or come only then
        needs(f, i -> i < 30 || i >= 36 ? 3000 : 4500);
        assertThat(jumps(f, 100, false)).isFalse();
        needs(f, i -> i < 36 ? 3000 : 4500);
        assertThat(jumps(f, 100, false)).isFalse();
        // a climb of less than 80 % of what it was: 6.7 °C less in twenty minutes
        f = jump();
        f.grid.kelvin()[40] -= 6.6;
        assertThat(jumps(f, 100, false)).isTrue();
        f.grid.kelvin()[40] -= 0.2;
        assertThat(jumps(f, 100, false)).isFalse();
    }

    @Test
    void aProgrammeOfItsOwnAsksForMorePowerToo() {
        // power that grows by 1 % in twenty minutes is a controller's
        Followed f = jump();
        needs(f, i -> i < 30 ? 3000 : i < 40 ? 4500 : 4590);
        assertThat(jumps(f, 100, true)).isTrue();
        needs(f, i -> i < 30 ? 3000 : i < 40 ? 4500 : 4610);
        assertThat(jumps(f, 100, true)).isFalse();
        assertThat(jumps(f, 100, false)).isTrue();
        // a climb that stays at 80 % of what it shot up to: 128 °C/h
        f = jump();
        f.grid.kelvin()[40] += 9.2;
        assertThat(jumps(f, 100, true)).isTrue();
        f.grid.kelvin()[40] += 0.3;
        assertThat(jumps(f, 100, true)).isFalse();
        assertThat(jumps(f, 100, false)).isTrue();
    }

    @Test
    void whereNothingCanBeSaid() {
        Followed f = jump();
        f.kelvin[24] = 333.1;
        assertThat(jumps(f, 100, false)).isFalse();
        f.kelvin[24] = 333.2;
        assertThat(jumps(f, 100, false)).isTrue();
        f.blind[29] = true;
        assertThat(jumps(f, 100, false)).isFalse();
        f.blind[29] = false;
        f.blind[34] = true;
        assertThat(jumps(f, 100, false)).isTrue();
        f.grid.reachS()[33] = 481;
        assertThat(jumps(f, 100, false)).isFalse();
    }

    @Test
    void atTheEndsOfARecord() {
        Followed f = led(100, 0);
        f.grid.climbKPerS()[6] = 160 / H;
        needs(f, i -> i < 6 ? 3000 : 4500);
        assertThat(new Pace(f).jumps(6, 100 / H, false)).isTrue();
        assertThat(new Pace(f).jumps(5, 100 / H, false)).isFalse();
        f = led(100, 0);
        f.grid.climbKPerS()[46] = 160 / H;
        f.grid.climbKPerS()[47] = 160 / H;
        needs(f, i -> i < 46 ? 3000 : 4500);
        assertThat(new Pace(f).jumps(46, 100 / H, true)).isTrue();
        assertThat(new Pace(f).jumps(47, 100 / H, true)).isFalse();
    }
}
