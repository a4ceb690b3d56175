package portwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.rules.RuleBook;
import portwright.check.rules.RuleBook.Section;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.review.Review;

/** Leaving a field out of a design never improves a verdict, and the result says what is missing. */
class LeavingOutTest {
    private static final Path EXAMPLE = Path.of("src/test/resources/designs/contract-example.json");
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    /** The owner's own limits say nothing about the kiln: without them the rule book's hold. A fitting's own clearance is such a limit. */
    private static final List<String> OWN_LIMITS = List.of("limits", ".clear");

    private static DesignText example() throws IOException {
        return DesignFile.read(EXAMPLE).document();
    }

    /** Every field of every object, the whole objects and lists too; list items themselves stay. */
    private static List<String> fields(DesignText d) {
        List<String> out = new ArrayList<>();
        walk(d, "", out);
        out.removeIf(p -> OWN_LIMITS.stream().anyMatch(p::contains));
        return out;
    }

    private static void walk(DesignText d, String path, List<String> out) {
        List<String> names = d.fields(path);
        for (String n : names) {
            String p = path.isEmpty() ? n : path + "." + n;
            out.add(p);
            walk(d, p, out);
        }
        if (names.isEmpty()) {
            for (int i = 0; i < d.size(path); i++) {
                walk(d, path + "[" + i + "]", out);
            }
        }
    }

    private static CheckResult shapes(Design d) {
        return BOOK.check(Review.geometryOnly(d), Set.of(Section.GEOMETRY));
    }

    /**
     * Verdicts are declared worst first. What made the stop can be the very thing left out (the post in the flame): then nothing is proven any more,
     * and incomplete is the worst that can be said.
     */
    private static boolean improves(Verdict before, Verdict after) {
        return after.ordinal() > before.ordinal() && after != Verdict.INCOMPLETE;
    }

    /** Leaves out each field in turn and answers what became better. Fields that a design must have are errors of the reader, not verdicts. */
    private static List<String> better(DesignText full, List<String> paths) {
        CheckResult before = shapes(full.read().design());
        List<String> better = new ArrayList<>();
        for (String path : paths) {
            ReadResult r = full.remove(path).read();
            if (!r.ok()) {
                continue;
            }
            CheckResult after = shapes(r.design());
            if (improves(before.drilling(), after.drilling()) || improves(before.lighting(), after.lighting())) {
                better.add(path + ": drilling " + before.drilling().id() + " to "
                        + after.drilling().id() + ", lighting "
                        + before.lighting().id() + " to " + after.lighting().id());
            }
        }
        return better;
    }

    @Test
    void noFieldOfTheExampleImprovesAVerdictOnItsShapesByBeingLeftOut() throws IOException {
        DesignText full = example();
        assertThat(better(full, fields(full))).isEmpty();
    }

    /** Ports of the starters pushed about, so that clearances fail and the fields behind them matter. */
    @Test
    void noFieldOfADisturbedStarterImprovesAVerdictByBeingLeftOut() {
        disturbed(1, 1, 9);
    }

    @Test
    @Tag("slow")
    void noFieldOfManyDisturbedStartersImprovesAVerdictByBeingLeftOut() {
        disturbed(1, 20, 1);
    }

    private static void disturbed(long first, long last, int every) {
        List<String> better = new ArrayList<>();
        for (String name : Starters.names()) {
            DesignText full = Starters.find(name).orElseThrow();
            for (long seed = first; seed <= last; seed++) {
                DesignText pushed = push(full, new Random(seed * 31 + name.hashCode()));
                List<String> paths = fields(pushed);
                paths.removeIf(p -> p.startsWith("room") || p.startsWith("supply") || p.startsWith("damper"));
                Collections.shuffle(paths, new Random(seed));
                for (String b : better(pushed, paths.subList(0, paths.size() / every))) {
                    better.add(name + ", seed " + seed + ", " + b);
                }
            }
        }
        assertThat(better).isEmpty();
    }

