package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.review.Review;

/** The search weighs flames on probes and spyholes, and fittings whose turn is not stated, as the rules do. */
class FlameOnFittingTermTest {
    /**
     * By hand: a cone of half angle 11° from a hole of 30 mm is 15 + 200 tan 11° = 53.88 mm wide 200 mm up. The spyhole's middle stands
     * in the wall line 215.9 mm behind the axis of the octagon; from an inlet 100 mm behind it that is 115.9 mm away, and from the cone's side
     * (115.9 − 53.88) cos 11° = 60.88 mm, less 12 mm.
     */
    @Test
    void clearanceByHand() {
        TestKiln k = TestKiln.polygon(8, "431.8 mm");
        k.fitting("spyhole", FittingKind.SPYHOLE, On.WALL, 1, at(0, 200), 24);
        Term t = floor(k.build(), 0, 100);
        assertThat(t.measured()).isCloseTo(48.88, within(0.01));
        assertThat(t.margin()).isGreaterThan(1);
        assertThat(floor(k.build(), 0, 160).margin()).isLessThan(1);
    }

    private static Term floor(Design d, double x, double y) {
        Site site = new Site(
                KilnGeometry.of(d), On.FLOOR, true, new LayoutLimits(d, LimitTable.load()), 30, 2, 0, Set.of());
        return site.terms(new double[] {x}, new double[] {y}, List.of("inlet")).stream()
                .filter(t -> t.rule().equals("flame-on-fitting"))
                .findFirst()
                .orElseThrow();
    }

    /** Over scattered places the term is under 1 exactly where the rule cautions. */
    @Test
    void cautionsWhereTheRuleDoes() {
        int met = 0;
        int clear = 0;
        for (int seed = 0; seed < 60; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            double x = 300 * (r.nextDouble() - 0.5);
            double y = 300 * (r.nextDouble() - 0.5);
            double u = 100 * (r.nextDouble() - 0.5);
            double v = 100 + 200 * r.nextDouble();
            TestKiln k = TestKiln.polygon(8, "431.8 mm");
            k.fitting("a", FittingKind.SPYHOLE, On.WALL, 1, at(0, 200), 24);
            k.fitting("b", FittingKind.SPYHOLE, On.WALL, 5, at(10, 180), 24);
            boolean wall = seed % 2 == 0;
            Design d = (wall ? k.wallInlet("inlet", 1, u, v, 30) : k.inlet("inlet", x, y, 30)).build();
            Set<String> rule = new RuleBook(LimitTable.load())
                    .check(Review.geometryOnly(d), Set.of(RuleBook.Section.GEOMETRY)).findings().stream()
                            .filter(f -> f.rule().equals("flame-on-fitting"))
                            .map(f -> f.parts().get(1))
                            .collect(java.util.stream.Collectors.toSet());
            LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
            KilnGeometry kiln = KilnGeometry.of(d);
            WallSite site = new WallSite(kiln, limits, 30, 2, Set.of());
            List<Term> terms = wall
                    ? site.terms(List.of(site.hole("inlet", 1, u, v)))
                    : new Site(kiln, On.FLOOR, true, limits, 30, 2, 0, Set.of())
                            .terms(new double[] {x}, new double[] {y}, List.of("inlet"));
            Set<String> ours = terms.stream()
                    .filter(t -> t.rule().equals("flame-on-fitting") && t.margin() <= 1)
                    .map(t -> t.parts().get(1))
                    .collect(java.util.stream.Collectors.toSet());
            assertThat(ours).as("seed %d", seed).isEqualTo(rule);
            met += rule.size();
            clear += 2 - rule.size();
        }
        assertThat(met).isGreaterThan(5);
        assertThat(clear).isGreaterThan(5);
    }

    /** The front-loader's gate probe and its hinges without a turn: no proposal meets the one or leaves the other unchecked. */
    @Test
    void everyProposalOfTheFrontLoaderIsWholeAndOffTheProbes() throws Exception {
        Design d = DesignFile.read(Path.of("templates", "front-loader-18.json")).design();
        Proposals p = Proposer.propose(d, Wishes.none(), Progress.none());
        assertThat(p.best()).hasSizeGreaterThan(1);
        assertThat(p.tried()).contains("Tried: inlets in the").contains("wall");
        for (Proposal q : p.best()) {
            assertThat(q.check().drilling()).isNotEqualTo(Verdict.INCOMPLETE);
            assertThat(q.check().findings())
                    .noneMatch(f -> f.rule().equals("flame-on-fitting") && f.severity() == Severity.CAUTION);
            for (String rule : PlaceCautions.of(q.check())) {
                assertThat(q.reason()).contains(rule);
            }
        }
    }
}
