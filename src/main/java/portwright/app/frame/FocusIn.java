package portwright.app.frame;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;

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

    /** Focuses the region that lies some places after the one that holds the keys; what is hidden is passed over. */
    static void next(Node owner, int by, Node... regions) {
        int at = 0;
        for (int i = 0; i < regions.length; i++) {
            for (Node n = owner; n != null; n = n.getParent()) {
                if (n == regions[i]) {
                    at = i;
                }
            }
        }
        for (int i = 1; i <= regions.length; i++) {
            Node r = regions[Math.floorMod(at + by * i, regions.length)];
            if (r.isVisible() && first(r)) {
                return;
            }
        }
    }

    /** Changes what a region holds; keys that were in it go to its new content and not somewhere else. */
    static void keep(Pane region, Runnable change) {
        Node owner = region.getScene() == null ? null : region.getScene().getFocusOwner();
        while (owner != null && owner != region) {
            owner = owner.getParent();
        }
        change.run();
        if (owner != null) {
            region.getChildren().get(0).requestFocus();
        }
    }

    /** Whether a node lies in another, or is it; null lies nowhere. */
    static boolean within(Node n, Node box) {
        for (Node x = n; x != null; x = x.getParent()) {
            if (x == box) {
                return true;
            }
        }
        return false;
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
