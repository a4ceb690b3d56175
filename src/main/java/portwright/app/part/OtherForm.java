package portwright.app.part;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import portwright.app.doc.PlaceModel;

/** The place in the other form, computed, with a button that turns the typed form into it. */
final class OtherForm extends VBox {
    private final PlaceModel model;
    private final Label words = new Label();

    OtherForm(PlaceModel model) {
        super(4);
        this.model = model;
        words.setMinWidth(0);
        words.getStyleClass().addAll("muted", "slip-text");
        Button turn = new Button("Type " + model.otherForm() + " instead");
        turn.getStyleClass().add("plain-button");
        turn.setMinWidth(USE_PREF_SIZE);
        turn.setOnAction(e -> model.turn());
        getChildren().addAll(words, turn);
        refresh();
    }

    void refresh() {
        words.setText(model.other());
    }
}
