package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;

/** The layouts of the starter kilns against what is proposed for the same holes. */
class StarterProposalsTest {
    @Test
    void aStarterIsAsGoodAsItsProposals() throws IOException {
        assertThat(asGood("octagon-17")).isPositive();
        assertThat(asGood("front-loader-18")).isPositive();
    }

    /**
     * No starter kiln has an even layout that the search betters by more than 2 % with the same holes and no more cautions. Uneven places gain more in
     * octagon-17 (15 %), hexagon-27cm (6 %) and six-corner-55cm (4 %); the starters keep even ones, which heat evenly and are easy to mark out.
     */
    @Tag("slow")
    @Test
    void startersAreAsGoodAsTheirProposals() throws IOException {
        Set<String> nothingToCompare = new TreeSet<>();
        for (String name : Starters.names()) {
            if (asGood(name) == 0) {
                nothingToCompare.add(name);
            }
        }
        assertThat(nothingToCompare)
                .as("whose proposals are all uneven or bring a caution more")
                .containsExactly("decagon-23", "decagon-56cm", "oval-23");
    }

    /** How many proposals were compared. */
    private static int asGood(String name) throws IOException {
        Design d = DesignFile.read(Path.of("templates", name + ".json")).design();
        Term own = Proposer.own(d).orElseThrow();
        List<Port> in = d.ports().stream().filter(p -> p.role() == Role.INLET).toList();
        List<Port> out = d.ports().stream().filter(p -> p.role() == Role.FLUE).toList();
        Wishes same = new Wishes(
                in.size(),
                out.size(),
                in.get(0).diameter().mm(),
                out.get(0).diameter().mm());
        long cautions = cautions(new RuleBook(LimitTable.load()).check(Review.of(d)));
        List<Proposal> best = Proposer.propose(d, same, Progress.none()).best();
        assertThat(best).as(name).isNotEmpty();
        int compared = 0;
        for (Proposal p : best) {
            boolean uneven =
                    p.arrangement().contains("one by one") || p.arrangement().contains("most room");
            if (!uneven && cautions(p.check()) <= cautions) {
                compared++;
                assertThat(own.margin())
                        .as("%s: %s %.3f", name, p.arrangement(), p.margin())
                        .isGreaterThan(0.98 * p.margin());
            }
        }
        return compared;
    }

    private static long cautions(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.severity() == Severity.CAUTION)
                .count();
    }
}
