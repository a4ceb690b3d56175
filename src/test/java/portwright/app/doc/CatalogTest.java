package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.form.Catalog;
import portwright.form.FieldNames;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;

/** The forms reach every field of the design file, and every fresh part they add is a good one. */
class CatalogTest {
    private static final List<FormSpec> FORMS = FieldNames.FORMS;

    private static void keys(FormSpec s, String at, Set<String> out) {
        String here = at.isEmpty() ? s.path() : s.path().isEmpty() ? at : at + "." + s.path();
        for (FieldSpec f : s.fields()) {
            out.add((here.isEmpty() ? "" : here + ".") + f.key().replaceAll("\\[\\d\\]", ""));
        }
        s.inner().forEach(i -> keys(i, here, out));
    }

    @Test
    void everyFieldOfTheSchemaHasAForm() throws Exception {
        TreeSet<String> forms = new TreeSet<>();
        FORMS.forEach(f -> keys(f, "", forms));
        try (InputStream in = CatalogTest.class.getResourceAsStream("/portwright/design.schema.json")) {
            JsonNode schema = new ObjectMapper().readTree(in);
            TreeSet<String> missing = new TreeSet<>();
            walk(schema, schema, "", missing, forms, 0);
            missing.removeIf(m -> m.equals("portwright") || m.startsWith("limits"));
            assertThat(missing).isEmpty();
        }
    }

    private static void walk(
            JsonNode root, JsonNode node, String at, Set<String> missing, Set<String> forms, int depth) {
        JsonNode n = node;
        while (n.has("$ref")) {
            n = root.at(n.get("$ref").asText().substring(1));
        }
        for (String group : new String[] {"oneOf", "anyOf", "allOf"}) {
            if (n.has(group) && depth < 12) {
                for (JsonNode o : n.get(group)) {
                    walk(root, o, at, missing, forms, depth + 1);
                }
            }
        }
        if (forms.contains(at)) {
            return;
        }
        if (n.has("items") && depth < 12) {
            walk(root, n.get("items"), at, missing, forms, depth + 1);
        }
        JsonNode props = n.get("properties");
        if (props == null) {
            boolean composite = n.has("items")
                    || n.has("oneOf")
                    || n.has("anyOf")
                    || n.has("allOf")
                    || n.has("if")
                    || n.has("required")
                    || n.has("not");
            if (!composite && !at.isEmpty() && !forms.contains(at)) {
                missing.add(at);
            }
            return;
        }
        List<String> names = new ArrayList<>();
        props.fieldNames().forEachRemaining(names::add);
        for (String name : names) {
            walk(root, props.get(name), at.isEmpty() ? name : at + "." + name, missing, forms, depth + 1);
        }
    }

    /** A potter asked what these mean; a name that no form has would help nobody. */
    @Test
    void wordsOfTheTradeAreExplained() {
        TreeSet<String> keys = new TreeSet<>();
        FORMS.forEach(f -> keys(f, "", keys));
        assertThat(FieldHelp.of("kiln.fittings[2].turn"))
                .isEqualTo(FieldHelp.of("shelves[0].turn"))
                .isNotBlank();
        assertThat(FieldHelp.of("kiln.elements[0].height")).isNotEqualTo(FieldHelp.of("kiln.height"));
        assertThat(FieldHelp.of("title")).isNull();
        for (String key : List.of("turn", "lossFactor", "leakArea", "reach", "clear", "overhang")) {
            assertThat(FieldHelp.of(key)).as(key).isNotBlank();
            assertThat(keys).anyMatch(k -> k.endsWith("." + key));
        }
    }

