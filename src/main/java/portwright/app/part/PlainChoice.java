package portwright.app.part;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A box to choose from that is no field of the design. */
public final class PlainChoice {
    private PlainChoice() {}

    /** The box with its name before it. */
    public static Node row(String label, ComboBox<String> box) {
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
