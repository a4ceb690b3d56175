package portwright.app.frame;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import portwright.app.board.Board;

/** Puts the keys into a region. */
final class FocusIn {
    private FocusIn() {}

    /** Focuses the board or the chosen toggle of a region, else its first focusable node; false when there is none. */
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
    static void next(Node owner, int by, List<Node> regions) {
        int at = 0;
        for (int i = 0; i < regions.size(); i++) {
            for (Node n = owner; n != null; n = n.getParent()) {
                if (n == regions.get(i)) {
                    at = i;
                }
            }
        }
        for (int i = 1; i <= regions.size(); i++) {
            Node r = regions.get(Math.floorMod(at + by * i, regions.size()));
            if (r.isVisible() && first(r)) {
                return;
            }
        }
    }

    /** When the node with the keys goes or is disabled, the toolkit gives them to the first node of the window: hands them on from there. */
    static void fallsTo(Node view, Node first, Runnable home) {
        ChangeListener<Node> watch = (o, was, now) -> {
            if (now == first && (was == null || gone(was, view))) {
                Platform.runLater(() -> {
                    if (first.isFocused()) {
                        home.run();
                    }
                });
            }
        };
        view.sceneProperty().addListener((o, was, now) -> {
            if (was != null) {
                was.focusOwnerProperty().removeListener(watch);
            }
            if (now != null) {
                now.focusOwnerProperty().addListener(watch);
            }
        });
    }

    private static boolean gone(Node n, Node view) {
        if (n.getScene() != view.getScene() || n.isDisabled()) {
            return true;
        }
        for (Node x = n; x != null; x = x.getParent()) {
            if (!x.isVisible()) {
                return true;
            }
        }
        return false;
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
        if (n.isFocusTraversable()
                && (!chosen || n instanceof Board || n instanceof ToggleButton t && t.isSelected())) {
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
