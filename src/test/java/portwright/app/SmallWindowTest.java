package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Step;

/** A window as tight as 1440 × 900 at 150 %, with no room for the side beside the board: fields and findings are a plain button away. */
class SmallWindowTest {
    private static final double HIGH = 750;

    @TempDir
    Path home;

    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(home, 1200, HIGH);
            open.shell().size(1.25);
        });
        lay();
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

    private Node side() {
        return open.view().lookup(".side-scroll");
    }

    private Button bar() {
        return (Button) open.view().lookup(".drawer-bar");
    }

    private static Bounds seen(Node n) {
        return n.localToScene(n.getLayoutBounds());
    }

    private void press(KeyCode code) {
        Node owner = open.stage().getScene().getFocusOwner();
        Event.fireEvent(owner, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
    }

    @Test
    void aBarUnderTheBoardOpensAndShutsTheSideOnEveryStep() {
        for (Step s : Step.values()) {
            Toolkit.run(() -> open.view().go(s));
            lay();
            Toolkit.run(() -> {
                assertThat(side().isVisible()).as(s.word()).isFalse();
                assertThat(bar().isVisible()).isTrue();
                assertThat(seen(bar()).getMaxY()).isLessThan(HIGH);
                assertThat(seen(bar()).getHeight()).isGreaterThan(36);
                bar().fire();
            });
            lay();
            Toolkit.run(() -> {
                assertThat(side().isVisible()).as(s.word()).isTrue();
                assertThat(seen(side()).getMaxY())
                        .isLessThanOrEqualTo(seen(bar()).getMinY());
                assertThat(seen(side()).getWidth()).isLessThan(0.4 * 1200);
                assertThat(seen(side()).getHeight()).isGreaterThan(200);
                assertThat(bar().isVisible()).isTrue();
                bar().fire();
            });
            lay();
            Toolkit.run(() -> assertThat(side().isVisible()).isFalse());
        }
    }

    @Test
    void theKeyOpensItPutsTheKeysThereAndShutsIt() {
        Toolkit.run(() -> {
            open.view().board().requestFocus();
            press(KeyCode.F2);
            assertThat(side().isVisible()).isTrue();
            assertThat(in(side())).isTrue();
            press(KeyCode.F2);
            assertThat(side().isVisible()).isFalse();
            assertThat(open.view().board().isFocused()).isTrue();
        });
    }

    private boolean in(Node box) {
        for (Node n = open.stage().getScene().getFocusOwner(); n != null; n = n.getParent()) {
            if (n == box) {
                return true;
            }
        }
        return false;
    }

    /** What a killed program left behind must be seen without a search for it. */
    @Test
    void leftWorkOpensTheSideByItself() throws IOException {
        Path copies = Files.createDirectories(home.resolve("recovery"));
        String text = open.doc().text().toText();
        Files.writeString(copies.resolve("999999999-w.design"), "\n" + text);
        Toolkit.run(() -> open.shell().files().offerLeftWork());
        lay();
        Toolkit.run(() -> {
            assertThat(side().isVisible()).isTrue();
            Button drop = open.view().messages().lookupAll(".plain-button").stream()
                    .map(Button.class::cast)
                    .filter(b -> b.getText().equals("Open it"))
                    .findFirst()
                    .orElseThrow();
            assertThat(seen(drop).getMinY()).isGreaterThan(seen(side()).getMinY());
            assertThat(seen(drop).getMaxY()).isLessThanOrEqualTo(seen(side()).getMaxY());
        });
    }
}
