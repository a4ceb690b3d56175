package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.review.Review;

/**
 * Every kiln gets a layout that the rule book passes, or a rule that takes away every place: then a dense grid finds no place either, and finds one
 * without that rule.
 */
class EveryKilnTest {
    @Test
    void someKilns() {
        hold(IntStream.of(2, 143));
    }

    @Tag("slow")
    @Test
    void twoHundredKilns() {
        hold(IntStream.range(0, 200));
    }

    private static void hold(IntStream seeds) {
        List<String> wrong = new ArrayList<>();
        seeds.forEach(seed -> {
            Design d = SomeKilns.of(seed).build();
            Wishes wishes = SomeKilns.wishes(seed);
            Proposals p = Proposer.propose(d, wishes, Progress.none());
            List<String> here = p.best().isEmpty() ? impossible(d, wishes, p) : stops(p);
            if (!p.best().isEmpty()
                    && p.best().get(0).ports().stream().anyMatch(o -> o.on() == On.WALL)
                    && new Grid(d, wishes).fits(Set.of(), false)) {
                here.add("inlets in the wall though a grid finds a place in the floor");
            }
            here.forEach(w -> wrong.add("seed " + seed + ": " + w));
        });
        assertThat(wrong).isEmpty();
    }

    /** Stops of the whole geometry section in what was proposed. */
    private static List<String> stops(Proposals p) {
        Set<String> out = new TreeSet<>();
        if (!p.impossible().isEmpty()) {
            out.add("named " + p.impossible() + " beside proposals");
        }
        p.best()
                .forEach(q -> new RuleBook(LimitTable.load())
                        .check(Review.geometryOnly(q.design()), Set.of(RuleBook.Section.GEOMETRY)).findings().stream()
                                .filter(f -> f.severity() == Severity.STOP)
                                .forEach(f -> out.add(f.rule() + ": " + f.message())));
        return new ArrayList<>(out);
    }

    private static List<String> impossible(Design d, Wishes wishes, Proposals p) {
        List<String> out = new ArrayList<>();
        if (p.nearestMiss() == null || !p.nearestMiss().limiting().isStop()) {
            out.add("no nearest miss");
        }
        if (p.impossible().isEmpty()) {
            out.add("no rule named");
        }
        Grid grid = new Grid(d, wishes);
        if (grid.fits(Set.of(), true)) {
            out.add("a grid finds a place: " + p.impossible());
        }
        for (Proposals.Impossible i : p.impossible()) {
            if (i.alone() && !grid.fits(Set.of(i.rule()), true)) {
                out.add("no place on the grid without " + i.rule());
            }
        }
        Set<String> all = new TreeSet<>();
        p.impossible().forEach(i -> all.add(i.rule()));
        if (!grid.fits(all, true)) {
            out.add("no place on the grid without all of " + all);
        }
        return out;
    }

    /** The dense grid of one kiln, for every choice of holes that the wishes leave. */
    private static final class Grid {
        private final DenseGrid grid;
        private final SizeTerms sizes;
        private final List<Sizes.Choice> usual;
        private final List<Sizes.Choice> choices;

        Grid(Design d, Wishes wishes) {
            LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
            grid = new DenseGrid(d);
            sizes = new SizeTerms(d, KilnGeometry.of(d), limits);
            Sizes all = new Sizes(d, wishes, limits);
            usual = all.list();
            choices = Stream.concat(usual.stream(), all.smaller().stream().flatMap(List::stream))
                    .toList();
        }

        /** Whether any choice fits as if some rules were not there, with inlets in the floor; or, where asked, in the wall or smaller than usual. */
        boolean fits(Set<String> without, boolean wall) {
            return (wall ? choices : usual).stream().anyMatch(c -> fits(c, without, wall));
        }

        private boolean fits(Sizes.Choice c, Set<String> without, boolean wall) {
            return sizes.terms(c).stream().allMatch(t -> t.margin() >= 0 || without.contains(t.rule()))
                    && grid.slab(On.LID, c.flueMm(), c.flues(), without)
                    && (grid.slab(On.FLOOR, c.inletMm(), c.inlets(), without)
                            || wall && grid.wall(c.inletMm(), c.inlets(), without));
        }
    }
}
