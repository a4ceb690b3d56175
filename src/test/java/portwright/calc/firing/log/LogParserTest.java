package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.draft.DamperPlate;

class LogParserTest {
    private static void row(FiringLog log, int i, double seconds, double celsius) {
        assertThat(log.rows().get(i).timeS()).isCloseTo(seconds, within(1e-6));
        assertThat(log.rows().get(i).kelvin() - 273.15).isCloseTo(celsius, within(1e-9));
    }

    @Test
    void commasAndAClockOverMidnight() {
        FiringLog log = LogParser.parse(
                "Time,Temp (°C),Damper %,Gas inH2O,Cone,Notes\n22:50,600,,,,start\n23:50,700,50%,11,,\n00:50,800,50,11,06,\"cone, seen\"\n");
        row(log, 0, 0, 600);
        row(log, 2, 7200, 800);
        assertThat(log.rows().get(1).damperShare()).isEqualTo(0.5);
        assertThat(log.rows().get(1).gasPa()).isCloseTo(2740, within(3.0));
        assertThat(log.rows().get(2).cone()).isEqualTo("06");
        assertThat(log.rows().get(2).note()).isEqualTo("cone, seen");
        assertThat(log.faults()).isEmpty();
        assertThat(log.remarks()).anyMatch(m -> m.contains("midnight"));
    }

    @Test
    void aRowAloneOutOfOrderIsNoMidnight() {
        FiringLog log = LogParser.parse(
                "time,temp C\n17:59,1071\n18:00,1073\n00:00,9999\n18:01,1077\n18:02,1080\n00:03,1081\n18:04,1085\n23:59,1088\n00:01,1090\n00:02,1091\n");
        assertThat(log.faults().stream().filter(LogFault::skipped).map(LogFault::line))
                .containsExactly(4, 7);
        row(log, 2, 120, 1077);
        row(log, 4, 300, 1085);
        row(log, 7, 6 * 3600 + 180, 1091);
        assertThat(log.remarks().stream().filter(m -> m.contains("midnight"))).hasSize(1);
    }

    @Test
    void theHeadingsOfTheCardsTableAreRead() {
        FiringLog log = LogParser.parse(
                "clock,meter °C,cones,plate mm,gas inH2O,spyhole flame,CO ppm,notes\n9:00,20,,0,off,,,\n10:00,900,06,30,11,,,lit\n11:00,1000,,30,11 inH2O,,,\n");
        assertThat(log.faults()).isEmpty();
        row(log, 1, 3600, 900);
        assertThat(log.rows().get(1).cone()).isEqualTo("06");
        assertThat(log.rows().get(1).damperM()).isCloseTo(0.03, within(1e-9));
        assertThat(log.rows().get(1).gasPa()).isCloseTo(2740, within(3.0));
        assertThat(LogParser.parse("clock,meter °F,cones,meter kWh,notes\n9:00,212,,1,\n10:00,932,,9,\n")
                        .rows()
                        .get(1)
                        .kelvin())
                .isCloseTo(773.15, within(1e-9));
    }

    @Test
    void fahrenheitTabsAndHalfDays() {
        FiringLog log =
                LogParser.parse("\ufefftime\tTemp °F\r\n11:30 AM\t1,000\r\n\r\n12:30 PM\t1,500.5\r\n1:30 pm\t998\r\n");
        row(log, 0, 0, (1000 - 32) / 1.8);
        row(log, 1, 3600, (1500.5 - 32) / 1.8);
        row(log, 2, 7200, (998 - 32) / 1.8);
    }

    @Test
    void semicolonsAndDecimalComma() {
        FiringLog log = LogParser.parse("elapsed h;temp C\n0,5;100,5\n1;200,25\n");
        row(log, 0, 0, 100.5);
        row(log, 1, 1800, 200.25);
    }

    @Test
    void elapsedBeyondADayAndWithSeconds() {
        FiringLog log = LogParser.parse("elapsed,temp C\n0:00:30,20\n23:59:30,700\n25:00:30,720\n");
        row(log, 2, 25 * 3600, 720);
    }

    @Test
    void twelveHourClockWithoutHalves() {
        FiringLog log = LogParser.parse("clock,temp C\n9:00,20\n12:30,500\n1:30,600\n");
        row(log, 2, 4.5 * 3600, 600);
    }

