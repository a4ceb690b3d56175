package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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

    /**
     * Two inlets and one flue against two and two. The inlets alike and the flues not: the mean of 0 and 1. With the inlets turned away too both are 1.
     * One inlet alone moved leaves one pair, 2 of 4 inlets: the mean of 1/2 and 1.
     */
    @Test
    void howMuchOfTheDrillingGoesElsewhere() {
        Sizes.Choice one = new Sizes.Choice(2, 25, 1, 38, null);
        Sizes.Choice two = new Sizes.Choice(2, 25, 2, 29, null);
        Spots pair = at(0, -67, 0, 67);
        Combination first = new Combination(one, pair, at(0, 0), 9, 9, 0);
        Spots flues = at(-58, -53, 58, 53);
        Combination sameInlets = new Combination(two, at(0, 67, 0, -67), flues, 9, 9, 0);
        assertThat(sameInlets.elsewhere(first)).isEqualTo(0.5);
        assertThat(first.elsewhere(sameInlets)).isEqualTo(sameInlets.elsewhere(first));
        assertThat(Choosing.novelty(sameInlets, first, Twins.NONE)).isEqualTo(Choosing.Novelty.ARRANGEMENT);
        Combination turned = new Combination(two, at(48, -48, -48, 48), flues, 9, 9, 0);
        assertThat(turned.elsewhere(first)).isEqualTo(1);
        assertThat(Choosing.novelty(turned, first, Twins.NONE)).isEqualTo(Choosing.Novelty.CLEAR);
        Combination half = new Combination(two, at(0, -67, 60, 67), flues, 9, 9, 0);
        assertThat(half.elsewhere(first)).isEqualTo(0.75);
        assertThat(Reasons.shared(sameInlets, List.of(turned, first)))
                .isEqualTo(
                        " Same flues as proposal 1; only the inlets differ. Same inlets as proposal 2; only the flues differ.");
        assertThat(Reasons.shared(turned, List.of(sameInlets)))
                .isEqualTo(" Same flues as proposal 1; only the inlets differ.");
        assertThat(Reasons.shared(turned, List.of(first))).isEmpty();
        Combination near = new Combination(two, at(0, -60, 0, 67), at(0, -90, 0, 90), 9, 9, 0);
        assertThat(Reasons.shared(near, List.of(first))).isEqualTo(" Inlets within 7 mm of those of proposal 1.");
    }

    /** Sizes hold both at 0.2: the room of the places decides, in rank, width and gain; evenness costs no room for nothing. */
    @Test
    void whereSizesHoldTheMarginPlacesDecide() {
        Combination tight = sized(true, 0.21, 0.3, 0.2);
        Combination roomy = sized(false, 1.5, 1.6, 0.2);
        Combination even = sized(true, 1.45, 1.6, 0.2);
        assertThat(roomy.margin()).isEqualTo(tight.margin()).isEqualTo(0.2);
        assertThat(roomy.room()).isEqualTo(1.5);
        assertThat(roomy.rank()).isGreaterThan(tight.rank());
        assertThat(even.rank()).isGreaterThan(roomy.rank());
        assertThat(roomy.gainsOn(tight)).isTrue();
        assertThat(tight.evenAndAsGoodAs(roomy)).isFalse();
        assertThat(Combination.WIDTH.compare(roomy, even)).isPositive();
        assertThat(Choosing.keeps(tight, roomy)).isFalse();
        assertThat(Choosing.keeps(even, roomy)).isTrue();
        // no room of places outweighs a margin
        assertThat(sized(false, 0.22, 0.22, 0.203).rank())
                .isGreaterThan(sized(true, 9, 9, 0.2).rank());
    }

    /** Inlets hold both at 0.23: the flues' room decides; where no rule cautions any more it counts for nothing. */
    @Test
    void whereOneRoleIsHeldDownTheOtherDecides() {
        Combination near = sized(false, 0.23, 0.6, 9);
        Combination far = sized(false, 0.23, 1.3, 9);
        assertThat(far.easier(near)).isTrue();
        assertThat(near.easier(far)).isFalse();
        assertThat(far.rank()).isGreaterThan(near.rank());
        assertThat(Combination.WIDTH.compare(far, near)).isPositive();
        assertThat(Combination.widest(List.of(sized(false, 0.2301, 0.6, 9), far)))
                .isSameAs(far);
        assertThat(Combination.widest(List.of(sized(false, 0.25, 0.6, 9), far))).isNotSameAs(far);
        assertThat(sized(true, 1.5, 1.6, 9).rank())
                .isEqualTo(sized(true, 1.5, 3, 9).rank());
    }

    private static Combination sized(boolean even, double inlets, double flues, double sizes) {
        Spots in = new Spots("placed one by one", even, new double[] {-90, 90}, new double[2], inlets);
        Spots out = new Spots("where it has most room", even, new double[] {0}, new double[] {0}, flues);
        return new Combination(new Sizes.Choice(2, 35, 1, 40, null), in, out, 9, sizes, 0);
    }

    /** One hole is told of as one. */
    @Test
    void oneHoleIsToldAsOne() {
        Sizes.Choice c = new Sizes.Choice(1, 35, 1, 40, null);
        Combination first = new Combination(c, at(0, 0), at(0, 0), 9, 9, 0);
        Combination flueMoved = new Combination(c, at(0, 3), at(90, 0), 9, 9, 0);
        assertThat(Reasons.shared(flueMoved, List.of(first))).isEqualTo(" Inlet within 3 mm of that of proposal 1.");
        Combination both = new Combination(c, at(0, 90), at(90, 0), 9, 9, 0);
        assertThat(Reasons.shared(both, List.of(flueMoved, first)))
                .isEqualTo(
                        " Same flue as proposal 1; only the inlet differs. Inlet and flue elsewhere than in proposal 2.");
        assertThat(Words.figure(1, "flue", "flues")).isEqualTo("1 flue");
        assertThat(Words.figure(2, "flue", "flues")).isEqualTo("2 flues");
    }

    private static Spots at(double... xy) {
        double[] x = new double[xy.length / 2];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = xy[2 * i];
            y[i] = xy[2 * i + 1];
        }
        return new Spots("family of " + xy[0] + " " + xy[1], true, x, y, 2);
    }

    private static Combination moved(Sizes.Choice c, double mm, Spots flue) {
        Spots in = new Spots("where it has most room", false, new double[] {mm}, new double[] {0}, 3);
        return new Combination(c, in, flue, 9, 9, 0);
    }
}
