package portwright.app.part;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import portwright.app.doc.Withheld;

/** What is held back and by what: one row a thing, each a link to where it is mended; the first few until all are asked for. */
public final class RowList extends VBox {
    /** A list this long shows whole; a longer one its first rows. */
    private static final int FEW = 9;

    private static final double TIP_PX = 320;

    private List<Withheld.Row> rows;
    private boolean all;

    public RowList() {
        super(1);
    }

    /** Shows these rows. */
    public void show(List<Withheld.Row> now) {
        if (!now.equals(rows)) {
            rows = List.copyOf(now);
            build();
        }
    }

    private void build() {
        List<Node> out = new ArrayList<>();
        int most = all || rows.size() <= FEW ? rows.size() : FEW - 2;
        Withheld.What what = null;
        for (Withheld.Row r : rows.subList(0, most)) {
            if (r.what() != what) {
                what = r.what();
                Label head = new Label(what.head());
                head.getStyleClass().add("section-head");
                out.add(head);
            }
            out.add(row(r));
        }
        if (most < rows.size()) {
            out.add(Plain.button("All " + rows.size(), () -> {
                all = true;
                build();
            }));
        }
        getChildren().setAll(out);
    }

    private static Button row(Withheld.Row r) {
        Button b = new Button(r.words(), (r.stop() == null ? Sign.UNCHECKED : Sign.STOP).draw(16));
        b.getStyleClass().setAll("part-row");
        b.setStyle("-fx-padding: 3 8 3 6;");
        b.setWrapText(true);
        b.setMinHeight(USE_PREF_SIZE);
        b.setMaxWidth(Double.MAX_VALUE);
        b.setAccessibleText("go to " + r.words());
        Tooltip tip = new Tooltip(r.why());
        tip.setWrapText(true);
        tip.setMaxWidth(TIP_PX);
        b.setTooltip(tip);
        b.setOnAction(e -> b.fireEvent(r.stop() == null ? Lead.toField(r.path(), r.rule()) : Lead.to(r.stop())));
        return b;
    }
}
