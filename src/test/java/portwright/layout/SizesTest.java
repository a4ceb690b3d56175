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
        Design bare = TestKiln.polygon(8, "17 in").build();
        Sizes open = sizes(bare, Wishes.none());
        assertThat(open.list()).isNotEmpty().allMatch(c -> c.inletMm() >= 35);
        assertThat(new SizeWords(bare, open).open()).contains("No burner tip is stated");
        Wishes asked = new Wishes(null, null, 25.0, null);
        assertThat(new SizeWords(bare, sizes(bare, asked)).open()).isEmpty();
    }

    @Test
    void withBurnersTheSmallestThatFitsIsTried() {
        Sizes fired = sizes(SomeKilns.fired(7), new Wishes(2, null, null, null));
        assertThat(new SizeWords(SomeKilns.fired(7), fired).open()).isEmpty();
        assertThat(fired.list()).anyMatch(c -> c.inletMm() < 35);
    }

    @Test
    void theReasonSaysSo() {
        List<Proposal> best = Proposer.propose(
                        TestKiln.polygon(8, "17 in").build(), new Wishes(1, 1, null, null), Progress.none())
                .best();
        assertThat(best).isNotEmpty().allMatch(p -> p.reason().contains("before you drill."));
    }

    /** No saw cuts 30 mm; the next is 32 mm. */
    @Test
    void aSizeThatNoSawCutsIsNotChangedInSilence() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        k.inlet("a", 0, -70, 30).inlet("b", 0, 70, 30).flue("c", 0, 0, 45);
        List<Proposal> best = Proposer.propose(k.build(), new Wishes(2, 1, null, null), Progress.none())
                .best();
        assertThat(best.get(0).reason())
                .contains("The file has inlets of 30 mm")
                .contains("ask for that size");
        List<Proposal> kept = Proposer.propose(k.build(), new Wishes(2, 1, 30.0, null), Progress.none())
                .best();
        assertThat(kept.get(0).reason()).doesNotContain("The file has inlets");
    }

    private static Sizes sizes(Design d, Wishes w) {
        return new Sizes(d, w, new LayoutLimits(d, LimitTable.load()));
    }
}
