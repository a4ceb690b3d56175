package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Length of a line in a groove, by hand: grooves 10 wide with round ends. */
class SectionStripTest {
    private static SectionStrip strip(double... xy) {
        List<Pt> path = IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Pt(xy[2 * i], xy[2 * i + 1]))
                .toList();
        return SectionStrip.of(new Shape.Strip(path, 5), 0.4);
    }

    private static double covered(SectionStrip s, double angle, double offset, double from, double to) {
        return s.covered(Math.sin(angle), Math.cos(angle), offset, from, to);
    }

    @Test
    void acrossOnePiece() {
        SectionStrip s = strip(-50, 10, 50, 10);
        assertThat(s.factor()).isEqualTo(0.4);
        assertThat(s.covered(0, 1, 0, -100, 100)).isEqualTo(10, within(1e-12));
        assertThat(s.covered(0, 1, 40, 8, 100)).isEqualTo(7, within(1e-12));
        assertThat(s.covered(0, 1, -40, -100, 12)).isEqualTo(7, within(1e-12));
        assertThat(s.covered(0, 1, 0, 16, 100)).isZero();
        // 53 to the right only the round end is met: 2 √(25 − 9)
        assertThat(s.covered(0, 1, 53, -100, 100)).isEqualTo(8, within(1e-12));
        assertThat(s.covered(0, 1, 56, -100, 100)).isZero();
        // 60° off the normal it lies twice as long in the groove
        assertThat(covered(s, Math.PI / 3, 0, -100, 100)).isEqualTo(20, within(1e-9));
        assertThat(covered(s, -Math.PI / 3, 0, -100, 100)).isEqualTo(20, within(1e-9));
    }

    /** To the right the offset is −y. */
    @Test
    void alongOnePiece() {
        SectionStrip s = strip(-50, 10, 50, 10);
        assertThat(s.covered(1, 0, -10, -100, 100)).isEqualTo(110, within(1e-12));
        assertThat(s.covered(1, 0, -13, -100, 100)).isEqualTo(108, within(1e-12));
        assertThat(s.covered(-1, 0, 13, -100, 100)).isEqualTo(108, within(1e-12));
        assertThat(s.covered(1, 0, -13, -20, 30)).isEqualTo(50, within(1e-12));
        assertThat(s.covered(1, 0, -15.1, -100, 100)).isZero();
        assertThat(s.covered(1, 0, -4.9, -100, 100)).isZero();
    }

    @Test
    void aBendCountsOnce() {
        SectionStrip s = strip(-50, 10, 0, 10, 0, 60);
        assertThat(s.covered(0, 1, 0, -100, 100)).isEqualTo(60, within(1e-12));
        assertThat(s.covered(0, 1, 3, -100, 100)).isEqualTo(58, within(1e-12));
        assertThat(s.covered(0, 1, -20, -100, 100)).isEqualTo(10, within(1e-12));
        assertThat(strip(0, 60, 0, 10, -50, 10).covered(0, 1, 3, -100, 100)).isEqualTo(58, within(1e-12));
    }

    /** There, back and there again, 40 apart: three times ten, in whatever order the path runs. */
    @Test
    void eachCrossingCounts() {
        assertThat(strip(-30, 0, 30, 0, 30, 40, -30, 40, -30, 80, 30, 80).covered(0, 1, 0, -100, 100))
                .isEqualTo(30, within(1e-12));
        assertThat(strip(30, 80, -30, 80, -30, 40, 30, 40, 30, 0, -30, 0).covered(0, 1, 0, -100, 100))
                .isEqualTo(30, within(1e-12));
        assertThat(strip(-30, 40, 30, 40, 30, 80, -30, 80, -60, 40, -60, 0, 30, 0)
                        .covered(0, 1, 0, -100, 60))
                .isEqualTo(20, within(1e-12));
    }

    @Test
    void aDotIsADisc() {
        assertThat(strip(7, 2).covered(0, 1, 10, -100, 100)).isEqualTo(8, within(1e-12));
        assertThat(strip(7, 2).covered(0, 1, 10, 2, 100)).isEqualTo(4, within(1e-12));
    }
}
