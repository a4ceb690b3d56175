package portwright.app.frame;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.Step;
import portwright.app.doc.Withheld;
import portwright.app.part.Lead;

/** Leads from every step to the list of what template and card still wait for. */
final class MissingSlip extends VBox {
    private final Document doc;
    private final Button go = Notices.button("", () -> fireEvent(Lead.toMissing()));

    MissingSlip(Document doc) {
        this.doc = doc;
        go.setMaxWidth(Double.MAX_VALUE);
        go.setMinHeight(34);
        getChildren().add(go);
    }

    /** Shows how much is missing; nothing at Paper, where the list itself stands. */
    void show(Step step) {
        long rows = step == Step.PAPER
                ? 0
                : Withheld.of(doc).stream().filter(r -> r.stop() == null).count();
        go.setText(rows + " still missing: show the list");
        setVisible(rows > 0);
        setManaged(rows > 0);
    }
}
