package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.calc.firing.StepResult;
import portwright.file.Starters;
import portwright.review.RecordBench;
import portwright.review.Review;

class RecordCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path design;
    private Path log;

    private int run(Object... args) {
        String[] text = java.util.Arrays.stream(args).map(Object::toString).toArray(String[]::new);
        return Cli.run(new PrintWriter(out), new PrintWriter(err), text);
    }

    @BeforeEach
    void files() throws Exception {
        design = folder.resolve("kiln.json");
        Files.writeString(design, RecordBench.text().toText());
        log = folder.resolve("one.csv");
        Files.writeString(log, RecordBench.healthyCsv(1.12, 5e-4));
    }

    @Test
    void textTellsStepsAndLedger() {
        assertThat(run("record", log, design)).isZero();
        assertThat(out.toString())
                .contains("Ledger of 1 record")
                .contains("gas used")
                .contains("oxidising firing to 700 °C")
                .contains("cone 10")
                .doesNotContain("NaN");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aLogThatBeginsNearTheTopIsRead() throws Exception {
        StringBuilder late = new StringBuilder("time;temp °C;damper %\n");
        for (int i = 0; i < 32; i++) {
            int minute = 12 * 60 + 28 + 3 * i;
            late.append("%02d:%02d;%d;30%n".formatted(minute / 60, minute % 60, Math.round(1151 + 4.3 * i)));
        }
        Files.writeString(log, late);
        assertThat(run("record", log, design)).as(err.toString()).isZero();
        assertThat(out.toString()).contains("32 used").doesNotContain("runs on over what the plan reaches");
    }

    @Test
    void oneDesignStandsLast() {
        assertThat(run("record", "--help")).isZero();
        assertThat(out.toString().replaceAll("\\s+", ""))
                .contains("LOG...DESIGNLogged")
                .doesNotContain("DESIGN...");
        assertThat(run("record", log, design, log, design)).isEqualTo(Cli.MISUSE);
        assertThat(err.toString()).contains("kiln.json: a design file stands before a log", "one design last");
    }

    @Test
    void jsonIsOneObjectWithoutNan() throws Exception {
        Path two = folder.resolve("two.csv");
        Files.writeString(two, Files.readString(log).replaceFirst(",\\d+,", ",21,"));
        assertThat(run("record", log, two, design, "--json")).isZero();
        JsonNode o = new ObjectMapper().readTree(out.toString());
        assertThat(o.get("records")).hasSize(2);
        assertThat(o.get("records").get(0).get("series").size()).isGreaterThan(50);
        assertThat(o.get("ledger").get("gasUsedKg").asDouble())
                .isCloseTo(2 * o.get("records").get(0).get("gasKg").asDouble(), within(1e-3));
        assertThat(o.get("ledger").get("resistanceRise").asDouble()).isCloseTo(0, within(1e-3));
        assertThat(o.get("ledger").get("resistanceChangeShown").asBoolean()).isFalse();
        assertThat(out.toString()).doesNotContain("NaN").doesNotContain("Infinity");
        var planned = Review.of(RecordBench.text().read().design())
                .firing()
                .forecast()
                .value()
                .nominal()
                .steps();
        for (JsonNode step : o.at("/records/0/steps")) {
            StepResult was = planned.get(step.get("index").asInt());
            assertThat(step.get("forecastClimbKPerH").asDouble())
                    .isCloseTo((was.endK() - was.startK()) / (was.seconds() / 3600), within(1e-2));
        }
    }

    /** Given twice, counted once; the newest stands last whatever the order given; a noted refill fills the cylinder. */
    @Test
    void theSameLogTwiceTheWrongOrderAndARefill() throws Exception {
        String[] rows = Files.readString(log).split("\\R");
        Path march = folder.resolve("march.csv");
        Files.writeString(march, dated(rows, "2026-03-01", ""));
        Path april = folder.resolve("april.csv");
        Files.writeString(april, dated(rows, "2026-04-05", "new cylinder"));
        assertThat(run("record", april, march, april, design)).isZero();
        assertThat(out.toString())
                .contains("record 3 repeats record 1 row by row; it counts once")
                .contains("by the dates in the logs, records 2 (2026-03-01), 1 (2026-04-05)")
                .contains("since the refill noted in record 1")
                .contains("cannot tell of ageing: resistance")
                .doesNotContain("measure the elements");
    }

    private static String dated(String[] rows, String date, String note) {
        StringBuilder b = new StringBuilder(rows[0].replaceFirst("time", "date,time")).append('\n');
        java.time.LocalDate day = java.time.LocalDate.parse(date);
        for (int i = 1; i < rows.length; i++) {
            day = i > 1 && rows[i].substring(0, 5).compareTo(rows[i - 1].substring(0, 5)) < 0 ? day.plusDays(1) : day;
            b.append(day).append(',').append(rows[i]).append(i == 1 ? note : "").append('\n');
        }
        return b.toString();
    }

    @Test
    void fitWritesADesignWithOnlyTheseFieldsChanged() throws Exception {
        Path fitted = folder.resolve("new.json");
        Path csv = folder.resolve("view.csv");
        assertThat(run("record", log, design, "--fit", fitted, "--csv", csv)).isZero();
        String text = Files.readString(fitted);
        assertThat(text).contains("\"lossFactor\": 1.1");
        String same = text.replaceAll("\"(lossFactor|leakArea)\": [^,\\n}]*", "\"$1\": x");
        assertThat(same)
                .isEqualTo(RecordBench.text().toText().replaceAll("\"(lossFactor|leakArea)\": [^,\\n}]*", "\"$1\": x"));
        assertThat(Files.readString(csv)).startsWith("hours,measuredC,forecastC,lowC,highC\n0.0000,");
        assertThat(run("record", log, fitted)).isZero();
    }

    @Test
    void wrongUseSaysWhatToWrite() throws Exception {
        assertThat(run("record", design)).isEqualTo(2);
        assertThat(run("record", folder.resolve("none.csv"), design)).isEqualTo(2);
        assertThat(err.toString()).contains("there is no such file");
        Path bad = folder.resolve("bad.csv");
        Files.writeString(bad, "a,b\n1,2\n");
        assertThat(run("record", bad, design)).isEqualTo(2);
        assertThat(err.toString()).contains("temperature column");
        Path shortLog = folder.resolve("short.csv");
        Files.writeString(shortLog, "time h,temp C\n0,20\n0.1,30\n");
        assertThat(run("record", shortLog, design)).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
    }

    /** With a rate in every step the controller chooses the power: a refusal with its reason, the record all the same. */
    @Test
    void aFitThatTheRecordCannotGiveIsRefused() throws Exception {
        Path starter = folder.resolve("rated.json");
        Files.writeString(starter, Starters.find("hexagon-27cm").orElseThrow().toText());
        Path table = folder.resolve("table.csv");
        assertThat(run("forecast", starter, "--csv", table)).isZero();
        Path fitted = folder.resolve("fitted.json");
        assertThat(run("record", table, starter, "--fit", fitted)).isEqualTo(1);
        assertThat(err.toString())
                .hasLineCount(1)
                .contains("not written", "the controller chooses the power", "\"rate\": \"full\"");
        assertThat(fitted).doesNotExist();
        assertThat(out.toString()).contains("Ledger of 1 record");
    }

    /** Two thirds of a firing: named as such; atmosphere without a damper column is the card's, not a fact. */
    @Test
    void twoThirdsOfAFiringAreNoFullOne() throws Exception {
        String[] rows = Files.readString(log)
                .replaceAll("(?m)^([^,]*,[^,]*),[^,]*,", "$1,")
                .split("\n");
        Files.writeString(log, String.join("\n", java.util.Arrays.copyOf(rows, rows.length * 17 / 20)));
        assertThat(run("record", log, design)).isZero();
        assertThat(out.toString())
                .contains("not full")
                .contains("record 1 ends before the last goal")
                .contains("by plan only: the log has neither damper nor gas column");
    }

    /** A design in inches is answered in °F and lb beside °C and kg, one in metric units in these alone. */
    @Test
    void unitsAreTheDesigns() throws Exception {
        Path inch = folder.resolve("inch.json");
        Files.writeString(inch, Starters.find("decagon-23").orElseThrow().toText());
        Path table = folder.resolve("table.csv");
        assertThat(run("forecast", inch, "--csv", table)).isZero();
        out.getBuffer().setLength(0);
        assertThat(run("record", table, inch)).isZero();
        assertThat(out.toString())
                .contains("start °F", "gas lb", "700 °C (1292 °F)")
                .containsPattern("kg \\([\\d.]+ lb\\)")
                .doesNotContain("Btu");
        Path metric = folder.resolve("metric.json");
        Files.writeString(metric, Starters.find("decagon-56cm").orElseThrow().toText());
        assertThat(run("forecast", metric, "--csv", table)).isZero();
        out.getBuffer().setLength(0);
        assertThat(run("record", table, metric)).isZero();
        assertThat(out.toString()).contains("start °C", "gas kg").doesNotContain(" lb", "1292 °F");
    }
}
