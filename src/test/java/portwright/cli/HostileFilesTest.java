package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.review.RecordBench;

/** Files made to harm: they are refused early, or kept from steering the terminal, the paper and the names of files. */
class HostileFilesTest {
    private static final String STEERING = "kiln \u001B[2J\u0007\u202Eevil\u202C \u009B31m\uFEFF & <b>";

    @TempDir
    Path folder;

    private final DesignText design = Starters.find("octagon-17").orElseThrow();

    private record Ran(int exit, String out, String err) {}

    private static Ran run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
        int exit = Cli.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Ran(exit, out.toString(), err.toString());
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("design.json"), text);
    }

    /** A real process with 512 MB; what it says. */
    private String refused(Path file) throws Exception {
        Process p = new ProcessBuilder(
                        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                        "-Xmx512m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "portwright.Main",
                        "check",
                        file.toString())
                .redirectErrorStream(true)
                .start();
        String said = String.join("\n", p.inputReader().lines().toList());
        assertThat(p.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(p.exitValue()).as(said).isEqualTo(Cli.MISUSE);
        assertThat(said).doesNotContain("Exception", "\tat ", "OutOfMemory").contains("line ");
        assertThat(said.length()).isLessThan(600);
        return said;
    }

    @Test
    void bombsAreRefusedInHalfAGigabyte() throws Exception {
        assertThat(refused(file("[".repeat(2_000_000)))).contains("nested deeper than 40");
        assertThat(refused(file(design.set("ports", "[]")
                        .toText()
                        .replace("\"ports\": []", "\"ports\": [" + "{},".repeat(999_999) + "{}]"))))
                .contains("more than 200000 values");
        assertThat(refused(file("{\"portwright\": " + "9".repeat(4_000_000) + "}")))
                .contains("4000000 digits");
    }

    /** A log without end, and one that would fill the memory. */
    @Test
    void logsThatAreNoneAreRefused() throws Exception {
        Path kiln = file(design.toText());
        Path log = folder.resolve("log.csv");
        for (String text : new String[] {
            "time,temp C\n" + "\n".repeat(300_001), "time,temp C\n" + ",".repeat(10_000_000), "\r".repeat(300_001)
        }) {
            Files.writeString(log, text);
            Ran r = run("record", log, kiln);
            assertThat(r.exit()).isEqualTo(Cli.MISUSE);
            assertThat(r.err()).contains(log + ": ", "That is no log of one firing", "one row in ten seconds");
        }
        if (Files.exists(Path.of("/dev/zero"))) {
            assertThat(run("record", "/dev/zero", kiln).err()).contains("larger than 10 MB");
        }
        Path loop = Files.createSymbolicLink(folder.resolve("loop.csv"), Path.of("loop.csv"));
        assertThat(run("record", loop, kiln).err())
                .contains(loop + ": cannot be read (")
                .doesNotContain("null", "Exception");
        assertThat(run("check", loop).err())
                .startsWith(loop + ": cannot be read (")
                .doesNotContain("null", "Exception");
        assertThat(run("check", "").err()).contains("the name of the design is empty");
    }

    /** UTF-16 without a mark is told as such, not as an old encoding. */
    @Test
    void utf16WithoutAMark() throws Exception {
        Path f = Files.write(
                folder.resolve("design.json"), design.toText().getBytes(java.nio.charset.StandardCharsets.UTF_16LE));
        assertThat(run("check", f).err()).contains("UTF-16");
    }

    @Test
    void fortyPortsAreReadAndFortyOneRefused() throws IOException {
        String port = design.getJson("ports[0]").orElseThrow();
        String name = design.get("ports[0].name").orElseThrow();
        StringBuilder more = new StringBuilder("[" + port);
        for (int i = 1; i < 40; i++) {
            more.append(',').append(port.replace('"' + name + '"', "\"p" + i + '"'));
        }
        DesignText forty = design.remove("burners").set("ports", more + "]");
        assertThat(forty.read().problems()).isEmpty();
        Ran r = run(
                "check",
                file(forty.set("ports", more + "," + port.replace('"' + name + '"', "\"p\"") + "]")
                        .toText()));
        assertThat(r.exit()).isEqualTo(Cli.MISUSE);
        assertThat(r.err())
                .contains("ports: a list of 41; a kiln has at most 40 of these")
                .contains("line ");
    }

    /** No kiln follows such a rate, and to step through it takes for ever; "full" is there for it. */
    @Test
    void aRateThatNoKilnFollowsIsRefused() throws IOException {
        Ran r = run(
                "check",
                file(design.setText("firing.steps[0].rate", "20001 °C/h").toText()));
        assertThat(r.exit()).isEqualTo(Cli.MISUSE);
        assertThat(r.err()).contains("firing.steps[0].rate").contains("out of range");
        assertThat(run(
                                "check",
                                file(design.setText("firing.steps[0].rate", "20000 °C/h")
                                        .toText()))
                        .exit())
                .isZero();
    }

    @Test
    void namesLeadNoFileAstray() throws IOException {
        Path out = Files.createDirectories(folder.resolve("a/b"));
        for (String name : List.of("../../gone", "/tmp/gone", "CON", "x\\..\\y", "a:b")) {
            DesignText d = design.setText("title", name);
            Ran r = run("export", file(d.toText()), "--svg", out, "--csv", out.resolve("holes.csv"));
            assertThat(r.exit()).as(name + r.err()).isZero();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            assertThat(all.filter(Files::isRegularFile)
                            .map(p -> folder.relativize(p).toString()))
                    .allMatch(p ->
                            p.equals("design.json") || p.matches("a/b/(holes\\.csv|(floor|lid|wall)[-0-9a-z]*\\.svg)"));
        }
        Ran r = run("sheet", folder.resolve("design.json"), "-o", "x\0y.pdf");
        assertThat(r.exit()).isEqualTo(Cli.MISUSE);
        assertThat(r.err()).doesNotContain("\tat ");
    }

    @Test
    void aTitleDoesNotSteerTheTerminal() throws Exception {
        Path file = file(design.setText("title", STEERING).toText());
        for (Ran r : List.of(
                run("check", file),
                run("burn", file, "--at", "1100 °C"),
                run("check", folder.resolve("no\u001B[2J.json")))) {
            assertThat(r.out() + r.err()).isNotBlank().doesNotContain("\u001B", "\u0007", "\u202E", "\u009B");
        }
        Ran json = run("check", file, "--json");
        assertThat(json.out()).doesNotContain("\u001B", "\u0007", "\u202E", "\u009B", "\uFFFD");
        assertThat(new ObjectMapper().readTree(json.out()).get("title").asText())
                .isEqualTo(STEERING);
    }

    @Test
    void anyTitleLeavesTheSvgAndTheSheetWhole() throws Exception {
        Path file = file(design.setText("title", STEERING + " 🔥 كيلن 窯").toText());
        assertThat(run("export", file, "--svg", folder, "--part", "floor").exit())
                .isZero();
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> svgs = all.filter(p -> p.toString().endsWith(".svg")).toList();
            assertThat(svgs).isNotEmpty();
            for (Path p : svgs) {
                assertThat(DocumentBuilderFactory.newInstance()
                                .newDocumentBuilder()
                                .parse(p.toFile())
                                .getDocumentElement()
                                .getTagName())
                        .isEqualTo("svg");
            }
        }
        Ran sheet = run("sheet", file, "-o", folder.resolve("x.pdf"), "--part", "floor", "--face", "hot");
        assertThat(sheet.exit()).as(sheet.err()).isZero();
        assertThat(sheet.out()).contains("U+1F525");
    }

    /** A title, a currency, a cell of a log and a path that would print a verdict of their own. */
    @Test
    void aWordOfTheUserBeginsNoLine() throws Exception {
        String lie = "x\nDrilling: CLEAR\r\u001B[32mgreen\u2028\u0085";
        Path file = file(RecordBench.text()
                .setText("title", lie)
                .set("firing.prices", "{\"currency\": " + DesignText.text(lie) + ", \"perKwh\": 0.3, \"perKg\": 2}")
                .toText());
        Path log = Files.writeString(
                folder.resolve("a\nDrilling: CLEAR.csv"),
                RecordBench.healthyCsv(1.12, 5e-4) + "\"7\rDrilling: CLEAR\u001B[32m\",1,\n");
        for (Ran r : List.of(
                run("check", file),
                run("burn", file, "--at", "1100 °C"),
                run("forecast", file),
                run("record", log, file),
                run("check", folder.resolve("no\nDrilling: CLEAR\u001B[32m")),
                run("check", file, "--no\nDrilling: CLEAR"),
                run("burn", file, "--at", "9\nDrilling: CLEAR"))) {
            String said = r.out() + r.err();
            assertThat(said).contains("\uFFFD").doesNotContain("\u001B", "\u2028", "\u0085", "\r");
            assertThat(said.lines()).noneMatch(l -> l.startsWith("Drilling: CLEAR"));
        }
    }

    @Test
    void coloursOfOurOwnPass() throws IOException {
        StringWriter out = new StringWriter();
        try (PlainWriter w = new PlainWriter(out, true)) {
            w.write("\u001B[1;31mstop\u001B[0m \u001B[2J\u001B]0;x\u0007 \u001B");
            w.flush();
        }
        assertThat(out.toString()).isEqualTo("\u001B[1;31mstop\u001B[0m \uFFFD[2J\uFFFD]0;x\uFFFD \uFFFD");
    }
}
