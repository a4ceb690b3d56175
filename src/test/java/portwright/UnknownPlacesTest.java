package portwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.check.rules.RuleBook.Section;
import portwright.check.rules.Unknowns;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.file.Starters;
import portwright.layout.DrillOutlook;
import portwright.layout.Progress;
import portwright.layout.Proposal;
import portwright.layout.Proposals;
import portwright.layout.Proposer;
import portwright.layout.Wishes;
import portwright.model.Design;
import portwright.model.On;
import portwright.report.CheckJson;
import portwright.report.CheckText;
import portwright.report.FindingsMarkdown;
import portwright.report.ProposalsJson;
import portwright.report.VerdictLine;
import portwright.review.Review;
import portwright.sheet.Paper;
import portwright.sheet.SheetBook;
import portwright.sheet.SheetOptions;
import portwright.sheet.SheetRefused;
import portwright.sheet.UnknownElements;

/** Where a field is not known that a rule of places needs, nothing that the program prints calms about the places of holes. */
class UnknownPlacesTest {
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final List<String> CALMING = List.of(
            " of 100",
            "drill to the mark",
            "no place there forbids",
            "Drilling: no stop",
            "Drilling: clear",
            "Drilling: **",
            "Every rule was checked",
            "Millimetres that the middle of a hole may stray");

    static List<String> starters() {
        return Starters.names();
    }

    private static CheckResult check(Design d) {
        return BOOK.check(Review.of(d));
    }

    private static List<NotChecked> places(Design d) {
        return Unknowns.of(BOOK.check(Review.geometryOnly(d), Set.of(Section.GEOMETRY)))
                .places();
    }

    /** Each field of kiln, shelves, burners and drilling without which a rule that forbids drilling by place is not checked: one of each kind, with the design that lacks it. */
    private static Map<String, Design> lacking(DesignText full) {
        Map<String, Design> out = new LinkedHashMap<>();
        for (String root : List.of("kiln", "shelves", "burners", "drilling")) {
            walk(full, root, out);
        }
        return out;
    }

    private static void walk(DesignText d, String path, Map<String, Design> out) {
        String kind = path.replaceAll("\\[\\d+\\]", "[]");
        if (d.has(path) && !path.endsWith("]") && !out.containsKey(kind)) {
            ReadResult r = d.remove(path).read();
            if (r.ok() && !places(r.design()).isEmpty()) {
                out.put(kind, r.design());
            }
        }
        List<String> names = d.fields(path);
        names.forEach(n -> walk(d, path + "." + n, out));
        if (names.isEmpty()) {
            for (int i = 0; i < d.size(path); i++) {
                walk(d, path + "[" + i + "]", out);
            }
        }
    }

    private static void calmsNot(String where, String said) {
        String flat = said.replaceAll("\\s+", " ");
        assertThat(CALMING).as(where + ": " + flat).noneMatch(flat::contains);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void noTextCalmsWhereAFieldOfTheKilnIsLeftOut(String name) throws IOException {
        DesignText full = Starters.find(name).orElseThrow();
        Map<String, Design> all = lacking(full);
        assertThat(all).as(name).containsKeys("kiln.elements", "kiln.fittings");
        for (Map.Entry<String, Design> e : all.entrySet()) {
            String where = name + " without " + e.getKey();
            Design d = e.getValue();
            CheckResult r = check(d);
            DrillOutlook drill = DrillOutlook.of(d, r);
            assertThat(drill.odds()).as(where).isEmpty();
            assertThat(drill.wander()).as(where).isEmpty();
            assertThat(drill.lines()).as(where).isEmpty();
            assertThat(drill.allInside()).as(where).isNaN();
            String need = Unknowns.of(r).places().get(0).needs().get(0);
            for (String told : List.of(drill.words(), drill.brief())) {
                assertThat(told).as(where).contains("not told", "ot checked", need);
                calmsNot(where, told);
            }
            String text = CheckText.write(r, DrillOutlook.oddsAlone(d, r), d.units(), 400, false);
            assertThat(text).as(where).contains(drill.whyNot());
            calmsNot(where, text);
            calmsNot(where, FindingsMarkdown.write(r, "mark"));
            JsonNode json = JSON.readTree(CheckJson.write(r, drill)).get("drillingByHand");
            assertThat(json.get("allInside").isNull()).as(where).isTrue();
            assertThat(json.get("whyNot").asText()).as(where).isEqualTo(drill.whyNot());
            assertThat(json.get("notChecked").isEmpty()).as(where).isFalse();
            assertThat(json.has("holes")).as(where).isFalse();
        }
    }

    /** The same starters with all their fields tell the odds: it is the field that silences them. */
    @ParameterizedTest
    @MethodSource("starters")
    void wholeStartersTellTheOdds(String name) {
        Design d = Starters.find(name).orElseThrow().read().design();
        DrillOutlook drill = DrillOutlook.oddsAlone(d, check(d));
        assertThat(drill.told()).isTrue();
        assertThat(drill.share()).contains(" of 100 such kilns").doesNotContain("as far as checked");
    }

    @Test
    void paperTellsThatTheRoomOfHolesIsNotKnown() throws IOException {
        DesignText full = Starters.find("octagon-17").orElseThrow();
        assertThat(print(full.read().design())).contains("Millimetres that the middle of a hole may stray");
        Design d = full.remove("kiln.fittings").read().design();
        String paper = print(d);
        calmsNot("sheet", paper);
        assertThat(paper)
                .contains("Odds of drilling by hand are not told")
                .contains("Drilling: INCOMPLETE. No stop found, but 2 rules could not be checked.")
                .doesNotContain("25+");
    }

    /** The first sheet's headline is the verdict of the screen, whatever field of the kiln is left out, or there is no sheet. */
    @ParameterizedTest
    @ValueSource(strings = {"octagon-17", "front-loader-18"})
    void theHeadlineOnPaperIsTheVerdictOfTheScreen(String name) throws IOException {
        int printed = 0;
        int refused = 0;
        for (Map.Entry<String, Design> e :
                lacking(Starters.find(name).orElseThrow()).entrySet()) {
            CheckResult r = check(e.getValue());
            boolean unclear = e.getValue().kiln().elements() == null
                    || !UnknownElements.fields(r).isEmpty();
            if (r.drilling() == Verdict.STOP || unclear) {
                refused++;
                assertThatThrownBy(() -> print(e.getValue()))
                        .as(name + " without " + e.getKey())
                        .isInstanceOf(SheetRefused.class)
                        .hasMessageContaining(unclear ? "no hole can be kept clear of them" : "forbid");
            } else {
                printed++;
                String paper = print(e.getValue());
                assertThat(paper)
                        .as(name + " without " + e.getKey())
                        .contains(VerdictLine.drilling(r), "INCOMPLETE", "not all checked: see sheet 1");
                calmsNot(name + " without " + e.getKey(), paper);
            }
        }
        assertThat(printed).isPositive();
        assertThat(refused).isPositive();
    }

    private static String print(Design d) throws IOException {
        Review review = Review.of(d);
        byte[] pdf = SheetBook.print(
                        BOOK.check(review),
                        review.geometry(),
                        "k.json",
                        new SheetOptions(
                                Paper.parse("a3"), SheetOptions.Part.ALL, SheetOptions.Side.DRILLED, 1, 1, false))
                .pdf();
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(doc).replaceAll("\\s+", " ");
        }
    }

