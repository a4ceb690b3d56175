package portwright.app.frame;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;

/** What follows a dragged part round the board does so in turns, one a frame: together with the board it would be too much for one. */
final class Turns {
    private final Node node;
    private final List<Runnable> all;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private final Runnable frame = this::frame;
    private Scene heard;

    /** @param node in the scene whose frames count */
    Turns(Node node, Runnable... all) {
        this.node = node;
        this.all = List.of(all);
    }

    /** Has each follow, those first that have waited longest. */
    void start() {
        for (Runnable r : all) {
            if (!waiting.contains(r)) {
                waiting.add(r);
            }
        }
        if (heard == null && node.getScene() != null) {
            heard = node.getScene();
            heard.addPreLayoutPulseListener(frame);
            Platform.requestNextPulse();
        }
    }

    private void frame() {
        Runnable next = waiting.poll();
        if (next != null) {
            next.run();
        }
        if (waiting.isEmpty()) {
            heard.removePreLayoutPulseListener(frame);
            heard = null;
        } else {
            Platform.requestNextPulse();
        }
    }
}