    private static DesignText push(DesignText d, Random random) {
        DesignText out = d;
        for (int i = 0; i < d.size("ports"); i++) {
            String at = "ports[" + i + "].at";
            if (d.size(at) == 2 && d.fields(at).isEmpty()) {
                for (int k = 0; k < 2; k++) {
                    double mm =
                            portwright.TestKiln.len(d.get(at + "[" + k + "]").orElseThrow())
                                            .mm()
                                    + random.nextGaussian() * 40;
                    DesignText moved =
                            out.setText(at + "[" + k + "]", String.format(java.util.Locale.ROOT, "%.2f mm", mm));
                    out = moved.read().ok() ? moved : out;
                }
            }
        }
        return out;
    }

    /** Each geometry rule with the fields that it reads: without one, it says so and names it. */
    @Test
    void eachGeometryRuleNamesTheFieldThatItLacks() throws IOException {
        Map<String, List<String>> reads = new LinkedHashMap<>();
        reads.put(
                "element-clearance",
                List.of(
                        "kiln.elements",
                        "kiln.elements[0].groove",
                        "kiln.elements[0].groove.height",
                        "kiln.elements[0].groove.depth",
                        "kiln.elements[0].height",
                        "kiln.elements[0].tails.diameter"));
        reads.put("weakest-section", List.of("kiln.elements", "kiln.fittings"));
        reads.put(
                "fitting-clearance",
                List.of(
                        "kiln.fittings",
                        "kiln.fittings[0].diameter",
                        "kiln.fittings[1].diameter",
                        "kiln.fittings[2].panel"));
        reads.put("joint-sliver", List.of("kiln.floor.joints"));
        reads.put("post-in-flame", List.of("shelves", "shelves[0].posts", "shelves[0].postSize", "shelves[0].height"));
        reads.put("shelf-over-inlet", List.of("shelves", "shelves[0].height", "shelves[0].diameter"));
        reads.put("flame-path", List.of("shelves", "shelves[0].height", "shelves[0].diameter"));
        reads.put("flame-on-element", List.of("kiln.elements", "kiln.elements[0].coil", "shelves"));
        reads.put("groove-room", List.of("kiln.fittings", "kiln.elements"));
        reads.put("flame-on-fitting", List.of("kiln.fittings", "kiln.fittings[0].reach"));
        reads.put(
                "burner-room",
                List.of(
                        "burners",
                        "kiln.stand.height",
                        "burners[0].length",
                        "burners[0].setback",
                        "burners[0].body",
                        "kiln.fittings"));
        reads.put("burner-fit", List.of("burners", "burners[0].tip", "burners[0].setback"));
        reads.put("brick-kind", List.of("kiln.floor.brick", "kiln.lid.brick"));
        DesignText full = example();
        reads.forEach((rule, paths) -> {
            for (String path : paths) {
                assertThat(full.has(path)).as(path).isTrue();
                ReadResult r = full.remove(path).read();
                if (r.ok()) {
                    assertThat(shapes(r.design()).notChecked())
                            .as(rule + " without " + path)
                            .anyMatch(n -> n.rule().equals(rule) && n.needs().contains(path));
                } else {
                    assertThat(r.problems()).as(path + ": " + r.problems()).isNotEmpty();
                }
            }
        });
    }

    /** The example names a jet by its bore alone. */
    @Test
    void oneFactoryJetIsListedAsAssumed() throws IOException {
        assertThat(Review.of(example().read().design()).assumed())
                .extracting(a -> a.field())
                .contains("burners[0].jets", "burners[0].jetClass")
                .doesNotContain("burners[1].jets");
    }

    /** What a design does not give and the program sets by itself stands in the list of assumed values. */
    @Test
    void everyAssumedMeasureIsListed() throws IOException {
        for (String path : List.of(
                "drilling.oversize",
                "drilling",
                "kiln.floor.overhang",
                "kiln.lid.overhang",
                "kiln.leakArea",
                "shelves[0].at")) {
            ReadResult r = example().remove(path).read();
            assertThat(r.ok()).as(path + ": " + r.problems()).isTrue();
            assertThat(Review.of(r.design()).assumed())
                    .as(path)
                    .anyMatch(a -> a.field().startsWith(path));
        }
    }
}
