package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.file.Starters;
import portwright.review.FireReview;
import portwright.review.Review;

/** What a proposal is told to gain or give up against the layout that the design has. */
class OwnLayoutTest {
    private static final Term TERM = new Term("joint-sliver", List.of("flue"), 32, Double.NaN, 20, "mm", 1.62);

    private static Proposal proposal(double margin, Double air) {
        return new Proposal(List.of(), null, margin, TERM, List.of(), air, "", "", "", Map.of(), null);
    }

    @Test
    void lessAirIsNotLeftUntold() {
        OwnLayout own = new OwnLayout(TERM, 1.46, List.of());
        assertThat(own.beside(proposal(1.68, 1.02)))
                .isEqualTo(
                        "Your own layout beside it: margin 1.62, lambda 1.46 at the low end; this one 1.68 and 1.02: less air to spare.");
        assertThat(own.beside(proposal(1.62, 1.6))).endsWith("this one 1.62 and 1.6: more air to spare.");
    }

    @Test
    void withTheSameAirTheMarginStandsAlone() {
        assertThat(new OwnLayout(TERM, 1.46, List.of()).beside(proposal(1.7, 1.46)))
                .isEqualTo("Your own layout beside it: margin 1.62; this one 1.7.");
        assertThat(new OwnLayout(TERM, null, List.of()).beside(proposal(1.7, 1.46)))
                .isEqualTo("Your own layout beside it: margin 1.62; this one 1.7.");
    }

    @Test
    void nothingIsToldOfWhatIsAlikeOrDoesNotPass() {
        assertThat(new OwnLayout(TERM, 1.46, List.of()).beside(proposal(1.62, 1.46)))
                .isEmpty();
        assertThat(new OwnLayout(TERM, 1.46, List.of("soot")).beside(proposal(1.7, 1.02)))
                .isEmpty();
    }

    /** A starter has no stop, and its air is the 5 % end that burn tells with the damper open. */
    @Test
    void aStarterIsWeighedAsItsProposals() {
        var d = Starters.find("octagon-17").orElseThrow().read().design();
        OwnLayout own = Proposer.own(d).orElseThrow();
        FireReview fire = Review.of(d).fire();
        assertThat(own.passes()).isTrue();
        assertThat(own.lambdaLow())
                .isEqualTo(Math.min(
                        fire.band(fire.top().getAsDouble(), 1).lambda().low(),
                        fire.band(fire.gasOn().getAsDouble(), 1).lambda().low()));
    }

    @Test
    void holesOfUnlikeSizesAreNotCompared() {
        assertThat(Proposer.own(TestKiln.polygon(8, "17 in")
                        .inlet("a", -80, 0, 30)
                        .inlet("b", 80, 0, 35)
                        .flue("c", 0, 0, 40)
                        .build()))
                .isEmpty();
    }
}
