package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RoomRules;
import portwright.data.Table;
import portwright.model.Design;

/** Each hazard that a rule computes is caught by the rule meant for it and by no weaker one, and its safe twin is not. */
class HazardSweepTest {

    private static final Set<String> ROOM =
            RoomRules.list().stream().map(Rule::id).collect(Collectors.toUnmodifiableSet());

    static List<Table.Row> rows() {
        return Table.resource("/portwright/check/hazard_sweep.csv").rows();
    }

    @TestFactory
    List<DynamicTest> caughtByTheRightRule() {
        return tests(r -> ROOM.contains(r.text("rule")) ? TestDesigns::check : TestDesigns::whole);
    }

    /** The same with the whole rule book over every row. */
    @TestFactory
    @Tag("slow")
    List<DynamicTest> caughtByTheRightRuleOfAll() {
        return tests(r -> TestDesigns::whole);
    }

    private static List<DynamicTest> tests(Function<Table.Row, Function<Design, CheckResult>> check) {
        return rows().stream()
                .map(r -> DynamicTest.dynamicTest(
                        r.text("hazard") + " " + r.text("rule") + " line " + r.line(), () -> one(r, check.apply(r))))
                .toList();
    }

    private static void one(Table.Row r, Function<Design, CheckResult> check) {
        ObjectNode base = TestDesigns.base(r.text("base"));
        CheckResult unsafe = check.apply(TestDesigns.design(TestDesigns.edit(base, r.text("unsafe"))));
        CheckResult twin = check.apply(TestDesigns.design(TestDesigns.edit(base, r.text("twin"))));
        assertThat(hits(unsafe, r)).as("unsafe design").isNotEmpty();
        assertThat(hits(unsafe, r)).allSatisfy(f -> {
            assertThat(f.remedy()).isNotBlank();
            assertThat(f.source()).isNotNull();
            assertThat(f.message()).doesNotContain("NaN").doesNotContain("Infinity");
            if (f.severity() == Severity.STOP) {
                assertThat(f.forbids() == Forbids.DRILLING ? unsafe.drilling() : unsafe.lighting())
                        .isEqualTo(Verdict.STOP);
            }
        });
        // what the unsafe design has and its twin has not is the intended finding: no other rule, and no weaker word of
        // the same rule
        Set<String> more = answers(unsafe);
        more.removeAll(answers(twin));
        more.removeIf(a -> List.of(r.text("also", "").split(" ")).contains(a.substring(0, a.indexOf(':'))));
        more.remove(r.text("rule") + ":" + r.text("severity"));
        assertThat(more).as("what else sets it apart from its twin").isEmpty();
        assertThat(hits(twin, r)).as("safe twin").isEmpty();
        assertThat(TestDesigns.stops(twin)).as("stops of the twin").isEmpty();
    }

    /** Rule and severity of every stop and caution. */
    private static Set<String> answers(CheckResult result) {
        return result.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .map(f -> f.rule() + ":" + f.severity().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Finding> hits(CheckResult result, Table.Row r) {
        return result.findings().stream()
                .filter(f -> f.rule().equals(r.text("rule"))
                        && f.severity().id().equals(r.text("severity"))
                        && f.message().contains(r.text("word")))
                .toList();
    }

    @Test
    void bothBasesLackNothingAndDoNotStop() {
        for (String name : List.of("outdoors", "studio")) {
            CheckResult r = TestDesigns.check(TestDesigns.base(name));
            assertThat(TestDesigns.lacking(r)).as(name).isEmpty();
            assertThat(r.lighting()).as(name).isEqualTo(Verdict.CAUTION);
        }
    }
}
