package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on the design file names every field of the schema, and no other; it and the guide name the words that a field may hold. */
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

    /** A row that names a field of fixed words names all of them; the guide too, where it lists more than half of them. */
    @Test
    void namesEveryWord() throws IOException {
        JsonNode schema = new ObjectMapper()
                .readTree(Path.of("src/main/resources/portwright/design.schema.json")
                        .toFile());
        Map<String, Set<String>> words = new TreeMap<>();
        words(schema, schema, "", words);
        assertThat(words).containsKeys("burners[].fuel", "room.place", "firing.steps[].atmosphere");
        List<String> missing = new ArrayList<>();
        for (String page : List.of("design-file.md", "guide.md")) {
            for (String row : Files.readAllLines(Path.of("src/docs", page))) {
                String[] columns = row.split(" \\| ?|^\\| ", -1);
                for (var field : words.entrySet()) {
                    if (columns.length < 3 || !columns[1].contains("`" + field.getKey() + "`")) {
                        continue;
                    }
                    List<String> not = field.getValue().stream()
                            .filter(w -> !row.contains("`" + w + "`"))
                            .toList();
                    boolean lists = page.startsWith("design")
                            || 2 * not.size() < field.getValue().size();
                    if (lists && !not.isEmpty()) {
                        missing.add(page + ", row of " + field.getKey() + ": " + String.join(", ", not));
                    }
                }
            }
        }
        assertThat(missing).as("words of the schema that a page does not name").isEmpty();
    }

    private static void words(JsonNode schema, JsonNode node, String at, Map<String, Set<String>> out) {
        for (Map.Entry<String, JsonNode> e : node.path("properties").properties()) {
            String path = at.isEmpty() ? e.getKey() : at + "." + e.getKey();
            JsonNode field = e.getValue();
            if (field.has("$ref")) {
                field = schema.at(field.get("$ref").asText().substring(1));
            }
            field.path("enum")
                    .forEach(
                            w -> out.computeIfAbsent(path, k -> new TreeSet<>()).add(w.asText()));
            words(schema, field, path, out);
            words(schema, field.path("items"), path + "[]", out);
        }
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
