package portwright.app.part;

import javafx.css.PseudoClass;
import javafx.scene.Node;

/** The ring round a field whose control has the keys. The toolkit's own {@code :focus-within} may stay on a frame after the keys have gone. */
public final class FieldRing {
    private static final PseudoClass HELD = PseudoClass.getPseudoClass("held");

    private FieldRing() {}

    /** A frame shows the ring while its control has the keys, and only then. */
    public static void round(Node frame, Node control) {
        control.focusedProperty().addListener((o, was, is) -> frame.pseudoClassStateChanged(HELD, is));
    }
}
