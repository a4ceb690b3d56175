package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Verdict;
import portwright.data.Table;
import portwright.file.ReadResult;

/**
 * Leaves every field out of every unsafe design of the hazard sweep in turn, under the whole rule book: no verdict, of drilling or of lighting, improves.
 * A stop may turn into incomplete, which refuses as well: what made the stop can be the very thing left out, then nothing is proven any more.
 */
class NeverReassuringTest {
    private static final long SEED = 20260109;
    private static final List<String> FORECAST = List.of(
            "kiln.power",
            "kiln.leakArea",
            "kiln.lossFactor",
            "kiln.wall.brick",
            "kiln.lid.brick",
            "firing.load",
            "firing.shelvesMass",
            "firing.steps[1].atmosphere",
            "room.temperature",
            "damper");

    /** A few fields of a few designs at random, the same ones in each run. */
    @Test
    void leavingSomethingOutNeverReassures() {
        List<Case> cases = cases();
        Collections.shuffle(cases, new Random(SEED));
        List<ObjectNode> few =
                cases.stream().map(Case::unsafe).distinct().limit(4).toList();
        assertThat(better(cases.stream()
                        .filter(c -> few.contains(c.unsafe))
                        .limit(40)
                        .toList()))
                .as("seed " + SEED)
                .isEmpty();
    }

    /** What decides a stop and was once taken as usual where it was left out: roof over the flues, damper of steps that ask no level. */
    @Test
    void whatDecidesAStopIsNotTakenAsUsual() {
        ObjectNode roof = TestDesigns.edit(TestDesigns.outdoors(), "room.hood=- ; room.ceiling=\"1.8 m\"");
        ObjectNode damper = TestDesigns.edit(
                TestDesigns.outdoors(),
                "damper.open=\"5 %\" ; firing.steps[1].atmosphere=- ; firing.steps[2].atmosphere=- ; firing.steps[3].atmosphere=-");
        for (Case c : List.of(
                new Case("above-flue", roof, "room.ceiling"),
                new Case("inlet-draw", damper, "damper.open"),
                new Case("inlet-draw", damper, "damper"))) {
            CheckResult before = TestDesigns.whole(TestDesigns.design(c.unsafe));
            assertThat(TestDesigns.stops(before)).as(c.path).contains(c.hazard);
            CheckResult after = TestDesigns.whole(TestDesigns.design(TestDesigns.edit(c.unsafe, c.path + "=-")));
            assertThat(TestDesigns.lacking(after))
                    .as(c.path)
                    .anyMatch(n -> n.rule().equals(c.hazard)
                            && n.needs().contains(c.path.equals("damper") ? "damper.open" : c.path));
            assertThat(after.lighting())
                    .as(c.path)
                    .isNotEqualTo(Verdict.CAUTION)
                    .isNotEqualTo(Verdict.CLEAR);
        }
    }

    /** How long gas burns only the forecast says: without what it needs the rules that turn on it are not checked, never kinder. */
    @Test
    void aTimeThatOnlyTheForecastGivesIsNotGuessed() {
        List<Case> forecast = cases().stream()
                .filter(c -> c.hazard.startsWith("H38 cylinder-lasts")
                        && c.unsafe.toString().contains("1217 °C"))
                .filter(c -> FORECAST.contains(c.path))
                .toList();
        assertThat(forecast).hasSameSizeAs(FORECAST);
        for (Case c : forecast) {
            CheckResult before = TestDesigns.check(c.unsafe);
            assertThat(TestDesigns.stops(before)).containsExactly("cylinder-lasts");
            CheckResult after = TestDesigns.check(TestDesigns.edit(c.unsafe, c.path + "=-"));
            assertThat(after.lighting()).as(c.path).isIn(Verdict.STOP, Verdict.INCOMPLETE);
        }
    }

    @Test
    @Tag("slow")
    void leavingAnythingOutNeverReassures() {
        List<Case> cases = cases();
        assertThat(cases).hasSizeGreaterThan(5000);
        assertThat(better(cases)).isEmpty();
    }

    /** An unsafe design and the field that it loses. */
    record Case(String hazard, ObjectNode unsafe, String path) {}

    /** Every field of every design; the owner's own limits and clearances say nothing about the kiln: without them the rule book's hold. */
    static List<Case> cases() {
        Map<String, ObjectNode> designs = new LinkedHashMap<>();
        for (Table.Row r : HazardSweepTest.rows()) {
            ObjectNode unsafe = TestDesigns.edit(TestDesigns.base(r.text("base")), r.text("unsafe"));
            if (!designs.containsValue(unsafe)) {
                designs.put(r.text("hazard") + " " + r.text("rule") + " line " + r.line(), unsafe);
            }
        }
        List<Case> out = new ArrayList<>();
        designs.forEach((hazard, unsafe) -> paths(unsafe, "").stream()
                .filter(p -> !p.startsWith("limits") && !p.endsWith(".clear"))
                .forEach(p -> out.add(new Case(hazard, unsafe, p))));
        return out;
    }

    static List<String> better(List<Case> cases) {
        Map<ObjectNode, CheckResult> full = new LinkedHashMap<>();
        List<String> better = new ArrayList<>();
        for (Case c : cases) {
            ReadResult read = TestDesigns.read(TestDesigns.edit(c.unsafe, c.path + "=-"));
            if (!read.ok()) {
                continue; // refused with an error at its line
            }
            CheckResult before = full.computeIfAbsent(c.unsafe, d -> TestDesigns.whole(TestDesigns.design(d)));
            CheckResult after = TestDesigns.noMoreThan(before, read.design());
            if (improves(before.drilling(), after.drilling()) || improves(before.lighting(), after.lighting())) {
                better.add(c.hazard + " without " + c.path + ": drilling " + before.drilling() + " to "
                        + after.drilling() + ", lighting " + before.lighting() + " to " + after.lighting());
            }
        }
        return better;
    }

    /** Verdicts are declared worst first. */
    static boolean improves(Verdict before, Verdict after) {
        return after.ordinal() > before.ordinal() && !(before == Verdict.STOP && after == Verdict.INCOMPLETE);
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
