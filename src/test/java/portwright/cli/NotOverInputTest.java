package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.Starters;

/** No command writes over a file that it reads. */
class NotOverInputTest {
    @TempDir
    Path folder;

    @Test
    void aDesignOrLogIsNeverTheOutput() throws IOException {
        Path design = folder.resolve("k.json");
        Path log = folder.resolve("log.csv");
        Files.writeString(design, Starters.find("octagon-17").orElseThrow().toText());
        Files.writeString(log, "time,temp C\n0:00,20\n1:00,120\n");
        String d = design.toString();
        String roundabout = folder.resolve(".").resolve("k.json").toString();
        String before = Files.readString(design);
        String logBefore = Files.readString(log);
        for (List<String> args : List.of(
                List.of("propose", d, "-o", d),
                List.of("propose", d, "-o", roundabout),
                List.of("sheet", d, "-o", d),
                List.of("card", d, "-o", roundabout),
                List.of("forecast", d, "--csv", d),
                List.of("export", d, "--csv", d),
                List.of("export", d, "--md", roundabout),
                List.of("record", log.toString(), d, "--csv", log.toString()),
                List.of("record", log.toString(), d, "--fit", d))) {
            StringWriter err = new StringWriter();
            int exit = Cli.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args.toArray(String[]::new));
            assertThat(exit).as(args.toString()).isEqualTo(2);
            assertThat(err.toString()).contains("reads that file").contains("Write to another one");
            assertThat(Files.readString(design)).isEqualTo(before);
            assertThat(Files.readString(log)).isEqualTo(logBefore);
        }
    }
}
