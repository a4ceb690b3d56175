package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Document;
import portwright.app.doc.Picture;
import portwright.app.doc.Step;
import portwright.app.doc.Unread;
import portwright.app.frame.MainView;
import portwright.app.part.FieldBox;

/** What the side says of entries, deletions and older pictures, in the real toolkit. */
class SideSlipsTest {
    @TempDir
    Path folder;

    private Document doc;
    private MainView view;
    private Stage stage;
    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(folder.resolve("home"), 1180, 720);
            doc = open.doc();
            view = open.view();
            stage = open.stage();
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> {
            open.close();
        });
    }

    private void lay() {
        stage.getScene().getRoot().applyCss();
        stage.getScene().getRoot().layout();
    }

    private FieldBox field(String path) {
        lay();
        return view.lookupAll(".text-field").stream()
                .map(SideSlipsTest::box)
                .filter(b -> b != null && b.model().path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static FieldBox box(Node n) {
        for (Node x = n; x != null; x = x.getParent()) {
            if (x instanceof FieldBox b) {
                return b;
            }
        }
        return null;
    }

    private List<String> slipHeads() {
        lay();
        return view.lookupAll(".slip-head").stream()
                .map(n -> ((Labeled) n).getText())
                .toList();
    }

    private Button button(String words) {
        lay();
        return view.lookupAll("*").stream()
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(b -> words.equals(b.getText()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anEntryStillBeingTypedIsTakenWhenTheStepIsLeftAndHoldsThePaperBack() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            FieldBox flats = field("kiln.plan.acrossFlats");
            flats.control(true);
            ((TextField) flats.control(false)).setText("17 kg");
            view.go(Step.PAPER);
            assertThat(doc.unread().all()).hasSize(1);
            assertThat(slipHeads()).contains("The field plan across flats cannot be read", "Nothing leaves yet");
            assertThat(button("Save PDF").isDisabled()).isTrue();
            assertThat(button("Print at 100 %").isDisabled()).isTrue();
            assertThat(button("Save card").isDisabled()).isTrue();
        });
        Toolkit.run(() -> {
            button("Keep 17 in").fire();
            assertThat(slipHeads()).doesNotContain("Nothing leaves yet");
            view.go(Step.KILN);
            assertThat(((TextField) field("kiln.plan.acrossFlats").control(false)).getText())
                    .isEqualTo("17 in");
        });
    }

    /** In the smallest usual window: whole in sight, and not in what scrolls. */
    @Test
    void thePdfIsSavedWithoutScrolling() {
        Toolkit.run(() -> {
            view.go(Step.PAPER);
            for (String words : List.of("Save PDF", "Print at 100 %", "Save card")) {
                Button b = button(words);
                for (Node n = b; n != null; n = n.getParent()) {
                    assertThat(n).isNotInstanceOf(ScrollPane.class);
                }
                Bounds at = b.localToScene(b.getBoundsInLocal());
                assertThat(at.getMaxY()).isLessThan(720 - 88);
                assertThat(at.getMaxX()).isLessThan(1180);
                assertThat(b.lookup(".text"))
                        .extracting(t -> ((javafx.scene.text.Text) t).getText())
                        .isEqualTo(words);
            }
        });
    }

    @Test
    void whatIsWrongStandsBelowTheFieldAndTakesNoClick() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            FieldBox flats = field("kiln.plan.acrossFlats");
            ((TextField) flats.control(false)).setText("17 kg");
            flats.take();
            lay();
            Node frame = flats.lookup(".field");
            Node note = flats.lookup(".field-note");
            assertThat(note.isMouseTransparent()).isTrue();
            assertThat(note.localToScene(note.getLayoutBounds()).getMinY())
                    .isGreaterThanOrEqualTo(
                            frame.localToScene(frame.getLayoutBounds()).getMaxY());
            assertThat(flats.lookup(".aside").isVisible()).isFalse();
        });
    }

    private double seenAt(String path) {
        FieldBox f = field(path);
        lay();
        return f.localToScene(0, 0).getY();
    }

    private ScrollPane side() {
        return (ScrollPane) view.lookup(".side-scroll");
    }

    @Test
    void aSlipThatComesOrGoesAboveTheFormMovesNoFieldUnderTheHand() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            lay();
            side().setVvalue(0.3);
            double was = seenAt("kiln.height");
            double scrolled = side().getVvalue();
            doc.unread().put(new Unread.Entry("kiln.wall.thickness", "wall thickness", "x", "no length", "2 1/2 in"));
            assertThat(seenAt("kiln.height")).isCloseTo(was, within(1.0));
            assertThat(side().getVvalue()).isGreaterThan(scrolled);
            doc.unread().settle("kiln.wall.thickness");
            assertThat(seenAt("kiln.height")).isCloseTo(was, within(1.0));
        });
    }

    @Test
    void whatWasDeletedIsNamedInSightWhereverTheSideIsScrolled() {
        Toolkit.run(() -> {
            lay();
            side().setVvalue(1);
            lay();
            String name = doc.design().ports().get(0).name();
            doc.select(name);
            view.board().press("delete");
            Button undo = button("Undo delete " + name);
            lay();
            Bounds b = undo.localToScene(undo.getLayoutBounds());
            Bounds scrolling = side().localToScene(side().getLayoutBounds());
            assertThat(b.getMinY()).isGreaterThanOrEqualTo(scrolling.getMaxY());
            assertThat(b.getMaxY()).isLessThanOrEqualTo(stage.getScene().getHeight());
            assertThat(undo.getParent().isVisible()).isTrue();
        });
    }

    @Test
    void aDeletedPartIsNamedAndComesBack() {
        Toolkit.run(() -> {
            String before = doc.text().toText();
            String name = doc.design().ports().get(0).name();
            doc.select(name);
            view.board().press("delete");
            assertThat(slipHeads()).contains("Deleted " + name);
            button("Undo delete " + name).fire();
            assertThat(doc.text().toText()).isEqualTo(before);
            assertThat(slipHeads()).doesNotContain("Deleted " + name);
        });
    }

    @Test
    void smallPicturesFollowAnEditMadeAtAStepWithoutThem() {
        WritableImage[] shot = new WritableImage[2];
        Toolkit.until(() -> !doc.checking());
        Toolkit.run(() -> {
            lay();
            view.board().show(Picture.SECTION);
            shot[0] = thumb();
        });
        Toolkit.run(() -> {
            view.go(Step.PAPER);
            doc.edit("wider", t -> t.setText("kiln.plan.acrossFlats", "22 in"));
            view.go(Step.PORTS);
            lay();
        });
        Toolkit.until(() -> {
            shot[1] = thumb();
            return !same(shot[0], shot[1]);
        });
    }

    private WritableImage thumb() {
        return view.lookup(".view-card").snapshot(null, null);
    }

    private static boolean same(WritableImage a, WritableImage b) {
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                if (a.getPixelReader().getArgb(x, y) != b.getPixelReader().getArgb(x, y)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A measure typed after its field lost the focus changes no design, wherever the keys are. */
    @Test
    void noPlainLetterOrDigitChangesTheDesign() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            lay();
            Node heading = field("kiln.height").getParent();
            view.lookup(".text-field").requestFocus();
            doc.select(doc.design().ports().get(0).name());
            String before = doc.text().toText();
            for (Node at : List.of(heading, view.board().getParent(), view.board())) {
                for (KeyCode code : KeyCode.values()) {
                    if (code.isLetterKey() || code.isDigitKey() || code == KeyCode.BACK_SPACE) {
                        press(at, code, false, false);
                        press(at, code, true, false);
                    }
                }
            }
            assertThat(doc.text().toText()).isEqualTo(before);
        });
    }

    @Test
    void withControlTheLettersChangeTheDesignAndAreUndone() {
        Toolkit.run(() -> {
            view.go(Step.PORTS);
            lay();
            int ports = doc.design().ports().size();
            String before = doc.text().toText();
            for (KeyCode code : List.of(KeyCode.N, KeyCode.D, KeyCode.I)) {
                doc.select(doc.design().ports().get(0).name());
                press(view.board(), code, code == KeyCode.N, true);
                assertThat(doc.design().ports()).as(code.getName()).hasSize(ports + 1);
                press(view.board(), KeyCode.Z, false, true);
                assertThat(doc.text().toText()).isEqualTo(before);
            }
            press(view.board(), KeyCode.U, false, true);
            assertThat(doc.text().get("units")).hasValue("metric");
        });
    }

    private static void press(Node target, KeyCode code, boolean shift, boolean control) {
        target.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false));
    }
}
