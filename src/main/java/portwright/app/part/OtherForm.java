package portwright.app.part;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import portwright.app.doc.PlaceModel;

/** The place in the other form, computed, with a button that turns the typed form into it. */
final class OtherForm extends HBox {
    private final PlaceModel model;
    private final Label words = new Label();

    OtherForm(PlaceModel model) {
        this.model = model;
        setSpacing(4);
        setAlignment(Pos.CENTER_LEFT);
        Label or = new Label("or");
        or.getStyleClass().add("field-name");
        or.setMinWidth(86);
        words.getStyleClass().add("computed-text");
        words.setMinWidth(USE_PREF_SIZE);
        HBox box = new HBox(words);
        box.getStyleClass().addAll("field", "computed");
        box.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(box, Priority.ALWAYS);
        Button turn = new Button("type");
        turn.getStyleClass().add("plain-button");
        turn.setMinWidth(USE_PREF_SIZE);
        turn.setOnAction(e -> model.turn());
        turn.setAccessibleText("type the place as " + (model.polar() ? "right and back" : "radius and bearing"));
        getChildren().addAll(or, box, turn);
        refresh();
    }

    void refresh() {
        words.setText(model.other());
    }
}
