package portwright.app.frame;

import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.part.SlipView;

/** Says what was deleted last and gives it back; goes with the next edit, with Undo or when it is closed. */
final class DeletedSlip extends VBox {
    private static final String DELETE = "delete ";

    private final Document doc;
    private String shown;
    private String closed;

    DeletedSlip(Document doc) {
        this.doc = doc;
        show();
    }

    /** Shows what is so; answers whether that is another deletion than before. */
    boolean show() {
        String now = what();
        if (now != null && now.equals(shown)) {
            return false;
        }
        shown = now;
        setVisible(now != null);
        setManaged(now != null);
        if (now == null) {
            getChildren().clear();
            return false;
        }
        String step = doc.undoStack().undoName();
        getChildren()
                .setAll(SlipView.note(
                        "Deleted " + step.substring(DELETE.length()),
                        "Undo brings it back, here or with Ctrl+Z.",
                        Notices.button("Undo " + step, doc::undo),
                        Notices.button("Close", () -> {
                            closed = now;
                            show();
                        })));
        return true;
    }

    /** The last step when it is a deletion that was not closed, with its place in the stack. */
    private String what() {
        String step = doc.undoStack().undoName();
        String now = step == null || !step.startsWith(DELETE)
                ? null
                : step + doc.undoStack().size();
        if (now == null || !now.equals(closed)) {
            closed = null;
        }
        return now != null && now.equals(closed) ? null : now;
    }
}
