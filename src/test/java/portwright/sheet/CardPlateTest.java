package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.file.Starters;
import portwright.geometry.Circle;
import portwright.model.Design;

/** The flue on the card is whole where the plate is set, and as large as the card calls it. Diameters are the design's own; one inch is 25.4 mm. */
class CardPlateTest {
    private static final double DPI = 254;

    private static byte[] card(String starter, String diameter) {
        Design design = Starters.find(starter)
                .orElseThrow()
                .setText("ports[2].diameter", diameter)
                .read()
                .design();
        return FiringCard.print(
                        CardBuilder.of(Prints.nothingFound(design), design, CardForecast.of(Prints.review(design))),
                        Paper.parse("a4"),
                        ContentMark.of(design),
                        true)
                .pdf();
    }

    @ParameterizedTest
    @CsvSource({"octagon-17, 1 7/8 in, 47.625", "octagon-17, 58 mm, 58", "octagon-17, 2 1/2 in, 63.5"})
    void wholeAndAtFullSize(String starter, String diameter, double mm) throws IOException {
        try (PDDocument d = Loader.loadPDF(card(starter, diameter))) {
            assertThat(d.getNumberOfPages()).isEqualTo(2);
            PrintedPage p = new PrintedPage(d.getPage(0));
            Circle flue = flue(p);
            assertThat(2 * flue.radius()).isEqualTo(mm, within(0.05));
            assertThat(p.words.keySet()).anyMatch(w -> w.contains("full size") && !w.contains("NOT"));
            inkAllRound(d, flue);
        }
    }

    /** The largest flue of a starter, 2 in. */
    @Test
    void theLargestOfTheStarters() throws IOException {
        try (PDDocument d = Loader.loadPDF(card("dodecagon-28", "2 in"))) {
            Circle flue = flue(new PrintedPage(d.getPage(0)));
            assertThat(2 * flue.radius()).isEqualTo(50.8, within(0.05));
            inkAllRound(d, flue);
        }
    }

    @Test
    void tooWideForFullSizeIsWholeAndNotCalledSo() throws IOException {
        try (PDDocument d = Loader.loadPDF(card("octagon-17", "100 mm"))) {
            PrintedPage p = new PrintedPage(d.getPage(0));
            assertThat(2 * flue(p).radius()).isLessThan(70);
            assertThat(p.words.keySet())
                    .anyMatch(w -> w.contains("NOT full size"))
                    .anyMatch(w -> w.startsWith("Too wide to draw at full size."))
                    .noneMatch(w -> w.startsWith("Measure it"))
                    .contains("90");
            inkAllRound(d, flue(p));
        }
    }

    private static Circle flue(PrintedPage p) {
        return p.strokedCircles.stream()
                .filter(c -> c.radius() > 20)
                .findFirst()
                .orElseThrow();
    }

    /** As rendered: dark on the rim at every 15 degrees. */
    private static void inkAllRound(PDDocument d, Circle c) throws IOException {
        BufferedImage seen = new PDFRenderer(d).renderImageWithDPI(0, (float) DPI);
        for (int deg = 0; deg < 360; deg += 15) {
            double a = Math.toRadians(deg);
            double x = c.centre().x() + c.radius() * Math.cos(a);
            double y = 297 - c.centre().y() - c.radius() * Math.sin(a);
            int rgb = seen.getRGB((int) Math.round(x * DPI / 25.4), (int) Math.round(y * DPI / 25.4));
            assertThat(rgb & 0xff).as("at " + deg + " degrees").isLessThan(128);
        }
    }
}
