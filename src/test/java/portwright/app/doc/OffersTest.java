package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.form.KilnCatalog;

/** Bricks are chosen from the table; any other kind may be written and says what that means. */
class OffersTest {
    private final Document doc = Open.starter("octagon-17");
    private final FieldModel brick =
            new FieldModel(doc, "kiln.floor", KilnCatalog.slab("floor").fields().get(1));

    @Test
    void everyBrickOfTheTableIsOffered() {
        assertThat(Offers.of("brick").orElseThrow().all())
                .extracting(Offers.Offer::value)
                .contains("ifb-20", "ifb-23", "ifb-26", "ifb-28", "fibre");
        assertThat(Offers.of("height")).isEmpty();
    }

    @Test
    void anotherKindIsTakenAndExplained() {
        assertThat(brick.commit("ifb-26")).isTrue();
        assertThat(brick.remark()).startsWith("IFB group 26");
        assertThat(brick.commit("grandfather's brick")).isTrue();
        assertThat(brick.remark()).startsWith("Not in the list of bricks");
        assertThat(doc.result().findings())
                .anyMatch(f -> f.rule().equals("brick-kind") && f.parts().contains("floor"));
        assertThat(brick.commit("")).isTrue();
        assertThat(brick.remark()).isEmpty();
    }
}
