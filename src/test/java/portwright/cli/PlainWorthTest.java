package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignText;

/** What a command prints says what it is worth: edges that lengths start from, struck paper, a chamber too cold for gas. */
class PlainWorthTest {
    private static final Path TEMPLATES = Path.of("templates");

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        out.getBuffer().setLength(0);
        return Cli.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    private Path with(String starter, String field, String text) throws Exception {
        DesignText d = DesignText.read(Files.readString(TEMPLATES.resolve(starter + ".json")))
                .document();
        Path file = folder.resolve(starter + ".json");
        Files.writeString(file, (text.isEmpty() ? d.remove(field) : d.setText(field, text)).toText());
        return file;
    }

    /** Floor and lid from their outer edges, a wall from its inside: one column cannot mean both unsaid. */
    @Test
    void eachLineOfTheScheduleNamesItsEdges() throws Exception {
        Path csv = folder.resolve("holes.csv");
        assertThat(run("export", "templates/front-loader-18.json", "--csv", csv.toString()))
                .isZero();
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines.get(0)).contains(",from_left_mm,from_back_or_floor_mm,measured_from,");
        assertThat(lines.get(1)).contains("\"inside left corner of wall 1 and chamber floor, seen from inside\"");
        assertThat(lines.get(2)).contains("\"outer left and outer back edge of the lid, seen from above\"");
    }

    @Test
    void struckPaperIsCalledStruck() throws Exception {
        String stopped = with("octagon-17", "ports[0].diameter", "9 in").toString();
        String pdf = folder.resolve("struck.pdf").toString();
        assertThat(run("sheet", stopped, "-o", pdf, "--despite-stops")).isZero();
        assertThat(out.toString())
                .containsPattern("STRUCK THROUGH, \\d+ stops?: do not drill from it\\.")
                .doesNotContain("offer up the real burner");
        assertThat(run(
                        "sheet",
                        "templates/octagon-17.json",
                        "-o",
                        folder.resolve("a.pdf").toString()))
                .isZero();
        assertThat(out.toString()).contains("offer up the real burner.").doesNotContain("STRUCK", "not checked");
        String dark = with("octagon-17", "room.place", "").toString();
        assertThat(run("card", dark, "-o", folder.resolve("c.pdf").toString(), "--despite-stops"))
                .isZero();
        assertThat(out.toString())
                .containsPattern(
                        "STRUCK THROUGH, \\d+ rules? that could forbid lighting not checked: do not fire from it\\.");
    }

    /** EN 746-2: gas needs 750 °C; the tool's reading for it is 800 °C (1472 °F) on the meter. */
    @Test
    void gasMustNotBurnInAColdKiln() {
        assertThat(run("burn", "templates/decagon-23.json", "--at", "900 °F")).isEqualTo(Cli.STOP);
        assertThat(out.toString().lines().filter(l -> !l.isBlank()).toList().get(1))
                .isEqualTo("STOP. Gas must not burn at 482 °C (900 °F), under 800 °C (1472 °F) on the meter.");
        assertThat(out.toString()).contains("\nLighting: no stop, ");
        assertThat(run("burn", "templates/decagon-23.json", "--at", "1472 °F")).isZero();
        assertThat(out.toString()).doesNotContain("must not burn").contains("inH2O");
    }

    @Test
    void aForecastBeginsWithTheVerdictAndSpeaksTheReadersUnits() {
        assertThat(run("forecast", "templates/octagon-17.json")).isZero();
        assertThat(out.toString())
                .contains("\nLighting: no stop, ")
                .contains("Temperatures in °F, climb in °F/h at the end of the step.")
                .contains("gas lb");
        assertThat(run("forecast", "templates/hexagon-27cm.json")).isZero();
        assertThat(out.toString()).contains("Temperatures in °C").contains("gas kg");
    }
}
