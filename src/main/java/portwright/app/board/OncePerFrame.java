package portwright.app.board;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;

/** A hand can move faster than frames come: the first move after a frame is answered at once, of those after it only the last, before the next frame. */
final class OncePerFrame {
    private final Node node;
    private final Runnable frame = this::frame;
    private Scene heard;
    private Runnable waiting;

    OncePerFrame(Node node) {
        this.node = node;
    }

    /** Answers a move now, or lets it wait in the place of one that waits already. */
    void move(Runnable answer) {
        if (heard != null) {
            waiting = answer;
            return;
        }
        answer.run();
        heard = node.getScene();
        if (heard != null) {
            heard.addPreLayoutPulseListener(frame);
            Platform.requestNextPulse();
        }
    }

    private void frame() {
        heard.removePreLayoutPulseListener(frame);
        heard = null;
        flush();
    }

    /** Answers the move that waits. */
    void flush() {
        Runnable last = waiting;
        waiting = null;
        if (last != null) {
            last.run();
        }
    }

    /** Forgets the move that waits. */
    void drop() {
        waiting = null;
    }
}
