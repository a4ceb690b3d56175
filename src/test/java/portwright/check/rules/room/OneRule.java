package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.regex.Pattern;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.review.Known;
import portwright.review.Review;
import portwright.review.StepTime;
import portwright.review.SupplyReview;

/** One rule of this section asked alone, and what it says taken apart. */
final class OneRule {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])-?\\d+(?: \\d{3})*(?:\\.\\d+)?");

    private OneRule() {}

    static Review review(ObjectNode base, String edits) {
        return Review.of(TestDesigns.design(TestDesigns.edit(base, edits)));
    }

    static Findings check(Rule rule, Review review) {
        Design d = review.design();
        Findings out = new Findings();
        rule.check(review, new LimitsInForce(LimitTable.load(), d), out);
        return out;
    }

    /** Outdoors with small edits, and without a load, so that no forecast runs. */
    static Review plain(String edits) {
        return review(TestDesigns.outdoors(), "firing.load=-" + (edits.isEmpty() ? "" : " ; " + edits));
    }

    static Findings check(Rule rule, String edits) {
        return check(rule, plain(edits));
    }

    static Finding only(Findings out, Severity severity) {
        assertThat(out.findings()).hasSize(1);
        Finding f = out.findings().get(0);
        assertThat(f.severity()).isEqualTo(severity);
        assertThat(f.forbids()).isEqualTo(Forbids.LIGHTING);
        return f;
    }

    static Finding stop(Rule rule, String edits) {
        return only(check(rule, edits), Severity.STOP);
    }

    static Finding caution(Rule rule, String edits) {
        return only(check(rule, edits), Severity.CAUTION);
    }

    static void silent(Findings out) {
        assertThat(out.findings()).isEmpty();
        assertThat(out.notChecked()).isEmpty();
    }

    static void silent(Rule rule, String edits) {
        silent(check(rule, edits));
    }

    /** One report of what lacks, with just these fields. */
    static void lacks(Findings out, Rule rule, Forbids forbids, String... needs) {
        assertThat(out.notChecked()).singleElement().satisfies(n -> {
            assertThat(n.rule()).isEqualTo(rule.id());
            assertThat(n.forbids()).isEqualTo(forbids);
            assertThat(n.needs()).containsExactly(needs);
            assertThat(n.cause()).isEmpty();
        });
    }

    static void lacksAlone(Rule rule, String edits, String... needs) {
        Findings out = check(rule, edits);
        assertThat(out.findings()).isEmpty();
        lacks(out, rule, Forbids.LIGHTING, needs);
    }

    /** The figures of a sentence in their order; a thousand apart is one figure. */
    static List<Double> numbers(String sentence) {
        return NUMBER.matcher(sentence.replace('−', '-'))
                .results()
                .map(m -> Double.valueOf(m.group().replace(" ", "")))
                .toList();
    }

    /** A figure as people write it: three digits that count, no idle noughts. */
    static String three(double v) {
        return new BigDecimal(v).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }

    static String kg(double v) {
        return three(v) + " kg (" + three(v / 0.45359237) + " lb)";
    }

    static String celsius(long c) {
        return (c + " °C (" + Math.round(c * 1.8 + 32) + " °F)").replace('-', '−');
    }

    /** The same design with steps placed by hand: chamber and lengths as a forecast could have them. */
    static Review withSteps(Review r, List<StepTime> steps) {
        SupplyReview s = r.supply();
        SupplyReview with =
                new SupplyReview(s.burners(), Known.of(steps), s.bottled(), s.run(), s.mostKg(), s.timeUnproven());
        return new Review(r.design(), r.geometry(), r.fire(), with, r.room(), r.firing(), r.assumed());
    }
}
