package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The letters of IEC 60584-1, as they are typed. */
@Tag("published")
class ThermocoupleLetterTest {
    private static int probe() {
        var fittings =
                Starters.find("decagon-23").orElseThrow().read().design().kiln().fittings();
        for (int i = 0; i < fittings.size(); i++) {
            if (fittings.get(i).type() != null) {
                return i;
            }
        }
        throw new AssertionError("no probe");
    }

    private static ReadResult probe(String type) {
        return Starters.find("decagon-23")
                .orElseThrow()
                .setText("kiln.fittings[" + probe() + "].type", type)
                .read();
    }

    @ParameterizedTest
    @ValueSource(strings = {"K", "k", " type k ", "Type K"})
    void smallLettersAreTheSame(String type) {
        assertThat(probe(type).design().kiln().fittings().get(probe()).type()).isEqualTo("K");
    }

    @Test
    void whatIsNoLetterIsRefused() {
        for (String type : new String[] {"Q", "KK", "k".repeat(5000), "", "chromel"}) {
            assertThat(probe(type).problems())
                    .as(type)
                    .singleElement()
                    .satisfies(p -> assertThat(p.message()).contains("B, E, J, K, N, R, S or T"));
        }
    }
}
