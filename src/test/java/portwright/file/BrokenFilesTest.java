package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.cli.Cli;

/** Every file in {@code broken/} gives exactly the problems of the table beside it, all at once, and ends a command with status 2. */
class BrokenFilesTest {
    static final Path FOLDER = Path.of("src/test/resources/portwright/file/broken");
    private static final Path TABLE = FOLDER.resolve("expected.txt");

    static List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    /** Lines {@code file.json:line:column: path: message}, as a command prints them. */
    static Map<String, List<String>> expected() throws IOException {
        Map<String, List<String>> out = new LinkedHashMap<>();
        for (String line : Files.readAllLines(TABLE)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                out.computeIfAbsent(line.substring(0, line.indexOf(':')), k -> new ArrayList<>())
                        .add(line);
            }
        }
        return out;
    }

    /** A line of the list: {@code kiln.json:12:5: ports[1].diameter: message}. */
    private static String line(String file, Problem p) {
        return file
                + (p.line() > 0 ? ":" + p.line() + ":" + p.column() : "")
                + ": "
                + (p.path().isEmpty() ? "" : p.path() + ": ")
                + p.message();
    }

    @ParameterizedTest
    @MethodSource("files")
    void saysWhatIsWrong(String file) throws IOException {
        ReadResult r = DesignFile.read(FOLDER.resolve(file));
        assertThat(r.design()).isNull();
        assertThat(r.problems().stream().map(p -> line(file, p)).toList())
                .isEqualTo(expected().getOrDefault(file, List.of()));
    }

    @ParameterizedTest
    @MethodSource("files")
    void endsACommandWithMisuseAndNoStackTrace(String file) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertThat(Cli.run(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        "check",
                        FOLDER.resolve(file).toString()))
                .isEqualTo(Cli.MISUSE);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).isNotBlank().doesNotContain("Exception").doesNotContain("\tat ");
    }

    @Test
    void theTableAndTheFolderAgreeAndAreMany() throws IOException {
        assertThat(new TreeSet<>(expected().keySet())).isEqualTo(new TreeSet<>(files()));
        assertThat(files()).hasSizeGreaterThanOrEqualTo(60);
    }

    @Test
    void largerThanFiveMegabytesIsRefusedUnread() throws IOException {
        Path big = Files.createTempFile("big", ".json");
        try {
            Files.write(
                    big,
                    ("{\"notes\": \"" + "x".repeat(DesignFile.MAX_BYTES) + "\"}").getBytes(StandardCharsets.UTF_8));
            assertThat(DesignFile.read(big).problems())
                    .extracting(Problem::message)
                    .containsExactly(DesignFile.TOO_LARGE);
        } finally {
            Files.delete(big);
        }
    }

    @Test
    void millionsOfValuesAreRefused() {
        ReadResult r = DesignText.read("[" + "[],".repeat(1_200_000) + "[]]");
        assertThat(r.problems()).hasSize(1);
        assertThat(r.problems().get(0).message()).contains("more than 200000 values");
    }
}
