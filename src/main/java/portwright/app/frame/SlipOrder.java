package portwright.app.frame;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/** The order of slips in a column. */
final class SlipOrder {
    private SlipOrder() {}

    /**
     * Puts nodes into their order and touches none that lies right already.
     *
     * @param keeps whether what is not shown stays in its place unseen, as while a part is dragged
     */
    static void lay(Pane slips, List<Node> shown, boolean keeps) {
        List<Node> now = slips.getChildren();
        List<Node> nodes = new ArrayList<>(shown);
        for (int i = 0; keeps && i < now.size(); i++) {
            if (!shown.contains(now.get(i))) {
                nodes.add(i == 0 ? 0 : nodes.indexOf(now.get(i - 1)) + 1, now.get(i));
            }
        }
        now.removeIf(n -> !nodes.contains(n));
        for (int i = 0; i < nodes.size(); i++) {
            Node n = nodes.get(i);
            if (i + 1 < now.size() && now.get(i + 1) == n) {
                now.remove(i);
            } else if (i >= now.size() || now.get(i) != n) {
                now.remove(n);
                now.add(i, n);
            }
        }
        for (Node n : nodes) {
            n.setVisible(shown.contains(n));
            n.setManaged(n.isVisible());
        }
    }
}
