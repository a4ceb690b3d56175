package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.On;
import portwright.review.Review;

/** Proposals pass the rules that a layout can pass; where there is none the rule that forbids it is named. */
class ProposerTest {
    private static final Wishes PAIRS = new Wishes(2, 2, 35.0, 38.0);
    private static final Set<String> NOT_BY_PORTS = Set.of("gas-load");

    @Test
    void randomKilns() {
        kilns(IntStream.of(1, 4));
    }

    @Tag("slow")
    @Test
    void twoHundredRandomKilns() {
        kilns(IntStream.range(0, 200));
    }

    @Test
    void randomKilnsWithBurners() {
        fired(6, 7);
    }

    @Tag("slow")
    @Test
    void twoHundredRandomKilnsWithBurners() {
        fired(0, 200);
    }

    /** No proposal has a stop of fire or clearance, unless all have; then the rules are named. */
    private static void fired(int from, int to) {
        int clean = 0;
        for (int seed = from; seed < to; seed++) {
            Wishes wishes = seed % 4 == 1 ? new Wishes(2, 2, 35.0, null) : new Wishes(2, null, null, null);
            Proposals p = Proposer.propose(SomeKilns.fired(seed), wishes, Progress.none());
            List<String> named =
                    p.impossible().stream().map(Proposals.Impossible::rule).toList();
            for (Proposal q : p.best()) {
                List<String> stops = stops(q);
                assertThat(stops.isEmpty())
                        .as("seed %d: %s, named %s", seed, stops, named)
                        .isEqualTo(named.isEmpty());
                clean += stops.isEmpty() ? 1 : 0;
            }
            if (!p.best().isEmpty() && !named.isEmpty()) {
                assertThat(named)
                        .as("seed %d", seed)
                        .containsExactlyInAnyOrderElementsOf(stops(p.best().get(0)));
            }
            if (p.best().isEmpty()) {
                assertThat(named).as("seed %d", seed).isNotEmpty();
                assertThat(p.nearestMiss().limiting().isStop())
                        .as("seed %d", seed)
                        .isTrue();
            }
        }
        assertThat(clean).isGreaterThan(to - from);
    }

    /** Stops of rules of geometry and fire that numbers, sizes or places of holes decide; how much gas a kiln bears is not one of them. */
    private static List<String> stops(Proposal p) {
        return new RuleBook(LimitTable.load())
                        .check(Review.of(p.design()), Set.of(RuleBook.Section.GEOMETRY, RuleBook.Section.FIRE))
                        .findings()
                        .stream()
                        .filter(f -> f.severity() == Severity.STOP && !NOT_BY_PORTS.contains(f.rule()))
                        .map(Finding::rule)
                        .distinct()
                        .toList();
    }

    private static void kilns(IntStream seeds) {
        int[] all = seeds.toArray();
        for (int seed : all) {
            Design d = SomeKilns.of(seed).build();
            Proposals p = Proposer.propose(d, SomeKilns.wishes(seed), Progress.none());
            for (Proposal q : p.best()) {
                CheckResult r = new RuleBook(LimitTable.load())
                        .check(Review.geometryOnly(q.design()), Set.of(RuleBook.Section.GEOMETRY));
                for (Finding f : r.findings()) {
                    assertThat(f.severity())
                            .as("seed %d: %s %s", seed, f.rule(), f.message())
                            .isNotEqualTo(Severity.STOP);
                    if (q.margin() >= 1 && f.severity() == Severity.CAUTION) {
                        assertThat(q.tightest().stream().map(Term::rule))
                                .as("seed %d: caution of %s that the margin does not see", seed, f.rule())
                                .doesNotContain(f.rule());
                    }
                }
                assertThat(q.check().findings())
                        .as("seed %d", seed)
                        .noneMatch(f -> f.rule().equals("flue-inlet-ratio") && f.severity() == Severity.STOP);
            }
            if (p.best().isEmpty()) {
                assertThat(p.impossible()).as("seed %d", seed).isNotEmpty();
                assertThat(p.nearestMiss()).as("seed %d", seed).isNotNull();
                assertThat(p.nearestMiss().limiting().isStop())
                        .as("seed %d", seed)
                        .isTrue();
            }
        }
    }

    @Test
    void sameAnswerTwice() {
        Design d = SomeKilns.of(3).build();
        assertThat(Proposer.propose(d, PAIRS, Progress.none()).best().get(0).ports())
                .isEqualTo(Proposer.propose(d, PAIRS, Progress.none())
                        .best()
                        .get(0)
                        .ports());
    }

    @Test
    void plainRoundKilnGetsASymmetricLayout() {
        Proposals p = Proposer.propose(TestKiln.polygon(8, "17 in").build(), PAIRS, Progress.none());
        var in =
                p.best().get(0).ports().stream().filter(x -> x.on() == On.FLOOR).toList();
        assertThat(in.get(0).at().xMm()).isEqualTo(-in.get(1).at().xMm());
        assertThat(in.get(0).at().yMm()).isEqualTo(-in.get(1).at().yMm());
        assertThat(p.best().get(0).margin()).isGreaterThan(1);
    }

    @Test
    void endsWhenTold() {
        AtomicInteger asked = new AtomicInteger();
        Proposals p = Proposer.propose(TestKiln.polygon(8, "17 in").build(), Wishes.none(), new Progress() {
            @Override
            public void at(double share, String words) {
                asked.incrementAndGet();
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        });
        assertThat(p.cancelled()).isTrue();
        assertThat(asked.get()).isLessThan(4);
    }

    @Test
    void wishesOutOfRangeAreRefused() {
        assertThatThrownBy(() -> new Wishes(0, null, null, null)).hasMessageContaining("1 to 16");
        assertThatThrownBy(() -> new Wishes(null, null, 500.0, null)).hasMessageContaining("200 mm");
    }
}
