package portwright.app.frame;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.stage.Stage;
import javafx.util.Duration;
import portwright.app.doc.OpenedFile;
import portwright.app.part.SlipView;

/** Looks every two seconds, and when the window comes to the front, whether the open file changed on disk, and asks which one to keep. */
final class DiskWatch {
    static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final OpenedFile file;
    private final Notices notices;
    private final Runnable save;
    private final Runnable takeTheirs;
    private SlipView slip;

    DiskWatch(OpenedFile file, Notices notices, Runnable save, Runnable takeTheirs) {
        this.file = file;
        this.notices = notices;
        this.save = save;
        this.takeTheirs = takeTheirs;
    }

    void start(Stage stage) {
        Timeline often = new Timeline(new KeyFrame(Duration.seconds(2), e -> look()));
        often.setCycleCount(Timeline.INDEFINITE);
        often.play();
        stage.focusedProperty().addListener((o, a, b) -> look());
        stage.addEventHandler(javafx.stage.WindowEvent.WINDOW_HIDDEN, e -> often.stop());
    }

    /** Whether the file is another's since it was read, and nobody has chosen yet which one to keep. */
    boolean asks() {
        look();
        return slip != null && notices.holds(slip) && file.onDisk();
    }

    private void look() {
        if (slip != null && notices.holds(slip) || !file.changedOnDisk()) {
            return;
        }
        slip = file.onDisk()
                ? SlipView.caution(
                        "The file changed on disk at " + LocalTime.now().format(CLOCK) + ".",
                        "Keep yours, or take that one?",
                        Notices.button("Keep mine", this::keepMine),
                        Notices.button("Take that one", takeTheirs))
                : SlipView.caution(
                        "The file is gone from the disk",
                        "Save writes it again.",
                        Notices.button("Save", save),
                        Notices.button("Leave it", this::keepMine));
        notices.add(slip);
    }

    private void keepMine() {
        file.look();
        settled();
    }

    /** The question is answered. */
    void settled() {
        notices.remove(slip);
        slip = null;
    }
}
