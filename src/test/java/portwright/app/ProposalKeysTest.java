package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.board.Board;
import portwright.app.doc.Step;
import portwright.form.RuleWords;

/** Whoever asks for places by the keyboard goes on from the proposals, and from the board once one is taken. */
class ProposalKeysTest {
    @TempDir
    Path home;

    @Test
    void theKeysStayWithTheProposals() throws InterruptedException {
        AtomicReference<OpenWindow> open = new AtomicReference<>();
        Toolkit.run(() -> {
            open.set(OpenWindow.show(home, 1180, 720));
            open.get().view().go(Step.PORTS);
        });
        OpenWindow w = open.get();
        press(w, "Propose places");
        Toolkit.run(() -> assertThat(words(owner(w))).isEqualTo("Cancel"));
        AtomicReference<Boolean> there = new AtomicReference<>(false);
        for (int i = 0; i < 3000 && !there.get(); i++) {
            Thread.sleep(50);
            Toolkit.run(() -> there.set(find(w.stage().getScene().getRoot(), "Take proposal 1") != null));
        }
        Toolkit.run(() -> assertThat(words(owner(w))).isEqualTo("Take proposal 1"));
        Toolkit.run(() -> assertThat(w.stage().getScene().getRoot().lookupAll(".proposal .label"))
                .hasSizeGreaterThan(4)
                .allSatisfy(n -> {
                    String text = ((Label) n).getText();
                    assertThat(RuleWords.inWords(text)).as("no ids of rules").isEqualTo(text);
                    assertThat(n.getStyleClass()).doesNotContain("muted", "small", "slip-text");
                }));
        press(w, "Take proposal 1");
        Toolkit.run(() -> assertThat(owner(w)).isInstanceOf(Board.class));
        Toolkit.run(w::close);
    }

    private static void press(OpenWindow w, String words) {
        Toolkit.run(() -> {
            Button b = find(w.stage().getScene().getRoot(), words);
            b.requestFocus();
            b.fire();
        });
    }

    private static Node owner(OpenWindow w) {
        return w.stage().getScene().getFocusOwner();
    }

    private static String words(Node n) {
        return n instanceof Button b ? b.getText() : String.valueOf(n);
    }

    private static Button find(Node n, String words) {
        if (n instanceof Button b && words.equals(b.getText())) {
            return b;
        }
        if (n instanceof Parent p) {
            for (Node c : p.getChildrenUnmodifiable()) {
                Button b = find(c, words);
                if (b != null) {
                    return b;
                }
            }
        }
        return null;
    }
}
