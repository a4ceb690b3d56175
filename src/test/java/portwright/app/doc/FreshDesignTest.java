package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.form.FieldSpec;

/** A design made from a starter bears its own title, and its file is found again. */
class FreshDesignTest {
    private static final String NAME = "octagon-17";

    private static Document made(String title) {
        DesignText t = FreshDesign.of(NAME, title);
        Document doc = new Document(t, t.read().design(), Open.desk());
        doc.borrowed().from(NAME, Starters.find(NAME).orElseThrow(), Set.of());
        return doc;
    }

    @Test
    void theTitleIsTheKilnsOwnAndAllElseIsMarked() {
        Document doc = made("  Shed kiln \"18 1/2\" ");
        assertThat(doc.design().title()).isEqualTo("Shed kiln \"18 1/2\"");
        assertThat(doc.borrowed().title()).isFalse();
        assertThat(doc.borrowed().of(Step.KILN)).contains("kiln.height").doesNotContain("title");
    }

    @Test
    void withoutOneTheStartersTitleIsMarkedAndIsNoMeasure() {
        Document doc = made(" ");
        assertThat(doc.design().title()).isEqualTo(Starters.title(NAME));
        assertThat(doc.borrowed().title()).isTrue();
        assertThat(doc.borrowed().of(Step.PAPER)).startsWith("title");
        assertThat(doc.borrowed().unmeasured())
                .isEqualTo(doc.borrowed().of(Step.KILN).size() - 1);
        new FieldModel(doc, "", FieldSpec.text("title", "title")).commit("Ours");
        assertThat(doc.borrowed().title()).isFalse();
        assertThat(doc.borrowed().unmeasured())
                .isEqualTo(doc.borrowed().of(Step.KILN).size());
    }

    @ParameterizedTest
    @CsvSource({
        "mine,mine.json",
        "mine.json,mine.json",
        "MINE.JSON,MINE.JSON",
        "kiln 18.5,kiln 18.5.json",
        "mine.txt,mine.txt",
        "a.b/mine,a.b/mine.json"
    })
    void aFileWithoutAnEndingGetsOne(String chosen, String file) {
        assertThat(FreshDesign.file(Path.of(chosen))).isEqualTo(Path.of(file));
    }
}
