package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import portwright.form.FieldSpec;

/** What stands under a field follows the design. */
class UnderFieldTest {
    @Test
    void anElementSaysWhatItsGrooveLacks() {
        Document doc = Open.starter("octagon-17");
        doc.edit("bare", t -> t.set("kiln.elements", "[{\"name\": \"E\", \"on\": \"wall\", \"height\": \"100 mm\"}]"));
        FieldSpec depth = FieldSpec.of("depth", "depth", FieldSpec.Type.QUANTITY, "");
        Supplier<String> words = UnderField.of(doc, "kiln.elements[0].groove", depth);
        assertThat(words.get()).contains("height and depth", "dashed line");
        doc.edit("groove", t -> t.set("kiln.elements[0].groove", "{\"height\": \"16 mm\", \"depth\": \"19 mm\"}"));
        assertThat(words.get()).isEmpty();
        assertThat(UnderField.of(doc, "damper.plate", depth)).isNull();
    }
}
