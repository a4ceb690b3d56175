package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
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

/**
 * A starter takes up an even proposal that is over 0.5 % wider, as much as rounding may cost, and brings no further caution; one with other sizes of
 * holes only if it also takes a caution away, since smaller holes leave less air.
 */
class StarterProposalsTest {
    @Test
    void aStarterIsAsGoodAsItsProposals() throws IOException {
        assertThat(compared("octagon-17", false)).isPositive();
        assertThat(compared("hexagon-27cm", true)).isPositive();
    }

    @Tag("slow")
    @Test
    void startersAreAsGoodAsProposalsForTheirHoles() throws IOException {
        assertThat(nothingToCompare(false)).containsExactly("decagon-56cm", "oval-23", "six-corner-55cm");
    }

    @Tag("slow")
    @Test
    void startersAreAsGoodAsProposalsForOtherHoles() throws IOException {
        assertThat(nothingToCompare(true)).containsExactly("decagon-56cm", "six-corner-55cm");
    }

    /**
     * Why a starter keeps its holes where smaller ones would be over a tenth wider: that room is bought with air. Its own holes burn clean with much to
     * spare, the smaller ones just do, and no caution goes.
     */
    @Test
    void widerPlacesForSmallerHolesAreNotTakenUp() throws IOException {
        keepsItsAir("dodecagon-28");
    }

    @Tag("slow")
    @Test
    void widerPlacesForSmallerHolesAreNotTakenUpInTheOther() throws IOException {
        keepsItsAir("decagon-56cm");
    }

    private static void keepsItsAir(String name) throws IOException {
        Design d = DesignFile.read(Path.of("templates", name + ".json")).design();
        Wishes own = ownHoles(d);
        double air = new Fire(d).lambdaLow(own.inlets(), own.inletMm(), own.flues(), own.flueMm());
        Proposal first =
                Proposer.propose(d, Wishes.none(), Progress.none()).best().get(0);
        assertThat(first.margin())
                .isGreaterThan(1.1 * Proposer.own(d).orElseThrow().margin());
        assertThat(air).isGreaterThan(1.5);
        assertThat(first.lambdaLow()).isBetween(1.0, 1.2);
        assertThat(cautions(first.check()))
                .isGreaterThanOrEqualTo(cautions(new RuleBook(LimitTable.load()).check(Review.of(d))));
    }

    /** Starters whose proposals are all uneven or bring a caution more. */
    private static Set<String> nothingToCompare(boolean open) throws IOException {
        Set<String> out = new TreeSet<>();
        for (String name : Starters.names()) {
            if (compared(name, open) == 0) {
                out.add(name);
            }
        }
        return out;
    }

    /** How many proposals were compared; none may have to be taken up. */
    private static int compared(String name, boolean open) throws IOException {
        Design d = DesignFile.read(Path.of("templates", name + ".json")).design();
        double own = Proposer.own(d).orElseThrow().margin();
        long cautions = cautions(new RuleBook(LimitTable.load()).check(Review.of(d)));
        List<Proposal> best = Proposer.propose(d, open ? Wishes.none() : ownHoles(d), Progress.none())
                .best();
        assertThat(best).as(name).isNotEmpty();
        int compared = 0;
        for (Proposal p : best) {
            boolean uneven = Stream.of("one by one", "most room", "as they are").anyMatch(p.arrangement()::contains);
            long its = cautions(p.check());
            if (!uneven && its <= cautions) {
                compared++;
                boolean wider = own < (1 - SlabSearch.SYMMETRY_WORTH) * p.margin();
                assertThat(wider && (!open || its < cautions))
                        .as("%s %.3f: %s %.3f", name, own, p.arrangement(), p.margin())
                        .isFalse();
            }
        }
        return compared;
    }

    /** As many holes of the same sizes as a design has. */
    static Wishes ownHoles(Design d) {
        List<Port> in = d.ports().stream().filter(p -> p.role() == Role.INLET).toList();
        List<Port> out = d.ports().stream().filter(p -> p.role() == Role.FLUE).toList();
        return new Wishes(
                in.size(),
                out.size(),
                in.get(0).diameter().mm(),
                out.get(0).diameter().mm());
    }

    private static long cautions(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.severity() == Severity.CAUTION)
                .count();
    }
}
