package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import portwright.check.Rule;
import portwright.check.rules.RoomRules;
import portwright.check.rules.RuleBook;
import portwright.check.rules.RuleBook.Section;
import portwright.data.Caution;
import portwright.data.Table;
import portwright.source.Standing;

/** The list of hazards, the rules and SAFETY.md say the same. */
class SafetyListTest {

    private static final List<Caution> ALL = Caution.all();

    @Test
    void noHazardIsLost() {
        assertThat(ALL.stream().map(Caution::id))
                .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, 99)
                        .mapToObj(i -> String.format("H%02d", i))
                        .toList());
        assertThat(ALL)
                .allSatisfy(c -> assertThat(c.text()).as(c.id()).endsWith(".").doesNotContain("!"));
    }

    /** Rules of the other sections that the list names; asked for as soon as their section has rules. */
    private static final Map<Section, Set<String>> OTHERS = Map.of(
            Section.GEOMETRY,
                    Set.of(
                            "element-clearance",
                            "fitting-clearance",
                            "weakest-section",
                            "edge-distance",
                            "brick-kind",
                            "flame-on-fitting"),
            Section.FIRE, Set.of("chamber-pressure", "damper-cover", "inlet-draw", "flue-inlet-ratio", "soot"),
            Section.FIRING, Set.of("element-atmosphere", "firing-reach"));

    @Test
    void everyRuleNamedIsInTheRuleBook() {
        Set<String> known = RuleBook.rules().stream().map(Rule::id).collect(Collectors.toCollection(TreeSet::new));
        OTHERS.forEach((section, ids) -> {
            if (section.rules().isEmpty()) {
                known.addAll(ids);
            }
        });
        List<String> unknown = ALL.stream()
                .flatMap(c -> c.rules().stream())
                .filter(r -> !known.contains(r))
                .distinct()
                .toList();
        assertThat(unknown).isEmpty();
    }

    @Test
    void everyHazardOfThisSectionHasATestDesign() {
        Set<String> mine = RoomRules.list().stream().map(Rule::id).collect(Collectors.toSet());
        Set<String> swept = Table.resource("/portwright/check/hazard_sweep.csv").rows().stream()
                .map(r -> r.text("hazard") + " " + r.text("rule"))
                .collect(Collectors.toSet());
        Set<String> sweptRules = Table.resource("/portwright/check/hazard_sweep.csv").rows().stream()
                .map(r -> r.text("rule"))
                .collect(Collectors.toSet());
        // these two answer no hazard of the list; every other rule here has its design
        assertThat(mine.stream().filter(r -> !sweptRules.contains(r)))
                .containsExactlyInAnyOrder("vent-fan", "room-heat");
        assertThat(ALL.stream()
                        .filter(c -> c.rules().stream().anyMatch(mine::contains))
                        .filter(c -> c.rules().stream().noneMatch(r -> swept.contains(c.id() + " " + r))))
                .isEmpty();
    }

    @Test
    void safetyPageHoldsEachUnderItsMoment() throws IOException {
        String page = Files.readString(Path.of("SAFETY.md"));
        for (Caution.Moment m : Caution.Moment.values()) {
            int from = page.indexOf("## " + m.heading() + "\n");
            assertThat(from).as(m.heading()).isPositive();
            int to = page.indexOf("\n## ", from + 3);
            String section = page.substring(from, to < 0 ? page.length() : to);
            List<String> lines =
                    section.lines().filter(l -> l.startsWith("- **H")).toList();
            List<Caution> here = ALL.stream().filter(c -> c.moment() == m).toList();
            assertThat(lines).as(m.heading()).hasSize(here.size());
            for (Caution c : here) {
                assertThat(lines).anySatisfy(l -> {
                    assertThat(l.toLowerCase(Locale.ROOT))
                            .startsWith("- **" + c.id().toLowerCase(Locale.ROOT) + " " + c.severity());
                    assertThat(l)
                            .contains(c.text())
                            .contains(c.source().standing().words());
                    c.rules().forEach(r -> assertThat(l).contains("`" + r + "`"));
                });
            }
        }
    }

    /** What the template prints besides the hazards stands on the page too; whose word comes first stands before all. */
    @Test
    void theStepsOfTheWorkAndWhoseWordComesFirst() throws IOException {
        String page = Files.readString(Path.of("SAFETY.md"));
        String steps =
                page.substring(page.indexOf("## Steps of the work\n"), page.indexOf("## If something goes wrong"));
        List<Table.Row> rows = Table.load("paper-cautions.csv").rows();
        assertThat(steps.lines().filter(l -> l.startsWith("- "))).hasSameSizeAs(rows);
        rows.forEach(r -> assertThat(steps)
                .contains("- *" + r.text("moment") + ".* " + Caution.byTheBook(r.text("words")) + "\n"));
        assertThat(page.indexOf("Local codes and licensed gas and electrical work come first"))
                .isBetween(0, page.indexOf("## Before drilling"));
    }

    /** How each hazard is known: worked out is not published, however well its premises are read. */
    private static final Map<String, Standing> KNOWN = Map.of(
            "read", Standing.PUBLISHED,
            "secondary", Standing.PUBLISHED,
            "derived", Standing.JUDGEMENT,
            "memory", Standing.MEMORY,
            "practice", Standing.PRACTICE);

    /** Severity, standing and figures are those that the hazards were collected with, see the head of the table. */
    @Test
    void nothingIsDressedUpAndNoFigureIsLost() throws IOException {
        Map<String, Caution> byId = ALL.stream().collect(Collectors.toMap(Caution::id, c -> c));
        List<Table.Row> rows =
                Table.resource("/portwright/check/hazards_known.csv").rows();
        assertThat(rows).hasSameSizeAs(ALL);
        List<String> page = Files.readAllLines(Path.of("SAFETY.md"));
        for (Table.Row r : rows) {
            String id = r.text("id");
            Caution c = byId.get(id);
            assertThat(c.severity()).as(id).isEqualTo(r.text("severity"));
            assertThat(c.source().standing()).as(id).isEqualTo(KNOWN.get(r.text("known")));
            String line = page.stream()
                    .filter(l -> l.startsWith("- **" + id + " "))
                    .findFirst()
                    .orElseThrow();
            for (String figure : r.text("figures", "").split(";", -1)) {
                assertThat(line).as(id).contains(figure);
            }
        }
    }

    /** Each hazard stands on paper where the page says it does; the card's words are few, for a band of three columns. */
    @Test
    void paperCarriesThem() throws IOException {
        String page = Files.readString(Path.of("SAFETY.md"));
        for (Caution c : ALL) {
            String line = page.lines()
                    .filter(l -> l.startsWith("- **" + c.id()))
                    .findFirst()
                    .orElseThrow();
            assertThat(line.contains(" *T* ")).as(c.id()).isEqualTo(c.onTemplate());
            assertThat(line.contains(" *C* ")).as(c.id()).isEqualTo(c.onCard());
            assertThat(c.card().length()).as(c.id()).isLessThanOrEqualTo(32);
        }
        assertThat(Caution.forCard().get(0).severity()).isEqualTo("stop");
    }
}