    @Test
    void unitsInTheCellsAndDates() {
        FiringLog log = LogParser.parse("timestamp,kiln\n2026-05-01 23:30:00,1650 °F\n2026-05-02T00:30:00Z,900 °C\n");
        row(log, 0, 0, (1650 - 32) / 1.8);
        row(log, 1, 3600, 900);
        FiringLog split = LogParser.parse("date,time,temp C\n2026-05-01,23:30,20\n2026-05-02,00:30,120\n");
        row(split, 1, 3600, 120);
    }

    @Test
    void datesWithPointsAndSlashes() {
        row(LogParser.parse("date;time;temp C\n31.12.2025;23:30;20\n01.01.2026;00:30;120\n"), 1, 3600, 120);
        row(LogParser.parse("timestamp,temp C\n12/31/2025 11:30 PM,20\n1/1/2026 12:30 AM,120\n"), 1, 3600, 120);
        row(LogParser.parse("timestamp,temp C\n31/12/25 23:30,20\n01/01/26 00:30,120\n"), 1, 3600, 120);
    }

    @Test
    void minutesAndWords() {
        row(LogParser.parse("time (min),temp °C\n0,20\n90,200\n"), 1, 5400, 200);
        row(LogParser.parse("time,temp °C\n0 h,20\n2 h 30 min,200\n"), 1, 9000, 200);
    }

    @Test
    void missingSecondsAreSpreadInsideTheMinute() {
        FiringLog log = LogParser.parse("time,temp C\n10:00,20\n10:00,21\n10:00,22\n10:01,23\n");
        row(log, 1, 20, 21);
        row(log, 2, 40, 22);
        row(log, 3, 60, 23);
        assertThat(log.remarks()).anyMatch(m -> m.contains("seconds missing"));
    }

    @Test
    void badRowsAreNamedAndSkipped() {
        FiringLog log = LogParser.parse(
                "time,temp C,damper %\n10:00,20,\n10:05,OPEN,\n10:10,9999,\n25 past,30,\n10:15,40,150\n10:12,50,\n10:20,60,1,2\n10:25,,\n10:30,80,\n");
        assertThat(log.rows()).hasSize(3);
        assertThat(log.faults().stream().map(LogFault::line)).containsExactlyElementsOf(List.of(3, 4, 5, 6, 7, 8, 9));
        assertThat(log.faults().stream().filter(f -> !f.skipped()).map(LogFault::line))
                .containsExactly(6);
        assertThat(log.faults().get(0).reason()).contains("OPEN");
    }

    @Test
    void oneWrongClockTakesOneRow() {
        FiringLog log = LogParser.parse("time,temp C\n10:00,20\n10:05,30\n19:10,40\n10:15,50\n10:20,60\n");
        assertThat(log.rows()).hasSize(4);
        assertThat(log.faults())
                .singleElement()
                .satisfies(f -> assertThat(f.line()).isEqualTo(4));
    }

    @Test
    void conesFromNotesAndRowsWithoutReading() {
        FiringLog log = LogParser.parse(
                "time,temp C,notes\n10:00,1200,cone 6 soft\n10:10,,cone 6 is down\n10:20,1240,^7 fell\n10:30,1250,cone 77 down\n");
        assertThat(log.cones().stream().map(LogRow::cone)).containsExactly("6", "7");
        assertThat(log.readings()).hasSize(3);
        assertThat(log.faults())
                .singleElement()
                .satisfies(f -> assertThat(f.reason()).contains("77"));
    }

    @Test
    void linesBeforeTheHeaderAndOtherEncodings() {
        FiringLog log = LogParser.parse("logger 7\nset point 1200\n\nTime;Temperatur °C\n"
                .replace("Temperatur ", "Temp ")
                .concat("10:00;20\n10:10;30\n")
                .getBytes(Charset.forName("windows-1252")));
        row(log, 1, 600, 30);
        assertThat(log.remarks()).anyMatch(m -> m.contains("line 4"));
        row(LogParser.parse("time,temp °C\n10:00,20\n10:10,30\n".getBytes(StandardCharsets.UTF_16)), 1, 600, 30);
    }

    @Test
    void setPointIsNoReading() {
        row(LogParser.parse("time,set point °C,temp °C\n10:00,999,20\n10:10,999,30\n"), 1, 600, 30);
    }

    @Test
    void whatCannotBeUsedSaysWhatToWrite() {
        assertThatThrownBy(() -> LogParser.parse("a,b\n1,2\n"))
                .isInstanceOf(LogException.class)
                .hasMessageContaining("time, temp °C");
        assertThatThrownBy(() -> LogParser.parse("")).isInstanceOf(LogException.class);
        assertThatThrownBy(() -> LogParser.parse("time,temp\n10:00,900\n")).hasMessageContaining("scale");
        assertThatThrownBy(() -> LogParser.parse("time,temp C\n10,900\n")).hasMessageContaining("unit");
        assertThatThrownBy(() -> LogParser.parse("time,temp C\n10:00,oops\n")).hasMessageContaining("line 2");
    }

