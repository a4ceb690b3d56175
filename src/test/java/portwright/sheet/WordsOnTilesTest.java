package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.drawing.Box;
import portwright.geometry.Circle;
import portwright.geometry.Pt;
import portwright.model.Design;

/** Words on the full-size sheets, read back from the file: each trim line says what to do, and the four sides' names cover nothing. */
class WordsOnTilesTest {
    static Stream<Arguments> everySecond() {
        List<Path> all = Prints.all();
        return IntStream.range(0, all.size())
                .filter(i -> i % 2 == 0)
                .mapToObj(i -> Arguments.of(all.get(i).getFileName().toString(), all.get(i)));
    }

    static Stream<Arguments> all() {
        return Prints.all().stream().map(p -> Arguments.of(p.getFileName().toString(), p));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everySecond")
    void wordsOnTiles(String name, Path file) throws IOException {
        List<PrintedPage> tiles = tiles(file);
        everyTrimLineSaysWhatToDo(tiles);
        namesOfTheSidesCoverNoOutlineAndNoCircle(name, tiles);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    @Tag("slow")
    void wordsOnTilesOfEveryDesign(String name, Path file) throws IOException {
        wordsOnTiles(name, file);
    }

    /** The narrowest paper that is common, and the longest words: both factors at full length. Base lines run down the band, so their end is the lower one. */
    @Test
    void wordsInTheBandEndAboveTheWarningSign() throws IOException {
        Design design = Prints.read(Prints.all().get(0));
        SheetOptions corrected = new SheetOptions(
                Paper.parse("letter"), SheetOptions.Part.FLOOR, SheetOptions.Side.COLD, 1.0081, 1.0081, true);
        double signTop = Frame.MARGIN + 7.2 + 9 / 2.0;
        int seen = 0;
        try (PDDocument d = Loader.loadPDF(Prints.print(design, corrected).pdf())) {
            for (PDPage p : d.getPages()) {
                for (PrintedPage.Run r : new PrintedPage(p).runs) {
                    if (r.words().startsWith("Measure both bars. Printer")) {
                        assertThat(r.words()).endsWith("× 1.0081 across, × 1.0081 down.");
                        assertThat(r.to().y()).isGreaterThan(signTop);
                        seen++;
                    }
                }
            }
        }
        assertThat(seen).isPositive();
    }

    private static List<PrintedPage> tiles(Path file) throws IOException {
        Design design = Prints.read(file);
        List<PrintedPage> out = new ArrayList<>();
        try (PDDocument d = Loader.loadPDF(
                Prints.print(design, SheetOptions.plain(Paper.parse("a4"))).pdf())) {
            for (PDPage p : d.getPages()) {
                PrintedPage page = new PrintedPage(p);
                if (page.words.containsKey("real burner first")) {
                    out.add(page);
                }
            }
        }
        return out;
    }

    /** A sheet has two marks on each seam; half of the seams, its left and upper ones, are cut, at the others the neighbour goes over. */
    private static void everyTrimLineSaysWhatToDo(List<PrintedPage> tiles) {
        int cuts = 0;
        int overs = 0;
        int seams = 0;
        for (PrintedPage p : tiles) {
            long marks = p.words.keySet().stream()
                    .filter(w -> w.matches("[FLW]\\d*U?-[A-Z]+\\d+·[A-Z]+\\d+ a"))
                    .count();
            long cut = count(p, "cut on this line, lay over ");
            long over = count(p, " goes over up to this line");
            assertThat(cut + over).isEqualTo(marks);
            cuts += (int) cut;
            overs += (int) over;
            seams += (int) marks;
        }
        assertThat(cuts).isEqualTo(overs).isEqualTo(seams / 2).isPositive();
    }

    private static long count(PrintedPage p, String words) {
        return p.words.keySet().stream().filter(w -> w.contains(words)).count();
    }

    private static void namesOfTheSidesCoverNoOutlineAndNoCircle(String name, List<PrintedPage> tiles) {
        int boxes = 0;
        int sheets = 0;
        for (PrintedPage p : tiles) {
            sheets++;
            for (Map.Entry<String, Pt> w : p.words.entrySet()) {
                if (!w.getKey().matches(".* [↑↓]")) {
                    continue;
                }
                Box box = p.polygons.stream()
                        .filter(q -> q.size() == 4)
                        .map(Box::around)
                        .filter(b -> b.contains(w.getValue()) && b.width() < 80 && b.height() < 80)
                        .min(java.util.Comparator.comparingDouble(b -> b.width() * b.height()))
                        .orElseThrow();
                boxes++;
                String what = name + ": " + w.getKey() + " at " + w.getValue();
                for (List<Pt> q : p.polygons) {
                    for (int i = 0; i < q.size() && !Box.around(q).equals(box); i++) {
                        assertThat(box.clip(q.get(i), q.get((i + 1) % q.size())))
                                .as(what)
                                .isNull();
                    }
                }
                for (Circle c : p.strokedCircles) {
                    assertThat(runsThrough(box, c)).as(what + ", circle " + c).isFalse();
                }
            }
        }
        assertThat(boxes).as("names on %d sheets", sheets).isEqualTo(4 * sheets);
    }

    private static boolean runsThrough(Box b, Circle c) {
        double dx = Math.max(0, Math.max(b.minX() - c.centre().x(), c.centre().x() - b.maxX()));
        double dy = Math.max(0, Math.max(b.minY() - c.centre().y(), c.centre().y() - b.maxY()));
        double far = b.corners().stream()
                .mapToDouble(p -> p.distance(c.centre()))
                .max()
                .orElseThrow();
        return Math.hypot(dx, dy) <= c.radius() && far >= c.radius();
    }
}