    static List<String> starters() {
        return Starters.names();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void freshPartsLeaveTheDesignReadable(String name) {
        DesignText start = Starters.find(name).orElseThrow();
        for (FormSpec s : FORMS) {
            if (s.template() == null) {
                continue;
            }
            String json = Templates.fill(start, s);
            DesignText next = s.list() ? start.append(s.path(), json) : start.set(s.path(), json);
            assertThat(next.read().problems()).as(s.path() + " " + json).isEmpty();
        }
    }

    /** What only a measurement tells is not there until it is typed: a rule that counts with it stays unchecked. */
    @ParameterizedTest
    @CsvSource({
        "burners,jet jets pressure heat",
        "room.openings,area level to free height",
        "kiln.elements,height groove coil path tails",
        "shelves,diameter height thickness at",
        "kiln.fittings,at diameter size"
    })
    void freshPartsBringNoFiguresThatRulesCountWith(String list, String figures) {
        Document doc = Open.starter("octagon-17");
        FormSpec form = switch (list) {
            case "burners" -> Catalog.burners();
            case "kiln.elements" -> KilnCatalog.elements();
            case "kiln.fittings" -> KilnCatalog.fittings();
            case "shelves" -> KilnCatalog.shelves();
            default ->
                Catalog.room().inner().stream()
                        .filter(s -> s.path().equals("openings"))
                        .findFirst()
                        .orElseThrow();
        };
        DesignText next = doc.text().append(list, Templates.fill(doc.text(), form));
        assertThat(next.read().problems()).isEmpty();
        String last = list + "[" + (next.size(list) - 1) + "].";
        assertThat(figures.split(" ")).noneMatch(f -> next.has(last + f));
    }

    /** A measure is what somebody measured: an element after two others takes none of theirs. */
    @Test
    void anElementTakesNoMeasureOfTheOthers() {
        String all =
                "[{\"name\": \"low\", \"on\": \"wall\", \"height\": \"50 mm\"}, {\"name\": \"next\", \"on\": \"wall\","
                        + " \"height\": \"115 mm\", \"groove\": {\"height\": \"15 mm\", \"depth\": \"20 mm\"}, \"coil\": \"10 mm\","
                        + " \"tails\": {\"panel\": 1, \"at\": [\"0 mm\", \"115 mm\"], \"diameter\": \"12 mm\"}}]";
        Document doc = Open.starter("octagon-17");
        doc.edit("two", t -> t.setText("units", "metric").set("kiln.elements", all));
        String two = doc.text().toText();
        doc.edit("third", t -> Templates.append(t, KilnCatalog.elements(), "kiln.elements"));
        var third = doc.design().kiln().elements().get(2);
        assertThat(third.name()).isEqualTo("element A");
        assertThat(third.height()).isNull();
        assertThat(third.groove()).isNull();
        assertThat(third.coil()).isNull();
        assertThat(third.tails()).isNull();
        doc.undo();
        assertThat(doc.text().toText()).isEqualTo(two);
    }

    @Test
    void aFreshBurnerGoesUnderAnInletThatHasNone() {
        Document doc = Open.starter("octagon-17");
        String first = doc.text().get("burners[0].port").orElseThrow();
        DesignText one =
                doc.text().set("burners", "[" + doc.text().getJson("burners[0]").orElseThrow() + "]");
        String fresh = Templates.fill(one, Catalog.burners());
        DesignText two = one.append("burners", fresh);
        assertThat(two.get("burners[1].port")).isPresent().get().isNotEqualTo(first);
        DesignText full = two.append("burners", Templates.fill(two, Catalog.burners()));
        assertThat(full.read().problems()).isEmpty();
    }

    /** Where fresh elements lie only a tape tells; a copy goes on from two of them while there is room. */
    @ParameterizedTest
    @CsvSource({"inch,3 in,5 in,7 in", "metric,75 mm,125 mm,175 mm"})
    void aCopiedElementHasAHeightOnceTwoTellHowFarTheyLieApart(
            String units, String first, String second, String third) {
        DesignText text = Open.starter("octagon-17")
                .text()
                .setText("units", units)
                .set("kiln.elements", "[]")
                .set("shelves", "[]")
                .setText("kiln.height", "8 in");
        for (String height : List.of(first, second)) {
            text = Templates.append(text, KilnCatalog.elements(), "kiln.elements");
            String fresh = "kiln.elements[" + (text.size("kiln.elements") - 1) + "].height";
            assertThat(text.has(fresh)).isFalse();
            assertThat(text.read().problems()).isEmpty();
            text = text.setText(fresh, height);
        }
        text = Copies.element(text, "kiln.elements[1]", "third");
        assertThat(text.get("kiln.elements[2].height")).contains(third);
        assertThat(Templates.above(text)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyShapeOfPlanCanBeChosen(String name) {
        Document doc = Open.starter(name);
        FieldModel shape =
                new FieldModel(doc, "kiln.plan", KilnCatalog.plan().fields().get(0));
        for (String s : List.of("polygon", "rectangle", "oval", "outline")) {
            shape.commit(s);
            assertThat(doc.design()).isNotNull();
        }
    }

    @Test
    void wantedFormsStandInTheUsersUnits() {
        Document doc = Open.starter("octagon-17");
        FieldModel stretch =
                new FieldModel(doc, "kiln.plan", KilnCatalog.plan().fields().get(3));
        doc.edit("inch", t -> t.setText("units", "inch"));
        assertThat(stretch.hint()).isEqualTo("e.g. 9 in");
        doc.edit("metric", t -> t.setText("units", "metric"));
        assertThat(stretch.hint()).isEqualTo("e.g. 230 mm");
    }
}
