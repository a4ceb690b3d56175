package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.model.Design;

/** Sizes of holes rest on the burners; where none is stated the smallest saw is not taken and the reason says what is open. */
class SizesTest {
    @Test
    void withoutBurnersTheSmallestSawIsNoChoice() {
        Sizes open = sizes(TestKiln.polygon(8, "17 in").build(), Wishes.none());
        assertThat(open.list()).isNotEmpty().allMatch(c -> c.inletMm() >= 35);
        assertThat(open.open()).contains("No burner tip is stated");
        Wishes asked = new Wishes(null, null, 25.0, null);
        assertThat(sizes(TestKiln.polygon(8, "17 in").build(), asked).open()).isEmpty();
    }

    @Test
    void withBurnersTheSmallestThatFitsIsTried() {
        Sizes fired = sizes(SomeKilns.fired(7), new Wishes(2, null, null, null));
        assertThat(fired.open()).isEmpty();
        assertThat(fired.list()).anyMatch(c -> c.inletMm() < 35);
    }

    @Test
    void theReasonSaysSo() {
        List<Proposal> best = Proposer.propose(
                        TestKiln.polygon(8, "17 in").build(), new Wishes(1, 1, null, null), Progress.none())
                .best();
        assertThat(best).isNotEmpty().allMatch(p -> p.reason().contains("before you drill."));
    }

    private static Sizes sizes(Design d, Wishes w) {
        return new Sizes(d, w, new LayoutLimits(d, LimitTable.load()));
    }
}
