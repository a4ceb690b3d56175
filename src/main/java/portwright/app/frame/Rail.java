package portwright.app.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import portwright.app.doc.Document;
import portwright.app.doc.Moves;
import portwright.app.doc.Step;
import portwright.app.doc.StepCount;
import portwright.app.part.Sign;
import portwright.app.part.Tile;
import portwright.model.UnitSystem;

/** The top of the window: title and file menu, six test tiles on their rail, undo, redo, units. */
final class Rail extends Pane {
    private static final int LONG_TITLE = 20;
    /** Under this width all keep their least, px: the smallest window at twice its size. */
    private static final double LEAST_PX = 660;

    private final MenuButton file = new MenuButton();
    private final Label title = new Label();
    private final Label state = new Label();
    private final Tooltip titleTip = new Tooltip();
    private final HBox tilesBox = new HBox(10);
    private final List<Tile> tiles = new ArrayList<>();
    private final Region bar = new Region();
    private UnitSystem shownUnits;
    private final Label undoName = new Label();
    private final Label redoName = new Label();
    private final Map<Button, Label> arrows = new HashMap<>();
    private final Button undo = twoLines("Undo", undoName, "↶");
    private final Button redo = twoLines("Redo", redoName, "↷");
    private final Button units = new Button();
    private final HBox right = new HBox(10);
    private final Document doc;

    /** @param count hears which count of which step was tapped */
    Rail(Document doc, Consumer<Step> go, BiConsumer<Step, Sign> count) {
        this.doc = doc;
        getStyleClass().add("rail");
        setMinHeight(96);
        setPrefHeight(96);
        setMaxHeight(96);
        title.getStyleClass().add("design-title");
        title.setWrapText(true);
        state.getStyleClass().addAll("muted", "slip-text");
        VBox words = new VBox(2, title, state);
        file.setGraphic(words);
        file.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        file.getStyleClass().add("file-menu");
        file.setAccessibleText("file menu");
        file.setTooltip(titleTip);
        bar.getStyleClass().add("rail-bar");
        ToggleGroup group = new ToggleGroup();
        for (Step s : Step.values()) {
            Tile t = new Tile(s.ordinal() + 1, s.word());
            t.setToggleGroup(group);
            t.setOnAction(e -> go.accept(s));
            t.onCount(sign -> count.accept(s, sign));
            tiles.add(t);
        }
        tilesBox.getChildren().addAll(tiles);
        tilesBox.setAlignment(Pos.TOP_LEFT);
        undo.setOnAction(e -> doc.undo());
        redo.setOnAction(e -> doc.redo());
        units.getStyleClass().setAll("plain-button");
        units.setMinSize(80, 48);
        units.setOnAction(e -> turnUnits());
        right.setAlignment(Pos.CENTER_RIGHT);
        right.getChildren().addAll(undo, redo, units);
        getChildren().addAll(bar, file, tilesBox, right);
    }

    void turnUnits() {
        boolean inch = Moves.units(doc.text()) == UnitSystem.INCH;
        doc.edit(inch ? "show millimetres" : "show inches", t -> t.setText("units", inch ? "metric" : "inch"));
    }

    /** A button that says what it would do; in a tight window only its arrow. */
    private Button twoLines(String word, Label name, String sign) {
        Label w = new Label(word);
        w.setStyle("-fx-font-size: 13px;");
        name.getStyleClass().addAll("muted", "small");
        name.setWrapText(true);
        name.setStyle("-fx-line-spacing: -2px;");
        Label arrow = new Label(sign);
        arrow.setStyle("-fx-font-size: 20px;");
        VBox box = new VBox(-1, w, name, arrow);
        box.setAlignment(Pos.CENTER_LEFT);
        Button b = new Button();
        b.setGraphic(box);
        b.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        b.getStyleClass().setAll("plain-button");
        b.setMinHeight(48);
        b.setMaxHeight(66);
        b.setStyle("-fx-padding: 2 10 2 10;");
        arrows.put(b, arrow);
        return b;
    }

    MenuButton file() {
        return file;
    }

