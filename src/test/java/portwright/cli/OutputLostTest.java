package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.Starters;

/** Standard output on a full disk: no command ends as if its words had been read. */
class OutputLostTest {
    @TempDir
    Path folder;

    private static final OutputStream FULL = new OutputStream() {
        @Override
        public void write(int b) throws IOException {
            throw new IOException("No space left on device");
        }
    };

    private static final OutputStream LEFT = new OutputStream() {
        @Override
        public void write(int b) throws IOException {
            throw new IOException("Broken pipe");
        }
    };

    /** What {@code head -1} does to a command once it has its line. */
    @Test
    void aReaderThatLeavesIsNoFault() throws IOException {
        String d = starter();
        for (List<String> args : commands(d)) {
            StringWriter words = new StringWriter();
            int whole = run(new StringWriter(), new StringWriter(), args);
            PrintWriter out = new PrintWriter(new QuietPipe(LEFT, () -> false), false, StandardCharsets.UTF_8);
            assertThat(Cli.run(out, new PrintWriter(words), args.toArray(String[]::new)))
                    .as(args.toString())
                    .isEqualTo(whole);
            assertThat(words.toString()).as(args.toString()).doesNotContain("could not be written");
            PrintWriter full = new PrintWriter(new QuietPipe(FULL, () -> false), false, StandardCharsets.UTF_8);
            assertThat(Cli.run(full, new PrintWriter(words), args.toArray(String[]::new)))
                    .as(args + " on a full disk")
                    .isEqualTo(Cli.FAULT);
        }
    }

    /** The same of a process, whose system says in its own words that the reader is gone. */
    @Test
    void aProcessEndsQuietlyToo() throws Exception {
        Path err = folder.resolve("err");
        Process p = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "portwright.Main",
                        "check",
                        starter(),
                        "--json")
                .redirectError(err.toFile())
                .start();
        p.getInputStream().close();
        assertThat(p.waitFor()).isEqualTo(Cli.OK);
        assertThat(Files.readString(err).lines().filter(l -> !l.startsWith("Picked up")))
                .isEmpty();
    }

    private static int run(StringWriter out, StringWriter err, List<String> args) {
        return Cli.run(new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new));
    }

    private String starter() throws IOException {
        return Files.writeString(
                        folder.resolve("k.json"),
                        Starters.find("octagon-17").orElseThrow().toText())
                .toString();
    }

    private static List<List<String>> commands(String d) {
        return List.of(
                List.of("check", d),
                List.of("check", d, "--json"),
                List.of("burn", d, "--at", "1100 °C"),
                List.of("forecast", d),
                List.of("new", "--list"),
                List.of("--help"));
    }

    @Test
    void isSaidAndIsNoSuccess() throws IOException {
        for (List<String> args : commands(starter())) {
            StringWriter err = new StringWriter();
            int exit = Cli.run(
                    new PrintWriter(FULL, false, StandardCharsets.UTF_8),
                    new PrintWriter(err),
                    args.toArray(String[]::new));
            assertThat(exit).as(args.toString()).isEqualTo(Cli.FAULT);
            assertThat(err.toString()).as(args.toString()).contains("The output could not be written");
        }
    }
}
