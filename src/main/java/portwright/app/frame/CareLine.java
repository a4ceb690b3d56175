package portwright.app.frame;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import portwright.app.doc.Care;
import portwright.data.LocalCodes;
import portwright.units.Unbroken;

/** The caution that matters where one stands, whose word comes first, and the way to all cautions. */
final class CareLine extends HBox {
    private static final double GAP_PX = 12;

    private final Text moment = new Text();
    private final Text words = new Text();
    private final TextFlow flow = new TextFlow(moment, words);
    private final Button all = Notices.button("Safety", this::open);
    private Care care;

    CareLine(Care care) {
        super(GAP_PX);
        getStyleClass().add("care-line");
        setAlignment(Pos.CENTER_LEFT);
        moment.getStyleClass().addAll("care-text", "strong");
        words.getStyleClass().add("care-text");
        flow.getStyleClass().add("text-flow-of-care");
        flow.setMinWidth(0);
        HBox.setHgrow(flow, Priority.ALWAYS);
        all.getStyleClass().add("care-button");
        all.setMinWidth(USE_PREF_SIZE);
        all.setAccessibleText("all cautions, Shift+F1");
        getChildren().addAll(flow, all);
        show(care);
    }

    void show(Care now) {
        if (now == care) {
            return;
        }
        care = now;
        moment.setText(now.caution().moment().heading() + ": ");
        words.setText(Unbroken.words(now.caution().text() + " " + LocalCodes.FIRST));
    }

    /** Holds a breadth; for a window that asks its content for its size. */
    CareLine wide(double px) {
        setMinWidth(px);
        setPrefWidth(px);
        setMaxWidth(px);
        return this;
    }

    @Override
    protected double computeMinHeight(double width) {
        return high(width < 0 ? prefWidth(-1) : width);
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    /** Height that its words take in a breadth, px. */
    double high(double width) {
        double room = width - snappedLeftInset() - snappedRightInset() - all.prefWidth(-1) - GAP_PX;
        return Math.ceil(
                snappedTopInset() + snappedBottomInset() + Math.max(flow.prefHeight(room), all.prefHeight(-1)));
    }

    /** Shows all cautions, at those of this moment. */
    void open() {
        SafetyWindow.show(getScene().getWindow(), care.caution().moment());
    }
}
