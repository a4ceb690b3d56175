package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.form.RuleWords;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.report.VerdictLine;
import portwright.review.Review;

/** Paper that somebody drills or fires from says no less than the screen of what was not checked. House rule, no source. */
class NotCheckedOnPaperTest {
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    private static final int WALL_ELEMENTS = 6;
    private static final SheetOptions DRILLED =
            new SheetOptions(Paper.parse("a4"), SheetOptions.Part.ALL, SheetOptions.Side.DRILLED, 1, 1, false);

    private static DesignText starter(String name) {
        return Starters.find(name).orElseThrow();
    }

    private static Design read(DesignText t) {
        return t.read().design();
    }

    private static CheckResult check(Design d) {
        return BOOK.check(Review.of(d));
    }

    private static String text(PDDocument d, int page) throws IOException {
        PDFTextStripper s = new PDFTextStripper();
        s.setStartPage(page);
        s.setEndPage(page);
        return s.getText(d).replaceAll("\\s+", " ");
    }

    private static Design frontLoaderWithout(String field) {
        DesignText t = starter("front-loader-18");
        for (int i = 0; i < WALL_ELEMENTS; i++) {
            t = t.remove("kiln.elements[" + i + "]." + field);
        }
        return read(t);
    }

    private static void refusedAll(Design d, String said, String field) {
        CheckResult r = check(d);
        KilnGeometry kiln = KilnGeometry.of(d);
        for (Runnable paper : List.<Runnable>of(
                () -> SheetBook.print(r, kiln, "k.json", DRILLED),
                () -> SvgExport.all(r, kiln, SheetOptions.Part.ALL, SheetOptions.Side.DRILLED),
                () -> HoleSchedule.csv(r, kiln))) {
            assertThatThrownBy(paper::run)
                    .isInstanceOf(SheetRefused.class)
                    .hasMessageContaining("no hole can be kept clear of them")
                    .hasMessageContaining(said)
                    .hasMessageContaining(field)
                    .satisfies(e -> assertThat(((SheetRefused) e).inWindow()).doesNotContain("kiln.elements["));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"height", "groove", "groove.depth", "tails"})
    void noPaperToDrillFromWhereAnElementIsKnownInPart(String field) {
        refusedAll(
                frontLoaderWithout(field),
                field.replace('.', ' ') + " of E1, E2, E3, E4, E5, E6",
                "kiln.elements[5]." + field);
    }

    @Test
    void theSameOfAGrooveInTheFloor() {
        refusedAll(
                read(starter("front-loader-18").remove("kiln.elements[6].groove")),
                "groove of F1",
                "kiln.elements[6].groove");
    }

    /** All panels carry an element that names none: the hole in wall 1 runs into it. */
    @Test
    void unknownPanelsAreAllPanels() {
        assertThat(check(frontLoaderWithout("panels")).drilling()).isEqualTo(Verdict.STOP);
    }

    @ParameterizedTest
    @CsvSource({"octagon-17,kiln.fittings", "front-loader-18,kiln.elements[0].groove.slope"})
    void whatIsIncompleteSaysSoOnEveryPaperToDrillFrom(String name, String field) throws IOException {
        Design d = read(starter(name).remove(field));
        CheckResult r = check(d);
        assertThat(r.drilling()).isEqualTo(Verdict.INCOMPLETE);
        KilnGeometry kiln = KilnGeometry.of(d);
        String verdict = VerdictLine.drilling(r);
        List<String> rules = r.notChecked().stream()
                .filter(n -> n.forbids() == Forbids.DRILLING)
                .map(NotChecked::rule)
                .map(RuleWords::within)
                .toList();
        try (PDDocument pdf =
                Loader.loadPDF(SheetBook.print(r, kiln, "k.json", DRILLED).pdf())) {
            assertThat(text(pdf, 1)).contains(verdict).contains(rules).doesNotContain("No stop and no caution");
            assertThat(text(pdf, 2)).contains("not all checked: see sheet 1", "k.json");
        }
        Map<String, String> svgs = SvgExport.all(r, kiln, SheetOptions.Part.ALL, SheetOptions.Side.BOTH)
                .files();
        assertThat(svgs).isNotEmpty();
        svgs.forEach((file, svg) -> {
            int desc = svg.indexOf("<desc>");
            assertThat(svg.substring(desc, svg.indexOf("</desc>")))
                    .as(file)
                    .contains(verdict)
                    .contains(rules);
            String seen = svg.substring(svg.indexOf("</desc>")).replaceAll("<[^>]*>|\\s+", " ");
            assertThat(seen).as(file).contains("INCOMPLETE");
        });
        List<String> rows = HoleSchedule.csv(r, kiln).lines().toList();
        assertThat(rows).hasSize(1 + d.ports().size());
        assertThat(rows.subList(1, rows.size()))
                .allSatisfy(row -> assertThat(row)
                        .contains(verdict)
                        .contains(rules)
                        .endsWith("local codes and licensed practice come first.\""));
    }

