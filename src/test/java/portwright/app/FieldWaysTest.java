package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Document;
import portwright.app.doc.FieldModel;
import portwright.app.doc.FindingOrder;
import portwright.app.doc.Step;
import portwright.app.frame.MainView;
import portwright.app.part.FieldBox;
import portwright.app.step.PaperStep;
import portwright.form.Catalog;
import portwright.form.FieldSpec;
import portwright.units.Kind;

/** How one gets to a field: through headings that open and close, and from what says that it cannot be read. */
class FieldWaysTest {
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
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private Button heading(String words) {
        view.applyCss();
        view.layout();
        return view.lookupAll(".group-toggle").stream()
                .map(Button.class::cast)
                .filter(b -> b.getText().substring(2).startsWith(words))
                .findFirst()
                .orElseThrow();
    }

    private String keysIn() {
        for (Node n = open.stage().getScene().getFocusOwner(); n != null; n = n.getParent()) {
            if (n instanceof FieldBox b) {
                return b.model().path();
            }
        }
        return "none";
    }

    private void tap(Node n) {
        Mouse.send(n, MouseEvent.MOUSE_CLICKED, 0, 0, false);
    }

    @Test
    void aPartsHeadingTellsItsHeightAndOpensAndCloses() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            heading("Elements").fire();
            String height = doc.text().get("kiln.elements[4].height").orElseThrow();
            assertThat(heading("E5").getText()).isEqualTo("▸ E5  ·  " + height + " up");
            heading("E5").fire();
            assertThat(doc.selected()).isEqualTo("E5");
            assertThat(heading("E5").getText()).startsWith("▾");
            heading("E5").fire();
            assertThat(heading("E5").getText()).startsWith("▸");
            assertThat(doc.selected()).isNull();
        });
    }

    @Test
    void theVerdictLeadsToTheFieldThatCannotBeRead() {
        Toolkit.run(() -> {
            view.go(Step.ROOM);
            new FieldModel(doc, "kiln.elements[2].groove", FieldSpec.quantity("depth", "depth", Kind.LENGTH))
                    .commit("deep");
            view.layout();
            tap(view.lookup(".verdict-word"));
        });
        Toolkit.until(() -> keysIn().equals("kiln.elements[2].groove.depth"));
        Toolkit.run(() -> assertThat(view.step()).isEqualTo(Step.KILN));
    }

    @Test
    void theSlipLeadsToAFieldOfANamelessStep() {
        Toolkit.run(() -> {
            view.go(Step.PAPER);
            new FieldModel(doc, "firing.steps[1]", Catalog.stepFields().get(1)).commit("fast");
            view.applyCss();
            view.layout();
            view.lookupAll(".plain-button").stream()
                    .filter(n -> n instanceof Button b && b.getText().equals("Show the field"))
                    .map(Button.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .fire();
        });
        Toolkit.until(() -> keysIn().equals("firing.steps[1].rate"));
    }

    @Test
    void oneFieldAtMostHasTheRing() {
        Toolkit.run(() -> {
            for (Step s : List.of(Step.GAS, Step.ROOM, Step.KILN, Step.GAS)) {
                view.go(s);
                view.applyCss();
                view.layout();
                view.lookupAll(".text-field").stream()
                        .filter(TextField.class::isInstance)
                        .limit(3)
                        .forEach(Node::requestFocus);
            }
            long rings = view.lookupAll(".field").stream()
                    .filter(n -> n.getPseudoClassStates().stream()
                            .anyMatch(c -> c.getPseudoClassName().equals("held")))
                    .count();
            assertThat(rings).isEqualTo(1);
        });
    }

    private FieldBox box(String path) {
        view.applyCss();
        view.layout();
        return view.lookupAll("*").stream()
                .filter(n -> n instanceof FieldBox b && b.model().path().equals(path))
                .map(FieldBox.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Leaving the name of a chosen part renames it; the field that has the keys by then keeps them. */
    @Test
    void aRenameLeavesTheKeysInTheNextField() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            heading("Elements").fire();
            heading("E5").fire();
            TextField name = (TextField) box("kiln.elements[4].name").control(true);
            name.setText("E5b");
            box("kiln.elements[4].height").control(true);
        });
        Toolkit.run(() -> {
            assertThat(doc.selected()).isEqualTo("E5b");
            assertThat(keysIn()).isEqualTo("kiln.elements[4].height");
            assertThat(open.stage().getScene().getFocusOwner().getScene())
                    .as("it is the field in sight")
                    .isNotNull();
        });
    }

    /** A step's heading changes with its figures; the field that Tab went to hears the next letter at once. */
    @Test
    void theFieldThatTabWentToHearsTheNextLetter() {
        Toolkit.run(() -> {
            view.go(Step.FIRING);
            view.stepView(Step.FIRING).reveal("firing.steps[2].rate");
            TextField rate = (TextField) box("firing.steps[2].rate").control(true);
            rate.setText("110 °F/h");
            box("firing.steps[2].hold").control(true);
            TextField hold = (TextField) open.stage().getScene().getFocusOwner();
            assertThat(keysIn()).isEqualTo("firing.steps[2].hold");
            assertThat(hold.getSkin()).isNotNull();
            Event.fireEvent(
                    hold, new KeyEvent(KeyEvent.KEY_TYPED, "2", "", KeyCode.UNDEFINED, false, false, false, false));
            assertThat(hold.getText()).isEqualTo("2");
        });
    }

    /** What is being typed stays, with its caret, when the form round it is built anew, and is not taken half typed. */
    @Test
    void whatIsBeingTypedOutlivesANewForm() {
        Toolkit.run(() -> {
            view.go(Step.FIRING);
            view.stepView(Step.FIRING).reveal("firing.steps[2].rate");
            String before = doc.text().getJson("firing.steps[2]").orElseThrow();
            TextField rate = (TextField) box("firing.steps[2].rate").control(true);
            rate.setText("110 °F");
            rate.selectRange(3, 3);
            doc.edit(
                    "one more",
                    t -> t.append("firing.steps", t.getJson("firing.steps[1]").orElseThrow()));
            TextField now = (TextField) open.stage().getScene().getFocusOwner();
            assertThat(keysIn()).isEqualTo("firing.steps[2].rate");
            assertThat(now).isNotSameAs(rate);
            assertThat(now.getText()).isEqualTo("110 °F");
            assertThat(now.getCaretPosition()).isEqualTo(3);
            assertThat(doc.text().getJson("firing.steps[2]")).contains(before);
            now.setText("110 °F/h");
            box("firing.steps[2].hold").control(true);
            assertThat(doc.text().get("firing.steps[2].rate")).contains("110 °F/h");
        });
    }

    /** A step's own figures change its heading, not its form. */
    @Test
    void aTypedFigureOfAStepLeavesItsFormStanding() {
        Toolkit.run(() -> {
            view.go(Step.FIRING);
            view.stepView(Step.FIRING).reveal("firing.steps[2].rate");
            FieldBox rate = box("firing.steps[2].rate");
            assertThat(rate.model().commit("110 °F/h")).isTrue();
            assertThat(box("firing.steps[2].rate")).isSameAs(rate);
            assertThat(heading("3  ").getText()).contains("110 °F/h");
        });
    }

    @Test
    void addTailsLeadsToTheTails() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            doc.edit("none", t -> t.remove("kiln.elements[4].tails"));
            heading("Elements").fire();
            heading("E5").fire();
        });
        Toolkit.run(() -> {
            view.applyCss();
            view.layout();
            Button add = view.lookupAll(".plain-button").stream()
                    .filter(n -> n instanceof Button b && b.getText().equals("Add tails"))
                    .map(Button.class::cast)
                    .findFirst()
                    .orElseThrow();
            add.requestFocus();
            add.fire();
        });
        Toolkit.until(() -> keysIn().equals("kiln.elements[4].tails.panel"));
        Toolkit.run(() -> assertThat(doc.selected()).isEqualTo("E5"));
    }

    /** A click that falls on Delete because the form has just moved under the mouse takes nothing away. */
    @Test
    void deleteIsDeafWhileTheFormIsNew() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            heading("Elements").fire();
            heading("E5").fire();
            Button delete = view.lookupAll(".plain-button").stream()
                    .filter(n -> n instanceof Button b && b.getText().equals("Delete E5"))
                    .map(Button.class::cast)
                    .findFirst()
                    .orElseThrow();
            Mouse.send(delete, MouseEvent.MOUSE_PRESSED, 5, 5, false);
            assertThat(delete.isArmed()).isFalse();
        });
    }

    /** A key pressed twice in haste, or held down, deletes one row; once the form has been seen it deletes the next. */
    @Test
    void deleteKeyTakesOneAtATime() {
        int[] rows = {0};
        Toolkit.run(() -> {
            view.go(Step.KILN);
            heading("Elements").fire();
            rows[0] = doc.text().size("kiln.elements");
        });
        pause();
        Toolkit.run(() -> {
            deleteKey(heading("E5"), KeyEvent.KEY_PRESSED);
            deleteKey(heading("E6"), KeyEvent.KEY_PRESSED);
            deleteKey(heading("E6"), KeyEvent.KEY_RELEASED);
            deleteKey(heading("E6"), KeyEvent.KEY_PRESSED);
            assertThat(doc.text().size("kiln.elements")).isEqualTo(rows[0] - 1);
        });
        pause();
        Toolkit.run(() -> {
            deleteKey(heading("E6"), KeyEvent.KEY_PRESSED);
            assertThat(doc.text().size("kiln.elements")).as("held down").isEqualTo(rows[0] - 1);
            deleteKey(heading("E6"), KeyEvent.KEY_RELEASED);
            deleteKey(heading("E6"), KeyEvent.KEY_PRESSED);
            assertThat(doc.text().size("kiln.elements")).isEqualTo(rows[0] - 2);
            doc.undo();
            doc.undo();
            assertThat(doc.text().size("kiln.elements")).isEqualTo(rows[0]);
        });
    }

    private static void deleteKey(Node on, EventType<KeyEvent> what) {
        Event.fireEvent(on, new KeyEvent(what, "", "", KeyCode.DELETE, false, false, false, false));
    }

    /** Longer than a form is deaf after it was drawn, with some frames. */
    private static void pause() {
        long from = System.nanoTime();
        Toolkit.until(() -> System.nanoTime() - from > 1_200_000_000L);
    }

    @Test
    void tabLeavesABoxOfSeveralLines() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            heading("Elements").fire();
            doc.edit("floor", t -> t.append("kiln.elements", "{\"name\": \"EF\", \"on\": \"floor\"}"));
            heading("EF").fire();
            view.applyCss();
            view.layout();
        });
        Toolkit.run(() -> {
            var path = box("kiln.elements[" + (doc.text().size("kiln.elements") - 1) + "].path")
                    .control(true);
            assertThat(keysIn()).endsWith(".path");
            Event.fireEvent(path, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, false, false, false, false));
            assertThat(keysIn()).endsWith(".coil");
        });
    }

    @Test
    void outdoorsAsksForNothingThatOnlyARoomHas() {
        Toolkit.run(() -> {
            doc.edit("out", t -> t.set("room", "{\"place\": \"outdoors\"}"));
            view.go(Step.ROOM);
            view.applyCss();
            view.layout();
            List<String> asked = view.lookupAll("*").stream()
                    .filter(FieldBox.class::isInstance)
                    .map(n -> ((FieldBox) n).model().path())
                    .toList();
            assertThat(asked)
                    .contains("room.place", "room.wind")
                    .doesNotContain("room.volume", "room.ventilator", "room.joinedVolume", "room.infiltration");
            assertThat(new FieldModel(doc, "room", Catalog.room().fields().get(0)).commit("studio"))
                    .isTrue();
            assertThat(box("room.volume").isVisible()).isTrue();
        });
    }

    /** Each row of what is missing leads into its field. */
    @Test
    void aRowOfWhatIsMissingLeadsToItsField() {
        Toolkit.run(() -> doc.edit("bare", t -> t.remove("burners[1].jet").remove("room.floor")));
        Toolkit.until(() -> !doc.checking());
        Toolkit.run(() -> {
            view.go(Step.PAPER);
            view.applyCss();
            view.layout();
            List<Button> rows = view.lookupAll(".part-row").stream()
                    .filter(n -> n instanceof Button b && b.getAccessibleText().startsWith("go to "))
                    .map(Button.class::cast)
                    .toList();
            int open = FindingOrder.count(doc, Step.PAPER).open();
            assertThat(rows).hasSize(open).hasSizeGreaterThan(1);
            rows.stream()
                    .filter(b -> b.getText().contains("Burners 2"))
                    .findFirst()
                    .orElseThrow()
                    .fire();
        });
        Toolkit.until(() -> keysIn().equals("burners[1].jet"));
        Toolkit.run(() -> assertThat(view.step()).isEqualTo(Step.GAS));
    }

    /** A correction typed and then Save pressed: the field is taken, the pages are made anew, and the button hears its click. */
    @Test
    void theFirstClickAfterTypingACorrectionIsHeard() {
        Toolkit.until(() -> !doc.checking());
        Toolkit.run(() -> view.go(Step.PAPER));
        PaperStep paper = (PaperStep) view.stepView(Step.PAPER);
        Toolkit.until(() -> paper.ready() && !save().isDisabled());
        Toolkit.run(() -> {
            TextField across = view.lookupAll(".text-field").stream()
                    .filter(n -> n instanceof TextField t && "across".equals(t.getAccessibleText()))
                    .map(TextField.class::cast)
                    .findFirst()
                    .orElseThrow();
            across.requestFocus();
            across.setText("99.5");
            save().requestFocus();
            assertThat(save().isDisabled()).as("between press and release").isFalse();
        });
        Toolkit.until(() -> !save().isDisabled());
    }

    private Button save() {
        return view.lookupAll(".main-button").stream()
                .filter(n -> n instanceof Button b && b.getText().equals("Save PDF"))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
