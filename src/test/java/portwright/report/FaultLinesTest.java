package portwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogFault;
import portwright.calc.firing.log.LogParser;

/** Rows left out of a log: a long run of one cause is told once, with its number and what is likely behind it. */
class FaultLinesTest {
    private static final String ALL = "; --json lists all";

    /** A firing to 2300 °F under a header that says °C. */
    private static FiringLog wrongScale() {
        StringBuilder b = new StringBuilder("time,temp °C\n");
        for (int i = 0; i <= 230; i++) {
            b.append(String.format("%d:%02d,%d%n", i * 3 / 60, i * 3 % 60, 70 + i * 2230 / 230));
        }
        return LogParser.parse(b.toString());
    }

    @Test
    void manyOfOneCauseAreToldOnce() {
        FiringLog log = wrongScale();
        assertThat(log.faults()).hasSizeGreaterThan(80).allMatch(LogFault::skipped);
        List<String> told = FaultLines.of(log.faults(), ALL);
        assertThat(told).hasSize(6);
        assertThat(told.subList(0, 5)).allMatch(w -> w.contains("above 1500 °C"));
        assertThat(told.get(5))
                .startsWith("and " + (log.faults().size() - 5) + " more lines like it, to line 232;")
                .contains("degrees Fahrenheit in a column named °C: name it temp °F");
    }

    /** Another cause between them stands in full, and few of a kind are not counted. */
    @Test
    void causesAreKeptApart() {
        List<LogFault> faults = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            faults.add(new LogFault(10 + i, true, "\"" + (1500 + i) + "\" is above 1500 °C: no thermocouple reading"));
        }
        faults.add(7, new LogFault(17, false, "cone \"x\" is not understood; write 6 or cone 06"));
        faults.add(8, new LogFault(18, true, "no time"));
        List<String> told = FaultLines.of(faults, ALL);
        assertThat(told)
                .hasSize(8)
                .contains(
                        "line 17, cell not used: cone \"x\" is not understood; write 6 or cone 06",
                        "line 18 skipped: no time");
        assertThat(told.get(5)).startsWith("and 15 more lines like it, to line 29");
        assertThat(FaultLines.of(faults.subList(0, 6), ALL)).hasSize(6).noneMatch(w -> w.startsWith("and"));
        assertThat(FaultLines.of(List.of(), ALL)).isEmpty();
    }

    @Test
    void whatIsLikely() {
        for (String[] c : new String[][] {
            {"\"OPEN\" is no reading: thermocouple open or not connected", "loose thermocouple wire"},
            {"its time lies before that of the row above", "two logs in one file"},
            {"\"n/a\" is no time; write 14:05, 2:05 PM or 1.5 h", "words or a date"},
            {"more cells than the header has names", "to line 6; --json"}
        }) {
            List<LogFault> same = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                same.add(new LogFault(i, true, c[0]));
            }
            assertThat(FaultLines.of(same, ALL).get(5)).startsWith("and 2 more").contains(c[1]);
        }
    }

    @Test
    void kindsHaveAnEnd() {
        List<LogFault> faults = new ArrayList<>();
        for (char k = 'a'; k < 'a' + 20; k++) {
            faults.add(new LogFault(k, false, "of kind " + k));
        }
        assertThat(FaultLines.of(faults, ALL)).hasSize(13).last().isEqualTo("8 more of other kinds; --json lists all");
    }
}
