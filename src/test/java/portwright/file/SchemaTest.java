package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The published schema and the reader agree on what a design looks like. */
class SchemaTest {
    private static final Schema SCHEMA = schema();

    /** Files that are wrong in what spans several fields, in a value's range or meaning, or by a doubled field: no schema sees that. */
    private static final Set<String> BEYOND_A_SCHEMA = Set.of(
            "absolute-zero",
            "burner-on-a-flue",
            "closed-shed",
            "cooling-with-minus",
            "duplicate-field",
            "element-above-wall",
            "fire-without-gas",
            "fixed-limit-no-width",
            "fixed-limit-weakened",
            "groove-through-wall",
            "hole-larger-than-part",
            "kiln-of-miles",
            "limit-as-text",
            "limit-of-wrong-kind",
            "limit-under-floor-value",
            "look-alike",
            "mains-gas-in-a-cylinder",
            "negative-thickness",
            "no-such-cone",
            "no-such-drill",
            "no-such-panel",
            "no-such-port",
            "no-such-unit",
            "outline-anticlockwise",
            "outline-closed-twice",
            "outline-crosses",
            "oversize-too-large",
            "port-above-panel",
            "port-beside-panel",
            "port-off-the-floor",
            "same-name-across-kinds",
            "setback-beyond-slab",
            "share-over-100",
            "shelf-above-lid",
            "shelf-meets-wall",
            "slab-inside-chamber",
            "supplier-gas-of-no-kind",
            "supplier-gas-of-propane",
            "tiny-brick",
            "two-of-one-name",
            "two-ports-one-name",
            "unknown-limit-name",
            "tall-chamber",
            "unknown-rule",
            "wall-in-cm",
            "wrong-kind",
            "wrong-letter-case",
            "zero-height");

    private static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaTest.class.getResourceAsStream("/portwright/design.schema.json"));
    }

    private static List<String> complaints(String text) {
        return SCHEMA.validate(text, InputFormat.JSON).stream()
                .map(e -> e.getInstanceLocation() + " " + e.getMessage())
                .toList();
    }

    @Test
    void acceptsWhatTheReaderAccepts() throws IOException {
        assertThat(complaints(Files.readString(ContractExampleTest.EXAMPLE))).isEmpty();
        for (String name : Starters.names()) {
            assertThat(complaints(Starters.find(name).orElseThrow().toText()))
                    .as(name)
                    .isEmpty();
        }
    }

    @Test
    void refusesWhatTheReaderRefusesForItsForm() throws IOException {
        TreeSet<String> unseen = new TreeSet<>();
        for (String file : BrokenFilesTest.files()) {
            Path path = BrokenFilesTest.FOLDER.resolve(file);
            List<Problem> problems = new ArrayList<>();
            String text = Encoding.text(Files.readAllBytes(path), problems);
            if (text != null
                    && JsonTree.parse(text, problems) != null
                    && complaints(text).isEmpty()) {
                unseen.add(file.replace(".json", ""));
            }
        }
        assertThat(unseen).isEqualTo(new TreeSet<>(BEYOND_A_SCHEMA));
    }

    @Test
    void agreesOnAFewFieldsTakenAwayOrMadeForeign() {
        agree("front-loader-18", 11);
        agree("six-corner-55cm", 11);
    }

    @Test
    @Tag("slow")
    void agreesOnEveryFieldTakenAwayOrMadeForeign() {
        Starters.names().forEach(n -> agree(n, 1));
    }

    private static void agree(String name, int step) {
        DesignText whole = Starters.find(name).orElseThrow();
        List<String> paths = Paths.all(whole);
        for (int i = 0; i < paths.size(); i += step) {
            String path = paths.get(i);
            DesignText without = whole.remove(path);
            boolean reads = without.read().problems().stream()
                    .noneMatch(p -> p.message().contains("is missing")
                            || p.message().contains("two lengths")
                            || p.message().contains("at least two points"));
            assertThat(complaints(without.toText()).isEmpty())
                    .as("%s without %s: %s", name, path, complaints(without.toText()))
                    .isEqualTo(reads);
            DesignText foreign = whole.set(path, "{\"foreign\": [1]}");
            assertThat(complaints(foreign.toText()))
                    .as("%s with foreign %s", name, path)
                    .isNotEmpty();
            assertThat(foreign.read().problems())
                    .as("%s with foreign %s", name, path)
                    .isNotEmpty();
        }
    }
}
