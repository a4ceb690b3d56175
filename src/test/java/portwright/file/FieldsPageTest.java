package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on the design file names every field of the schema, and no other. */
class FieldsPageTest {
    private static final Pattern FIRST_COLUMN = Pattern.compile("(?m)^\\| (`[^|]+) \\|");
    private static final Pattern QUOTED = Pattern.compile("`([A-Za-z]+(?:\\[])?(?:\\.[A-Za-z]+(?:\\[])?)*)`");

    /** Floor and lid share a table of their own. */
    private static final Set<String> SLAB = Set.of("thickness", "brick", "overhang", "pan", "joints");

    @Test
    void namesEveryField() throws IOException {
        Set<String> fields = new TreeSet<>();
        collect(
                new ObjectMapper()
                        .readTree(Path.of("src/main/resources/portwright/design.schema.json")
                                .toFile()),
                "",
                fields);
        Set<String> page = new TreeSet<>();
        FIRST_COLUMN
                .matcher(Files.readString(Path.of("src/docs/design-file.md")))
                .results()
                .flatMap(r -> QUOTED.matcher(r.group(1)).results())
                .forEach(q -> page.add(q.group(1)));
        page.removeAll(SLAB);
        assertThat(page).isSubsetOf(fields);
        fields.removeIf(f -> page.stream().anyMatch(p -> p.startsWith(f + ".") || p.startsWith(f + "[].")));
        assertThat(page).containsAll(fields);
    }

    private static void collect(JsonNode schema, String at, Set<String> out) {
        for (Map.Entry<String, JsonNode> e : schema.path("properties").properties()) {
            String path = at.isEmpty() ? e.getKey() : at + "." + e.getKey();
            out.add(path);
            collect(e.getValue(), path, out);
            collect(e.getValue().path("items"), path + "[]", out);
        }
    }
}
