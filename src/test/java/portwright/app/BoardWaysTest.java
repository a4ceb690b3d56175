package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.board.Board;
import portwright.app.doc.Picture;
import portwright.app.doc.Step;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.Role;

/** Ports reached and moved by keys, and what the side and the hints say of it, in the real toolkit. */
class BoardWaysTest {
    @TempDir
    Path folder;

    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> open = OpenWindow.show(folder.resolve("home"), 1180, 720));
        Toolkit.until(() -> !open.doc().checking());
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private Board board() {
        return open.view().board();
    }

    private void key(KeyCode code) {
        Node owner = open.stage().getScene().getFocusOwner();
        for (var type : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
            owner.fireEvent(new KeyEvent(type, "", "", code, false, false, false, false));
        }
    }

    private List<String> hints() {
        return open.view().lookupAll(".key-hint").stream()
                .filter(Node::isVisible)
                .flatMap(n -> n.lookupAll(".label").stream())
                .map(n -> ((Label) n).getText())
                .toList();
    }

    @Test
    void tabReachesTheBoardAndTheHintNamesTheKeyOfTheNextPort() {
        Toolkit.run(() -> {
            open.view().fileMenu().requestFocus();
            int tabs = 0;
            while (!board().isFocused() && tabs++ < 30) {
                key(KeyCode.TAB);
            }
            assertThat(board().isFocused()).isTrue();
            assertThat(hints()).contains("next port", "slide the drawing");
            key(KeyCode.PERIOD);
            assertThat(open.doc().selected())
                    .isEqualTo(open.doc().design().ports().get(0).name());
            assertThat(hints())
                    .contains("next port")
                    .doesNotContain("slide the drawing")
                    .anyMatch(w -> w.startsWith("nudge "));
        });
    }

    @Test
    void arrowsWithNothingChosenSlideTheDrawingAndChangeNothing() {
        Toolkit.run(() -> {
            board().requestFocus();
            Hole h = open.doc().shapes().geometry().holes().get(0);
            double before = board().canvasPoint(h.face(), h.centre()).x();
            key(KeyCode.RIGHT);
            assertThat(board().canvasPoint(h.face(), h.centre()).x()).isNotEqualTo(before);
            assertThat(open.doc().undoStack().size()).isZero();
        });
    }

    @Test
    void aPortChosenByKeyShowsItsTicketAndEnterGoesIntoItsFirstField() {
        Toolkit.run(() -> {
            open.view().layout();
            ((ScrollPane) open.view().lookup(".side-scroll")).setVvalue(1);
            board().requestFocus();
            key(KeyCode.PERIOD);
        });
        Toolkit.run(() -> {
            Node ticket = open.view().lookup(".side-scroll .ticket");
            assertThat(inSight(ticket)).isTrue();
            ((ScrollPane) open.view().lookup(".side-scroll")).setVvalue(1);
            key(KeyCode.ENTER);
            assertThat(open.stage().getScene().getFocusOwner()).isInstanceOf(TextField.class);
        });
        Toolkit.run(() ->
                assertThat(inSight(open.stage().getScene().getFocusOwner())).isTrue());
    }

    @Test
    void aKeyThatCanDoNothingSaysWhy() {
        Toolkit.run(() -> {
            int elements = open.doc().text().size("kiln.elements");
            open.doc().edit("room", t -> t.setText("kiln.height", "30 in"));
            open.doc().select(open.doc().design().kiln().elements().get(0).name());
            board().press("duplicate");
            assertThat(open.doc().text().size("kiln.elements")).isEqualTo(elements + 1);
            assertThat(board().measureWords()).isEmpty();
            board().press("mirror");
            assertThat(board().measureWords()).contains("not mirrored");
            assertThat(((Label) open.view().lookup(".mode-band")).isVisible()).isTrue();
            open.doc().select(null);
            assertThat(((Label) open.view().lookup(".mode-band")).isVisible()).isFalse();
        });
    }

    /** A part chosen on the drawing lies below what the Deleted note leaves of the side. */
    @Test
    void aRowChosenOnTheDrawingIsSeenOverTheDeletedNote() {
        Toolkit.run(() -> {
            board().requestFocus();
            key(KeyCode.PERIOD);
            key(KeyCode.DELETE);
            open.view().go(Step.KILN);
            open.doc().select(null);
            open.doc().edit("delete test", t -> t.remove("shelves"));
            open.view().layout();
            board().show(Picture.FLOOR_HOT);
            board().requestFocus();
            String last = open.doc().shapes().geometry().fittings().isEmpty()
                    ? null
                    : open.doc().shapes().geometry().fittings().get(0).name();
            open.doc().select(last);
        });
        Toolkit.run(() -> {
            Node row = open.view().stepView(Step.KILN).row();
            assertThat(row).isNotNull();
            assertThat(inSight(row)).isTrue();
        });
    }

    private boolean inSight(Node n) {
        Region side = (Region) open.view().lookup(".side-scroll");
        side.layout();
        double top = n.localToScene(n.getBoundsInLocal()).getMinY();
        double from = side.localToScene(side.getBoundsInLocal()).getMinY();
        return top >= from && top < from + side.getHeight() - 20;
    }

    /** A quick hand lets go 64 px on while the toolkit last told of 50 px; common practice, no source: a part ends where it is let go. */
    @Test
    void aQuicklyDraggedHoleEndsWhereItIsLetGo() {
        Toolkit.run(() -> {
            board().press("snap");
            assertThat(board().snapping()).isFalse();
            open.doc().edit("busy", t -> t.setText("notes", "the check is under way"));
            assertThat(open.doc().checking()).isTrue();
            Hole h = open.doc().shapes().geometry().holes().get(0);
            Pt at = board().canvasPoint(h.face(), h.centre());
            Mouse.send(board(), MouseEvent.MOUSE_PRESSED, at.x(), at.y(), false);
            for (int i = 1; i <= 10; i++) {
                Mouse.send(board(), MouseEvent.MOUSE_DRAGGED, at.x() - 5 * i, at.y(), false);
            }
            Mouse.send(board(), MouseEvent.MOUSE_RELEASED, at.x() - 64, at.y(), false);
            Hole now = open.doc().shapes().geometry().holes().get(0);
            Pt end = board().canvasPoint(now.face(), now.centre());
            double inch = board().canvasPoint(h.face(), new Pt(25.4, 0)).x()
                    - board().canvasPoint(h.face(), new Pt(0, 0)).x();
            // a hand places by sixteenths of an inch
            assertThat(end.x()).isCloseTo(at.x() - 64, within(Math.abs(inch) / 32 + 1e-6));
            assertThat(end.y()).isCloseTo(at.y(), within(Math.abs(inch) / 32 + 1e-6));
            assertThat(open.doc().undoStack().undoName()).startsWith("move ");
        });
    }

    @Test
    void spreadWithOneHoleSaysWhyItDoesNothing() {
        Toolkit.run(() -> {
            open.doc().edit("one flue", t -> {
                int found = 0;
                for (int i = t.size("ports") - 1; i >= 0; i--) {
                    if (t.get("ports[" + i + "].role").orElse("").equals("flue") && found++ > 0) {
                        t = t.remove("ports[" + i + "]");
                    }
                }
                return t;
            });
            String flue = open.doc().design().ports().stream()
                    .filter(x -> x.role() == Role.FLUE)
                    .findFirst()
                    .orElseThrow()
                    .name();
            open.doc().select(flue);
            board().press("spread");
            assertThat(board().measureWords()).contains("only flue");
        });
    }

    @Test
    void whatThePointerTellsGoesWhenTheKeysAreUsed() {
        Toolkit.run(() -> {
            Hole h = open.doc().shapes().geometry().holes().get(0);
            Pt at = board().canvasPoint(h.face(), h.centre());
            Mouse.send(board(), MouseEvent.MOUSE_MOVED, at.x(), at.y(), false);
            assertThat(board().hovered()).isEqualTo(h.name());
            board().requestFocus();
            key(KeyCode.UP);
            assertThat(board().hovered()).isNull();
        });
    }

    @Test
    void aNewKilnBeginsAtItsFirstStepAndSaysWhatToDo() {
        Toolkit.run(() -> {
            open.view().go(Step.PORTS);
            open.shell().files().starter("decagon-23", "shed kiln");
            assertThat(open.view().step()).isEqualTo(Step.KILN);
            assertThat(open.view().messages().lookupAll(".label").stream()
                            .map(n -> ((Label) n).getText())
                            .toList())
                    .anyMatch(w -> w.contains("type your own measures"))
                    .anyMatch(w -> w.contains("Ports: drag the holes"));
        });
    }

    /** The side asks for no pixel more than it has: else all of it is painted anew in the midst of a drag. */
    @Test
    void aLongPlaceLeavesTheSideItsBreadth() {
        Toolkit.run(() -> {
            open.doc().select(open.doc().design().ports().get(0).name());
            open.view().layout();
            Region content = (Region) ((ScrollPane) open.view().lookup(".side-scroll")).getContent();
            double wide = content.getWidth();
            open.doc().edit("far", t -> t.set("ports[0].at", "[\"-11 13/16 in\", \"-11 15/16 in\"]"));
            open.view().layout();
            assertThat(content.getWidth()).isEqualTo(wide);
            assertThat(content.minWidth(-1)).isZero();
        });
    }
}
