package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.NotChecked;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.review.Review;

/** One geometry rule asked by itself, and what it says taken apart. */
final class Alone {
    private static final LimitTable TABLE = LimitTable.load();

    /** What the rules of this section can forbid; all others forbid nothing. */
    private static final Map<String, Forbids> FORBIDS = Map.ofEntries(
            Map.entry("inside-chamber", Forbids.DRILLING),
            Map.entry("edge-distance", Forbids.DRILLING),
            Map.entry("port-spacing", Forbids.DRILLING),
            Map.entry("weakest-section", Forbids.DRILLING),
            Map.entry("element-clearance", Forbids.DRILLING),
            Map.entry("fitting-clearance", Forbids.DRILLING),
            Map.entry("post-in-flame", Forbids.LIGHTING),
            Map.entry("shelf-over-inlet", Forbids.LIGHTING),
            Map.entry("flame-path", Forbids.LIGHTING),
            Map.entry("flame-on-element", Forbids.LIGHTING),
            Map.entry("burner-room", Forbids.LIGHTING),
            Map.entry("burner-fit", Forbids.LIGHTING));

    private Alone() {}

    private static Forbids forbids(Rule rule) {
        return FORBIDS.getOrDefault(rule.id(), Forbids.NOTHING);
    }

    static Findings ask(Rule rule, Design design) {
        Findings out = new Findings();
        rule.check(Review.geometryOnly(design), new LimitsInForce(TABLE, design), out);
        return out;
    }

    static Findings ask(Rule rule, TestKiln kiln) {
        return ask(rule, kiln.build());
    }

    /** All that it finds, nothing left unchecked. */
    static List<Finding> all(Rule rule, TestKiln kiln) {
        Findings out = ask(rule, kiln);
        assertThat(out.notChecked()).isEmpty();
        return out.findings();
    }

    /** Its one finding, nothing left unchecked: a note forbids nothing. */
    static Finding one(Rule rule, TestKiln kiln, Severity severity, String... parts) {
        List<Finding> all = all(rule, kiln);
        assertThat(all).hasSize(1);
        is(all.get(0), rule, severity, parts);
        return all.get(0);
    }

    static void is(Finding f, Rule rule, Severity severity, String... parts) {
        assertThat(f.rule()).isNotEmpty().isEqualTo(rule.id());
        assertThat(f.severity()).isEqualTo(severity);
        assertThat(f.forbids()).isEqualTo(severity == Severity.NOTE ? Forbids.NOTHING : forbids(rule));
        assertThat(f.parts()).containsExactly(parts);
    }

    static void measures(Finding f, double value, double limit, String unit) {
        assertThat(f.measured().value()).isCloseTo(value, within(1e-9));
        assertThat(f.limit().value()).isCloseTo(limit, within(1e-9));
        assertThat(f.measured().unit()).isEqualTo(unit);
        assertThat(f.limit().unit()).isEqualTo(unit);
    }

    static void mm(Finding f, double value, double limit) {
        measures(f, value, limit, "mm");
    }

    static void measuresNothing(Finding f) {
        assertThat(f.measured()).isNull();
        assertThat(f.limit()).isNull();
        assertThat(f.limitSetByUser()).isFalse();
    }

    static void says(Finding f, String message, String remedy) {
        assertThat(f.message()).isEqualTo(message);
        assertThat(f.remedy()).isEqualTo(remedy);
    }

    /** Its source is that of this limit of the rule book, which the owner did not set. */
    static void by(Finding f, String limit) {
        assertThat(f.source())
                .isEqualTo(TABLE.find(f.rule(), limit).orElseThrow().source());
        assertThat(f.limitSetByUser()).isFalse();
    }

    static void mark(Finding f, Pt a, Pt b) {
        assertThat(f.marks()).hasSize(1);
        assertThat(f.marks().get(0).a().distance(a)).isLessThan(1e-9);
        assertThat(f.marks().get(0).b().distance(b)).isLessThan(1e-9);
    }

    static void silent(Rule rule, TestKiln kiln) {
        assertThat(all(rule, kiln)).isEmpty();
    }

    /** It finds nothing and lacks these, one report each, fields of one report apart by blanks. */
    static void lacks(Rule rule, TestKiln kiln, String... needs) {
        Findings out = ask(rule, kiln);
        assertThat(out.findings()).isEmpty();
        lacks(rule, out, needs);
    }

    static void lacks(Rule rule, Findings out, String... needs) {
        assertThat(out.notChecked())
                .containsExactlyElementsOf(Arrays.stream(needs)
                        .map(n -> new NotChecked(rule.id(), List.of(n.split(" ")), forbids(rule)))
                        .toList());
    }
}
