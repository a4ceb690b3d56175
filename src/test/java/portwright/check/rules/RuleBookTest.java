package portwright.check.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.check.OwnLimit;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook.Section;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Slab;
import portwright.model.UnitSystem;
import portwright.model.Wall;
import portwright.review.Review;

/** The run of the rule book: which rules, in which order, what of the result comes from where. Worked by hand on a chamber of 600 mm. */
class RuleBookTest {
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());

    private static List<String> ids(List<Rule> rules) {
        return rules.stream().map(Rule::id).toList();
    }

    /** Reading order as the results have had it: the shapes, the fire, the room, the firing. */
    @Test
    void everyRuleOnceInItsSection() {
        assertThat(ids(Section.GEOMETRY.rules()))
                .hasSize(27)
                .startsWith("inside-chamber", "edge-distance", "port-spacing", "weakest-section")
                .endsWith("facet-rule", "jacket", "brick-kind", "alike-names");
        assertThat(ids(Section.FIRE.rules()))
                .containsExactly(
                        "flue-inlet-ratio",
                        "clean-burn",
                        "inlet-draw",
                        "chamber-pressure",
                        "damper-range",
                        "damper-cover",
                        "gas-load",
                        "flue-load",
                        "soot",
                        "oxidised-zone");
        assertThat(ids(Section.ROOM.rules()))
                .containsExactly(
                        "gas-on-temperature",
                        "gas-off-temperature",
                        "flame-supervision",
                        "thermocouple-range",
                        "cylinder-place",
                        "cylinder-boil-off",
                        "cylinder-lasts",
                        "supply-pressure",
                        "room-place",
                        "room-co",
                        "hood-capture",
                        "make-up-air",
                        "room-oxygen",
                        "combustion-air",
                        "co-alarm",
                        "gas-alarm",
                        "room-heat",
                        "floor-fire",
                        "above-flue",
                        "near-flame",
                        "vent-fan");
        assertThat(ids(Section.FIRING.rules())).containsExactly("firing-reach", "brick-heat", "element-atmosphere");
        assertThat(ids(RuleBook.rules()))
                .hasSize(27 + 10 + 21 + 3)
                .startsWith("inside-chamber")
                .endsWith("element-atmosphere");
        assertThat(ids(RuleBook.rules()).subList(27, 37)).isEqualTo(ids(Section.FIRE.rules()));
        assertThat(ids(RuleBook.rules()).subList(37, 58)).isEqualTo(ids(Section.ROOM.rules()));
    }

    private static TestKiln kiln() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(600), mm(600), null));
        k.height = mm(450);
        k.wall = new Wall(mm(60), "ifb-23");
        k.floor = new Slab(mm(60), "ifb-23", mm(0), true, null);
        k.lid = new Slab(mm(60), "ifb-23", mm(0), null, null);
        return k;
    }

    private static Design titled(TestKiln k, UnitSystem units) {
        Design d = k.build();
        return Changed.of(d).title("a kiln").units(units).design();
    }

    private static CheckResult shapes(Design d) {
        return BOOK.check(Review.geometryOnly(d), Set.of(Section.GEOMETRY));
    }

    /** A at 285 mm reaches 6 mm under the wall: a stop for drilling alone. The flame under its shelf, a note, is asked before the axis, a caution for both. */
    @Test
    void theWorstComesFirst() {
        TestKiln k = kiln().inlet("A", 285, 0, 40).roundShelf("shelf", 590, 300, 40);
        k.burners = List.of();
        CheckResult r = shapes(titled(k, UnitSystem.METRIC));
        List<Severity> order = r.findings().stream().map(Finding::severity).toList();
        assertThat(order).isSorted().contains(Severity.STOP, Severity.CAUTION, Severity.NOTE);
        assertThat(r.title()).isEqualTo("a kiln");
        assertThat(r.drilling()).isEqualTo(Verdict.STOP);
        assertThat(r.lighting()).isEqualTo(Verdict.CAUTION);
        assertThat(r.findings().get(0).rule()).isEqualTo("inside-chamber");
        assertThat(r.notChecked()).extracting(NotChecked::rule).containsExactly("joint-sliver", "one-brick");
        assertThat(r.figures()).isNotNull();
        assertThat(r.figures().chamberVolumeL()).isEqualTo(600 * 600 * 450 * 1e-6);
        assertThat(r.assumed()).isEmpty();
        assertThat(r.ownLimits()).isEmpty();
    }

    @Test
    void lightingHasItsOwnVerdict() {
        TestKiln k = kiln().inlet("A", 0, 0, 40).roundShelf("shelf", 300, 5, 40);
        k.burners = List.of();
        CheckResult r = shapes(titled(k, UnitSystem.METRIC));
        assertThat(r.lighting()).isEqualTo(Verdict.STOP);
        assertThat(r.drilling()).isEqualTo(Verdict.CAUTION);
        k.shelves = null;
        assertThat(shapes(titled(k, UnitSystem.METRIC)).lighting()).isEqualTo(Verdict.INCOMPLETE);
    }

    @Test
    void theDesignsOwnLimitsAreListed() {
        CheckResult r =
                shapes(titled(kiln().inlet("A", 0, 0, 40).limit("edge-distance", "stop", 55), UnitSystem.METRIC));
        assertThat(r.ownLimits()).containsExactly(new OwnLimit("edge-distance", "stop", "55.0", "50 mm"));
    }

    /** Whoever does not measure in millimetres alone gets every figure in inches too: the rule's own, 12 to 25 mm, has no twin yet. */
    @Test
    void inchesBesideEveryFigure() {
        TestKiln k = kiln().inlet("A", 0, 0, 40);
        for (UnitSystem units : UnitSystem.values()) {
            String jacket = shapes(titled(k, units)).findings().stream()
                    .filter(f -> f.rule().equals("jacket"))
                    .findFirst()
                    .orElseThrow()
                    .message();
            assertThat(jacket)
                    .contains(
                            units == UnitSystem.METRIC
                                    ? "are 12 to 25 mm wider"
                                    : "are 12 to 25 mm (1/2 to 1 in) wider");
        }
    }

    /** A leg at 7 o'clock is left the shortest way toward 1 o'clock; while a hand drags, parts of the book are asked, and remedies sought along the axes. */
    @Test
    void partsOfTheBookAnswerQuickly() {
        TestKiln k = kiln().inlet("A", 0, 0, 40).fitting("leg", FittingKind.LEG, On.FLOOR, null, at(-15, -25.98), 100);
        k.burners = List.of();
        Design d = titled(k, UnitSystem.METRIC);
        assertThat(remedy(shapes(d))).contains(" to the back");
        CheckResult all = BOOK.check(Review.of(d));
        assertThat(remedy(all)).contains(" toward 1 o'clock, seen from above");
        assertThat(all.notChecked()).extracting(NotChecked::rule).contains("room-place");
        assertThat(BOOK.check(Review.of(d), Set.of(Section.GEOMETRY)).notChecked())
                .extracting(NotChecked::rule)
                .doesNotContain("room-place");
        assertThat(all.assumed()).isNotEmpty();
    }

    private static String remedy(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.rule().equals("fitting-clearance"))
                .findFirst()
                .orElseThrow()
                .remedy();
    }
}