    /** The inlet of a front-loader without its elements: found in the middle, where they run, and called safe to drill once. */
    @Test
    void proposalsSayThatElementsWereNotKnown() throws IOException {
        Design d = Starters.find("front-loader-18")
                .orElseThrow()
                .remove("kiln.elements")
                .read()
                .design();
        Proposals found =
                Proposer.propose(d, new Wishes(1, 2, 17 * 25.4 / 8, 25 * 25.4 / 16, On.FLOOR), Progress.none());
        assertThat(found.best()).isNotEmpty();
        for (Proposal p : found.best()) {
            assertThat(p.gist())
                    .contains("Not checked: ", "element-clearance", "kiln.elements", "only as far as checked");
            calmsNot("proposal", DrillOutlook.of(p.design(), p.check()).words());
        }
        JsonNode json = JSON.readTree(ProposalsJson.write(found, null, false));
        for (JsonNode p : json.get("proposals")) {
            assertThat(p.get("allInside").isNull()).isTrue();
            assertThat(p.get("whyNot").asText()).contains("kiln.elements");
            assertThat(p.get("notChecked").findValuesAsText("rule")).contains("element-clearance");
        }
    }

    /** What could only forbid lighting is named with the odds, which then send nobody to the mark. */
    @Test
    void oddsNameWhatOtherRulesLack() {
        Design d = Starters.find("octagon-17")
                .orElseThrow()
                .remove("shelves")
                .read()
                .design();
        CheckResult r = check(d);
        DrillOutlook drill = DrillOutlook.of(d, r);
        assertThat(drill.told()).isTrue();
        for (String told : List.of(drill.share(), drill.brief(), drill.words())) {
            assertThat(told).contains(" of 100", "as far as checked (not checked: ", "state shelves");
        }
        assertThat(drill.words()).doesNotContain("drill to the mark");
    }

    /** One wording of a verdict in text and Markdown; what could only caution and was not checked is told in the same breath. */
    @Test
    void verdictsSayTheSameEverywhere() throws IOException {
        List<DesignText> designs = new ArrayList<>();
        DesignText full = Starters.find("octagon-17").orElseThrow();
        designs.add(full);
        for (String left : List.of("kiln.elements", "kiln.fittings", "kiln.floor.joints", "shelves", "ports")) {
            designs.add(full.remove(left));
        }
        for (DesignText t : designs) {
            if (!t.read().ok()) {
                continue;
            }
            Design d = t.read().design();
            CheckResult r = check(d);
            JsonNode figures = JSON.readTree(CheckJson.write(r, null)).get("figures");
            assertThat(figures.get("weakestSectionAtLeast").asBoolean())
                    .isEqualTo(r.notChecked().stream().anyMatch(n -> n.rule().equals("weakest-section")));
            if (CheckText.write(r, null, d.units(), 400, false).contains("at least: weakest-section")) {
                assertThat(figures.get("weakestSectionAtLeast").asBoolean()).isTrue();
            }
            String drilling = VerdictLine.drilling(r);
            assertThat(CheckText.write(r, null, d.units(), 400, false)).contains(drilling);
            assertThat(FindingsMarkdown.write(r, "mark")).contains(drilling, VerdictLine.lighting(r));
            if (r.drilling() != Verdict.STOP
                    && r.drilling() != Verdict.INCOMPLETE
                    && r.notChecked().stream().anyMatch(n -> n.forbids() == Forbids.NOTHING)) {
                assertThat(drilling).endsWith(" in what was checked.");
            }
        }
    }
}
