package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Readings that no kiln can have had. Limits are this project's judgement, as told on the class: a brick kiln climbs 1000 °C/h near the room,
 * 300 °C/h from 1000 °C on, straight between 200 and 1000 °C.
 */
class SpikesTest extends SpikeCase {
    private static boolean steep(double goodC, double byK, double seconds, double times) {
        LogRow good = Hand.reading(2, 5000, goodC);
        return Spikes.steep(good, Hand.reading(3, 5000 + seconds, goodC + byK), times)
                && Spikes.steep(good, Hand.reading(1, 5000 - seconds, goodC - byK), times);
    }

    /** In 360 s 1000 °C/h are 100 °C, 300 °C/h are 30 °C; half way at 600 °C 65 °C. */
    @Test
    void howFastAKilnClimbs() {
        assertThat(steep(20, 100.1, 360, 1)).isTrue();
        assertThat(steep(20, 99.9, 360, 1)).isFalse();
        assertThat(steep(200, 100.1, 360, 1)).isTrue();
        assertThat(steep(200, 99.9, 360, 1)).isFalse();
        assertThat(steep(600, 65.1, 360, 1)).isTrue();
        assertThat(steep(600, 64.9, 360, 1)).isFalse();
        assertThat(steep(1000, 30.1, 360, 1)).isTrue();
        assertThat(steep(1000, 29.9, 360, 1)).isFalse();
        assertThat(steep(1200, 30.1, 360, 1)).isTrue();
        assertThat(steep(1200, 29.9, 360, 1)).isFalse();
        assertThat(steep(1200, 120.1, 360, 4)).isTrue();
        assertThat(steep(1200, 119.9, 360, 4)).isFalse();
        assertThat(steep(1200, 0, 0, 1)).isFalse();
    }

    /** Of k, k+2, k the middle lies 2 over its neighbours: 4 by second differences, which spread √6 times as much as one reading; 1.4826 makes a median a deviation. */
    @Test
    void theNoiseOfOneReading() {
        double one = 1.4826 * 4 / Math.sqrt(6);
        assertThat(Spikes.noise(rows(60, 1000, 1002, 1000))).isCloseTo(one, within(1e-9));
        assertThat(Spikes.noise(rows(60, 1000, 1002, 1000, 1002))).isCloseTo(one, within(1e-9));
        // Second differences 0, 400, 400, 0, 1: by size the middle one is 1.
        assertThat(Spikes.noise(rows(60, 0, 0, 0, 400, 400, 400, 401))).isCloseTo(one / 4, within(1e-9));
        assertThat(Spikes.noise(rows(60, 1000, 1002))).isZero();
        assertThat(Spikes.noise(rows(60, 1000, 1100, 1000))).isEqualTo(6);
        List<LogRow> rows = rows(60, 1000, 1002, 1000);
        rows.add(1, Hand.note(9, 30, "lit"));
        assertThat(Spikes.noise(rows)).isCloseTo(one, within(1e-9));
    }

    @Test
    void oneThatStandsAlone() {
        assertThat(wild(30, 400, 400, 400, 500, 400, 400)).containsExactly(3);
        assertThat(wild(30, 400, 400, 400, 300, 400, 400)).containsExactly(3);
        assertThat(wild(30, 400, 500, 400, 400)).containsExactly(1);
        assertThat(wild(30, 400, 500, 400)).isEmpty();
        assertThat(wild(30, 400, 400, 400, 400)).isEmpty();
        assertThat(wild(30)).isEmpty();
        // No less than 15 K: 8.3 K are the most that a kiln climbs in half a minute.
        assertThat(wild(30, one(400, 415))).isEmpty();
        assertThat(wild(30, one(400, 415.1))).containsExactly(3);
    }

    /** As fast as a kiln may climb, out and back is left as it is: at 300 K 1000 °C/h are 100 K in six minutes. */
    @Test
    void aSlowOneMayBeTheKiln() {
        assertThat(wild(360, one(300, 399))).isEmpty();
        assertThat(wild(360, one(300, 401))).containsExactly(3);
        // Down: by the climb back up, at the temperature that it comes back to. 30 K at 1300 K.
        assertThat(wild(360, one(1300, 1271))).isEmpty();
        assertThat(wild(360, one(1300, 1269))).containsExactly(3);
    }

