package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.review.Review;

/** Every starter is read, is in canonical form, and passes. */
class StartersTest {
    static List<String> names() {
        return Starters.names();
    }

    private static Path path(String name) {
        return Path.of("templates", name + ".json");
    }

    @Test
    void theIndexListsTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            assertThat(files.map(p -> p.getFileName().toString())
                            .filter(n -> n.endsWith(".json"))
                            .map(n -> n.replace(".json", ""))
                            .sorted()
                            .toList())
                    .isEqualTo(Starters.names());
        }
        assertThat(Starters.names()).hasSizeGreaterThanOrEqualTo(8);
    }

    @ParameterizedTest
    @MethodSource("names")
    void isReadAndSavedByteForByte(String name) throws IOException {
        ReadResult r = DesignFile.read(path(name));
        assertThat(r.problems()).isEmpty();
        assertThat(r.document().toText()).isEqualTo(Files.readString(path(name)));
        assertThat(Starters.find(name).orElseThrow().read().design()).isEqualTo(r.design());
        assertThat(Starters.title(name)).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("names")
    void passesTheRuleBookWithNothingLeftOut(String name) throws IOException {
        CheckResult result = new RuleBook(LimitTable.load())
                .check(Review.of(DesignFile.read(path(name)).design()));
        assertThat(result.findings())
                .filteredOn(f -> f.severity() == Severity.STOP)
                .extracting(Finding::rule)
                .isEmpty();
        assertThat(result.notChecked())
                .filteredOn(n -> n.forbids() != Forbids.NOTHING)
                .isEmpty();
        assertThat(result.findings())
                .filteredOn(f -> f.severity() == Severity.CAUTION && f.forbids() == Forbids.DRILLING)
                .isEmpty();
    }
}
