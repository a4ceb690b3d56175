package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.review.Review;

/** Words on the firing card, read back from the file: none lies over another, none is cut by an upright line, none is too small to read at the kiln. */
class WordsOnTheCardTest {
    private static final String TWELVE = """
            [{"to": "120 °C", "rate": "60 °C/h", "heat": "electric"},
             {"hold": "2 h 30 min", "heat": "electric"},
             {"to": "573 °C", "rate": "112.5 °C/h", "heat": "electric"},
             {"to": "cone 010", "rate": "150 °C/h", "heat": "electric"},
             {"to": "950 °C", "rate": "62.5 °C/h", "heat": "both", "ports": "open", "atmosphere": "heavy"},
             {"to": "1030 °C", "rate": "62.5 °C/h", "heat": "both", "ports": "open", "atmosphere": "medium"},
             {"to": "1100 °C", "rate": "55 °C/h", "heat": "both", "ports": "open", "atmosphere": "light"},
             {"to": "cone 6", "rate": "55 °C/h", "heat": "both", "ports": "open", "atmosphere": "neutral"},
             {"to": "cone 9", "rate": "45 °C/h", "heat": "both", "ports": "open", "atmosphere": "medium"},
             {"hold": "1 h 20 min", "heat": "both", "ports": "open", "atmosphere": "oxidizing"},
             {"hold": "10 min", "heat": "none", "ports": "open"},
             {"hold": "30 min", "heat": "electric"}]
            """;

    static List<String> starters() {
        return Starters.names();
    }

    private static Design starter(String name, String steps) throws IOException {
        DesignText t = Starters.find(name).orElseThrow();
        return (steps == null ? t : t.set("firing.steps", steps)).read().design();
    }

    /** The pages on both usual papers, so many at most on each; on A4 one more where the back has to tell what was not checked. */
    private static void readable(Design design, int a4, int letter) throws IOException {
        Review review = Review.of(design);
        CardData card = CardBuilder.of(new RuleBook(LimitTable.load()).check(review), design, CardForecast.of(review));
        int told = card.notChecked().isEmpty() ? 0 : 1;
        for (String paper : List.of("a4", "letter")) {
            byte[] pdf = FiringCard.print(card, Paper.parse(paper), ContentMark.of(design), true)
                    .pdf();
            try (PDDocument d = Loader.loadPDF(pdf)) {
                assertThat(d.getNumberOfPages()).as(paper).isLessThanOrEqualTo(paper.equals("a4") ? a4 + told : letter);
                for (int i = 0; i < d.getNumberOfPages(); i++) {
                    readable(new PrintedPage(d.getPage(i)));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyStarter(String name) throws IOException {
        readable(starter(name, null), 2, 2);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void twelveSteps(String name) throws IOException {
        readable(starter(name, TWELVE), 2, 3);
    }

    @Test
    void electricityAlone() throws IOException {
        String steps = "[{\"to\": \"cone 04\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"},"
                + "{\"hold\": \"1 h 20 min\", \"heat\": \"electric\"}]";
        readable(starter("octagon-17", steps), 2, 2);
    }

    /** How far two words set on near base lines run into each other, mm; nothing where they keep apart. */
    private static double overlap(PrintedPage.Run a, PrintedPage.Run b) {
        PrintedPage.Run high = a.from().y() >= b.from().y() ? a : b;
        PrintedPage.Run low = high == a ? b : a;
        double down = low.from().y() + 0.7 * low.sizeMm() - high.from().y();
        double along = Math.min(a.to().x(), b.to().x())
                - Math.max(a.from().x(), b.from().x());
        return Math.min(down, along);
    }

    /** Words set twice in one place have a white rim and may lie over a line; struck words lie over all. */
    private static void readable(PrintedPage page) {
        List<PrintedPage.Run> runs = page.runs.stream()
                .filter(r -> r.level() && !r.words().isBlank() && !r.words().contains("DO NOT LIGHT"))
                .distinct()
                .toList();
        assertThat(runs).hasSizeGreaterThan(10);
        for (int i = 0; i < runs.size(); i++) {
            PrintedPage.Run a = runs.get(i);
            assertThat(a.sizeMm()).as(a.words()).isGreaterThanOrEqualTo(2.6);
            for (PrintedPage.Run b : runs.subList(i + 1, runs.size())) {
                assertThat(overlap(a, b))
                        .as("mm by which \"%s\" lies over \"%s\"", a.words(), b.words())
                        .isLessThan(0.1);
            }
            if (Collections.frequency(page.runs, a) == 1) {
                assertThat(page.lines)
                        .as("upright lines through \"%s\"", a.words())
                        .noneMatch(l -> cuts(l, a));
            }
        }
    }

    private static boolean cuts(Segment line, PrintedPage.Run words) {
        double middle = words.from().y() + 0.35 * words.sizeMm();
        return Math.abs(line.a().x() - line.b().x()) < 1e-6
                && line.a().x() > words.from().x() + 0.1
                && line.a().x() < words.to().x() - 0.1
                && Math.min(line.a().y(), line.b().y()) < middle
                && Math.max(line.a().y(), line.b().y()) > middle;
    }
}
