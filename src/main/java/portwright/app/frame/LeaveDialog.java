package portwright.app.frame;

import java.util.function.BooleanSupplier;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.Stage;

/** Asks before unsaved work would go. */
final class LeaveDialog {
    private LeaveDialog() {}

    /** True when the window may go on: saved, or told to leave it. */
    static boolean ask(Stage owner, String title, BooleanSupplier save) {
        ButtonType saveIt = new ButtonType("Save", ButtonData.YES);
        ButtonType leave = new ButtonType("Do not save", ButtonData.NO);
        ButtonType stay = new ButtonType("Stay", ButtonData.CANCEL_CLOSE);
        Alert a = new Alert(Alert.AlertType.NONE, title + " has changes that are not saved.", saveIt, leave, stay);
        a.initOwner(owner);
        a.setTitle("Not saved");
        ButtonType b = a.showAndWait().orElse(stay);
        return b == leave || b == saveIt && save.getAsBoolean();
    }
}
