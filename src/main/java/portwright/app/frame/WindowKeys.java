package portwright.app.frame;

import javafx.scene.Node;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import portwright.app.doc.Document;
import portwright.app.doc.Step;

/** Keys that work everywhere in the window; plain letters only outside of text fields, and none of them changes the design. */
final class WindowKeys {
    private final MainView view;
    private final Document doc;

    WindowKeys(MainView view, Document doc) {
        this.view = view;
        this.doc = doc;
    }

    void install() {
        view.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        view.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                view.toBoard();
                e.consume();
            }
        });
    }

    private void key(KeyEvent e) {
        boolean typing = e.getTarget() instanceof TextInputControl || e.getTarget() instanceof ComboBoxBase<?>;
        if (e.isShortcutDown() || e.isControlDown()) {
            int digit = e.getCode().ordinal() - KeyCode.DIGIT1.ordinal();
            if (e.getCode().isDigitKey() && digit >= 0 && digit < Step.values().length) {
                view.go(Step.values()[digit]);
                e.consume();
            } else if (e.getCode() == KeyCode.Z) {
                if (e.isShiftDown()) {
                    doc.redo();
                } else {
                    doc.undo();
                }
                e.consume();
            } else if (e.getCode() == KeyCode.Y) {
                doc.redo();
                e.consume();
            } else if (e.getCode() == KeyCode.U && !e.isAltDown()) {
                view.rail().turnUnits();
                e.consume();
            } else if (view.stepView(view.step()).views() && view.board().chord(e)) {
                e.consume();
            }
            return;
        }
        if (e.getCode() == KeyCode.F6) {
            view.nextRegion(e.isShiftDown() ? -1 : 1);
            e.consume();
        } else if (e.getCode() == KeyCode.F2) {
            view.turnSide();
            e.consume();
        } else if (e.getCode() == KeyCode.F1) {
            if (e.isShiftDown()) {
                view.base().care().open();
            } else {
                KeyCard.show(view.getScene().getWindow());
            }
            e.consume();
        } else if (!typing && e.getCode() == KeyCode.J) {
            view.nextFinding(e.isShiftDown() ? -1 : 1);
            e.consume();
        } else if (!typing
                && !inForm(e)
                && !view.board().isFocused()
                && view.stepView(view.step()).views()
                && view.board().letter(e)) {
            e.consume();
        } else if (e.getCode() == KeyCode.ENTER
                && view.board().isFocused()
                && view.stepView(view.step()).row() != null) {
            view.openDrawer();
            view.side().edit(view.stepView(view.step()).row());
            e.consume();
        }
    }

    /** Whether a key was pressed beside the board, where a measure may be meant whose field has lost the focus. */
    private static boolean inForm(KeyEvent e) {
        Node n = e.getTarget() instanceof Node t ? t : null;
        while (n != null && !(n instanceof Side)) {
            n = n.getParent();
        }
        return n != null;
    }
}
