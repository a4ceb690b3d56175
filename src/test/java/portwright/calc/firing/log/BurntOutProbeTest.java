package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import portwright.report.RecordText;

/** A reading that stands where no kiln of brick is: the instrument sees no thermocouple. */
class BurntOutProbeTest {
    /** A kiln that climbs beyond 1500 °C row by row is no dead probe; one that jumps there is. */
    @Test
    void aKilnBeyondTheScaleIsNoDeadProbe() {
        List<String> rows = new ArrayList<>();
        for (int m = 0; m <= 600; m += 5) {
            rows.add(m + "," + (1000 + m));
        }
        assertThat(LogParser.parse(HardLogsTest.table("elapsed min,temp °C", rows))
                        .dead())
                .isEmpty();
        List<String> slow = new ArrayList<>();
        for (int m = 0; m <= 1800; m += 5) {
            slow.add(m + "," + (1000 + m / 4));
        }
        assertThat(LogParser.parse(HardLogsTest.table("elapsed min,temp °C", slow))
                        .dead())
                .isEmpty();
    }

    /** An instrument that sees no thermocouple goes to the top of its scale at once or by its filter, and wanders there. */
    @Test
    void aReadingThatStandsOver1430IsBurntOut() {
        for (int top : new int[] {1435, 1450, 1490}) {
            for (int wanders : new int[] {0, 3, 10}) {
                for (int perRow : new int[] {400, 60}) {
                    Random r = new Random(top + wanders);
                    List<String> rows = new ArrayList<>();
                    double at = 0;
                    for (String row : HardLogsTest.climb(5, 12)) {
                        int min = Integer.parseInt(row.split(",", -1)[0]);
                        double sound = Double.parseDouble(row.split(",", -1)[1]);
                        at = min < 600 ? sound : Math.min(top, at + perRow);
                        rows.add(
                                min < 600
                                        ? row
                                        : min + ","
                                                + Math.round(at + (at < top ? 0 : wanders * (2 * r.nextDouble() - 1))));
                    }
                    FiringLog log = LogParser.parse(HardLogsTest.table("elapsed min,temp °C", rows));
                    String as = top + " wandering by " + wanders + ", " + perRow + " a row";
                    assertThat(log.dead()).as(as).isNotEmpty();
                    assertThat(log.dead().get(0).fromS()).as(as).isBetween(595 * 60.0, 610 * 60.0);
                    assertThat(log.readings()).as(as).noneMatch(x -> x.timeS() > 606 * 60 && x.kelvin() > 1603.15);
                }
            }
        }
    }

    @Test
    void aBurntOutThermocoupleIsNamedAsOne() {
        assertThat(RecordText.words(
                        new LogFinding(LogFinding.Kind.DEAD_PROBE, 3600, 1708, Double.NaN, Double.NaN, false, true),
                        true))
                .contains("stands near 1435 °C", "burnt out", "no goal is counted as reached");
        assertThat(RecordText.words(
                        new LogFinding(LogFinding.Kind.DEAD_PROBE, 3600, 294, Double.NaN, Double.NaN, false, true),
                        true))
                .contains("it shows 21 °C", "heats on without end");
    }
}
