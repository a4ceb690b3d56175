package portwright.app.frame;

import java.util.function.BooleanSupplier;
import javafx.geometry.Insets;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.stage.Stage;

/** Asks before unsaved work would go. */
final class LeaveDialog {
    private static final double WORDS_PX = 460;

    private LeaveDialog() {}

    /** True when the window may go on: saved, or told to leave it. */
    static boolean ask(Stage owner, String title, BooleanSupplier save) {
        ButtonType saveIt = new ButtonType("Save", ButtonData.YES);
        ButtonType leave = new ButtonType("Do not save", ButtonData.NO);
        ButtonType stay = new ButtonType("Stay", ButtonData.CANCEL_CLOSE);
        Alert a = new Alert(Alert.AlertType.NONE, "", saveIt, leave, stay);
        Label words = new Label(title + " has changes that are not saved. Do not save: they are lost for good.");
        words.setWrapText(true);
        words.setMaxWidth(WORDS_PX);
        words.setPadding(new Insets(24, 24, 12, 24));
        a.getDialogPane().setContent(words);
        a.getDialogPane().getStylesheets().setAll(owner.getScene().getStylesheets());
        a.initOwner(owner);
        a.setTitle("Not saved");
        ButtonType b = a.showAndWait().orElse(stay);
        return b == leave || b == saveIt && save.getAsBoolean();
    }
}
