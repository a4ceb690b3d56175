package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Readings that no kiln can have had. Limits are this project's judgement, as told on the class: a brick kiln climbs 1000 °C/h near the room,
 * 300 °C/h from 1000 °C on, straight between 200 and 1000 °C.
 */
class SpikesTest {
    private final List<LogFault> faults = new ArrayList<>();

    private static LogRow k(int line, double seconds, double kelvin) {
        return new LogRow(line, seconds, kelvin, null, null, null, null, "");
    }

    /** Rows from line 0 on. */
    private static List<LogRow> rows(double everyS, double... kelvin) {
        List<LogRow> out = new ArrayList<>();
        for (double x : kelvin) {
            out.add(k(out.size(), out.size() * everyS, x));
        }
        return out;
    }

    /** Lines of the readings that are wild. */
    private List<Integer> wild(double everyS, double... kelvin) {
        return wild(rows(everyS, kelvin));
    }

    private List<Integer> wild(List<LogRow> rows) {
        faults.clear();
        List<Integer> left = Spikes.leftOut(rows, faults).stream()
                .filter(r -> r.kelvin() != null)
                .map(LogRow::line)
                .toList();
        List<Integer> out = rows.stream()
                .filter(r -> r.kelvin() != null)
                .map(LogRow::line)
                .filter(l -> !left.contains(l))
                .toList();
        assertThat(faults.stream().map(LogFault::line).sorted().toList()).isEqualTo(out);
        return out;
    }

    private static double[] flat(int n, double kelvin) {
        double[] out = new double[n];
        Arrays.fill(out, kelvin);
        return out;
    }

    /** So many readings of 1000 K, so many wild ones, and again of 1000 K. */
    private static double[] plateau(int before, int n, double wild, int after) {
        double[] out = flat(before + n + after, 1000);
        Arrays.fill(out, before, before + n, wild);
        return out;
    }

