package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.HomeFolder;

/** The kiln that was open last is offered beside the example of a fresh window. */
class LastKilnTest {
    @TempDir
    Path home;

    private static List<String> words(OpenWindow w) {
        return w.view().messages().lookupAll(".label").stream()
                .filter(Label.class::isInstance)
                .map(n -> ((Labeled) n).getText())
                .toList();
    }

    private void inWindow(Consumer<OpenWindow> look) {
        Toolkit.run(() -> {
            OpenWindow w = OpenWindow.show(home, 1180, 720);
            w.shell().files().firstStart("decagon-23");
            w.view().applyCss();
            w.view().layout();
            look.accept(w);
            w.close();
        });
    }

    private Path kiln(String name) throws IOException {
        Path file = home.resolve(name);
        Files.copy(Path.of("templates", "hexagon-27cm.json"), file);
        new HomeFolder(home).opened(file);
        return file;
    }

    @Test
    void theNewestFileIsOfferedAndOpens() throws IOException {
        kiln("older.json");
        kiln("shed.json");
        inWindow(w -> {
            assertThat(words(w)).contains("Your last kiln").anyMatch(t -> t.startsWith("shed.json, in "));
            w.view().messages().lookupAll(".plain-button").stream()
                    .map(Button.class::cast)
                    .filter(b -> b.getText().equals("Open it"))
                    .findFirst()
                    .orElseThrow()
                    .fire();
            assertThat(w.shell().files().words()).startsWith("shed.json");
            assertThat(words(w)).doesNotContain("Your last kiln");
        });
    }

    @Test
    void nothingIsOfferedWhereNoFileWasOpenedOrItIsGone() throws IOException {
        inWindow(w -> assertThat(words(w)).doesNotContain("Your last kiln"));
        Files.delete(kiln("gone.json"));
        inWindow(w -> assertThat(words(w)).doesNotContain("Your last kiln"));
    }
}
