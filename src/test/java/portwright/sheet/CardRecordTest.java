package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogParser;
import portwright.file.Starters;
import portwright.model.Design;

/** What is copied off the card's record, with the names that stand over its columns, is read as a log. */
class CardRecordTest {
    static List<String> gasStarters() {
        return LightingOnBothPapersTest.gasStarters();
    }

    @ParameterizedTest
    @MethodSource("gasStarters")
    void itsOwnNamesAreALogsHeader(String name) throws IOException {
        Design d = Starters.find(name).orElseThrow().read().design();
        CardData card = CardBuilder.of(Prints.nothingFound(d), d, CardForecast.none());
        byte[] pdf = FiringCard.print(card, Paper.parse("a4"), ContentMark.of(d), true)
                .pdf();
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            PrintedPage back = new PrintedPage(doc.getPage(doc.getNumberOfPages() - 1));
            double line = back.words.get("clock").y();
            String header = String.join(
                    ",",
                    Stream.of(back.runs)
                            .flatMap(List::stream)
                            .filter(r -> Math.abs(r.from().y() - line) < 0.1)
                            .sorted((a, b) ->
                                    Double.compare(a.from().x(), b.from().x()))
                            .map(PrintedPage.Run::words)
                            .distinct()
                            .toList());
            assertThat(header).startsWith("clock,meter °").contains(",plate mm,gas ");
            FiringLog log = LogParser.parse(header + "\n9:00,20,,0,off,,,\n10:00,900,06,15,12,soft,30,lit\n");
            assertThat(log.faults()).as(header).isEmpty();
            assertThat(log.rows().get(1).gasPa()).as(header).isGreaterThan(12 * 99);
            assertThat(log.rows().get(1).damperM()).isEqualTo(0.015);
            assertThat(log.rows().get(1).cone()).isEqualTo("06");
            assertThat(log.rows().get(1).note()).isEqualTo("lit");
        }
    }
}
