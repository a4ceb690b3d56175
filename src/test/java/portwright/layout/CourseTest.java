package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.On;

/** How far a search has come never goes back and names what it is at. */
class CourseTest {
    private final List<Double> shares = new ArrayList<>();
    private final List<String> words = new ArrayList<>();

    @Test
    void aLaterStageTakesFromWhatIsLeft() {
        Course c = new Course(hearer());
        c.stage(0.5, "first");
        c.at(1, "first");
        c.stage(0.5, "second");
        c.at(0, "second");
        c.at(5, "second");
        assertThat(shares).isSorted().allMatch(s -> s < 1);
        assertThat(words).containsSubsequence("first", "second");
    }

    /** Sizes are tried anew, smaller ones too, and then every rule is left out. */
    @Test
    void whereNothingPassesItNeverGoesBack() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (int i = -8; i <= 8; i++) {
            k.slabElement("row " + (i + 9), On.FLOOR, 14, 16, TestKiln.at(-240, i * 30), TestKiln.at(240, i * 30));
        }
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 1, null, null, On.FLOOR), hearer());
        assertThat(p.best()).isEmpty();
        assertThat(p.impossible()).isNotEmpty();
        assertThat(shares).isSorted().hasSizeGreaterThan(5);
        assertThat(words).anyMatch(w -> w.contains("takes all room"));
    }

    private Progress hearer() {
        return new Progress() {
            @Override
            public void at(double share, String what) {
                shares.add(share);
                words.add(what);
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }
}
