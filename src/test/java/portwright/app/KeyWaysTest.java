package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.board.Board;
import portwright.app.doc.Document;
import portwright.app.doc.Step;
import portwright.app.frame.MainView;
import portwright.app.part.FieldBox;
import portwright.geometry.Hole;
import portwright.geometry.Pt;

/** Where the keys go: round the regions, back to the board, and on from a thing that is gone. */
class KeyWaysTest {
    @TempDir
    Path folder;

    private Document doc;
    private MainView view;
    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(folder.resolve("home"), 1180, 720);
            doc = open.doc();
            view = open.view();
            view.go(Step.PORTS);
            view.applyCss();
            view.layout();
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private Node owner() {
        return open.stage().getScene().getFocusOwner();
    }

    private Board board() {
        return view.board();
    }

    private void key(KeyCode code, boolean shift) {
        EventTarget to = owner() == null ? view : owner();
        Event.fireEvent(to, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
    }

    @Test
    void f6GoesRoundTheRegionsAndShiftF6Back() {
        Toolkit.run(() -> {
            board().requestFocus();
            List<Node> round = new ArrayList<>();
            do {
                round.add(owner());
                key(KeyCode.F6, false);
            } while (owner() != board() && round.size() < 12);
            assertThat(owner()).isSameAs(board());
            Set<Node> each = new HashSet<>(round);
            assertThat(each).hasSameSizeAs(round).hasSizeBetween(4, 6);
            key(KeyCode.F6, true);
            assertThat(owner()).isSameAs(round.get(round.size() - 1));
        });
    }

    /** Keys in a form that goes with its port go to the board and not to the first button of the window. */
    @Test
    void keysOfAThingThatIsGoneGoToTheBoard() {
        Toolkit.run(() -> field().requestFocus());
        Toolkit.run(() -> assertThat(owner()).isInstanceOf(TextField.class));
        Toolkit.run(() -> board().press("delete"));
        Toolkit.until(() -> owner() == board());
    }

    @Test
    void escapeInAFieldPutsTheWordsBackAndGoesToTheBoard() {
        Toolkit.run(() -> {
            TextField f = field();
            String was = f.getText();
            f.requestFocus();
            f.setText("9 kg");
            key(KeyCode.ESCAPE, false);
            assertThat(f.getText()).isEqualTo(was);
            assertThat(owner()).isSameAs(board());
            String name = doc.design().ports().get(0).name();
            doc.select(name);
            double x = doc.shapes().geometry().holes().get(0).centre().x();
            key(KeyCode.RIGHT, false);
            assertThat(doc.shapes().geometry().holes().get(0).centre().x()).isGreaterThan(x);
        });
    }

    /** From hole to hole the distance is that of the centres, and less both radii from edge to edge. */
    @Test
    void measuringSaysWhatItWaitsForAndEndsByEscape() {
        Toolkit.run(() -> {
            board().requestFocus();
            board().press("measure");
            assertThat(band()).isTrue();
            assertThat(board().measureWords()).contains("Tap the first point");
            List<Hole> holes = doc.shapes().geometry().holes();
            tap(holes.get(0));
            assertThat(board().measureWords()).contains("Tap the second point");
            tap(holes.get(1));
            assertThat(board().measureWords()).contains("edge to edge", "Tap to go on");
            key(KeyCode.TAB, false);
            assertThat(board().measureWords()).contains("centre to centre");
            key(KeyCode.ESCAPE, false);
            assertThat(board().measuring()).isFalse();
            assertThat(band()).isFalse();
        });
    }

    private boolean band() {
        return view.lookupAll(".mode-band").stream()
                .anyMatch(n -> n.isVisible() && !((Label) n).getText().isEmpty());
    }

    private void tap(Hole h) {
        Pt p = board().canvasPoint(h.face(), h.centre());
        Mouse.send(board(), MouseEvent.MOUSE_PRESSED, p.x(), p.y(), false);
        Mouse.send(board(), MouseEvent.MOUSE_RELEASED, p.x(), p.y(), false);
    }

    /** A text field of the chosen port, shown. */
    private TextField field() {
        view.go(Step.PORTS);
        doc.select(doc.design().ports().get(0).name());
        view.applyCss();
        view.layout();
        return view.lookupAll(".text-field").stream()
                .filter(n -> n instanceof TextField && inField(n) && n.isVisible() && !n.isDisabled())
                .map(TextField.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static boolean inField(Node n) {
        for (Node x = n; x != null; x = x.getParent()) {
            if (x instanceof FieldBox) {
                return true;
            }
        }
        return false;
    }
}
