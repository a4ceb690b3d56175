package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.data.Caution;
import portwright.model.Design;
import portwright.review.Figures;
import portwright.review.StepTravel;
import portwright.source.Source;

class FiringCardTest {
    private final Design club = Prints.read(Prints.club());
    private final ContentMark mark = ContentMark.of(club);
    private final Paper a4 = Paper.parse("a4");

    private CardData data(CheckResult result) {
        return CardBuilder.of(
                result,
                club,
                new CardBuilder.Computed(
                        List.of(
                                new StepTravel(1, "heavy", 14.8, 16.2, 11, 24.4),
                                new StepTravel(3, "medium", 16.6, 17, 12, 26)),
                        ""));
    }

    private PrintedPage page(byte[] pdf) throws IOException {
        try (PDDocument d = Loader.loadPDF(pdf)) {
            assertThat(d.getNumberOfPages()).isEqualTo(1);
            return new PrintedPage(d.getPage(0));
        }
    }

    @Test
    void onePageWithTheFlueAtFullSizeAndTwelveRows() throws IOException {
        byte[] pdf = FiringCard.print(data(Prints.nothingFound(club)), a4, mark, false);
        assertThat(pdf).isEqualTo(FiringCard.print(data(Prints.nothingFound(club)), a4, mark, false));
        PrintedPage p = page(pdf);
        assertThat(p.strokedCircles).anyMatch(c -> Math.abs(2 * c.radius() - 38.1) < 0.05);
        assertThat(p.words)
                .containsKeys(
                        "15–16", "17", "16 mm (11–24)", "Flame goes out", "The alarm sounds", "Temperature falls");
        List<Double> levels = new ArrayList<>();
        p.lines.stream()
                .filter(l -> Math.abs(l.a().y() - l.b().y()) < 1e-4
                        && Math.abs(l.length() - (210 - 24.8)) < 0.01
                        && l.a().y() < 110)
                .forEach(l -> levels.add(l.a().y()));
        levels.sort(null);
        List<Double> table =
                levels.stream().filter(y -> y < p.words.get("clock").y() + 5).toList();
        assertThat(table).hasSizeGreaterThanOrEqualTo(14);
        for (int i = 1; i < table.size(); i++) {
            assertThat(table.get(i) - table.get(i - 1)).isGreaterThanOrEqualTo(7 - 1e-6);
        }
        for (double e : new double[] {p.extent[0], p.extent[1], 210 - p.extent[2], 297 - p.extent[3]}) {
            assertThat(e).isGreaterThanOrEqualTo(12);
        }
    }

    /** Every hazard that SAFETY.md marks for the card is on it when every rule finds something; without findings only those that no rule computes. */
    @Test
    void cautionsOfTheCommonListStandOnTheOnePage() throws IOException {
        CheckResult all = with(Caution.forCard().stream()
                .flatMap(c -> c.rules().stream())
                .distinct()
                .toList());
        for (String s : List.of("a4", "letter")) {
            PrintedPage p = page(FiringCard.print(data(all), Paper.parse(s), mark, true));
            assertThat(p.extent[1]).as(s).isGreaterThanOrEqualTo(12);
            assertThat(p.words.get("clock").y()).as(s).isGreaterThan(40);
            String words = String.join(" ", p.words.keySet());
            assertThat(Caution.forCard())
                    .allSatisfy(c -> assertThat(words).as(c.id()).contains(c.card()));
        }
        assertThat(data(with(List.of())).cautions())
                .extracting(CardData.Caution::words)
                .contains("Power cut: shut gas by hand.")
                .doesNotContain("Cylinder frosts: change it.");
    }

    private static final Figures FIGURES =
            Prints.review(Prints.read(Prints.club())).figures();

    private CheckResult with(List<String> rules) {
        CheckResult r = Prints.nothingFound(club);
        return new CheckResult(
                r.title(),
                r.drilling(),
                r.lighting(),
                rules.stream()
                        .map(id -> new Finding(
                                id,
                                Severity.CAUTION,
                                Forbids.LIGHTING,
                                List.of(),
                                null,
                                null,
                                "found",
                                "",
                                Source.judgement("a test"),
                                false,
                                List.of()))
                        .toList(),
                List.of(),
                List.of(),
                FIGURES);
    }

    @Test
    void nothingUnprovenIsLit() throws IOException {
        CheckResult r = new CheckResult(
                club.title(),
                Verdict.CLEAR,
                Verdict.INCOMPLETE,
                List.of(),
                List.of(new NotChecked("room-co", List.of("room.place"), Forbids.LIGHTING)),
                List.of(),
                null);
        assertThatThrownBy(() -> FiringCard.print(data(r), a4, mark, false))
                .isInstanceOf(SheetRefused.class)
                .hasMessageContaining("room-co");
        assertThat(page(FiringCard.print(data(r), a4, mark, true)).words).containsKey("NOT CHECKED: DO NOT LIGHT");
    }

    @Test
    void otherPapersHoldItToo() throws IOException {
        for (String s : List.of("letter", "legal", "a3", "tabloid")) {
            PrintedPage p = page(FiringCard.print(data(Prints.nothingFound(club)), Paper.parse(s), mark, false));
            assertThat(p.extent[0]).as(s).isGreaterThanOrEqualTo(12);
            assertThat(p.extent[1]).as(s).isGreaterThanOrEqualTo(12);
            assertThat(p.extent[2]).as(s).isLessThanOrEqualTo(Paper.parse(s).widthMm() - 12);
        }
    }
}
