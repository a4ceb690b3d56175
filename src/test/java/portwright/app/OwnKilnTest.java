package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Step;

/** A kiln that is none of the starters, from the chooser of New to the board. */
class OwnKilnTest {
    @TempDir
    Path home;

    private OpenWindow open;
    private Stage dialog;

    @BeforeEach
    void chooser() {
        Toolkit.run(() -> {
            open = OpenWindow.show(home, 1180, 720);
            Set<Window> before = Set.copyOf(Window.getWindows());
            open.shell().files().newDialog();
            dialog = (Stage) Window.getWindows().stream()
                    .filter(w -> !before.contains(w))
                    .findFirst()
                    .orElseThrow();
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> {
            dialog.close();
            open.close();
        });
    }

    private Parent root() {
        dialog.getScene().getRoot().applyCss();
        dialog.getScene().getRoot().layout();
        return dialog.getScene().getRoot();
    }

    private void press(String words) {
        root().lookupAll("*").stream()
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(b -> words.equals(b.getText()) || words.equals(b.getAccessibleText()))
                .findFirst()
                .orElseThrow()
                .fire();
    }

    private TextField field(String label) {
        return root().lookupAll(".text-field").stream()
                .map(TextField.class::cast)
                .filter(f -> label.equals(f.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    private void type(Map<String, String> values) {
        values.forEach((label, text) -> {
            field(label).setText(text);
            field(label).fireEvent(new javafx.event.ActionEvent());
        });
    }

    private Set<String> notes() {
        return root().lookupAll(".field-note").stream()
                .filter(Node::isVisible)
                .map(n -> ((Label) n).getText())
                .collect(Collectors.toSet());
    }

    @Test
    void aKilnOfItsOwnMeasuresLiesOnTheBoard() {
        Toolkit.run(() -> {
            press("A kiln of my own measures");
            press("Make this kiln");
            assertThat(notes()).contains("Write a name first: it stands on every sheet.");
            field("name of your kiln").setText("barn kiln");
            press("Make this kiln");
            assertThat(notes()).anyMatch(w -> w.startsWith("Missing."));
            type(Map.of(
                    "sides", "12",
                    "across flats inside", "23 inn",
                    "height inside", "27 in",
                    "wall thickness", "2 1/2 in",
                    "floor thickness", "64 mm",
                    "lid thickness", "2 1/2"));
            assertThat(field("lid thickness").getText()).isEqualTo("2 1/2 in");
            press("Make this kiln");
            assertThat(notes()).anyMatch(w -> w.contains("is no unit of length"));
            assertThat(dialog.isShowing()).isTrue();
            type(Map.of("across flats inside", "23 in"));
            press("Make this kiln");
            assertThat(dialog.isShowing()).isFalse();
            assertThat(open.doc().text().get("title")).contains("barn kiln");
            assertThat(open.doc().design().ports()).isEmpty();
            assertThat(open.doc().design().kiln().elements()).isNull();
            assertThat(open.doc().borrowed().starter()).isNull();
            assertThat(open.doc().unsaved()).isTrue();
            assertThat(open.view().step()).isEqualTo(Step.KILN);
            for (Step s : Step.values()) {
                open.view().go(s);
                open.view().layout();
            }
        });
    }

    /** The fields are built anew with another unit; the keys stay at its box and do not fall to the name. */
    @Test
    void afterChoosingUnitsTheNameIsNotChosen() {
        Toolkit.run(() -> {
            press("A kiln of my own measures");
            field("name of your kiln").setText("barn kiln");
            for (String box : new String[] {"units", "plan"}) {
                ComboBox<?> choice = box(box);
                choice.requestFocus();
                choice.getSelectionModel().select(choice.getSelectionModel().getSelectedIndex() == 0 ? 1 : 0);
                assertThat(dialog.getScene().getFocusOwner()).isSameAs(box(box));
            }
            assertThat(field("name of your kiln").getSelectedText()).isEmpty();
        });
    }

    private ComboBox<?> box(String label) {
        return root().lookupAll(".combo-box").stream()
                .map(n -> (ComboBox<?>) n)
                .filter(b -> label.equals(b.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }
}
