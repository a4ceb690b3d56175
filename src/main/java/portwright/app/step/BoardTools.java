package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import portwright.app.board.Board;
import portwright.app.doc.Picture;
import portwright.app.paint.RulePainter;
import portwright.model.UnitSystem;

/** The small key hints that lie on the board. */
public final class BoardTools extends Pane {
    private static final double NARROW_PX = 660;
    /** On a board as low as that the drawing reaches up between the key hints, px. */
    private static final double LOW_PX = 460;
    /** From this width on the hint has room for the longer nudge, px. */
    private static final double SHIFT_PX = 800;

    private final Board board;
    private final List<Label> words = new ArrayList<>();
    private final ToggleButton snap = hint("S", "snap", "snap: joints, mirror, 15°");
    private final ToggleButton measure = hint("M", "measure", "measure");
    private final ToggleButton region = hint("R", "may go", "where it may go");
    private final HBox top = new HBox(8, snap, measure, region);
    private final HBox nudge = new HBox(5);
    private final Label far = new Label();
    /** Says that taps measure now and how to end it, or why a key did nothing. */
    private final Label mode = new Label();

    private boolean ports;

    public BoardTools(Board board) {
        this.board = board;
        setPickOnBounds(false);
        snap.setOnAction(e -> board.press("snap"));
        measure.setOnAction(e -> board.press("measure"));
        region.setOnAction(e -> board.press("region"));
        Label keys = new Label("↑ ↓ ← →");
        keys.getStyleClass().add("key-cap");
        far.setStyle("-fx-font-size: 13px;");
        Label next = new Label(".");
        next.getStyleClass().add("key-cap");
        Label port = new Label("next port");
        port.setStyle(far.getStyle());
        nudge.getChildren().addAll(keys, far, next, port);
        nudge.getStyleClass().add("key-hint");
        nudge.setPadding(new Insets(4, 7, 4, 5));
        nudge.setMouseTransparent(true);
        mode.getStyleClass().add("mode-band");
        mode.setMouseTransparent(true);
        mode.setWrapText(true);
        getChildren().addAll(top, nudge, mode);
        widthProperty().addListener(o -> sync());
        heightProperty().addListener(o -> sync());
        sync();
    }

    /** @param shortWords shown on a narrow board */
    private ToggleButton hint(String key, String shortWords, String words) {
        Label k = new Label(key);
        k.getStyleClass().add("key-cap");
        Label w = new Label();
        w.textProperty()
                .bind(Bindings.when(widthProperty()
                                .lessThan(NARROW_PX)
                                .or(heightProperty().lessThan(LOW_PX)))
                        .then(shortWords)
                        .otherwise(words));
        w.setStyle("-fx-font-size: 13px;");
        this.words.add(w);
        ToggleButton b = new ToggleButton();
        // on or off by a line too, not by colour alone; the style sheet has the other under the whole
        w.underlineProperty().bind(b.selectedProperty());
        HBox box = new HBox(5, k, w);
        box.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        b.setGraphic(box);
        b.getStyleClass().setAll("key-hint");
        b.setAccessibleText(words + ", key " + key);
        b.setTooltip(new Tooltip(words));
        // a click is meant for the board: arrows and Escape go on from there
        b.setOnMouseReleased(e -> board.requestFocus());
        return b;
    }

    /** Shows the state of the modes. */
    public void sync() {
        snap.setSelected(board.snapping());
        measure.setSelected(board.measuring());
        region.setSelected(board.showsRegion());
        mode.setText(board.measureWords());
        mode.setVisible(!mode.getText().isEmpty());
        far.setText(arrows());
        nudge.setVisible(ports && !mode.isVisible() && board.picture() != Picture.SECTION);
        requestLayout();
    }

    /** What the arrows do as things stand, and how a port is chosen without a mouse. */
    private String arrows() {
        if (!board.nudges()) {
            return "slide the drawing";
        }
        boolean inch = board.units() == UnitSystem.INCH;
        // on a narrow board the tape FRONT lies beside it, on a low one the slab
        String shift = getWidth() < SHIFT_PX || getHeight() < LOW_PX ? "" : inch ? ", Shift 1/2 in" : ", Shift 10 mm";
        return (inch ? "nudge 1/16 in" : "nudge 1 mm") + shift;
    }

    /** Whether the nudge hint may show: there are ports to move. */
    public void nudge(boolean on) {
        ports = on;
        sync();
    }

    @Override
    protected void layoutChildren() {
        double m = RulePainter.BREADTH + 12;
        boolean small = getWidth() < 640 || getHeight() < 360;
        boolean keysAlone = small || getHeight() < LOW_PX && board.picture() == Picture.SECTION;
        words.forEach(l -> {
            l.setVisible(!keysAlone);
            l.setManaged(!keysAlone);
        });
        top.resizeRelocate(m, RulePainter.BREADTH + 8, Math.min(getWidth() - m - 10, top.prefWidth(-1)), 28);
        nudge.resizeRelocate(m, getHeight() - 42, nudge.prefWidth(-1), 28);
        nudge.setOpacity(small ? 0 : 1);
        double wide = Math.min(getWidth() - 2 * m, mode.prefWidth(-1));
        double high = mode.prefHeight(wide);
        mode.resizeRelocate(m, getHeight() - high - 10, wide, high);
    }
}
