package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which layouts are clearly different, and which goes first. */
class CombinationTest {
    @Test
    void aMirrorImageIsNoOtherProposal() {
        Sizes.Choice c = new Sizes.Choice(2, 35, 1, 40, null);
        Spots one = new Spots("as a pair across the middle", true, new double[] {-90, 90}, new double[] {-60, 60}, 1.5);
        Spots mirrored =
                new Spots("as a pair across the middle", true, new double[] {-90, 90}, new double[] {60, -60}, 1.5);
        Spots worse =
                new Spots("as a pair across the middle", true, new double[] {-90, 90}, new double[] {60, -60}, 1.3);
        Spots flue = new Spots("in the middle", true, new double[] {0}, new double[] {0}, 2);
        Combination a = new Combination(c, one, flue, 9, 9, 0);
        assertThat(new Combination(c, mirrored, flue, 9, 9, 0).clearlyDiffers(a))
                .isFalse();
        assertThat(new Combination(c, worse, flue, 9, 9, 0).clearlyDiffers(a)).isTrue();
        assertThat(new Combination(c, one, flue, 9, 9, 1).rank()).isLessThan(a.rank());
    }

    /** Holes of 35 mm moved by 13 mm overlap the old ones; by 36 mm they stand beside them. A number more is another layout anywhere. */
    @Test
    void holesThatOverlapTheOldOnesAreNoOtherProposal() {
        Sizes.Choice c = new Sizes.Choice(1, 35, 1, 40, null);
        Spots middle = new Spots("in the middle", true, new double[] {0}, new double[] {0}, 2);
        Combination first = new Combination(c, middle, middle, 9, 9, 0);
        assertThat(moved(c, 13, middle).clearlyDiffers(first)).isFalse();
        assertThat(moved(c, 36, middle).clearlyDiffers(first)).isTrue();
        Sizes.Choice two = new Sizes.Choice(1, 35, 2, 29, null);
        assertThat(moved(two, 0, middle).clearlyDiffers(first)).isTrue();
    }

    private static Combination moved(Sizes.Choice c, double mm, Spots flue) {
        Spots in = new Spots("where it has most room", false, new double[] {mm}, new double[] {0}, 3);
        return new Combination(c, in, flue, 9, 9, 0);
    }
}
