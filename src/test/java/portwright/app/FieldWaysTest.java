package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Document;
import portwright.app.doc.FieldModel;
import portwright.app.doc.Step;
import portwright.app.frame.MainView;
import portwright.app.part.FieldBox;
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
}
