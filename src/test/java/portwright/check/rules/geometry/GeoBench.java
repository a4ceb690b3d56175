package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.check.rules.GeometryRules;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.review.Review;

/** Runs the geometry rules on a design made for a test. */
final class GeoBench {
    static final double MICROMETRE = 1e-3;
    private static final LimitTable LIMITS = LimitTable.load();
    private static final RuleBook BOOK = new RuleBook(LIMITS);

    private GeoBench() {}

    static CheckResult check(Design design) {
        return BOOK.check(Review.geometryOnly(design), Set.of(RuleBook.Section.GEOMETRY));
    }

    static List<Finding> of(TestKiln kiln, String rule) {
        return check(kiln.build()).findings().stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
    }

    static List<Finding> of(TestKiln kiln, String rule, Severity severity) {
        return of(kiln, rule).stream().filter(f -> f.severity() == severity).toList();
    }

    /** What one rule alone finds. */
    static List<Finding> alone(TestKiln kiln, String rule) {
        Design design = kiln.build();
        Findings out = new Findings();
        GeometryRules.list().stream()
                .filter(r -> r.id().equals(rule))
                .findFirst()
                .orElseThrow()
                .check(Review.geometryOnly(design), new LimitsInForce(LIMITS, design), out);
        return out.findings();
    }

    /** What a rule lacks. */
    static List<NotChecked> lacks(TestKiln kiln, String rule) {
        return check(kiln.build()).notChecked().stream()
                .filter(n -> n.rule().equals(rule))
                .toList();
    }

    /** Passes at the limit and inside it, fires a micrometre beyond, with these parts. The kiln is made from the room left, negative beyond. */
    static Finding edge(
            String rule, Severity severity, Forbids forbids, DoubleFunction<TestKiln> kiln, String... parts) {
        assertThat(of(kiln.apply(0), rule, severity)).as("at the limit").isEmpty();
        assertThat(of(kiln.apply(0.5), rule, severity))
                .as("half a millimetre inside")
                .isEmpty();
        List<Finding> beyond = of(kiln.apply(-MICROMETRE), rule, severity);
        assertThat(beyond).as("a micrometre beyond").hasSize(1);
        Finding f = beyond.get(0);
        assertThat(f.parts()).containsExactly(parts);
        assertThat(f.forbids()).isEqualTo(forbids);
        assertThat(f.message()).isNotBlank();
        assertThat(f.remedy()).isNotBlank();
        assertThat(f.source()).isNotNull();
        return f;
    }
}
