package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.drawing.Box;
import portwright.drawing.Labels;
import portwright.drawing.PartLook;
import portwright.drawing.SectionPainter;
import portwright.drawing.UnrolledWalls;
import portwright.geometry.KilnGeometry;

class PicturesTest {
    static List<Path> designs() {
        return Prints.all();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void sectionAndUnrolledWallsPaintOnAnyPen(Path file) throws java.io.IOException {
        KilnGeometry kiln = KilnGeometry.of(Prints.read(file));
        try (PDDocument d = new PDDocument()) {
            StringBuilder svg = new StringBuilder();
            SvgPen pen = new SvgPen(svg, new Fonts(d), 0, 0);
            SectionPainter section = new SectionPainter(kiln);
            Box window = section.bounds();
            section.shapes(pen, window);
            section.names(pen, new Labels(pen, window));
            for (boolean hot : new boolean[] {true, false}) {
                UnrolledWalls walls = new UnrolledWalls(kiln, hot, List.of(), PartLook.full(25));
                Box b = walls.bounds();
                assertThat(b.width()).isGreaterThan(kiln.inner().perimeter() - 1);
                walls.under(pen, b, null);
                walls.over(pen, b, null);
            }
            assertThat(svg).contains("<circle", "cut-brick").doesNotContain("NaN");
        }
    }
}
