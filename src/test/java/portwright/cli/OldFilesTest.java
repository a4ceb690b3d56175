package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.data.LocalCodes;
import portwright.file.DesignText;
import portwright.review.RecordBench;

/** What stands already where a command is to write: another design is never lost, and what cannot be written is told before the work. */
class OldFilesTest {
    @TempDir
    Path folder;

    private String design;
    private String log;
    private String out;
    private String err;

    @BeforeEach
    void inputs() throws IOException {
        design = write("kiln.json", RecordBench.text().toText());
        log = write("log.csv", RecordBench.healthyCsv(1.12, 5e-4));
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private int run(String... args) {
        StringWriter o = new StringWriter();
        StringWriter e = new StringWriter();
        int exit = Cli.run(new PrintWriter(o), new PrintWriter(e), args);
        out = o.toString();
        err = e.toString();
        return exit;
    }

    private void papers(String place, String says) {
        for (String[] args : new String[][] {
            {"sheet", design, "-o", place},
            {"card", design, "-o", place},
            {"export", design, "--csv", place},
            {"export", design, "--md", place},
            {"forecast", design, "--csv", place},
            {"record", log, design, "--csv", place}
        }) {
            assertThat(run(args)).as(String.join(" ", args)).isEqualTo(Cli.MISUSE);
            assertThat(err).as(String.join(" ", args)).contains(says, args[0] + ": ", "Write ");
            assertThat(out).isEmpty();
        }
    }

    @Test
    void noPaperOverADesign() throws IOException {
        String text = "\uFEFF\n" + RecordBench.text().toText();
        for (String other : List.of(write("other.json", text), write("other.JSON", "x"), write("holes.csv", text))) {
            String before = Files.readString(Path.of(other));
            papers(other, "that is a design, and it would be lost");
            assertThat(Files.readString(Path.of(other))).isEqualTo(before);
        }
        papers(folder.resolve("none.json").toString(), "the name of a design");
        assertThat(folder.resolve("none.json")).doesNotExist();
    }

    @Test
    void aPaperTakesThePlaceOfAPaper() throws IOException {
        String old = write("holes.csv", "old");
        assertThat(run("export", design, "--csv", old)).as(err).isZero();
        assertThat(Files.readString(Path.of(old))).isNotEqualTo("old");
        assertThat(out).contains(LocalCodes.FIRST);
    }

    @Test
    void noDesignOverAFile() throws IOException {
        String old = write("old.json", "mine");
        for (String[] args : new String[][] {
            {"propose", design, "-o", old}, {"record", log, design, "--fit", old}, {"new", "octagon-17", "-o", old}
        }) {
            assertThat(run(args)).as(args[0]).isEqualTo(Cli.MISUSE);
            assertThat(err).contains("there is a file of that name already");
            assertThat(Files.readString(Path.of(old))).isEqualTo("mine");
        }
    }

    @Test
    void placesThatCannotBe() {
        papers("", "the name of the file to write is empty");
        papers(folder.toString(), "that is a folder");
        for (String[] args : new String[][] {
            {"propose", design, "-o", folder.toString()},
            {"new", "octagon-17", "-o", folder.toString()},
            {"record", log, design, "--fit", folder.toString()}
        }) {
            assertThat(run(args)).as(args[0]).isEqualTo(Cli.MISUSE);
            assertThat(err).contains("that is a folder");
        }
        assertThat(run("export", design, "--svg", "")).isEqualTo(Cli.MISUSE);
        assertThat(err).contains("the name of the folder is empty");
        assertThat(run(
                        "propose",
                        design,
                        "--take",
                        "0",
                        "-o",
                        folder.resolve("p.json").toString()))
                .isEqualTo(Cli.MISUSE);
        assertThat(err).contains("--take 0").doesNotContain("there are");
    }

    /** One file of the set stands where a folder is: none of the others is new then. */
    @Test
    void aSetIsWrittenWholeOrNotAtAll() throws IOException {
        Path set = Files.createDirectory(folder.resolve("set"));
        String old = Files.writeString(set.resolve("floor-hot.svg"), "old").toString();
        Path holes = folder.resolve("holes.csv");
        Files.createDirectory(set.resolve("lid-hot.svg"));
        assertThat(run("export", design, "--svg", set.toString(), "--csv", holes.toString()))
                .isEqualTo(Cli.FAULT);
        assertThat(err).contains("lid-hot.svg: not written", "None of the", "was written");
        assertThat(Files.readString(Path.of(old))).isEqualTo("old");
        assertThat(holes).doesNotExist();
        try (var all = Files.list(set)) {
            assertThat(all.map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrder("floor-hot.svg", "lid-hot.svg");
        }
    }

    @Test
    void aDesignByItsText() throws IOException {
        assertThat(OldFile.design(Path.of(write("a.txt", DesignText.text("portwright")))))
                .isFalse();
        assertThat(OldFile.design(Path.of(write("b.txt", "{\"portwright\": 1}"))))
                .isTrue();
        assertThat(OldFile.design(folder.resolve("c.txt"))).isFalse();
    }
}
