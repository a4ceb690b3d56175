package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Verdict;
import portwright.data.Table;
import portwright.file.ReadResult;

/** Each hazard that these rules compute is caught by the rule meant for it, and its safe twin is not. */
class HazardSweepTest {

    private static List<Table.Row> rows() {
        return Table.resource("/portwright/check/hazard_sweep.csv").rows();
    }

    @TestFactory
    List<DynamicTest> caughtByTheRightRule() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Table.Row r : rows()) {
            tests.add(DynamicTest.dynamicTest(
                    r.text("hazard") + " " + r.text("rule") + " line " + r.line(), () -> one(r)));
        }
        return tests;
    }

    private static void one(Table.Row r) {
        ObjectNode base = TestDesigns.base(r.text("base"));
        CheckResult unsafe = TestDesigns.check(TestDesigns.edit(base, r.text("unsafe")));
        assertThat(hits(unsafe, r)).as("unsafe design").isNotEmpty();
        assertThat(hits(unsafe, r)).allSatisfy(f -> {
            assertThat(f.remedy()).isNotBlank();
            assertThat(f.source()).isNotNull();
            assertThat(f.message()).doesNotContain("NaN").doesNotContain("Infinity");
        });
        List<String> stops = TestDesigns.stops(unsafe);
        String also = r.text("also", "");
        if (r.text("severity").equals("stop")) {
            assertThat(stops).contains(r.text("rule"));
            assertThat(unsafe.lighting()).isEqualTo(Verdict.STOP);
        }
        if (!also.equals("*")) {
            Set<String> allowed = new LinkedHashSet<>(List.of(also.split(" ")));
            if (r.text("severity").equals("stop")) {
                allowed.add(r.text("rule"));
            }
            assertThat(stops).as("no other rule stops it").allMatch(allowed::contains);
        }
        CheckResult twin = TestDesigns.check(TestDesigns.edit(base, r.text("twin")));
        assertThat(hits(twin, r)).as("safe twin").isEmpty();
        assertThat(TestDesigns.stops(twin)).as("stops of the twin").isEmpty();
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

    /**
     * Deletes every field of every unsafe design in turn. A stop may turn into "incomplete", which refuses the card as well;
     * it never turns into a caution or a clear verdict, and no other verdict gets better.
     */
    @Test
    @Tag("slow")
    void leavingAnythingOutNeverReassures() {
        assertThat(deletions(1)).isGreaterThan(2000);
    }

    /** The same for every sixth field, a different sixth for each design. */
    @Test
    void leavingSomethingOutNeverReassures() {
        assertThat(deletions(6)).isGreaterThan(300);
    }

    private static int deletions(int every) {
        int tried = 0;
        int turn = 0;
        Set<String> done = new LinkedHashSet<>();
        for (Table.Row r : rows()) {
            ObjectNode unsafe = TestDesigns.edit(TestDesigns.base(r.text("base")), r.text("unsafe"));
            if (!done.add(unsafe.toString())) {
                continue;
            }
            Verdict before = TestDesigns.check(unsafe).lighting();
            for (String path : paths(unsafe, "")) {
                if (++turn % every != 0) {
                    continue;
                }
                ObjectNode less = TestDesigns.edit(unsafe, path + "=-");
                ReadResult read = TestDesigns.read(less);
                if (!read.ok()) {
                    continue; // refused with an error at its line
                }
                tried++;
                Verdict after = TestDesigns.check(read.design()).lighting();
                boolean noBetter =
                        after.ordinal() <= before.ordinal() || before == Verdict.STOP && after == Verdict.INCOMPLETE;
                assertThat(noBetter)
                        .as("line %d without %s: %s becomes %s", r.line(), path, before, after)
                        .isTrue();
            }
        }
        return tried;
    }

    private static List<String> paths(JsonNode node, String at) {
        List<String> out = new ArrayList<>();
        if (node.isObject()) {
            node.fieldNames().forEachRemaining(f -> {
                String path = at.isEmpty() ? f : at + "." + f;
                out.add(path);
                out.addAll(paths(node.get(f), path));
            });
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                out.addAll(paths(node.get(i), at + "[" + i + "]"));
            }
        }
        return out;
    }
}