    /** Twelve readings, of which the fourth is another. */
    private static double[] one(double kelvin, double other) {
        double[] out = flat(12, kelvin);
        out[3] = other;
        return out;
    }

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
        // Second differences 0, 0, 1, 4, 400: the middle one counts.
        assertThat(Spikes.noise(rows(60, 0, 0, 0, 0, 1, 6, 411))).isCloseTo(one / 4, within(1e-9));
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
        assertThat(wild(1750, 300, 460, 620, 381, 630, 640, 650)).isEmpty();
        assertThat(wild(1750, 300, 460, 620, 379, 620, 630, 640)).isEmpty();
        assertThat(wild(1799, 300, 460, 620, 379, 630, 640, 650)).containsExactly(3);
        assertThat(wild(1800, 300, 460, 620, 379, 630, 640, 650)).isEmpty();
    }

    @Test
    void severalInARowJumpOutAndBack() {
        assertThat(wild(30, plateau(4, 3, 1200, 4))).containsExactly(4, 5, 6);
        assertThat(wild(30, plateau(4, 3, 800, 4))).containsExactly(4, 5, 6);
        assertThat(wild(30, 1000, 1200, 1050, 1000)).containsExactly(1, 2);
        // Over 60 K.
        assertThat(wild(30, plateau(4, 3, 1060, 4))).isEmpty();
        assertThat(wild(30, plateau(4, 3, 1061, 4))).containsExactly(4, 5, 6);
        // Four times as fast as a kiln: at 1000 K 539 °C/h, in 150 s 90 K.
        assertThat(wild(150, plateau(4, 3, 1089, 4))).isEmpty();
        assertThat(wild(150, plateau(4, 3, 1091, 4))).containsExactly(4, 5, 6);
        // Back to less than half the height.
        assertThat(wild(30, 1000, 1000, 1000, 1200, 1200, 1200, 1099, 1099, 1099))
                .containsExactly(3, 4, 5);
        assertThat(wild(30, 1000, 1000, 1000, 1200, 1200, 1200, 1101, 1101, 1101))
                .isEmpty();
        // The way back is a jump too, and no way on.
        assertThat(wild(30, 1000, 1000, 1000, 1200, 1200, 1150, 1100, 1050, 1000, 1000))
                .isEmpty();
        assertThat(wild(30, 1000, 1000, 1000, 1200, 1200, 1400, 1400, 1400)).isEmpty();
    }

    /** Within half an hour, and no more than 400 of them. */
    @Test
    void howLongTheyLast() {
        assertThat(wild(105, plateau(4, 16, 1300, 4))).hasSize(16);
        assertThat(wild(100, plateau(4, 17, 1300, 4))).isEmpty();
        assertThat(wild(4, plateau(4, 400, 1200, 4))).hasSize(400);
        assertThat(wild(4, plateau(4, 401, 1200, 4))).isEmpty();
    }

    /** The line before is a hundredth of a degree a second; 71 K over it, and 61 K over the neighbour. */
    @Test
    void theFirstReading() {
        assertThat(wild(30, 1100, 1000, 1000, 1000)).containsExactly(0);
        assertThat(wild(30, 1060, 1000, 1000, 1000)).isEmpty();
        assertThat(wild(30, 1061, 1000, 1000, 1000)).containsExactly(0);
        assertThat(wild(100, 1055, 1000, 1010, 1020)).isEmpty();
        assertThat(wild(100, 1061, 1000, 1010, 1020)).containsExactly(0);
        assertThat(wild(100, 938, 1000, 1010, 1020)).isEmpty();
        assertThat(wild(30, 920, 1000, 1000, 1000)).containsExactly(0);
        // Half as far from the third as from the second: the second is the slip.
        assertThat(wild(30, 400, 500, 450, 450)).containsExactly(1);
        assertThat(wild(30, 500, 400, 450, 450)).containsExactly(1);
    }

    @Test
    void theLastReading() {
        assertThat(wild(30, 1000, 1000, 1000, 1100)).containsExactly(3);
        assertThat(wild(30, 1000, 1000, 1000, 1060)).isEmpty();
        assertThat(wild(30, 1000, 1000, 1000, 1061)).containsExactly(3);
        assertThat(wild(30, 1000, 1000, 1000, 920)).containsExactly(3);
        // Ten degrees a row go on to 1040.
        assertThat(wild(100, 1000, 1010, 1020, 1030, 1098)).isEmpty();
        assertThat(wild(100, 1000, 1010, 1020, 1030, 1102)).containsExactly(4);
    }

    @Test
    void whatIsSaid() {
        wild(30, 1000.15, 1000.15, 1000.15, 1200.15, 1010.15, 1010.15);
        assertThat(faults)
                .containsExactly(
                        new LogFault(
                                3,
                                true,
                                "implausible: 927 °C between 727 and 737 °C within 30 s; no brick kiln falls and rises so fast. A bad contact or a slip; left out of the reckoning"));
        wild(30, plateau(4, 3, 1200.15, 4));
        assertThat(faults)
                .extracting(f -> f.reason().replaceAll(".*within (.*);.*;.*", "$1"))
                .containsExactly("2 min", "60 s", "2 min");
        wild(89, plateau(4, 1, 1200.15, 4));
        assertThat(faults.get(0).reason()).contains("within 89 s;");
        wild(30, 1100.15, 1000.15, 1000.15, 1000.15);
        assertThat(faults.get(0).reason()).contains("827 °C beside 727 °C within 30 s;");
        wild(30, 1000.15, 1000.15, 1000.15, 1010.15, 1100.15);
        assertThat(faults.get(0).reason()).contains("827 °C beside 737 °C within 30 s;");
    }

    @Test
    void whatElseARowTellsStays() {
        List<LogRow> rows = rows(30, 1000, 1000, 1000, 1200, 1000, 1000, 1000);
        rows.set(3, new LogRow(3, 90, 1200.0, null, null, null, null, "lit"));
        rows.add(4, Hand.note(8, 100, "gas on"));
        List<LogRow> left = Spikes.leftOut(rows, faults);
        assertThat(left).hasSize(8);
        assertThat(left.get(3)).isEqualTo(Hand.note(3, 90, "lit"));
        assertThat(faults).hasSize(1).allMatch(f -> !f.skipped());
    }

    /** What hid beside a wilder one is seen once that is out. */
    @Test
    void oneBesideAnother() {
        assertThat(wild(30, 400, 400, 400, 500, 700, 400, 400, 400, 400)).containsExactly(3, 4);
        // Four looks are taken, and each time the last of these is out of the others' way.
        assertThat(wild(30, 1000, 1000, 1000, 1200, 1400, 1600, 1800, 2000)).containsExactly(4, 5, 6, 7);
    }
}
