package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.review.RecordBench;

/** Whatever design is read: what was saved is read as the same design, and saving that again changes no byte. */
class DesignRoundTripTest {
    private static final long SEED = 20261130L;
    private static final int CASES = 1000;

    @TempDir
    Path folder;

    @Test
    void changedStartersAreSavedAsTheyWereRead() throws IOException {
        List<String> starters = new ArrayList<>();
        try (Stream<Path> all = Files.list(Path.of("templates"))) {
            for (Path p :
                    all.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                starters.add(Files.readString(p));
            }
        }
        starters.add(RecordBench.text().toText());
        int designs = 0;
        for (int i = 0; i < CASES; i++) {
            Random random = new Random(SEED + i);
            String text = DesignMutant.of(starters.get(i % starters.size()), random);
            ReadResult read = DesignText.read(text);
            if (read.ok()) {
                designs++;
                staysTheSame(read, "seed " + (SEED + i));
            }
        }
        assertThat(designs).as("mutants that are designs").isGreaterThan(CASES / 10);
    }

    private void staysTheSame(ReadResult read, String seed) throws IOException {
        Path first = folder.resolve("first.json");
        DesignFile.save(first, read.document());
        ReadResult again = DesignFile.read(first);
        assertThat(again.problems()).as(seed).isEmpty();
        assertThat(again.design()).as(seed).isEqualTo(read.design());
        assertThat(again.document()).as(seed).isEqualTo(read.document());
        Path second = folder.resolve("second.json");
        DesignFile.save(second, again.document());
        assertThat(Files.readAllBytes(second)).as(seed).isEqualTo(Files.readAllBytes(first));
    }
}
