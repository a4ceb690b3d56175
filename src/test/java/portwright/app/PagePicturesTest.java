package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pictures of the pages show what window and paper show today. */
class PagePicturesTest {
    private static final String HOW =
            "stale pictures: mvn -B -ntp -Ppage-pictures process-test-classes makes them anew";

    @TempDir
    Path work;

    @Test
    void ofTheWindow() throws IOException {
        assertThat(kept()).as(HOW).containsAll(lines(PagePictures.window(work, false)));
    }

    @Test
    void ofPaper() throws IOException {
        assertThat(kept()).as(HOW).containsAll(lines(PagePictures.paper(work, false)));
    }

    /** Every picture has its line, every line its picture, and a page that shows it. */
    @Test
    void eachIsShown() throws IOException {
        List<String> names =
                kept().stream().map(l -> l.substring(0, l.indexOf(' '))).toList();
        try (var files = Files.list(PagePictures.FOLDER)) {
            assertThat(files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".png")))
                    .containsExactlyInAnyOrderElementsOf(names);
        }
        String pages = Files.readString(Path.of("README.md")) + Files.readString(Path.of("src/docs/proposing.md"));
        assertThat(names).allSatisfy(n -> assertThat(pages).contains("pictures/" + n));
    }

    private static List<String> kept() throws IOException {
        return Files.readAllLines(PagePictures.SHOWN);
    }

    private static List<String> lines(java.util.Map<String, String> shown) {
        return shown.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .toList();
    }
}