    /**
     * Out and back by the lines before and behind it, and by the straight line between its neighbours, each by more than 15 K. Where only one
     * of the three says so the log bends there.
     */
    @Test
    void outAndBackByThreeLines() {
        double[] x = one(400, 415);
        Arrays.fill(x, 4, 12, 398);
        assertThat(wild(30, x)).isEmpty();
        x[3] = 415.1;
        assertThat(wild(30, x)).containsExactly(3);
        x = one(400, 416);
        Arrays.fill(x, 4, 12, 401);
        assertThat(wild(30, x)).isEmpty();
        Arrays.fill(x, 4, 12, 400.9);
        assertThat(wild(30, x)).containsExactly(3);
        // Between 400 and 402 K 401 is the middle; behind it the log climbs by 1.5 K a row, 400.5 on the line back.
        Arrays.fill(x, 4, 12, 403.5);
        x[4] = 402;
        assertThat(wild(30, x)).isEmpty();
        x[3] = 416.1;
        assertThat(wild(30, x)).containsExactly(3);
    }

    /** Flat, then 48 K and then 66.7 K a row: every climb is steeper than 300 °C/h, and every reading lies on a straight line. */
    @Test
    void aClimbThatGrowsIsNoSpike() {
        double[] x = flat(18, 1300);
        x[6] = 1348;
        x[7] = 1396;
        for (int i = 8; i < x.length; i++) {
            x[i] = x[i - 1] + 400 / 6.0;
        }
        assertThat(wild(400, x)).isEmpty();
    }

    /** The third lies on the line of the two before it, 60 K a row; then the kiln falls back to 1000 K. */
    @Test
    void aReadingOnTheLineBeforeStays() {
        double[] x = flat(12, 1000);
        x[0] = 940;
        x[2] = 1060;
        assertThat(wild(360, x)).isEmpty();
        for (int i = 4; i < x.length; i++) {
            x[i] = x[i - 1] + 60;
        }
        assertThat(wild(360, x)).isEmpty();
    }

    /** From 500 to 900 K in 3500 s: up from the colder one 475 K are the most, back up to the hotter one 305 K. */
    @Test
    void theGoodOneSaysHowFastAKilnClimbs() {
        assertThat(wild(1750, 200, 500, 980, 900, 1100, 1300)).containsExactly(2);
        assertThat(wild(1750, 200, 500, 590, 900, 1100, 1300)).containsExactly(2);
        assertThat(wild(1750, 200, 500, 970, 900, 1100, 1300)).isEmpty();
        assertThat(wild(1750, 200, 500, 600, 900, 1100, 1300)).isEmpty();
    }

    /** A step up or down that lasts has its way back on the same side; so has a bend. */
    @Test
    void whatLastsStays() {
        assertThat(wild(30, 1000, 1000, 1000, 1200, 1200, 1200, 1200)).isEmpty();
        assertThat(wild(30, 1000, 1000, 1000, 1050, 1100, 1100, 1100)).isEmpty();
        // Eight times the noise: second differences of 8 K are 4.8 K of noise, and 39 K.
        assertThat(wild(30, 402, 398, 402, 398, 402, 398, 435, 398, 402, 398, 402, 398, 402, 398))
                .isEmpty();
        assertThat(wild(30, 402, 398, 402, 398, 402, 398, 465, 398, 402, 398, 402, 398, 402, 398))
                .containsExactly(6);
    }

    /** A reading most of the way back to the coldest, 300 K, between two that climb: no more than a quarter of 320 K is left. */
    @Test
    void aDipWhileItClimbs() {
        assertThat(wild(1750, 300, 460, 620, 379, 630, 640, 650)).containsExactly(3);
        assertThat(wild(1750, 300, 460, 620, 380, 630, 640, 650)).isEmpty();
        assertThat(wild(1750, 300, 460, 620, 379, 620, 630, 640)).isEmpty();
        assertThat(wild(1799, 300, 460, 620, 379, 630, 640, 650)).containsExactly(3);
        assertThat(wild(1800, 300, 460, 620, 379, 630, 640, 650)).isEmpty();
    }
}
