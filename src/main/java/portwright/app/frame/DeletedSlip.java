package portwright.app.frame;

import java.util.Objects;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.LastLoss;
import portwright.app.part.SlipView;

/** Says what the last edit took out of the design and gives it back; goes with the next edit, with Undo or when it is closed. */
final class DeletedSlip extends VBox {
    private record Shown(LastLoss loss, int place) {}

    private final Document doc;
    private Shown shown;
    private Shown closed;

    DeletedSlip(Document doc) {
        this.doc = doc;
        setVisible(false);
        setManaged(false);
        show();
    }

    /** Closes it: another step is shown now. */
    void leave() {
        closed = what();
        show();
    }

    /** Shows what is so; answers whether that is another loss than before. */
    boolean show() {
        Shown now = what();
        if (Objects.equals(now, shown)) {
            return false;
        }
        shown = now;
        setVisible(now != null);
        setManaged(now != null);
        getChildren().clear();
        if (now == null) {
            return false;
        }
        getChildren()
                .add(SlipView.note(
                        now.loss.head(),
                        now.loss.words(),
                        Notices.button(now.loss.undo(), doc::undo),
                        Notices.button("Close", () -> {
                            closed = now;
                            show();
                        })));
        return true;
    }

    /** The loss of the last step when it was not closed, with its place in the stack. */
    private Shown what() {
        Shown now = LastLoss.of(doc.undoStack())
                .map(l -> new Shown(l, doc.undoStack().size()))
                .orElse(null);
        if (!Objects.equals(now, closed)) {
            closed = null;
        }
        return closed == null ? now : null;
    }
}
