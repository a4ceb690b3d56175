package portwright.app.part;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;

/** Which heading or field of a form holds the keys, so that it gets them back when the form is built anew. */
final class HeldKeys {
    private HeldKeys() {}

    /**
     * Words of the heading without its arrow, or path of the field; null when the form does not hold the keys. The form takes the keys meanwhile:
     * were their holder removed with them, the toolkit would give them to the next node anywhere and scroll there.
     */
    static String in(Pane form) {
        Node owner = form.getScene() == null ? null : form.getScene().getFocusOwner();
        String held = null;
        for (Node n = owner; n != null; n = n.getParent()) {
            if (n == form) {
                form.requestFocus();
                return held;
            }
            held = held == null ? told(n) : held;
        }
        return null;
    }

    /** Gives the keys to what held them. */
    static void giveBack(Pane form, String held) {
        if (held == null) {
            return;
        }
        form.lookupAll("*").stream()
                .filter(n -> held.equals(told(n)))
                .findFirst()
                .ifPresent(n -> {
                    if (n instanceof FieldBox b) {
                        b.control(true);
                    } else {
                        n.requestFocus();
                    }
                });
    }

    private static String told(Node n) {
        if (n instanceof FieldBox b) {
            return b.model().path();
        }
        return n instanceof Button b && b.getStyleClass().contains("group-toggle")
                ? b.getText().substring(2)
                : null;
    }

    /** Acts on the Delete key while a heading has the keys. */
    static void onDelete(Node heading, Runnable take) {
        heading.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.DELETE) {
                take.run();
                e.consume();
            }
        });
    }
}
