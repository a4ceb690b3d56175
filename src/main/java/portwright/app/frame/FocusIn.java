package portwright.app.frame;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ToggleButton;

/** Puts the keys into a region. */
final class FocusIn {
    private FocusIn() {}

    /** Focuses the chosen toggle of a region, else its first focusable node; false when there is none. */
    static boolean first(Node region) {
        Node n = find(region, true);
        if (n == null) {
            n = find(region, false);
        }
        if (n != null) {
            n.requestFocus();
        }
        return n != null;
    }

    private static Node find(Node n, boolean chosen) {
        if (!n.isVisible() || n.isDisabled()) {
            return null;
        }
        if (n.isFocusTraversable() && (!chosen || n instanceof ToggleButton t && t.isSelected())) {
            return n;
        }
        if (n instanceof Parent p) {
            for (Node c : p.getChildrenUnmodifiable()) {
                Node f = find(c, chosen);
                if (f != null) {
                    return f;
                }
            }
        }
        return null;
    }
}
