package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
    @CsvSource({"35", "1 3/8 inn", "35 kg", "'35,5 mm'", "-5 mm", "abc"})
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
    void aMissingUnitSaysWhatToWrite() {
        hole.commit("35");
        assertThat(hole.error()).contains("Write");
        assertThat(hole.advice()).startsWith("Write");
    }

    @Test
    void renamingAPortTakesItsBurnersAlong() {
        String old = doc.text().get("ports[0].name").orElseThrow();
        FieldModel name = new FieldModel(doc, "ports[0]", FieldSpec.text("name", "name"));
        assertThat(name.commit("left port")).isTrue();
        assertThat(doc.text().toText()).doesNotContain("\"port\": \"" + old + "\"");
    }
}