    /** Shows title and file state, and all that {@link #refresh} shows. */
    void show(String titleText, String stateText) {
        if (!titleText.equals(title.getText()) || !stateText.equals(state.getText())) {
            requestLayout();
        }
        title.setText(titleText);
        title.setStyle(titleText.length() > LONG_TITLE ? "-fx-font-size: 14px;" : "");
        titleTip.setText(titleText);
        state.setText(stateText);
        refresh();
    }

    /** Shows the names of undo and redo, and the units. */
    void refresh() {
        name(undo, undoName, doc.undoStack().undoName(), "Undo");
        name(redo, redoName, doc.undoStack().redoName(), "Redo");
        unit(Moves.units(doc.text()));
    }

    private void unit(UnitSystem now) {
        if (now == shownUnits) {
            return;
        }
        shownUnits = now;
        boolean inch = now == UnitSystem.INCH;
        Text in = new Text("in");
        Text mm = new Text("mm");
        for (Text t : List.of(in, mm)) {
            boolean on = (t == in) == inch;
            t.setStyle("-fx-font-size: 14px; -fx-fill: "
                    + (on ? "-color-fg-default; -fx-font-weight: bold;" : "-color-fg-muted;"));
        }
        TextFlow flow = new TextFlow(in, new Text("  "), mm);
        flow.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        units.setGraphic(flow);
        units.setAccessibleText("units: " + (inch ? "inches" : "millimetres") + ", Ctrl+U turns");
        requestLayout();
    }

    private void name(Button b, Label l, String name, String word) {
        String now = name == null ? "nothing" : name;
        if (now.equals(l.getText())) {
            return;
        }
        l.setText(now);
        b.getStyleClass().remove("off");
        if (name == null) {
            b.getStyleClass().add("off");
        }
        b.setAccessibleText(word + " " + now);
        b.setTooltip(new Tooltip(b.getAccessibleText()));
        requestLayout();
    }

    void show(Step step, StepCount count) {
        tiles.get(step.ordinal()).show(count);
    }

    void select(Step step) {
        Tile chosen = tiles.get(step.ordinal());
        chosen.setSelected(true);
        if (tiles.stream().anyMatch(Tile::isFocused)) {
            chosen.requestFocus();
        }
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        boolean tight = w < 900;
        boolean least = w < LEAST_PX;
        for (Button b : List.of(undo, redo)) {
            double fixed = least ? 34 : tight ? 44 : w < 1330 ? 104 : 140;
            b.setMinWidth(fixed);
            b.setPrefWidth(fixed);
            b.setMaxWidth(fixed);
            b.setStyle(least ? "-fx-padding: 2;" : "-fx-padding: 2 10 2 10;");
            ((VBox) b.getGraphic()).setAlignment(tight ? Pos.CENTER : Pos.CENTER_LEFT);
            ((VBox) b.getGraphic()).getChildren().forEach(n -> {
                boolean arrow = n == arrows.get(b);
                n.setVisible(arrow == tight);
                n.setManaged(arrow == tight);
            });
        }
        right.setSpacing(least ? 4 : tight ? 6 : 10);
        tilesBox.setSpacing(least ? 3 : tight ? 5 : 10);
        units.setMinWidth(least ? 56 : tight ? 66 : 80);
        units.setStyle(least ? "-fx-padding: 2;" : "");
        double rightW = least ? 132 : Math.min(w * (tight ? 0.4 : 0.34), right.prefWidth(-1));
        double rim = least ? 8 : 20;
        right.resizeRelocate(w - rightW - rim, 12, rightW, 66);
        double each = least ? 48 : tight ? 54 : Math.min(Tile.WIDE_PX, Math.max(62, (w - 290 - rightW - 60) / 6 - 8));
        tiles.forEach(t -> t.fit(each));
        double tw = tilesBox.prefWidth(-1);
        double leftW = Math.max(least ? 90 : 110, Math.min(280, w - tw - rightW - (least ? 34 : tight ? 50 : 70)));
        double x = Math.max(
                leftW + (tight ? 12 : 24), Math.min((w - tw) / 2 - 20, w - rightW - (least ? 2 * rim : 40) - tw));
        tilesBox.resizeRelocate(x, 10, tw, 82);
        bar.resizeRelocate(x - 14, 11, tw + 28, 7);
        file.resizeRelocate(10, 8, leftW, 74);
    }
}
