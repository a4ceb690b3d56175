package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.FieldModel;
import portwright.app.part.FieldBox;
import portwright.data.LimitRow;
import portwright.data.LimitTable;
import portwright.form.FieldSpec;
import portwright.form.RuleWords;
import portwright.units.Display;
import portwright.units.Quantity;

/** The design's own limits: every limit of the rule book with its usual value; an empty field leaves the rule book's. */
final class LimitsForm extends VBox {
    private final List<FieldBox> boxes = new ArrayList<>();

    private final Document doc;
    private String built = "";

    LimitsForm(Document doc) {
        this.doc = doc;
        setSpacing(6);
    }

    private void build() {
        boxes.clear();
        getChildren().clear();
        LimitTable table = LimitTable.load();
        for (String rule : table.rules()) {
            Label head = new Label(RuleWords.head(rule));
            head.getStyleClass().add("section-head");
            getChildren().add(head);
            for (LimitRow row : table.of(rule)) {
                String hint = usual(row) + (row.fixed() ? ", fixed" : "");
                FieldSpec.Type type = row.kind() == null ? FieldSpec.Type.NUMBER : FieldSpec.Type.QUANTITY;
                boolean plain = doc.text().get("limits." + rule).isPresent()
                        && table.main(rule)
                                .filter(m -> m.name().equals(row.name()))
                                .isPresent();
                FieldSpec spec =
                        new FieldSpec(plain ? rule : row.name(), row.name(), type, row.kind(), List.of(), hint);
                FieldBox box = new FieldBox(new FieldModel(doc, plain ? "limits" : "limits." + rule, spec));
                boxes.add(box);
                getChildren().add(box);
            }
        }
    }

    /** The limit that holds without an own one, {@code {inch|metric}} where the two systems write it otherwise. */
    private static String usual(LimitRow row) {
        if (row.kind() == null) {
            return row.typed();
        }
        return "{" + Display.imperial(Quantity.parse(row.typed(), row.kind())) + "|" + row.typed() + "}";
    }

    void refresh() {
        String now = doc.text().getJson("limits").orElse("");
        boolean scalars = !now.equals(built);
        if (boxes.isEmpty()
                || scalars && boxes.stream().noneMatch(b -> b.control(false).isFocused())) {
            built = now;
            build();
        }
        boxes.forEach(FieldBox::refresh);
    }
}
