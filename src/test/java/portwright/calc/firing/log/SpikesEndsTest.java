package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Wild readings in a row, at the start and at the end of a log, and what is told of them. */
class SpikesEndsTest extends SpikeCase {
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
        // Down by a tenth of a degree a second: 1010 K would be on the line.
        assertThat(wild(100, 1070, 1000, 990, 980, 970)).isEmpty();
        assertThat(wild(100, 1071, 1000, 990, 980, 970)).containsExactly(0);
        // The first two, one after the other; with three left there is no telling.
        assertThat(wild(30, 2000, 1500, 1000, 1000)).containsExactly(0, 1);
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
        List<LogRow> late = rows(30, 1000.15, 1200.15, 1000.15, 1000.15);
        late.set(0, late.get(0).at(-30));
        wild(late);
        assertThat(faults.get(0).reason()).contains("between 727 and 727 °C within 60 s;");
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