    private static FiringLog dampers(String name, String... cells) {
        StringBuilder b = new StringBuilder("time min;temp °C;" + name + "\n");
        for (int i = 0; i < cells.length; i++) {
            b.append(i * 5)
                    .append(";")
                    .append(900 + i)
                    .append(";")
                    .append(cells[i])
                    .append('\n');
        }
        return LogParser.parse(b.toString());
    }

    /** A plate over one hole of 40 mm: 20 mm of travel are half of it, 10 mm leave a segment of 0.1955 (r²(α − sin α cos α)/πr², cos α = 0.5). */
    @Test
    void travelOfTheDamperBecomesAShare() {
        DamperPlate plate = new DamperPlate(List.of(new DamperPlate.Hole(0.040, 0)));
        for (FiringLog log : List.of(
                dampers("damper mm", "20", "10", "0", "40", ""),
                dampers("damper (cm)", "2", "1,0", "shut", "open", "-"),
                dampers("damper", "20 mm", "10 mm", "0 mm", "4 cm", ""),
                dampers("damper travel in", "0.7874", "10 mm", "0", "1 37/64 in", ""))) {
            FiringLog shares = log.withShares(plate);
            assertThat(log.faults()).isEmpty();
            double[] want = {0.5, 0.1955, 0, 1};
            for (int i = 0; i < 4; i++) {
                assertThat(shares.rows().get(i).damperShare()).isCloseTo(want[i], within(2e-4));
            }
            assertThat(shares.rows().get(4).damperShare()).isNull();
            assertThat(shares.remarks()).anyMatch(r -> r.contains("all open is 40 mm"));
            assertThat(shares.withShares(plate)).isSameAs(shares);
        }
    }

    @Test
    void aDamperThatIsNeitherIsToldByLine() {
        assertThat(dampers("damper travel", "20", "20 mm").faults())
                .singleElement()
                .satisfies(f -> assertThat(f.line()).isEqualTo(2));
        assertThat(dampers("damper mm", "800", "wide").faults()).hasSize(2);
        assertThat(dampers("damper in %", "50").rows().get(0).damperShare()).isEqualTo(0.5);
        DamperPlate plate = new DamperPlate(List.of(new DamperPlate.Hole(0.040, 0)));
        assertThat(dampers("damper mm", "41").withShares(plate).remarks()).noneMatch(r -> r.contains("past all open"));
        assertThat(dampers("damper mm", "50").withShares(plate).remarks())
                .anyMatch(r -> r.contains("past all open") && r.contains("at 50 mm in line"));
        FiringLog none = dampers("damper mm", "20").withShares(null);
        assertThat(none.rows().get(0).damperShare()).isNull();
        assertThat(none.remarks()).anyMatch(r -> r.contains("no flue"));
    }

    /** What is no cone falls as none, and says so. */
    @Test
    void aConeCellMustBeACone() {
        for (String cell : List.of("x9", "9x", "9.5", "10:30", "9?", "-9")) {
            FiringLog log = LogParser.parse("elapsed min,temp °C,cone\n0,1000,\n30,1100," + cell + "\n60,1180,\n");
            assertThat(log.cones()).as(cell).isEmpty();
            assertThat(log.faults()).as(cell).extracting(LogFault::line).containsExactly(3);
        }
    }

    /** A cone falls once, and the softer one first. */
    @Test
    void conesAreHeldAgainstOneAnother() {
        FiringLog twice = LogParser.parse("elapsed min,temp °C,cone\n0,1000,\n30,1100,04\n60,1180,6\n90,1190,04\n");
        assertThat(twice.cones()).extracting(LogRow::cone).containsExactly("04", "6");
        assertThat(twice.faults().get(0).reason()).contains("line 3 already");
        FiringLog wrong = LogParser.parse("elapsed min,temp °C,cone\n0,1000,\n30,1100,9\n60,1180,5\n90,1190,6\n");
        assertThat(wrong.cones()).isEmpty();
        assertThat(wrong.faults()).extracting(LogFault::line).containsExactly(4, 5);
    }

    /** A row with two faults is one row. */
    @Test
    void skippedRowsAreCountedOnce() {
        FiringLog log = new FiringLog(
                List.of(),
                List.of(new LogFault(3, true, "a"), new LogFault(3, true, "b"), new LogFault(4, false, "c")),
                List.of(),
                List.of(),
                Double.NaN,
                false);
        assertThat(log.linesSkipped()).isEqualTo(1);
    }

