package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The smoothed log, readings that stand still, and columns of numbers. Straight lines by least squares, worked by hand. */
class GridTest {
    private static final Offset<Double> NEAR = within(1e-9);

    private static List<LogRow> k(double everyS, double... kelvin) {
        List<LogRow> out = new ArrayList<>();
        for (double x : kelvin) {
            out.add(new LogRow(out.size() + 2, out.size() * everyS, x, null, null, null, null, ""));
        }
        return out;
    }

    @Test
    void aStraightClimbStaysOne() {
        double[] kelvin = new double[31];
        for (int i = 0; i < kelvin.length; i++) {
            kelvin[i] = 300 + 6 * i;
        }
        Grid g = Grid.of(Hand.log(k(60, kelvin)));
        assertThat(g.size()).isEqualTo(7);
        for (int i = 0; i < 7; i++) {
            assertThat(g.timeS()[i]).isEqualTo(i * 300.0);
            assertThat(g.kelvin()[i]).isCloseTo(300 + 30 * i, NEAR);
            assertThat(g.climbKPerS()[i]).isCloseTo(0.1, NEAR);
            assertThat(List.of(g.reachS()[i], g.backS()[i], g.aheadS()[i])).containsOnly(480.0);
            assertThat(g.damper()[i]).isNaN();
            assertThat(g.gasPa()[i]).isNaN();
        }
    }

    /**
     * Readings every four minutes. At 1200 s those of 720 to 1680 s count: mean of 0 0 0 0 10 is 2, slope 10 · 480 / (2 · (480² + 240²)) =
     * 1/120. At the start those of 0, 240 and 480 s: mean 1 at 240 s, slope (3 − 0) / 480.
     */
    @Test
    void readingsWithinEightMinutesCount() {
        Grid g = Grid.of(Hand.log(k(240, 0, 0, 3, 0, 0, 0, 0, 10, 90)));
        assertThat(g.climbKPerS()[0]).isCloseTo(3 / 480.0, NEAR);
        assertThat(g.kelvin()[0]).isCloseTo(1 - 240 * 3 / 480.0, NEAR);
        assertThat(g.kelvin()[4]).isCloseTo(2, NEAR);
        assertThat(g.climbKPerS()[4]).isCloseTo(1 / 120.0, NEAR);
        assertThat(g.size()).isEqualTo(7);
    }

    /**
     * Readings every half hour, 0, 10 and 50 K: near the middle one the line through all three has the slope 50/3600 and goes through 20 K at
     * 1800 s; elsewhere it joins two.
     */
    @Test
    void whereReadingsAreFewTheNeighboursCount() {
        Grid g = Grid.of(Hand.log(k(1800, 0, 10, 50)));
        assertThat(g.size()).isEqualTo(13);
        double[][] want = {
            // point, K, K/s, back, ahead
            {0, 0, 10 / 1800.0, 480, 1800},
            {1, 300 * 10 / 1800.0, 10 / 1800.0, 480, 1500},
            {3, 5, 10 / 1800.0, 900, 900},
            {5, 20 - 300 * 50 / 3600.0, 50 / 3600.0, 1500, 2100},
            {7, 20 + 300 * 50 / 3600.0, 50 / 3600.0, 2100, 1500},
            {9, 30, 40 / 1800.0, 900, 900},
            {12, 50, 40 / 1800.0, 1800, 480},
        };
        for (double[] w : want) {
            int i = (int) w[0];
            assertThat(g.kelvin()[i]).as("K at " + i).isCloseTo(w[1], NEAR);
            assertThat(g.climbKPerS()[i]).as("climb at " + i).isCloseTo(w[2], NEAR);
            assertThat(g.backS()[i]).as("back at " + i).isEqualTo(w[3]);
            assertThat(g.aheadS()[i]).as("ahead at " + i).isEqualTo(w[4]);
            assertThat(g.reachS()[i]).as("reach at " + i).isEqualTo(Math.max(w[3], w[4]));
        }
    }

    /** Every eight minutes: at 2400 s three readings are near enough, at 300 s two, with which the next one counts. */
    @Test
    void threeReadingsAreEnough() {
        Grid g = Grid.of(Hand.log(k(480, 0, 0, 0, 0, 0, 0, 0, 0, 0)));
        assertThat(List.of(g.reachS()[8], g.backS()[8], g.aheadS()[8])).containsOnly(480.0);
        assertThat(g.aheadS()[1]).isEqualTo(660);
        Grid one = Grid.of(Hand.log(k(60, 400)));
        assertThat(one.kelvin()).containsExactly(400);
        assertThat(one.climbKPerS()).containsExactly(0);
        assertThat(one.reachS()).containsExactly(480);
    }

