package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.file.DesignText;
import portwright.form.FieldSpec;

/** A half shelf whose posts stand on its other side. */
class PostWordsTest {
    private static String words(String turn, String posts) {
        Document doc = Open.starter("octagon-17");
        DesignText t = doc.text()
                .set(
                        "shelves",
                        "[{\"name\": \"half\", \"shape\": \"half\", \"diameter\": \"300 mm\", \"turn\": \"" + turn
                                + "\", \"height\": \"150 mm\", \"thickness\": \"16 mm\", \"postSize\": \"38 mm\", \"posts\": "
                                + posts + "}]");
        assertThat(doc.edit("shelf", x -> t)).isEmpty();
        return new FieldModel(doc, "shelves[0]", FieldSpec.of("posts", "posts", FieldSpec.Type.PLACES, "")).remark();
    }

    @Test
    void postsBesideTheShelfAreNamed() {
        String posts = "[[\"0 mm\", \"100 mm\"], [\"0 mm\", \"-100 mm\"], [\"60 mm\", \"-20 mm\"]]";
        assertThat(words("0 deg", posts)).startsWith("Posts 2, 3 stand beside the shelf");
        assertThat(words("180 deg", posts)).startsWith("Post 1 stands beside the shelf");
        assertThat(words("0 deg", "[[\"0 mm\", \"100 mm\"]]")).isEmpty();
    }
}
