package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.units.Kind;

/** A field keeps what was typed, explains what is wrong, and never loses the last good value. */
class FieldModelTest {
    private final Document doc = Open.starter("octagon-17");
    private final FieldModel hole =
            new FieldModel(doc, "ports[0]", FieldSpec.quantity("diameter", "hole", Kind.LENGTH));

    @ParameterizedTest
    @CsvSource({"1 3/8 in,34.925", "35 mm,35", "1.375 in,34.925", "3.5 cm,35"})
    void takesLengthsAsTyped(String typed, double mm) {
        assertThat(hole.commit(typed)).isTrue();
        assertThat(doc.text().get("ports[0].diameter")).contains(typed);
        assertThat(doc.design().ports().get(0).diameter().mm())
                .isEqualTo(mm, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(hole.error()).isNull();
    }

    @ParameterizedTest
    @CsvSource({"1 3/8 inn", "35 kg", "'35,5 mm'", "-5 mm", "abc"})
    void explainsWrongOnesAndKeepsTheLastGood(String typed) {
        String before = doc.text().toText();
        String good = hole.good();
        assertThat(hole.commit(typed)).isFalse();
        assertThat(hole.error()).isNotBlank();
        assertThat(hole.shown()).isEqualTo(typed);
        assertThat(hole.good()).isEqualTo(good);
        assertThat(doc.text().toText()).isEqualTo(before);
        assertThat(doc.undoStack().size()).isZero();
        hole.revert();
        assertThat(hole.shown()).isEqualTo(good);
    }

    @Test
    void showsTheOtherSystem() {
        hole.commit("1 3/8 in");
        assertThat(hole.aside()).isEqualTo("34.9 mm");
        hole.commit("35 mm");
        assertThat(hole.aside()).isEqualTo("1 3/8 in");
    }

    @Test
    void aRenamedPartStaysChosenBeforeAnyViewHearsOfIt() {
        String old = doc.text().get("ports[0].name").orElseThrow();
        doc.select(old);
        List<String> heard = new ArrayList<>();
        doc.listen(c -> {
            if (c == Document.Change.DESIGN) {
                heard.add(doc.selected());
            }
        });
        assertThat(new FieldModel(doc, "ports[0]", FieldSpec.text("name", "name")).commit("left port"))
                .isTrue();
        doc.undo();
        assertThat(heard).containsExactly("left port", old);
        assertThat(doc.selected()).isEqualTo(old);
    }

    @Test
    void typeAndClassAreAskedOfThermocouplesOnly() {
        String at = "kiln.fittings[0]";
        doc.edit("fresh", t -> t.set("kiln.fittings", "[" + Templates.fill(t, KilnCatalog.fittings()) + "]"));
        assertThat(asked(at)).doesNotContain("type", "class").contains("kind", "diameter");
        field(at, "kind").commit("thermocouple");
        assertThat(asked(at)).contains("type", "class");
        field(at, "type").commit("K");
        field(at, "kind").commit("hinge");
        assertThat(asked(at)).doesNotContain("type", "class");
        assertThat(doc.text().has(at + ".type")).isFalse();
    }

    private FieldModel field(String at, String key) {
        FieldSpec spec = KilnCatalog.fittings().fields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
        return new FieldModel(doc, at, spec);
    }

    private List<String> asked(String at) {
        FormSpec s = KilnCatalog.fittings();
        return s.fields().stream()
                .filter(f -> !HiddenFields.hidden(doc.text(), s, at, f))
                .map(FieldSpec::key)
                .toList();
    }

    @Test
    void renamingAPortTakesItsBurnersAlong() {
        String old = doc.text().get("ports[0].name").orElseThrow();
        FieldModel name = new FieldModel(doc, "ports[0]", FieldSpec.text("name", "name"));
        assertThat(name.commit("left port")).isTrue();
        assertThat(doc.text().toText()).doesNotContain("\"port\": \"" + old + "\"");
    }

    @Test
    void tailsGoUpAndDownWithTheirElementInOneStep() {
        String at = "kiln.elements[0]";
        doc.edit(
                "fresh",
                t -> t.setText("units", "inch")
                        .setText(at + ".height", "3 in")
                        .set(at + ".tails", "{\"panel\": 3, \"at\": [\"1 in\", \"3 in\"], \"diameter\": \"1/2 in\"}"));
        FieldModel height = new FieldModel(doc, at, FieldSpec.quantity("height", "height", Kind.LENGTH));
        int steps = doc.undoStack().size();
        assertThat(height.commit("3 1/2 in")).isTrue();
        assertThat(doc.text().get(at + ".tails.at[1]")).contains("3 1/2 in");
        doc.edit("higher tails", t -> t.setText(at + ".tails.at[1]", "3 3/4 in"));
        assertThat(height.commit("100 mm")).isTrue();
        assertThat(doc.design().kiln().elements().get(0).tails().at().yMm())
                .isEqualTo(100 + 6.35, org.assertj.core.data.Offset.offset(0.01));
        doc.undo();
        doc.undo();
        doc.undo();
        assertThat(doc.undoStack().size()).isEqualTo(steps);
        assertThat(doc.text().get(at + ".tails.at[1]")).contains("3 in");
    }

    @Test
    void electricPowerIsToldInKilowattsAlone() {
        Document doc = Open.starter("octagon-17");
        FieldModel power = field(doc, "kiln", KilnCatalog.chamber(), "power");
        assertThat(power.aside()).isEmpty();
        assertThat(power.commit("7.7")).isFalse();
        assertThat(power.error()).isEqualTo("\"7.7\" has no unit. Write \"7.7 kW\".");
        assertThat(doc.text().get("kiln.power")).contains("6 kW");
    }

    private static FieldModel field(Document doc, String base, FormSpec form, String key) {
        return new FieldModel(
                doc,
                base,
                form.fields().stream()
                        .filter(f -> f.key().equals(key))
                        .findFirst()
                        .orElseThrow());
    }
}
