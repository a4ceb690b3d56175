package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A measure that misses its limit never reads like the limit. */
class WordsTest {
    @Test
    void asManyDigitsAsShowTheDifference() {
        Term t = new Term("port-spacing", List.of("a", "b"), 12.4996, 12.5, 40, "mm", -0.1);
        assertThat(Words.term(t)).contains("b: 12.4996 mm").contains("stop under 12.5 mm");
        assertThat(Words.miss(t)).endsWith(": 0.0004 mm (0 in) short");
        Term share = new Term("port-balance", List.of("a"), 0.1505, Double.NaN, 0.15, "1", 0.997);
        assertThat(Words.term(share)).contains("15.05 %").contains("caution over 15 %");
        Term at = new Term("port-spacing", List.of("a", "b"), 25, 25, 40, "mm", 0);
        assertThat(Words.term(at)).contains("b: 25 mm");
    }

    /** Half a thousandth under a caution's limit is no clear layout: a tape's error brings the caution. */
    @Test
    void atTheLimitIsNotClear() {
        Sizes.Choice c = new Sizes.Choice(1, 35, 1, 40, null);
        assertThat(at(c, 1.03).rank() - at(c, 1.01).rank()).isGreaterThan(0.2);
    }

    private static Combination at(Sizes.Choice c, double margin) {
        Spots s = new Spots("in the middle", true, new double[] {0}, new double[] {0}, margin);
        return new Combination(c, s, s, 9, 9, 0);
    }
}
