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

    @Test
    void isSaidAndIsNoSuccess() throws IOException {
        String d = Files.writeString(
                        folder.resolve("k.json"),
                        Starters.find("octagon-17").orElseThrow().toText())
                .toString();
        for (List<String> args : List.of(
                List.of("check", d),
                List.of("check", d, "--json"),
                List.of("burn", d, "--at", "1100 °C"),
                List.of("forecast", d),
                List.of("new", "--list"),
                List.of("--help"))) {
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