    @Test
    void notesTellCylinderAndLoad() {
        assertThat(List.of("new cylinder", "Refilled", "swapped the gas bottle", "cylinder changed"))
                .allMatch(Notes::refill);
        assertThat(List.of("need a new cylinder", "new cylinder next time", "cylinder low", "", "full damper"))
                .noneMatch(Notes::refill);
        FiringLog log = LogParser.parse("elapsed min,temp °C,notes\n0,20,load 45 kg\n30,110,\n");
        assertThat(Notes.loadKg(log)).isEqualTo(45);
    }

    @Test
    void emptyTemperaturesAndLinesOfSeparatorsAreTold() {
        StringBuilder b = new StringBuilder("Stunden,temp °C,damper %,notes\n");
        for (int k = 0; k < 12; k++) {
            b.append(k / 10.0).append(',').append(k == 4 ? "" : 100 + 10 * k).append(",40,\n");
        }
        b.append(",,,\n2.0,220,,\n2.1,,,plate moved\n");
        FiringLog log = LogParser.parse(b.toString());
        assertThat(log.remarks())
                .contains(
                        "line 6: no temperature; only damper or gas is read there",
                        "line 14: separators alone, nothing to read");
        assertThat(log.rows().get(1).timeS()).isEqualTo(360);
        assertThat(log.faults()).isEmpty();
    }

    /** Clocks go back an hour at night in autumn; a single slip of the pen is no clock set back. */
    @Test
    void clockSetBackAnHourIsNamedByLine() {
        StringBuilder b = new StringBuilder("time,temp °C\n");
        for (int k = 0; k < 60; k++) {
            int m = 22 * 60 + 5 * k - (k < 36 ? 0 : 60);
            b.append(String.format(java.util.Locale.ROOT, "%02d:%02d,%d%n", m / 60 % 24, m % 60, 100 + 10 * k));
        }
        FiringLog log = LogParser.parse(b.toString());
        assertThat(log.remarks()).anyMatch(x -> x.startsWith("line 38: the times go back by an hour"));
        assertThat(log.faults()).isEmpty();
        assertThat(log.rows()).hasSize(60);
        assertThat(log.rows().get(59).timeS()).isEqualTo(59 * 300.0);
        String slip = b.toString()
                .replaceFirst("22:50", "21:50")
                .lines()
                .limit(30)
                .collect(java.util.stream.Collectors.joining("\n"));
        assertThat(LogParser.parse(slip + "\n").remarks()).noneMatch(x -> x.contains("an hour"));
    }

    /** A time column that a spreadsheet drew too narrow holds # alone; a line of words behind # is a comment. */
    @Test
    void rowsThatBeginWithAHashAreTold() {
        FiringLog log = LogParser.parse(
                "# kiln two\ntime,temp °C\n8:00,20\n########,60\n########,90\n# second shelf glowed\n9:00,150\n9:30,200\n");
        String narrow = ": the column was too narrow when it was exported; widen it and export again";
        assertThat(log.faults()).hasSize(2).allMatch(f -> f.reason().equals("\"########\" is no time" + narrow));
        assertThat(log.linesSkipped()).isEqualTo(2);
        assertThat(log.remarks()).anyMatch(m -> m.startsWith("1 line beginning with # holds no columns"));
        log = LogParser.parse("time,temp °C\n8:00,20\n8:30,###\n9:00,150\n9:30,200\n9:40,hot\n");
        assertThat(log.faults().get(0).reason()).isEqualTo("\"###\" is no temperature" + narrow);
        assertThat(log.faults().get(1).reason()).contains("write 900");
    }

    /** A plate off and the ports open: the kiln falls for ten minutes, fast at first; no reading of it is out and back. */
    @Test
    void aSteadyFallHasNoWildReading() {
        StringBuilder b = new StringBuilder("elapsed min,temp °C\n");
        double c = 1160;
        for (int t = 0; t <= 100; t += 5) {
            b.append(t).append(',').append(c).append('\n');
            c += 5;
        }
        // Rows at the turn of plate and ports as well as every five minutes.
        double[][] then = {{104.5, 1268}, {105, 1258.8}, {110, 1231.3}, {114.5, 1211.9}, {115, 1216.9}, {120, 1224}};
        for (double[] x : then) {
            b.append(x[0]).append(',').append(x[1]).append('\n');
        }
        assertThat(LogParser.parse(b.toString()).faults()).isEmpty();
    }
}
