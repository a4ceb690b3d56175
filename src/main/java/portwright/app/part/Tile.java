package portwright.app.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import portwright.app.doc.StepCount;

/** A test tile that hangs on the rail: one step of the job with its counts. */
public final class Tile extends ToggleButton {
    private static final String SHAPE =
            "M6,17 L33,17 C38,17 40,14 42,9 C44,3 47,0 51,0 L69,0 C73,0 76,3 78,9 C80,14 82,17 87,17 L114,17"
                    + " C117,17 120,20 120,23 L120,66 C120,69 117,72 114,72 L6,72 C3,72 0,69 0,66 L0,23 C0,20 3,17 6,17 Z"
                    + " M60,4 C57.8,4 56,5.8 56,8 C56,10.2 57.8,12 60,12 C62.2,12 64,10.2 64,8 C64,5.8 62.2,4 60,4 Z";

    /** Width of a tile where there is room, px. */
    public static final double WIDE_PX = 120;

    private static final double BOTH_PX = 96;
    /** Under this width the name stands in smaller letters, px. */
    private static final double NAME_PX = 72;
    /** And under this one in the smallest. */
    private static final double SMALL_PX = 52;

    /** Height of a tile with its counts in two rows, px. */
    private static final double ROWS_PX = 82;
    /** What a tile keeps free beside its counts, px. */
    private static final double ENDS_PX = 10;

    private static final double TIP_PX = 320;

    private final int number;
    private final Label word = new Label();
    private final HBox counts = new HBox(4);
    /** Holds the counts for which the first row has no room. */
    private final HBox below = new HBox();

    private final Map<Sign, Label> pairs = new LinkedHashMap<>();
    private final Node clear = Sign.CLEAR.draw(14);
    private final Label borrowed = new Label();
    private final Tooltip tip = new Tooltip();
    private final String name;
    private double width = WIDE_PX;
    private Consumer<Sign> onCount = s -> {};
    private StepCount shown;

    public Tile(int number, String name) {
        this.number = number;
        this.name = name;
        getStyleClass().setAll("test-tile");
        setStyle("-fx-shape: \"" + SHAPE + "\";");
        word.getStyleClass().add("tile-word");
        counts.setAlignment(Pos.CENTER);
        counts.setMinHeight(18);
        for (Sign s : List.of(Sign.UNREAD, Sign.STOP, Sign.CAUTION, Sign.UNCHECKED)) {
            Label l = new Label("", s.draw(14));
            l.getStyleClass().add("tile-count");
            l.setGraphicTextGap(4);
            l.setOnMouseReleased(e -> onCount.accept(s));
            pairs.put(s, l);
            counts.getChildren().add(l);
        }
        borrowed.getStyleClass().add("tile-count");
        counts.getChildren().addAll(borrowed, clear);
        below.setSpacing(4);
        below.setAlignment(Pos.CENTER);
        VBox box = new VBox(0, word, counts, below);
        box.setAlignment(Pos.CENTER);
        setGraphic(box);
        tip.setWrapText(true);
        tip.setMaxWidth(TIP_PX);
        setTooltip(tip);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAlignment(Pos.CENTER);
        selectedProperty().addListener((o, a, b) -> size());
        size();
    }

    private void size() {
        word.setText(width >= BOTH_PX ? number + " " + name : name);
        word.setStyle(width >= NAME_PX ? "" : width >= SMALL_PX ? "-fx-font-size: 13px;" : "-fx-font-size: 11px;");
        mark();
        double high = below.isManaged() ? ROWS_PX : isSelected() ? 79 : 68;
        setMinSize(width, high);
        setPrefSize(width, high);
        setMaxSize(width, high);
    }

    /** Hears which count was tapped, before the tile itself acts. */
    public void onCount(Consumer<Sign> hear) {
        onCount = hear;
    }

    /** On a tile of the width given, px, as much of number and name stays as has room. */
    public void fit(double px) {
        width = px;
        size();
    }

    /** Shows the counts of the step. */
    public void show(StepCount c) {
        if (c.equals(shown)) {
            return;
        }
        shown = c;
        show(Sign.UNREAD, c.unread());
        show(Sign.STOP, c.stops());
        show(Sign.CAUTION, c.cautions());
        show(Sign.UNCHECKED, c.open());
        getStyleClass().remove("wrong");
        if (c.unread() > 0) {
            getStyleClass().add("wrong");
        }
        boolean free = c.stops() + c.cautions() + c.open() + c.unread() == 0;
        clear.setVisible(free && c.borrowed() == 0);
        clear.setManaged(clear.isVisible());
        size();
        setAccessibleText("step " + number + " " + name + ", " + c.words());
        tip.setText(c.told());
    }

    /** The counts in one row; in two where one has no room, and what still has none is told by the tile's words alone. */
    private void mark() {
        int n = shown == null ? 0 : shown.borrowed();
        borrowed.setText("◇ " + n);
        List<Label> all = new ArrayList<>(pairs.values());
        all.add(borrowed);
        List<Label> told = all.stream()
                .filter(l -> l == borrowed
                        ? n > 0
                        : Boolean.TRUE.equals(l.getProperties().get(Tile.class)))
                .toList();
        all.forEach(l -> show(l, told.contains(l)));
        counts.getChildren().setAll(all);
        counts.getChildren().add(clear);
        below.getChildren().clear();
        counts.applyCss();
        double room = width - ENDS_PX;
        if (told.size() > 1 && counts.prefWidth(-1) > room) {
            List<Label> first = new ArrayList<>();
            List<Label> second = new ArrayList<>();
            for (Label l : told) {
                List<Label> row = second.isEmpty() && wide(first, l) <= room ? first : second;
                row = row.isEmpty() || wide(row, l) <= room ? row : null;
                if (row == null) {
                    show(l, false);
                } else {
                    row.add(l);
                }
            }
            counts.getChildren().setAll(first);
            below.getChildren().setAll(second);
        }
        below.setVisible(!below.getChildren().isEmpty());
        below.setManaged(below.isVisible());
    }

    /** Width of a row of counts with one more, px. */
    private double wide(List<Label> row, Label more) {
        return row.stream()
                        .mapToDouble(l -> l.prefWidth(-1) + counts.getSpacing())
                        .sum()
                + more.prefWidth(-1);
    }

    private static void show(Label l, boolean on) {
        l.setVisible(on);
        l.setManaged(on);
    }

    private void show(Sign sign, int count) {
        Label l = pairs.get(sign);
        l.setText(String.valueOf(count));
        l.getProperties().put(Tile.class, count > 0);
    }

    @Override
    public void fire() {
        if (!isSelected()) {
            super.fire();
        }
    }
}
