package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.model.Design;

/** Every named paper and large typed ones keep 12 mm of margin, also where the first sheet is a block that is cut off. */
class MarginsTest {
    private static final String CUT = "cut off and keep with the kiln's papers";

    static Stream<String> papers() {
        return Stream.concat(
                Paper.named().stream().map(Paper::name),
                Stream.of(
                        "420x594mm",
                        "520x541mm",
                        "500x560mm",
                        "521x540mm",
                        "521x300mm",
                        "700x500mm",
                        "521x541mm",
                        "900x1200mm"));
    }

    @ParameterizedTest
    @MethodSource("papers")
    void everyPageKeepsThem(String name) throws IOException {
        Design design = Prints.read(Prints.club());
        Paper paper = Paper.parse(name);
        byte[] pdf = Prints.print(design, SheetOptions.plain(paper)).pdf();
        try (PDDocument d = Loader.loadPDF(pdf)) {
            for (int i = 0; i < d.getNumberOfPages(); i++) {
                PrintedPage p = new PrintedPage(d.getPage(i));
                p.keepsItsMargins(paper, "club page " + (i + 1));
                boolean block = i == 0 && (paper.widthMm() > 520 || paper.heightMm() > 540);
                assertThat(p.words.containsKey(CUT)).as("page " + (i + 1)).isEqualTo(block);
            }
        }
    }
}
