package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Document;
import portwright.app.frame.MainView;
import portwright.app.frame.Shell;
import portwright.file.DesignFile;
import portwright.file.Starters;

/** Two windows on one file: the second is told, and neither saves over the other's work unasked. */
class TwoWindowsTest {
    @TempDir
    Path folder;

    private final Window first = new Window();
    private final Window second = new Window();

    /** One window with what stands in its messages. */
    private final class Window {
        private OpenWindow open;
        private Document doc;
        private MainView view;
        private Stage stage;
        private Shell shell;

        private void show() {
            Toolkit.run(() -> {
                open = OpenWindow.show(folder.resolve("home"), 900, 600);
                doc = open.doc();
                view = open.view();
                stage = open.stage();
                shell = open.shell();
            });
        }

        private boolean says(String words) {
            view.messages().applyCss();
            view.messages().layout();
            return view.messages().lookupAll(".label").stream()
                    .anyMatch(n -> n instanceof Label l && l.getText().contains(words));
        }

        private void press(String button) {
            view.messages().applyCss();
            view.messages().layout();
            for (Node n : view.messages().lookupAll(".plain-button")) {
                if (n instanceof Button b && b.getText().equals(button)) {
                    b.fire();
                    return;
                }
            }
            throw new AssertionError("no button " + button);
        }

        private void title(String words) {
            doc.edit("title", t -> t.setText("title", words));
        }

        private void close() {
            if (open != null) {
                open.close();
            }
        }
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> {
            first.close();
            second.close();
        });
    }

    private static String saved(Path file) {
        try {
            return DesignFile.read(file).document().get("title").orElseThrow();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void theSecondIsToldAndNothingIsSavedOverUnasked() throws Exception {
        Path file = folder.resolve("kiln.json");
        DesignFile.save(file, Starters.find("octagon-17").orElseThrow());
        first.show();
        second.show();
        Toolkit.run(() -> {
            assertThat(first.shell.files().open(file)).isTrue();
            assertThat(first.says("open in another window")).isFalse();
            assertThat(second.shell.files().open(file)).isTrue();
            assertThat(second.says("open in another window")).isTrue();

            first.title("of the first window");
            assertThat(first.shell.files().save()).isTrue();
            second.title("of the second window");
            assertThat(second.shell.files().save())
                    .as("not over the other's work")
                    .isFalse();
            assertThat(second.says("The file changed on disk")).isTrue();
            assertThat(saved(file)).isEqualTo("of the first window");
            assertThat(second.doc.unsaved()).isTrue();

            second.press("Keep mine");
            assertThat(second.shell.files().save()).isTrue();
            assertThat(saved(file)).isEqualTo("of the second window");

            first.title("again the first");
            assertThat(first.shell.files().save()).isFalse();
            first.press("Take that one");
            assertThat(first.doc.text().get("title")).contains("of the second window");
        });
    }
}
