package portwright.app.step;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import portwright.app.part.FieldRing;

/** Buttons and choices of the Paper step. */
final class PaperControls {
    private PaperControls() {}

    /** A button to press with dusty fingers; the main one is filled. */
    static Button big(String words, boolean main) {
        Button b = new Button(words);
        b.getStyleClass().setAll(main ? List.of("main-button") : List.of("plain-button", "tall-button"));
        b.setMaxWidth(Double.MAX_VALUE);
        b.setMinHeight(48);
        return b;
    }

    /** Words over the buttons; without words it takes no room. */
    static final class Told extends Label {
        Told(String style) {
            getStyleClass().addAll(style, "slip-text");
            setWrapText(true);
            setStyle("-fx-padding: 0;");
            setMinHeight(USE_PREF_SIZE);
            say("");
        }

        void say(String words) {
            setText(words);
            setManaged(!words.isEmpty());
            setVisible(!words.isEmpty());
        }
    }

    /** A box to choose from, with its name before it. */
    static Node choice(String label, ComboBox<String> box) {
        Label name = new Label(label);
        name.getStyleClass().add("field-name");
        name.setMinWidth(86);
        box.getStyleClass().add("choice");
        box.setMaxWidth(Double.MAX_VALUE);
        box.setAccessibleText(label);
        HBox frame = new HBox(box);
        frame.getStyleClass().add("field");
        FieldRing.round(frame, box);
        frame.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(frame, Priority.ALWAYS);
        HBox.setHgrow(box, Priority.ALWAYS);
        HBox row = new HBox(4, name, frame);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }
}
