package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Why a button of the Paper step is off, beside it. */
class PaperHoldTest {
    @Test
    void theCardSaysWhatIsMissingInTheWordsOfTheRefusal() {
        assertThat(PaperHold.card(null)).isEmpty();
        assertThat(PaperHold.card("No card: 2 stops forbid lighting. Mend or complete the design."))
                .isEqualTo("Save card waits: 2 stops forbid lighting.");
        assertThat(PaperHold.card("No card: not proven that the kiln may be lit. Not checked: soot; gas load; room CO."
                        + " Mend or complete the design."))
                .isEqualTo(
                        "Save card waits: not proven that the kiln may be lit. Not checked: soot; and 2 more, told above.");
    }
}
