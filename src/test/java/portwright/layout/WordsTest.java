package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;

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

    /** In inches neither: half a millimetre under half an inch is told in thousandths (12 / 25.4 = 0.472). */
    @Test
    void inchesTellTheDifferenceToo() {
        Term t = new Term("fitting-clearance", List.of("a", "b"), 12, 12.5, 25, "mm", -0.02);
        assertThat(Words.term(t)).contains("b: 12 mm (0.472 in)").contains("stop under 12.5 mm (1/2 in)");
    }

    /** Up to four places of a rule are named with what they lack, the others counted. */
    @Test
    void theStopsOfANearestMissAreNamed() {
        List<Term> five = List.of("b", "c", "d", "e", "f").stream()
                .map(n -> new Term("element-clearance", List.of("inlet", n), 20, 25, 35, "mm", -0.5))
                .toList();
        assertThat(Words.misses(five.subList(0, 2)))
                .contains("brick between inlet and b: 20 mm")
                .contains("stop under 25 mm")
                .contains("; also brick between inlet and c: 20 mm")
                .endsWith("short)")
                .doesNotContain("more");
        assertThat(Words.misses(five))
                .contains("inlet and e")
                .doesNotContain("inlet and f")
                .endsWith(", and 1 more");
    }

    /** A margin of 1 is the caution's limit itself. */
    @Test
    void theLimitItselfIsSaidPlainly() {
        assertThat(Words.margin(1)).isEqualTo("with just what its caution asks");
        assertThat(Words.margin(1.004)).isEqualTo("with just what its caution asks");
        assertThat(Words.margin(1.006)).isEqualTo("with 1.01 times what its caution asks");
        assertThat(Words.margin(0.999)).isEqualTo("without a stop, with less room than is wanted");
    }

    /** Where the chamber's centre of area lies outside it, the balance is still a caution and never a stop. */
    @Test
    void balanceOfAUNeverStops() {
        Design d = TestKiln.u().flue("F", 0, -170, 50).build();
        Site site =
                new Site(KilnGeometry.of(d), On.LID, false, new LayoutLimits(d, LimitTable.load()), 50, 2, 0, Set.of());
        double[] x = {0};
        double[] y = {-170};
        double r = 450 - Math.sqrt(100_000);
        assertThat(site.balance(x, y)).isCloseTo(0.15 * r / (170 - 70_000 * 125 / 290_000.0), within(1e-3));
        assertThat(site.terms(x, y, List.of("F")))
                .noneMatch(Term::isStop)
                .allSatisfy(t -> assertThat(Words.term(t) + Words.miss(t)).doesNotContain("NaN"));
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
