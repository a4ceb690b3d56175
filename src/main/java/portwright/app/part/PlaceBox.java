package portwright.app.part;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.PlaceModel;
import portwright.units.Unbroken;

/** A place: right and back, or radius and bearing; on walls right of the panel's middle and above the floor. The typed form is kept, the other is shown computed. */
public final class PlaceBox extends VBox {
    private final PlaceModel model;
    private List<FieldBox> boxes = List.of();
    private final Label edges = new Label();
    private boolean polar;
    private boolean none;

    public PlaceBox(Document doc, String path, boolean wall) {
        this.model = new PlaceModel(doc, path, wall);
        setSpacing(8);
        edges.setWrapText(true);
        edges.setMinHeight(USE_PREF_SIZE);
        edges.getStyleClass().addAll("muted", "slip-text");
        build();
    }

    private void build() {
        HeldKeys.keep(this, this::rebuild);
    }

    private void rebuild() {
        polar = model.polar();
        none = model.none();
        boxes = model.fields().stream().map(FieldBox::new).toList();
        getChildren().setAll(boxes);
        edges.setText(Unbroken.words(model.edges()));
        if (!edges.getText().isEmpty()) {
            getChildren().add(edges);
        }
        if (model.canTurn()) {
            getChildren().add(new OtherForm(model));
        }
    }

    /** Shows the design as it stands. */
    public void refresh() {
        if (polar != model.polar() || none != model.none()) {
            build();
        }
        boxes.forEach(FieldBox::refresh);
        String words = Unbroken.words(model.edges());
        if (words.isEmpty() == getChildren().contains(edges)) {
            build();
        }
        edges.setText(words);
        getChildren().forEach(n -> {
            if (n instanceof OtherForm o) {
                o.refresh();
            }
        });
    }
}
