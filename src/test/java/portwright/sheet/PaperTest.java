package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperTest {
    /** A sizes: ISO 216 table; inch sizes: ASME Y14.1 A and B, US legal (from memory) times 25.4. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"a4,210,297", "a3,297,420", "letter,215.9,279.4", "tabloid,279.4,431.8", "legal,215.9,355.6"})
    void sizes(String name, double width, double height) {
        assertThat(Paper.parse(name)).isEqualTo(new Paper(name, width, height));
    }

    /** ISO 216: sides stand as 1 to the square root of 2, halving gives the next size, whole millimetres. */
    @Test
    @Tag("published")
    void isoSizesHalve() {
        Paper a3 = Paper.parse("a3");
        Paper a4 = Paper.parse("a4");
        assertThat(a4.heightMm()).isEqualTo(a3.widthMm());
        assertThat(a4.widthMm()).isEqualTo(Math.floor(a3.heightMm() / 2));
        assertThat(a4.heightMm() / a4.widthMm()).isCloseTo(Math.sqrt(2), org.assertj.core.data.Offset.offset(0.003));
    }

    /** Everybody can read which there are: README lists them in the order of the table. */
    @Test
    void readmeNamesThem() throws IOException {
        assertThat(Files.readString(Path.of("README.md")))
                .contains("--paper "
                        + String.join(
                                "\\|", Paper.named().stream().map(Paper::name).toList())
                        + "\\|900x900mm");
    }

    @Test
    void namesForPeople() {
        assertThat(Paper.named().stream().map(Paper::words)).startsWith("A4", "A3", "letter");
        assertThat(new Paper("a10", 26, 37).words()).isEqualTo("A10");
        assertThat(Paper.parse("610x914.4mm").words()).isEqualTo("610 × 914.4 mm");
    }

    @Test
    void ownSizes() {
        assertThat(Paper.parse("900x900mm")).isEqualTo(new Paper("900x900mm", 900, 900));
        assertThat(Paper.parse("610 x 914.4 mm").heightMm()).isEqualTo(914.4);
        for (String bad : new String[] {
            "a9", "", "900x900", "900x900in", "0x0mm", "100x100mm", "9000x900mm", "900x1e9mm", "-900x900mm", "a4 "
        }) {
            if (!bad.strip().equals("a4")) {
                assertThatThrownBy(() -> Paper.parse(bad))
                        .as(bad)
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageMatching("(?s).*(Write|Use at).*");
            }
        }
    }
}
