package portwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a line may end: a tilde stands for a space that holds. */
class UnbrokenTest {
    @ParameterizedTest
    @CsvSource({
        "27 1/2 in from the left, 27~1/2~in from the left",
        "9 in hole, 9~in hole",
        "at 1650 °F and 40 %, at 1650~°F and 40~%",
        "2 holes in brick, 2 holes in brick",
        "35 mm (1 3/8 in), 35~mm (1~3/8~in)"
    })
    void aQuantityStaysTogether(String words, String held) {
        assertThat(Unbroken.words(words).replace('\u00a0', '~')).isEqualTo(held);
    }
}
