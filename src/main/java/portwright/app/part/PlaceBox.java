package portwright.app.part;

import java.util.List;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.PlaceModel;

/** A place: right and back, or radius and bearing; on walls right and up. The typed form is kept, the other is shown computed. */
public final class PlaceBox extends VBox {
    private final PlaceModel model;
    private List<FieldBox> boxes = List.of();
    private Boolean polar;

    public PlaceBox(Document doc, String path, boolean wall) {
        this.model = new PlaceModel(doc, path, wall);
        setSpacing(8);
        build();
    }

    private void build() {
        polar = model.polar();
        boxes = model.fields().stream().map(FieldBox::new).toList();
        getChildren().setAll(boxes);
        if (model.canTurn()) {
            getChildren().add(new OtherForm(model));
        }
    }

    /** Shows the design as it stands. */
    public void refresh() {
        if (polar != model.polar()) {
            build();
        }
        boxes.forEach(FieldBox::refresh);
        getChildren().forEach(n -> {
            if (n instanceof OtherForm o) {
                o.refresh();
            }
        });
    }
}
