package portwright.app.frame;

import java.util.Locale;
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
    private static final double FONT_PX = 14;
    private static final double MOST_PX = 600;

    private LeaveDialog() {}

    /** True when the window may go on: saved, or told to leave it. */
    static boolean ask(Stage owner, String title, BooleanSupplier save) {
        ButtonType saveIt = new ButtonType("Save", ButtonData.YES);
        ButtonType leave = new ButtonType("Do not save", ButtonData.NO);
        ButtonType stay = new ButtonType("Stay", ButtonData.CANCEL_CLOSE);
        Alert a = new Alert(Alert.AlertType.NONE, "", saveIt, leave, stay);
        Label words = new Label(title + " has changes that are not saved. Do not save: they are lost for good.");
        words.setWrapText(true);
        double size = Themes.size(owner);
        words.setMaxWidth(WORDS_PX * size);
        words.setPadding(new Insets(24 * size, 24 * size, 12 * size, 24 * size));
        a.getDialogPane().setContent(words);
        a.getDialogPane().getStylesheets().setAll(owner.getScene().getStylesheets());
        a.getDialogPane()
                .setStyle(String.format(
                        Locale.ROOT, "-fx-font-size: %.1fpx; -fx-max-width: %.0fpx;", FONT_PX * size, MOST_PX * size));
        a.initOwner(owner);
        a.setTitle("Not saved");
        ButtonType b = a.showAndWait().orElse(stay);
        return b == leave || b == saveIt && save.getAsBoolean();
    }
}
