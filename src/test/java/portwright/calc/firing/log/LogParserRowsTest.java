package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;

/** A log as text: which line is the header, which rows count, and what is told of those that do not. */
class LogParserRowsTest {
    private static final String EXAMPLE = "Write a first line such as: time, temp °C, damper %, cone, notes";

    private static FiringLog parse(String... lines) {
        return LogParser.parse(String.join("\n", lines) + "\n");
    }

    private static double celsius(FiringLog log, int row) {
        return log.rows().get(row).kelvin() - 273.15;
    }

    private static AbstractThrowableAssert<?, ? extends Throwable> fails(String... lines) {
        return assertThatThrownBy(() -> parse(lines)).isInstanceOf(LogException.class);
    }

    @Test
    void everyEncodingIsRead() {
        String text = "time,temp °C\n10:00,20\n10:10,30\n";
        byte[] little = ("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE);
        assertThat(little[0]).isEqualTo((byte) 0xFF);
        for (byte[] bytes : new byte[][] {
            text.getBytes(StandardCharsets.UTF_8),
            ("\ufeff" + text).getBytes(StandardCharsets.UTF_8),
            text.getBytes(StandardCharsets.UTF_16),
            little,
            text.getBytes(Charset.forName("windows-1252"))
        }) {
            FiringLog log = LogParser.parse(bytes);
            assertThat(log.rows()).hasSize(2);
            assertThat(log.remarks()).isEmpty();
            assertThat(celsius(log, 1)).isCloseTo(30, within(1e-9));
        }
        for (byte[] none : new byte[][] {{}, {(byte) 0xFF}, {'a'}, {(byte) 0xFF, (byte) 0xFE}}) {
            assertThatThrownBy(() -> LogParser.parse(none)).isInstanceOf(LogException.class);
        }
    }

    @Test
    void theHeaderIsLookedForInSixtyLines() {
        String before = "logger\n\n".repeat(59);
        FiringLog log = LogParser.parse(before + "time,temp C\n10:00,20\n");
        assertThat(log.rows().get(0).line()).isEqualTo(120);
        assertThat(log.remarks()).containsExactly("the header is line 119; what stands before it is not read");
        fails(before + "logger", "time,temp C", "10:00,20")
                .hasMessage("no line names a time column and a temperature column. " + EXAMPLE);
        log = parse("", "# time,temp C", "10:00,20");
        assertThat(log.remarks()).isEmpty();
        assertThat(log.rows()).hasSize(1);
    }

    /** What parts more columns parts the cells; of two alike the tab stands before the semicolon, and that before the comma. */
    @Test
    void whatPartsTheCells() {
        assertThat(celsius(parse("time;temp C,time;temp C,x", "10:00;20;30"), 0))
                .isCloseTo(20, within(1e-9));
        assertThat(celsius(parse("time;temp C,time;temp C,x,y", "20,10:00,3,4"), 0))
                .isCloseTo(20, within(1e-9));
        assertThat(celsius(parse("time\ttemp C", "10:00\t20,5"), 0)).isCloseTo(20.5, within(1e-9));
    }

    /** The whole column tells whether a comma parts thousands. 1200 °F are (1200 − 32) / 1.8 °C. */
    @Test
    void commasOfAColumn() {
        assertThat(celsius(parse("time;temp F", "10:00;998", "10:05;1,200"), 1)).isCloseTo(1168 / 1.8, within(1e-9));
        assertThat(celsius(parse("time;temp C", "10:00;99,250", "10:05;100,250"), 1))
                .isCloseTo(100.25, within(1e-9));
    }

    @Test
    void rowsWordForWordAlikeCountOnce() {
        FiringLog log = parse("time,temp C", "10:00,20", "10:00,20", "10:00,20", "10:05,30", "", "", "10:10,40");
        assertThat(log.rows()).hasSize(3);
        assertThat(log.remarks()).containsExactly("2 rows repeat the row above word for word; each counts once");
        log = parse("time,temp C", "10:00,20", "10:00,20", "10:05,30");
        assertThat(log.remarks()).containsExactly("1 row repeats the row above word for word; it counts once");
        log = parse("time,temp C", "10:00,20", "", "10:00,20", "10:05,30");
        assertThat(log.rows()).hasSize(3);
        assertThat(log.remarks()).noneMatch(r -> r.contains("word for word"));
    }

    @Test
    void commentsAndLinesOfNothing() {
        FiringLog log = parse("time,temp C", "# one", "10:00,20", ",", "## two,", "10:05,30");
        assertThat(log.rows()).extracting(LogRow::line).containsExactly(3, 6);
        assertThat(log.faults()).isEmpty();
        assertThat(log.remarks())
                .containsExactly(
                        "2 lines beginning with # hold no columns: comments, not read",
                        "line 4: separators alone, nothing to read");
        log = parse("time,temp C", "10:00,20", "# one,two", "#,3", "10:05,30", "# three");
        assertThat(log.faults()).extracting(LogFault::line).containsExactly(3, 4);
        assertThat(log.remarks()).containsExactly("1 line beginning with # holds no columns: a comment, not read");
    }

    @Test
    void theScaleMustBeSaid() {
        fails("x", "time,temp", "10:00,900")
                .hasMessage("the temperature column does not say its scale. Name it temp °C or temp °F in line 2");
        assertThat(parse("time,temp", "10:00,900", "10:05,901 °C").faults()).hasSize(1);
        fails("time,temp").hasMessage("no row with both a time and a temperature can be used. " + EXAMPLE);
        fails("time,temp C,notes", "10:00,,lit", "10:05,,low").hasMessageStartingWith("no row with both");
        // A row that ends before its temperature says nothing of the scale.
        fails("time,temp", "10:00").hasMessageContaining("line 2: no temperature");
    }

    @Test
    void theUnitOfTimesMustBeSaid() {
        fails("time,temp C", "10,900", "20,910")
                .hasMessage(
                        "the time column holds bare numbers and does not say their unit. Name it time min or time h in line 1");
        FiringLog log = parse("time,temp C", "10,900", "10:20,910", ",920");
        assertThat(log.rows()).extracting(LogRow::line).containsExactly(3);
        assertThat(log.faults())
                .containsExactly(
                        new LogFault(2, true, "\"10\" is no time; write 14:05, 2:05 PM or 1.5 h"),
                        new LogFault(4, true, "no time"));
        fails("time,temp C").hasMessageStartingWith("no row");
    }

    @Test
    void decimalCommasBetweenCommas() {
        String[] lines = {"x", "time,temp C,damper %", "0:00,20,5,50", "0:05,21,5,50", "0:10,22,1,50"};
        fails(lines).hasMessage("a decimal comma between commas. Write a point, or put ; between cells, in line 2 too");
        String more =
                "more cells than the header has names; a decimal comma between commas? Write a point, or put ; between cells";
        String none = "no row with both a time and a temperature can be used; line 3: ";
        fails(lines[0], lines[1], lines[2], lines[3]).hasMessage(none + more + ". " + EXAMPLE);
        fails(lines[0], lines[1], lines[2], lines[3], "0:10,22,15,50").hasMessageStartingWith(none + more);
        fails(lines[0], lines[1].replace(',', ';'), "0:00;20;5;50", "0:05;21;5;50", "0:10;22;5;50")
                .hasMessageStartingWith(none + more);
        fails("x", "time,temp C", "0:00,20,5", "0:05,21,5", "0:10,22,1").hasMessageStartingWith(none + more);
        FiringLog log = parse(lines[1], lines[2], lines[3], lines[4], "0:15,23,50");
        assertThat(log.faults())
                .hasSize(3)
                .allMatch(f -> f.skipped() && f.reason().equals(more));
    }

    @Test
    void cellsBeyondTheHeader() {
        FiringLog log = parse("time,temp C,notes", "10:00,20,lit,low", "10:05,30,ok,,", "10:10,40");
        assertThat(log.rows()).extracting(LogRow::note).containsExactly("lit, low", "ok, , ", "");
        log = parse("time,temp C", "10:00,20,,", "10:05,30,7", "10:10,40");
        assertThat(log.rows()).extracting(LogRow::line).containsExactly(2, 4);
        // A note that stands before other columns takes nothing of them.
        log = parse("time,notes,temp C", "10:00,lit,20", "10:05,lit,low,30", "10:10,,40");
        assertThat(log.rows()).extracting(LogRow::line).containsExactly(2, 4);
    }

    @Test
    void whatARowTells() {
        FiringLog log = parse(
                "date,time,temp C,damper %,gas mbar,cone,notes",
                "2026-05-01,23:30,20,40,10,,lit",
                "2026-05-02,0:30,120,,,5/6,",
                "2026-05-02,0:40,OPEN,50,,,",
                "2026-05-02,0:50,hot,,,,",
                "2026-05-02,0:55,,60,,,",
                "2026-05-02,1:00,130,,,,");
        assertThat(log.rows().get(0)).isEqualTo(new LogRow(2, 0, 293.15, 0.4, null, 1000.0, null, "lit"));
        assertThat(log.rows()).extracting(LogRow::cone).containsExactly(null, "5", "6", null, null, null);
        assertThat(log.rows().get(2)).isEqualTo(new LogRow(3, 3600, null, null, null, null, "6", ""));
        assertThat(log.rows().get(3)).isEqualTo(new LogRow(4, 4200, null, 0.5, null, null, null, ""));
        assertThat(log.faults())
                .containsExactly(
                        new LogFault(4, false, "\"OPEN\" is no reading: thermocouple open or not connected"),
                        new LogFault(5, true, "\"hot\" is no temperature; write 900 or 900 °C"));
        assertThat(log.remarks()).containsExactly("line 6: no temperature; only damper or gas is read there");
        // 2026-05-01 is 20 574 days after 1970-01-01.
        assertThat(log.startS()).isEqualTo(20574 * 86400.0 + 23.5 * 3600);
    }

    @Test
    void theOtherCellsOfARow() {
        FiringLog log = parse(
                "time,temp C,damper %,gas",
                "10:00,20,200,5",
                "10:05,30,-,-",
                "10:10,40,,off",
                "10:15,50,,0",
                "10:20,60,,11 inH2O",
                "10:25,70,,99 bar",
                "10:30,80,,100 bar",
                "10:35,90,,-1 bar",
                "10:40,95,,9 furlongs");
        assertThat(log.rows()).hasSize(9);
        assertThat(log.rows())
                .extracting(LogRow::gasPa)
                .startsWith(null, null, 0.0, 0.0)
                .endsWith(null, null, null);
        // An inch of water is 249.089 Pa; NIST SP 811, app. B.
        assertThat(log.rows().get(4).gasPa()).isCloseTo(11 * 249.089, within(0.5));
        assertThat(log.rows().get(5).gasPa()).isCloseTo(9.9e6, within(1e-3));
        assertThat(log.faults())
                .containsExactly(
                        new LogFault(
                                2,
                                false,
                                "damper \"200\" is neither an open share of 0 to 100 % nor a travel of 0 to 500 mm; name the column damper % or damper mm"),
                        gas(2, "5"),
                        gas(8, "100 bar"),
                        gas(9, "-1 bar"),
                        gas(10, "9 furlongs"));
    }

    private static LogFault gas(int line, String cell) {
        return new LogFault(
                line, false, "gas pressure \"" + cell + "\" is not understood; name the column gas inH2O or gas mbar");
    }

    @Test
    void theOtherColumns() {
        FiringLog log = parse("time,temp C,kiln C,amps,\"set, point\"", "10:00,20,25,1,2", "10:05,30,35,1,2");
        assertThat(log.remarks())
                .containsExactly(
                        "the temperature is read from column \"temp C\"; \"kiln C\" is only laid beside it: in the middle of 2 rows it reads 5 °C (9 °F) higher, at most 5 °C (9 °F) higher (line 2)",
                        "columns not used: \"amps\", \"set, point\"");
        fails("time,temp C,kiln C", "10:00,OPEN,25")
                .hasMessage(
                        "the first temperature column holds no reading, the second does; take the first one out of the log. no row with both a time and a temperature can be used; line 2: \"OPEN\" is no reading: thermocouple open or not connected. "
                                + EXAMPLE);
    }

    @Test
    void aProbeThatFailsAndAScaleThatIsWrong() {
        FiringLog log = parse("time,temp C", "10:00,20", "10:05,OPEN", "10:10,OPEN ", "10:15, OPEN", "10:20,40");
        assertThat(log.dead()).hasSize(1);
        assertThat(log.dead().get(0).fromLine()).isEqualTo(3);
        assertThat(log.scaleDoubted()).isFalse();
        log = parse("time,temp F", "10:00,20", "11:00,300", "12:00,600", "13:00,900");
        assertThat(log.scaleDoubted()).isTrue();
        assertThat(log.remarks()).anyMatch(r -> r.startsWith("CHECK THE SCALE"));
    }

    @Test
    void faultsStandByLine() {
        FiringLog log = parse(
                "time,temp C,cone", "10:00,20,", "10:05,9999,", "10:10,30,x9", "10:20,40,", "10:15,50,", "10:25,hot,");
        assertThat(log.faults()).extracting(LogFault::line).containsExactly(3, 4, 6, 7);
    }
}
