package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.Starters;

/** The starters from the command line. */
class NewCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Cli.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void listsEveryStarter() {
        assertThat(run("new", "--list")).isZero();
        assertThat(out.toString().lines().map(l -> l.split(" ", 2)[0]).toList()).isEqualTo(Starters.names());
    }

    @Test
    void writesAStarterThatChecks() {
        Path file = folder.resolve("mine.json");
        assertThat(run("new", "octagon-17", "-o", file.toString())).isZero();
        assertThat(run("check", file.toString())).isZero();
    }

    @Test
    void leavesAnotherFileAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.json"), "mine");
        assertThat(run("new", "octagon-17", "-o", file.toString())).isEqualTo(2);
        assertThat(Files.readString(file)).isEqualTo("mine");
        assertThat(err.toString()).contains("already");
    }

    @Test
    void wrongNamesAndFoldersAreSaid() {
        assertThat(run("new", "octogon-17", "-o", folder.resolve("a.json").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("Did you mean octagon-17?");
        assertThat(run("new", "octagon-17")).isEqualTo(2);
        assertThat(run("new", "octagon-17", "-o", folder.resolve("none/a.json").toString()))
                .isEqualTo(3);
        assertThat(err.toString()).contains("there is no folder");
    }
}
