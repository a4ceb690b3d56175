package portwright.app.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Cursor;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import portwright.app.doc.Figure;
import portwright.app.doc.VerdictWords;
import portwright.app.paint.Fonts;
import portwright.app.paint.TextSizes;
import portwright.app.part.Sign;

/** The foot: as many live figures as have room, and the one verdict of the whole design. */
final class Foot extends HBox {
    private static final double GAP_PX = 19;
    private static final double TIGHT_PX = 9;
    /** Width of words that stand in two lines, px. */
    private static final double WORDS_PX = 118;
    /** In a window under this width, px, the words of the verdict are no wider than that. */
    private static final double SMALL_PX = 900;

    private static final double VERDICT_PX = 150;

    private static final Font WORDS = Fonts.sans(13);

    private final HBox cells = new HBox();
    private final Label small = new Label();
    private final HBox verdict = new HBox(12) {
        private double mostPx;
        private double mostAt;

        /** It takes no less than it took once, in a window of one size: nothing beside it moves to and fro. */
        @Override
        protected double computePrefWidth(double height) {
            double now = super.computePrefWidth(height);
            mostPx = small.getMaxWidth() == mostAt ? Math.max(mostPx, now) : now;
            mostAt = small.getMaxWidth();
            return mostPx;
        }
    };
    private final Label big = new Label();
    private final VBox words = new VBox(1, big, small);
    private final List<Cell> shown = new ArrayList<>();
    private VerdictWords said;

    Foot() {
        getStyleClass().add("foot");
        setAlignment(Pos.CENTER_LEFT);
        cells.setMinWidth(0);
        cells.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(cells, Priority.ALWAYS);
        big.getStyleClass().add("verdict-word");
        small.getStyleClass().addAll("muted", "slip-text");
        small.setWrapText(true);
        small.setMinHeight(USE_PREF_SIZE);
        words.setAlignment(Pos.CENTER_LEFT);
        verdict.setAlignment(Pos.CENTER_RIGHT);
        verdict.setMinWidth(USE_PREF_SIZE);
        Tooltip.install(verdict, new Tooltip("Tap to see the first of them"));
        getChildren().addAll(cells, verdict);
    }

    /** Less room above and below where the window is small. */
    void low(boolean on) {
        setStyle(on ? "-fx-padding: 2 20 2 20;" : "");
    }

    /** Hears when the verdict is tapped. */
    void onVerdict(Runnable run) {
        verdict.setOnMouseClicked(e -> run.run());
        verdict.setCursor(Cursor.HAND);
    }

    void show(List<Figure> list) {
        int count = list.size();
        while (shown.size() > count) {
            cells.getChildren().remove(shown.remove(shown.size() - 1));
        }
        for (int i = 0; i < count; i++) {
            if (i == shown.size()) {
                shown.add(new Cell(i == 0));
                cells.getChildren().add(shown.get(i));
            }
            shown.get(i).show(list.get(i));
        }
    }

    /** Gaps shrink and the verdict takes two lines before a figure is left out; of the figures lambda stays longest. */
    @Override
    protected void layoutChildren() {
        boolean tightWords = getWidth() < SMALL_PX;
        small.setMaxWidth(tightWords ? VERDICT_PX : Double.MAX_VALUE);
        small.setPrefWidth(tightWords ? VERDICT_PX : USE_COMPUTED_SIZE);
        double room = getWidth() - snappedLeftInset() - snappedRightInset() - verdict.prefWidth(-1) - 24;
        if (shown.stream().mapToDouble(c -> c.prefWidth(-1)).sum() > room) {
            shown.forEach(Cell::letGo);
        }
        double bare = shown.stream().mapToDouble(Cell::bare).sum();
        boolean tight = bare + shown.size() * 2 * GAP_PX > room;
        shown.forEach(c -> c.tight(tight));
        double free = room;
        for (Cell c :
                shown.stream().sorted(Comparator.comparing(c -> !c.lambda())).toList()) {
            boolean fits = c.prefWidth(-1) <= free;
            free = fits ? free - c.prefWidth(-1) : c.lambda() ? free : 0;
            c.setVisible(fits);
            c.setManaged(fits);
        }
        super.layoutChildren();
    }

    /** One figure: what it is, its number, its unit. */
    private static final class Cell extends VBox {
        private final Label label = new Label();
        private final Label value = new Label();
        private final Label unit = new Label();

        private final HBox line = new HBox(6, value, unit);
        private final boolean first;
        private double heldPx;
        private boolean tight;

        Cell(boolean first) {
            super(2);
            this.first = first;
            label.getStyleClass().addAll("muted", "slip-text");
            label.setWrapText(true);
            label.setMinHeight(USE_PREF_SIZE);
            value.getStyleClass().add("live-figure");
            unit.getStyleClass().add("figure-unit");
            line.setAlignment(Pos.BASELINE_LEFT);
            getChildren().addAll(label, line);
            getStyleClass().add("foot-cell");
            setMinWidth(USE_PREF_SIZE);
            tight(false);
        }

        /** Less room at both sides, and words of two lines. */
        void tight(boolean on) {
            if (on != tight) {
                letGo();
            }
            tight = on;
            double px = on ? TIGHT_PX : GAP_PX;
            setPadding(new Insets(on ? 0 : 2, px, on ? 0 : 2, first ? 0 : px));
            setSpacing(on ? 0 : 2);
            setAlignment(on ? Pos.BOTTOM_LEFT : Pos.TOP_LEFT);
            label.setMaxWidth(on ? WORDS_PX : Double.MAX_VALUE);
            label.setPrefWidth(on ? Math.min(WORDS_PX, wide()) : USE_COMPUTED_SIZE);
        }

        /** Whether it tells of the fire. */
        boolean lambda() {
            return label.getText().startsWith("lambda");
        }

        /** Width of number and words in one line, px. */
        double bare() {
            return Math.max(wide(), line.prefWidth(-1));
        }

        private double wide() {
            return Math.ceil(TextSizes.width(label.getText(), WORDS)) + 1;
        }

        /** A number that takes less room than the one before leaves its neighbours where they are. */
        @Override
        protected double computePrefWidth(double height) {
            heldPx = Math.max(heldPx, super.computePrefWidth(height));
            return heldPx;
        }

        void letGo() {
            heldPx = 0;
            requestLayout();
        }

        void show(Figure f) {
            if (!f.label().equals(label.getText())) {
                letGo();
            }
            label.setText(f.label());
            value.setText(f.value());
            unit.setText(f.unit());
            setAccessibleText(f.label() + " " + f.value() + " " + f.unit());
        }
    }

    void show(VerdictWords v) {
        if (v.equals(said)) {
            return;
        }
        if (said == null || said.sign() != v.sign()) {
            verdict.getChildren().setAll(sign(v).draw(42), words);
        }
        said = v;
        big.setText(v.count());
        small.setText(v.forbids());
        verdict.setAccessibleText(v.count() + ", " + v.forbids());
    }

    private static Sign sign(VerdictWords v) {
        return switch (v.sign()) {
            case STOP -> Sign.STOP;
            case INCOMPLETE -> Sign.UNCHECKED;
            case CAUTION -> Sign.CAUTION;
            case CLEAR -> Sign.CLEAR;
        };
    }
}
