package portwright.app.part;

import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.layout.Pane;

/** Which heading or field of a form holds the keys, so that it gets them back when the form is built anew. */
public final class HeldKeys {
    private HeldKeys() {}

    /**
     * What holds the keys.
     *
     * @param told words of the heading without its arrow, or path of the field
     * @param typing what is being typed in the field and not taken yet; null for nothing
     */
    record Held(String told, FieldBox.Typing typing) {}

    /**
     * What of a form holds the keys; null when nothing in it does. The form takes the keys meanwhile: were their holder removed with them, the
     * toolkit would give them to the next node anywhere and scroll there.
     */
    static Held in(Pane form) {
        Node owner = form.getScene() == null ? null : form.getScene().getFocusOwner();
        Node holder = null;
        for (Node n = owner; n != null && n != form; n = n.getParent()) {
            holder = holder == null && told(n) != null ? n : holder;
            if (n.getParent() == form) {
                Held held = held(holder);
                form.requestFocus();
                return held;
            }
        }
        return null;
    }

    private static Held held(Node holder) {
        return holder == null ? null : new Held(told(holder), holder instanceof FieldBox b ? b.typing() : null);
    }

    /** Gives the keys to what held them. */
    static void giveBack(Pane form, Held was) {
        if (was == null) {
            return;
        }
        String held = was.told();
        // a control hears keys only once it has its skin: what is typed before the next frame would be lost
        form.applyCss();
        Optional<Node> same =
                form.lookupAll("*").stream().filter(n -> held.equals(told(n))).findFirst();
        // a place typed whole has become two fields
        same.or(() -> form.lookupAll("*").stream()
                        .filter(n -> n instanceof FieldBox b && b.model().path().startsWith(held + "["))
                        .findFirst())
                .ifPresent(n -> {
                    if (n instanceof FieldBox b) {
                        b.control(true);
                        b.resume(was.typing());
                    } else {
                        n.requestFocus();
                    }
                });
    }

    /** Goes to the first field of an item, once it is laid out. */
    static void into(Pane form, String item) {
        Platform.runLater(() -> form.lookupAll("*").stream()
                .filter(n -> n instanceof FieldBox b && b.model().path().startsWith(item + "."))
                .findFirst()
                .ifPresent(n -> {
                    Showing.of(n);
                    ((FieldBox) n).control(true);
                }));
    }

    /** Builds what a box holds anew; the field that held the keys gets them back, unless it is gone. */
    public static void keep(Pane box, Runnable build) {
        Node owner = box.getScene() == null ? null : box.getScene().getFocusOwner();
        Node holder = null;
        for (Node n = owner; n != null && n != box; n = n.getParent()) {
            holder = holder == null && n instanceof FieldBox ? n : holder;
        }
        Held held = held(holder);
        build.run();
        giveBack(box, held);
    }

    private static String told(Node n) {
        if (n instanceof FieldBox b) {
            return b.model().path();
        }
        if (n instanceof Button b && b.getStyleClass().contains("group-toggle")) {
            return b.getText().substring(2);
        }
        return n instanceof ButtonBase b && b.getProperties().get(Showing.class) instanceof String at
                ? b.getText() + " " + at
                : null;
    }
}
