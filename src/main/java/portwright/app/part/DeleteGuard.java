package portwright.app.part;

import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/**
 * Keeps one press from deleting two items of a list: the rest moves up under the mouse, and the keys go to the next heading. What deletes is
 * deaf until the form as it is now has been seen for a while, however long it took to draw; a second click of a double click and a key that is
 * held down never count.
 */
final class DeleteGuard {
    /** A press so soon after a form was drawn anew was meant for what lay there before, ns. */
    private static final long DEAF_NS = 600_000_000L;

    private final AnimationTimer frames = new AnimationTimer() {
        @Override
        public void handle(long now) {
            drawn++;
            // the first call comes before the form is laid out
            if (drawn > 1) {
                stop();
                since = System.nanoTime();
            }
        }
    };
    private int drawn;
    private long since = -1;
    private boolean down;
    private boolean repeated;

    /** @param form lives on while what it shows is built anew */
    DeleteGuard(Node form) {
        form.addEventFilter(KeyEvent.KEY_RELEASED, e -> down &= e.getCode() != KeyCode.DELETE);
        form.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.DELETE) {
                repeated = down;
                down = true;
            }
        });
    }

    /** The form is being built anew. */
    void built() {
        since = -1;
        drawn = 0;
        frames.start();
    }

    boolean deaf() {
        return since < 0 || System.nanoTime() - since < DEAF_NS;
    }

    /** A button that takes something out of the design. */
    void mouse(Button b) {
        b.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> {
            if (deaf() || e.getClickCount() > 1) {
                e.consume();
            }
        });
    }

    /** Acts on the Delete key while a heading has the keys. */
    void key(Node heading, Runnable take) {
        heading.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.DELETE) {
                e.consume();
                if (!deaf() && !repeated) {
                    take.run();
                }
            }
        });
    }
}