    @Test
    void wholeDesignsSayNothingOfIt() throws IOException {
        Design d = read(starter("octagon-17"));
        CheckResult r = check(d);
        KilnGeometry kiln = KilnGeometry.of(d);
        try (PDDocument pdf =
                Loader.loadPDF(SheetBook.print(r, kiln, "k.json", DRILLED).pdf())) {
            assertThat(text(pdf, 1)).contains(VerdictLine.drilling(r)).doesNotContain("INCOMPLETE");
            assertThat(text(pdf, 2)).doesNotContain("not all checked");
        }
        assertThat(SvgExport.all(r, kiln, SheetOptions.Part.ALL, SheetOptions.Side.BOTH)
                        .files()
                        .values())
                .noneMatch(s -> s.contains("<desc>"));
        assertThat(HoleSchedule.csv(r, kiln)).doesNotContain("INCOMPLETE");
        assertThat(card(d)).doesNotContain("Not checked:", "Not all was checked");
    }

    private static PDDocument cardPaper(Design d) throws IOException {
        return Loader.loadPDF(FiringCard.print(
                        CardBuilder.of(check(d), d, CardForecast.of(Review.of(d))),
                        Paper.parse("a4"),
                        ContentMark.of(d),
                        true)
                .pdf());
    }

    private static String card(Design d) throws IOException {
        try (PDDocument doc = cardPaper(d)) {
            assertThat(doc.getNumberOfPages()).isEqualTo(2);
            return text(doc, 1) + " " + text(doc, 2);
        }
    }

    @Test
    void theCardNamesWhatWasNotChecked() throws IOException {
        Design d = read(starter("octagon-17").remove("damper.plate").remove("kiln.fittings[1].type"));
        CheckResult r = check(d);
        assertThat(r.notChecked()).extracting(NotChecked::rule).contains("damper-cover", "thermocouple-range");
        String said = card(d);
        assertThat(said)
                .contains("Not all was checked: see the back.", "Not checked: ")
                .doesNotContain("…");
        String line = said.substring(said.indexOf("Not checked: "));
        for (NotChecked n : r.notChecked()) {
            assertThat(line).contains(RuleWords.within(n.rule()));
        }
    }

    /** Also where much lacks: eight rows of the record and more are left, no word is cut. */
    @Test
    void muchNotCheckedLeavesRoomForTheRecord() throws IOException {
        Design d = read(starter("octagon-17").remove("kiln.fittings").remove("damper.plate"));
        try (PDDocument doc = cardPaper(d)) {
            int last = doc.getNumberOfPages();
            PrintedPage back = new PrintedPage(doc.getPage(last - 1));
            double head = back.words.get("clock").y() + 5;
            assertThat(back.lines.stream()
                            .filter(l -> Math.abs(l.a().y() - l.b().y()) < 1e-4
                                    && Math.abs(l.length() - (210 - 24.8)) < 0.01
                                    && l.a().y() < head)
                            .count())
                    .isGreaterThanOrEqualTo(2 + 8);
            String all = "";
            for (int i = 1; i <= last; i++) {
                all += text(doc, i);
            }
            assertThat(all).contains("Not checked: ").doesNotContain("…");
        }
    }

    /** An empty list of burners under a firing with gas is no burner known, not none: nothing that hangs on them is clear. */
    @Test
    void noBurnersUnderAFiringWithGasAreNotKnown() throws IOException {
        CheckResult r = check(read(starter("octagon-17").set("burners", "[]")));
        assertThat(r.notChecked()).extracting(NotChecked::rule).contains("clean-burn", "soot");
        assertThat(r.lighting()).isEqualTo(Verdict.INCOMPLETE);
    }

    /** The schedule in both forms says where the edge that it measures from is only assumed. */
    @Test
    void anOverhangThatIsNotStatedIsToldBesideTheSchedule() throws IOException {
        Design d = read(starter("octagon-17").remove("kiln.floor.overhang"));
        assertThat(HoleSchedule.csv(check(d), KilnGeometry.of(d)).lines().filter(l -> l.contains(",floor,")))
                .isNotEmpty()
                .allMatch(l -> l.contains("its overhang is not stated and taken as 0: measure it"));
    }
}
