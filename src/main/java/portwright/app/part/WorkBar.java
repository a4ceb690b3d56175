package portwright.app.part;

import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;

/**
 * Work off the window's thread: a bar with Cancel once it has lasted half a second, and a button to begin anew when it was called off. Takes no
 * room while it is empty: it belongs where nothing below it moves under the mouse, at the foot of the side.
 */
public final class WorkBar extends StackPane {
    private static final Duration LATE = Duration.millis(500);

    private final HBox work = new HBox(8);
    private final Button again;
    private final PauseTransition late = new PauseTransition(LATE);
    private boolean running;

    /**
     * @param doing what is being done
     * @param againWords on the button that begins anew
     */
    public WorkBar(String doing, String againWords, Runnable cancel, Runnable begin) {
        ProgressBar bar = new ProgressBar(ProgressBar.INDETERMINATE_PROGRESS);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText(doing);
        HBox.setHgrow(bar, Priority.ALWAYS);
        Label words = new Label(doing);
        words.setMinWidth(USE_PREF_SIZE);
        work.getChildren().setAll(words, bar, Plain.button("Cancel", cancel));
        work.setAlignment(Pos.CENTER_LEFT);
        again = Plain.button(againWords, begin);
        work.setVisible(false);
        again.setVisible(false);
        setAlignment(again, Pos.CENTER_LEFT);
        getChildren().setAll(work, again);
        late.setOnFinished(e -> {
            work.setVisible(running);
            fold();
        });
        fold();
    }

    private void fold() {
        setVisible(work.isVisible() || again.isVisible());
        setManaged(isVisible());
    }

    /** Shows whether the work is under way, and whether it was called off. */
    public void show(boolean isRunning, boolean calledOff) {
        again.setVisible(calledOff && !isRunning);
        if (isRunning && !running) {
            late.playFromStart();
        } else if (!isRunning) {
            late.stop();
            work.setVisible(false);
        }
        running = isRunning;
        fold();
    }
}