    @Test
    void damperAndGasStayUntilSetAnew() {
        List<LogRow> rows = new ArrayList<>();
        rows.add(Hand.note(2, 0, "lit"));
        rows.add(new LogRow(3, 200, 400.0, null, null, null, null, ""));
        rows.add(new LogRow(4, 500, null, 0.5, null, null, null, ""));
        rows.add(new LogRow(5, 600, 410.0, null, null, 900.0, null, ""));
        rows.add(new LogRow(6, 1100, 420.0, 0.25, null, 0.0, null, ""));
        Grid g = Grid.of(Hand.log(rows));
        assertThat(g.timeS()).containsExactly(200, 500, 800, 1100);
        assertThat(g.damper()).containsExactly(Double.NaN, 0.5, 0.5, 0.25);
        assertThat(g.gasPa()).containsExactly(Double.NaN, Double.NaN, 900, 0);
        assertThat(List.of(g.at(200), g.at(499), g.at(500), g.at(799), g.at(1100)))
                .containsExactly(0, 0, 1, 1, 3);
        assertThat(g.at(500 - 1e-8)).isEqualTo(1);
        assertThat(g.at(-1000)).isZero();
        assertThat(g.at(5000)).isEqualTo(3);
    }

    /** Readings every {@code apart} s: 40 minutes of climb by so much each ten minutes, then one figure in so many rows. */
    private static List<LogRow> stands(double figureK, double by, int rows, double apart) {
        List<LogRow> out = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            out.add(new LogRow(i + 2, i * 600, figureK - (4 - i) * by, null, null, null, null, ""));
        }
        for (int i = 0; i < rows; i++) {
            out.add(new LogRow(i + 6, 2400 + i * apart, figureK, null, null, null, null, ""));
        }
        return out;
    }

    @Test
    void aFigureThatStandsForAnHour() {
        assertThat(Frozen.of(stands(800, 10, 13, 300))).containsExactly(new DeadSpell(6, 18, 2400, 6000, 800));
        assertThat(Frozen.of(stands(800, 10, 12, 330))).hasSize(1);
        assertThat(Frozen.of(stands(800, 10, 11, 400))).isEmpty();
        assertThat(Frozen.of(stands(800, 10, 13, 299))).isEmpty();
        // Ten minutes by 5 K are 30 °C/h; 80 °C is 353.15 K.
        assertThat(Frozen.of(stands(800, 5, 13, 300))).isEmpty();
        assertThat(Frozen.of(stands(800, 5.1, 13, 300))).hasSize(1);
        assertThat(Frozen.of(stands(353.15, 10, 13, 300))).isEmpty();
        assertThat(Frozen.of(stands(354, 10, 13, 300))).hasSize(1);
        assertThat(Frozen.of(List.of())).isEmpty();
    }

    @Test
    void theClimbOfTheTwentyMinutesBefore() {
        List<LogRow> rows = stands(800, 10, 13, 300);
        // From the start of the log nobody knows it; ten minutes of it are enough.
        assertThat(Frozen.of(rows.subList(4, 17))).isEmpty();
        assertThat(Frozen.of(rows.subList(3, 17))).hasSize(1);
        // 20 minutes before it stood 15 K lower, half an hour before as high as then.
        rows.set(1, rows.get(1).reading(800.0));
        rows.set(2, rows.get(2).reading(785.0));
        assertThat(Frozen.of(rows)).hasSize(1);
        rows.set(2, rows.get(2).reading(795.0));
        assertThat(Frozen.of(rows)).isEmpty();
    }

    @Test
    void everySuchTimeIsTold() {
        List<LogRow> rows = stands(800, 10, 13, 300);
        for (int i = 0; i < 17; i++) {
            LogRow r = stands(900, 20, 13, 300).get(i);
            rows.add(r.at(r.timeS() + 6300).onLine(r.line() + 17));
        }
        assertThat(Frozen.of(rows))
                .containsExactly(new DeadSpell(6, 18, 2400, 6000, 800), new DeadSpell(23, 35, 8700, 12300, 900));
    }

    @Test
    void columns() {
        assertThat(Columns.dot(new double[] {2, 3}, new double[] {5, 7})).isEqualTo(31);
        assertThat(Columns.slope(new double[] {9, 4}, new double[] {5, 6}, 2)).containsExactly(2, -1);
    }
}
