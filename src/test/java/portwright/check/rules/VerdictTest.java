package portwright.check.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.NotChecked;
import portwright.check.OwnLimit;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.review.Review;

/** The verdict's truth table as DEVELOPERS.md words it: stop, else incomplete, else caution, else clear, each for its own purpose. */
class VerdictTest {
    private static Finding finding(Severity severity, Forbids forbids) {
        return new Finding(
                "rule", severity, forbids, List.of("A"), Measure.mm(1), null, "is", "do", null, false, List.of());
    }

    private static Verdict drilling(List<Finding> findings, Forbids... unchecked) {
        return RuleBook.verdict(
                Forbids.DRILLING,
                findings,
                List.of(unchecked).stream()
                        .map(f -> new NotChecked("rule", List.of("field"), f))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "STOP,DRILLING,STOP",
        "STOP,LIGHTING,CLEAR",
        "CAUTION,DRILLING,CAUTION",
        "CAUTION,NOTHING,CAUTION",
        "CAUTION,LIGHTING,CLEAR",
        "NOTE,DRILLING,CLEAR",
        "NOTE,NOTHING,CLEAR"
    })
    void oneFinding(Severity severity, Forbids forbids, Verdict verdict) {
        assertThat(drilling(List.of(finding(severity, forbids)))).isEqualTo(verdict);
    }

    @Test
    void whatIsNotCheckedNeverClears() {
        assertThat(drilling(List.of())).isEqualTo(Verdict.CLEAR);
        assertThat(drilling(List.of(), Forbids.DRILLING)).isEqualTo(Verdict.INCOMPLETE);
        assertThat(drilling(List.of(), Forbids.LIGHTING)).isEqualTo(Verdict.CLEAR);
        assertThat(drilling(List.of(), Forbids.NOTHING)).isEqualTo(Verdict.CAUTION);
        Finding caution = finding(Severity.CAUTION, Forbids.DRILLING);
        assertThat(drilling(List.of(caution), Forbids.DRILLING)).isEqualTo(Verdict.INCOMPLETE);
        Finding stop = finding(Severity.STOP, Forbids.DRILLING);
        assertThat(drilling(List.of(caution, stop), Forbids.DRILLING)).isEqualTo(Verdict.STOP);
    }

    @Test
    void countsByPurpose() {
        CheckResult r = new CheckResult(
                "t",
                Verdict.STOP,
                Verdict.CAUTION,
                List.of(
                        finding(Severity.STOP, Forbids.DRILLING),
                        finding(Severity.STOP, Forbids.DRILLING),
                        finding(Severity.CAUTION, Forbids.LIGHTING),
                        finding(Severity.CAUTION, Forbids.NOTHING),
                        finding(Severity.NOTE, Forbids.NOTHING)),
                List.of(),
                List.of(),
                null);
        assertThat(r.count(Severity.CAUTION)).isEqualTo(2);
        assertThat(r.stops(Forbids.DRILLING)).isEqualTo(2);
        assertThat(r.stops(Forbids.LIGHTING)).isZero();
        assertThat(r.cautions(Forbids.DRILLING)).isEqualTo(1);
        assertThat(r.cautions(Forbids.LIGHTING)).isEqualTo(2);
        assertThat(r.ownLimits()).isEmpty();
    }

    private record Named(Set<Forbids> canForbid) implements Rule {
        @Override
        public String id() {
            return "named";
        }

        @Override
        public void check(Review review, Limits limits, Findings out) {
            out.lacks(this, "a", "b");
            out.lacks(this, "a", "b");
        }
    }

    @Test
    void lacksAreSaidOnceForEachPurpose() {
        Findings both = new Findings();
        new Named(Set.of(Forbids.DRILLING, Forbids.LIGHTING)).check(null, null, both);
        assertThat(both.notChecked())
                .containsExactlyInAnyOrder(
                        new NotChecked("named", List.of("a", "b"), Forbids.DRILLING),
                        new NotChecked("named", List.of("a", "b"), Forbids.LIGHTING));
        Findings none = new Findings();
        new Named(Set.of()).check(null, null, none);
        assertThat(none.notChecked()).containsExactly(new NotChecked("named", List.of("a", "b"), Forbids.NOTHING));
        Finding f = finding(Severity.NOTE, Forbids.NOTHING);
        none.add(f);
        assertThat(none.findings()).containsExactly(f);
    }

    @Test
    void words() {
        Finding f = finding(Severity.NOTE, Forbids.NOTHING).inWords(w -> w + "!");
        assertThat(f.message()).isEqualTo("is!");
        assertThat(f.remedy()).isEqualTo("do!");
        Finding silent = new Finding(
                "r", Severity.NOTE, Forbids.NOTHING, List.of(), null, null, "is", null, null, true, List.of());
        assertThat(silent.inWords(w -> w + "!").remedy()).isNull();
        assertThat(new OwnLimit("element-clearance", "limit", "30 mm", "25 mm").words())
                .isEqualTo("element-clearance, limit: 30 mm (rule book 25 mm)");
        assertThat(Forbids.NOTHING.id()).isNull();
        assertThat(Verdict.INCOMPLETE.id()).isEqualTo("incomplete");
        assertThat(Severity.CAUTION.id()).isEqualTo("caution");
        assertThat(RuleBook.rules())
                .extracting(Rule::id)
                .doesNotHaveDuplicates()
                .isNotEmpty();
    }
}
