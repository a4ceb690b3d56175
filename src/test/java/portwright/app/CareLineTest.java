package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.app.doc.Care;
import portwright.app.doc.Step;
import portwright.data.Caution;
import portwright.data.LocalCodes;

/** Every screen that could lead to drilling or lighting says what matters there, whose word comes first, and leads to all cautions. */
class CareLineTest {
    @TempDir
    Path home;

    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> open = OpenWindow.show(home, 1180, 720));
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private void lay() {
        for (int i = 0; i < 3; i++) {
            Toolkit.run(() -> {
                open.stage().getScene().getRoot().applyCss();
                open.stage().getScene().getRoot().layout();
            });
        }
    }

    private static String words(Node line) {
        return ((TextFlow) line.lookup(".text-flow-of-care"))
                .getChildren().stream()
                        .map(n -> ((Text) n).getText())
                        .collect(Collectors.joining())
                        .replace('\u00a0', ' ');
    }

    private static void carries(Node line, Care care) {
        assertThat(words(line)).contains(care.caution().text()).endsWith(LocalCodes.FIRST);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2})
    void everyStepCarriesItWholeInTheSmallestWindow(double size) {
        Toolkit.run(() -> open.shell().size(size));
        for (Step s : Step.values()) {
            Toolkit.run(() -> open.view().go(s));
            lay();
            Toolkit.run(() -> {
                Node line = open.view().lookup(".care-line");
                carries(line, Care.of(s));
                Bounds all = line.localToScene(line.getLayoutBounds());
                assertThat(all.getMaxY()).as(s.word()).isLessThanOrEqualTo(720.5);
                for (Node n : List.of(line.lookup(".text-flow-of-care"), line.lookup(".care-button"))) {
                    Bounds b = n.localToScene(n.getBoundsInLocal());
                    assertThat(b.getMinY()).as(s.word()).isGreaterThanOrEqualTo(all.getMinY() - 0.5);
                    assertThat(b.getMaxY()).as(s.word()).isLessThanOrEqualTo(all.getMaxY() + 0.5);
                    assertThat(b.getMaxX()).as(s.word()).isLessThanOrEqualTo(1180.5);
                }
            });
        }
    }

    private Stage opened(Runnable by) {
        Set<Window> before = Set.copyOf(Window.getWindows());
        by.run();
        Stage stage = (Stage) Window.getWindows().stream()
                .filter(w -> !before.contains(w))
                .findFirst()
                .orElseThrow();
        Parent root = stage.getScene().getRoot();
        root.applyCss();
        root.layout();
        return stage;
    }

    @Test
    void itsButtonShowsAllCautions() {
        Toolkit.run(() -> {
            Stage safety = opened(() -> ((Button) open.view().lookup(".care-button")).fire());
            Set<String> shown = safety.getScene().getRoot().lookupAll(".slip-text").stream()
                    .map(n -> ((Label) n).getText())
                    .collect(Collectors.toSet());
            assertThat(shown).contains(LocalCodes.before("this window"));
            assertThat(shown)
                    .containsAll(Caution.all().stream().map(Caution::text).toList());
            safety.close();
        });
    }

    @Test
    void theChooserOfANewKilnCarriesIt() {
        Toolkit.run(() -> {
            Stage dialog = opened(() -> open.shell().files().newDialog());
            carries(dialog.getScene().getRoot().lookup(".care-line"), Care.NEW_KILN);
            dialog.close();
        });
    }

    @Test
    void theKeysCarryIt() {
        Toolkit.run(() -> {
            Stage keys = opened(() -> open.view()
                    .fireEvent(new javafx.scene.input.KeyEvent(
                            javafx.scene.input.KeyEvent.KEY_PRESSED,
                            "",
                            "",
                            javafx.scene.input.KeyCode.F1,
                            false,
                            false,
                            false,
                            false)));
            carries(keys.getScene().getRoot().lookup(".care-line"), Care.KEYS);
            keys.close();
        });
    }

    /** A kiln of its own measures: from every step to the list of what is missing. */
    @Test
    void whatIsMissingIsOnePressAway() {
        Toolkit.run(() -> {
            open.view().go(Step.ROOM);
            assertThat(missing()).isEmpty();
            open.doc().edit("no elements", t -> t.remove("kiln.elements"));
            open.view().go(Step.GAS);
            assertThat(missing()).hasSize(1);
            missing().get(0).fire();
            assertThat(open.view().step()).isEqualTo(Step.PAPER);
            assertThat(missing()).isEmpty();
        });
    }

    private List<Button> missing() {
        return open.view().lookupAll(".plain-button").stream()
                .map(Button.class::cast)
                .filter(b -> b.getText() != null && b.getText().endsWith("still missing: show the list"))
                .filter(b -> b.getParent().isVisible())
                .toList();
    }

    /** Pages that lead to a drill or a flame say it too. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "README.md",
                "src/docs/guide.md",
                "src/docs/proposing.md",
                "src/docs/proposals.md",
                "src/docs/common-practice.md"
            })
    void pagesSayIt(String page) throws IOException {
        assertThat(Files.readString(Path.of(page)).replaceAll("\\s+", " ")).contains(LocalCodes.FIRST);
    }
}
