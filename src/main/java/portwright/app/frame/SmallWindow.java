package portwright.app.frame;

import javafx.application.Platform;
import javafx.stage.Stage;

/** A window beside the main one. */
final class SmallWindow {
    private SmallWindow() {}

    /** Shows it at the size of its scene, also where the window manager opens it at its least size first. */
    static void show(Stage stage) {
        stage.show();
        Platform.runLater(stage::sizeToScene);
    }
}
