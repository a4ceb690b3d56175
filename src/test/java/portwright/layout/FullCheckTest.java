package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.Verdict;

/** What the whole rule book stops never stands before or beside what it passes. */
class FullCheckTest {
    @Test
    void searchesOnUntilOnePasses() {
        List<Combination> many = combinations(30);
        Proposals p = run(many, List.of(), c -> c.choice().flueMm() >= 28);
        assertThat(p.best()).hasSize(2);
        assertThat(p.best()).allMatch(q -> q.check().findings().isEmpty());
        assertThat(p.impossible()).isEmpty();
    }

    @Test
    void otherSizesAreTriedWhereFireStopsAll() {
        Proposals p = run(
                combinations(3), combinations(6).subList(4, 6), c -> c.choice().flueMm() >= 5);
        assertThat(p.best()).hasSize(1);
        assertThat(p.best().get(0).check().findings()).isEmpty();
    }

    @Test
    void whereNonePassesTheRuleIsNamed() {
        Proposals p = run(combinations(5), List.of(), c -> false);
        assertThat(p.best()).isNotEmpty();
        assertThat(p.impossible()).singleElement().satisfies(i -> {
            assertThat(i.rule()).isEqualTo("clean-burn");
            assertThat(i.words()).contains("smoke").contains("less gas");
        });
    }

    /** A stop that no place cures, such as soot, still decides which comes first, however wide the others are. */
    @Test
    void fewerStopsOfAnyRuleComeFirst() {
        Proposals p = stopped(combinations(30), List.of(), c -> c.choice().flueMm() < 20 ? List.of("soot") : List.of());
        assertThat(p.impossible()).isEmpty();
        assertThat(p.best()).hasSize(3);
        assertThat(p.best().get(0).check().findings()).isEmpty();
        assertThat(p.widest().check().findings()).isEmpty();
        assertThat(p.best()).allSatisfy(q -> assertThat(q.reason()).doesNotContain("topped by"));
    }

    @Test
    void twoStopsComeAfterOne() {
        Proposals p = stopped(
                combinations(4),
                List.of(),
                c -> c.choice().flueMm() == 3 ? List.of("gas-load") : List.of("gas-load", "soot"));
        assertThat(p.best().get(0).reason())
                .contains("Still stopped by gas-load; no layout that was tried has fewer stops.");
        assertThat(p.best().get(1).reason())
                .contains("Still stopped by gas-load, soot, more than the first.")
                .doesNotContain("as large as any");
    }

    /** The same places with a flue that another saw cuts. */
    @Test
    void anotherFlueIsTriedWhereAllMakeSoot() {
        List<Combination> first = combinations(1);
        Combination c = first.get(0);
        Combination larger = new Combination(new Sizes.Choice(1, 30, 1, 50, null), c.inlets(), c.flues(), 9, 9, 0);
        Proposals p = stopped(first, List.of(larger), o -> o.choice().flueMm() == 50 ? List.of() : List.of("soot"));
        assertThat(p.best().get(0).check().findings()).isEmpty();
    }

    /** Where fewer than three would be shown others are asked for, each beside those before it; what is still missing is told. */
    @Test
    void layoutsElsewhereAreAskedForWhereThreeAreNotFound() {
        List<Combination> all = combinations(5);
        List<Integer> asked = new ArrayList<>();
        Proposals p = new FullCheck(c -> c, c -> proposal(List.of()), Progress.none(), Twins.NONE)
                .run(all.subList(0, 1), instead -> List.of(), c -> List.of(), List.of(), shown -> {
                    asked.add(shown.size());
                    return all.subList(shown.size(), shown.size() + 1);
                });
        assertThat(asked).containsExactly(1, 2);
        assertThat(p.best()).hasSize(3);
        assertThat(p.few()).isEmpty();
        Proposals two = run(all.subList(0, 2), List.of(), c -> true);
        assertThat(two.few())
                .isEqualTo(
                        "Only two are shown: no other was found that puts inlets and flues both clearly elsewhere with a margin of at least 1.");
    }

    private static Proposals run(List<Combination> first, List<Combination> resized, Predicate<Combination> passes) {
        return stopped(first, resized, c -> passes.test(c) ? List.of() : List.of("clean-burn"));
    }

    private static Proposals stopped(
            List<Combination> first, List<Combination> resized, Function<Combination, List<String>> rules) {
        return new FullCheck(c -> c, c -> proposal(rules.apply(c)), Progress.none(), Twins.NONE)
                .run(first, (Set<Sizes.Choice> instead) -> resized, c -> List.of(), List.of(), shown -> List.of());
    }

    /** Each with flues of another size in another place, so that all differ clearly. */
    private static List<Combination> combinations(int n) {
        List<Combination> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Sizes.Choice c = new Sizes.Choice(1, 30, 1, i, null);
            Spots in = new Spots("in the middle", true, new double[] {500 * i}, new double[] {0}, 3 - 0.05 * i);
            out.add(new Combination(c, in, in, 9, 9, 0));
        }
        return out;
    }

    private static Proposal proposal(List<String> rules) {
        List<Finding> findings = rules.stream().map(FullCheckTest::stop).toList();
        Verdict v = rules.isEmpty() ? Verdict.CLEAR : Verdict.STOP;
        return new Proposal(
                List.of(),
                null,
                1,
                null,
                List.of(),
                null,
                "",
                "",
                "",
                java.util.Map.of(),
                new CheckResult("", Verdict.CLEAR, v, findings, List.of(), List.of(), null));
    }

    private static Finding stop(String rule) {
        return new Finding(
                rule,
                Severity.STOP,
                Forbids.LIGHTING,
                List.of("flue"),
                null,
                null,
                "It smokes: smoke.",
                "Use less gas.",
                null,
                false,
                List.of());
    }
}
