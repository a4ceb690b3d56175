package portwright.app;

import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;

/** A hand on the left button. */
final class Mouse {
    private Mouse() {}

    /**
     * Sends one event to a node; call on the toolkit's thread.
     *
     * @param x place in the node, px
     * @param y place in the node, px, down
     */
    static void send(Node n, EventType<MouseEvent> type, double x, double y, boolean alt) {
        Point2D at = n.localToScene(x, y);
        Event.fireEvent(
                n,
                new MouseEvent(
                        type,
                        at.getX(),
                        at.getY(),
                        at.getX(),
                        at.getY(),
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        alt,
                        false,
                        true,
                        false,
                        false,
                        true,
                        false,
                        true,
                        new PickResult(n, at.getX(), at.getY())));
    }
}
