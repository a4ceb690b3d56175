package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Verdict;
import portwright.data.Table;
import portwright.file.ReadResult;
import portwright.file.Starters;

/**
 * Fields with a default: written out or left out, a design has the same findings, and left out the verdict is no better. A leak area is no such field: the
 * area taken without one is a hairline joint, a stated one flows like an open hole.
 */
class DefaultsTest {
    private static final long SEED = 20260110;
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Object that holds the field, by its path without numbers, and the field with what its absence means. */
    private static final Map<String, Map<String, String>> DEFAULTS = Map.ofEntries(
            Map.entry("kiln.plan", Map.of("turn", "\"0 deg\"")),
            Map.entry("kiln", Map.of("lossFactor", "1.25")),
            Map.entry("kiln.floor", Map.of("overhang", "\"0 in\"")),
            Map.entry("kiln.lid", Map.of("overhang", "\"0 in\"")),
            Map.entry("kiln.elements[].groove", Map.of("slope", "\"0 deg\"")),
            Map.entry("kiln.fittings[]", Map.of("turn", "\"0 deg\"")),
            Map.entry("shelves[]", Map.of("at", "[\"0 in\",\"0 in\"]")),
            Map.entry("drilling", Map.of("oversize", "\"2 mm\"")),
            Map.entry("damper", Map.of("open", "\"100 %\"")),
            Map.entry("supply", Map.of("count", "1")),
            Map.entry("room", Map.of("ventilator", "\"0 m3/h\"", "burntAtFlue", "\"0 %\"")),
            Map.entry("room.openings[]", Map.of("free", "\"25 %\"")),
            Map.entry("firing.steps[]", Map.of("elements", "\"controller\"", "ports", "\"plugged\"")));

    @Test
    void aDefaultSaysTheSameWrittenOrLeftOut() {
        List<Map.Entry<String, ObjectNode>> all = new ArrayList<>(designs().entrySet());
        Collections.shuffle(all, new Random(SEED));
        all.subList(0, 3).forEach(e -> same(e.getKey(), e.getValue()));
    }

    @Test
    @Tag("slow")
    void everyDefaultSaysTheSameWrittenOrLeftOut() {
        designs().forEach(DefaultsTest::same);
    }

    /** A typed share or open ports that stop a firing: left out they leave it unproven and are named. */
    @Test
    void whatTheStepsDoNotSayOfPowerAndPortsIsNotChecked() {
        for (Table.Row r : HazardSweepTest.rows()) {
            String unsafe = r.text("unsafe");
            if (!r.text("word").equals("by the forecast")
                    || !unsafe.contains("controller") && !unsafe.contains("].p") && !unsafe.contains("25 %")) {
                continue;
            }
            ObjectNode design = TestDesigns.edit(TestDesigns.base(r.text("base")), unsafe);
            for (String path :
                    List.of("firing.steps[0].elements", "firing.steps[0].ports", "firing.steps[1].elements")) {
                CheckResult after = TestDesigns.check(TestDesigns.edit(design, path + "=-"));
                assertThat(after.lighting()).as(path).isIn(Verdict.STOP, Verdict.INCOMPLETE);
                assertThat(after.assumed()).as(path).anyMatch(a -> a.field().equals(path));
                assertThat(TestDesigns.lacking(after))
                        .as(path)
                        .anyMatch(n ->
                                n.rule().equals(r.text("rule")) && n.needs().contains(path));
            }
        }
    }

    private static void same(String name, ObjectNode design) {
        ObjectNode written = design.deepCopy();
        ObjectNode left = design.deepCopy();
        int fields = 0;
        for (Map.Entry<String, Map<String, String>> e : DEFAULTS.entrySet()) {
            for (ObjectNode holder : holders(written, e.getKey())) {
                fields += spell(holder, e);
            }
        }
        for (Map.Entry<String, Map<String, String>> e : DEFAULTS.entrySet()) {
            List<ObjectNode> full = holders(written, e.getKey());
            List<ObjectNode> bare = holders(left, e.getKey());
            for (int i = 0; i < bare.size(); i++) {
                for (Map.Entry<String, String> d : e.getValue().entrySet()) {
                    if (json(d.getValue()).equals(full.get(i).get(d.getKey()))) {
                        bare.get(i).remove(d.getKey());
                    }
                }
            }
        }
        assertThat(fields).as(name).isPositive();
        ReadResult r = TestDesigns.read(written);
        assertThat(r.problems()).as(name).isEmpty();
        CheckResult full = TestDesigns.whole(r.design());
        CheckResult bare = TestDesigns.whole(TestDesigns.design(left));
        assertThat(bare.findings().stream().map(DefaultsTest::gist))
                .as(name)
                .containsExactlyElementsOf(
                        full.findings().stream().map(DefaultsTest::gist).toList());
        assertThat(bare.lighting().ordinal())
                .as(name)
                .isLessThanOrEqualTo(full.lighting().ordinal());
        assertThat(bare.drilling().ordinal())
                .as(name)
                .isLessThanOrEqualTo(full.drilling().ordinal());
    }

    private static String gist(Finding f) {
        return f.rule() + " " + f.severity() + " " + f.parts() + " " + f.measured() + " " + f.limit();
    }

    /** Writes the defaults where the field is absent; ports of a step only where no gas burns, a slope only of a groove in a
     * wall, a turn of no outline drawn by points. */
    private static int spell(ObjectNode holder, Map.Entry<String, Map<String, String>> e) {
        int n = 0;
        for (Map.Entry<String, String> d : e.getValue().entrySet()) {
            String heat = holder.path("heat").asText();
            boolean ports = d.getKey().equals("ports") && (heat.equals("gas") || heat.equals("both"));
            boolean round = e.getKey().equals("kiln.fittings[]") && !holder.has("size");
            boolean level = d.getKey().equals("slope") && !holder.has("height");
            boolean drawn = d.getKey().equals("turn") && holder.has("points");
            if (!holder.has(d.getKey()) && !ports && !round && !level && !drawn) {
                holder.set(d.getKey(), json(d.getValue()));
            }
            n += json(d.getValue()).equals(holder.get(d.getKey())) ? 1 : 0;
        }
        return n;
    }

    private static List<ObjectNode> holders(ObjectNode root, String path) {
        List<JsonNode> at = List.of(root);
        for (String name : path.split("\\.", -1)) {
            boolean list = name.endsWith("[]");
            String field = list ? name.substring(0, name.length() - 2) : name;
            List<JsonNode> next = new ArrayList<>();
            for (JsonNode n : at) {
                JsonNode child = n.path(field);
                if (list) {
                    child.forEach(next::add);
                } else if (child.isObject()) {
                    next.add(child);
                }
            }
            at = next;
        }
        return at.stream().map(n -> (ObjectNode) n).toList();
    }

    /** Every unsafe design of the sweep and every starter. */
    private static Map<String, ObjectNode> designs() {
        Map<String, ObjectNode> out = new LinkedHashMap<>();
        for (Table.Row r : HazardSweepTest.rows()) {
            out.put(
                    r.text("hazard") + " line " + r.line(),
                    TestDesigns.edit(TestDesigns.base(r.text("base")), r.text("unsafe")));
        }
        for (String name : Starters.names()) {
            out.put(name, (ObjectNode) json(Starters.find(name).orElseThrow().toText()));
        }
        return out;
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new IllegalArgumentException(text, e);
        }
    }
}
