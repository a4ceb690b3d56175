package portwright.app.frame;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import portwright.app.doc.Figure;
import portwright.app.doc.VerdictWords;
import portwright.app.part.Sign;

/** The foot: four to six live figures and the one verdict of the whole design. */
final class Foot extends HBox {
    private final HBox cells = new HBox();
    private final HBox verdict = new HBox(12);
    private int most = 6;
    private List<Figure> figures = List.of();

    Foot() {
        getStyleClass().add("foot");
        setMinHeight(88);
        setPrefHeight(88);
        setMaxHeight(88);
        setAlignment(Pos.CENTER_LEFT);
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        cells.setMinWidth(0);
        verdict.setAlignment(Pos.CENTER_RIGHT);
        verdict.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(cells, spring, verdict);
    }

    /** How many figures there is room for. */
    void most(int count) {
        if (most != count) {
            most = count;
            show(figures);
        }
    }

    void show(List<Figure> list) {
        figures = list;
        cells.getChildren().clear();
        for (Figure f : list.subList(0, Math.min(most, list.size()))) {
            Label label = new Label(f.label());
            label.getStyleClass().addAll("muted", "slip-text");
            Label value = new Label(f.value());
            value.getStyleClass().add("live-figure");
            Label unit = new Label(f.unit());
            unit.getStyleClass().add("figure-unit");
            HBox line = new HBox(6, value, unit);
            line.setAlignment(Pos.BASELINE_LEFT);
            VBox cell = new VBox(2, label, line);
            cell.getStyleClass().add("foot-cell");
            cell.setMinWidth(USE_PREF_SIZE);
            if (cells.getChildren().isEmpty()) {
                cell.getStyleClass().add("first");
            }
            cell.setAccessibleText(f.label() + " " + f.value() + " " + f.unit());
            cells.getChildren().add(cell);
        }
    }

    void show(VerdictWords v) {
        Label big = new Label(v.count());
        big.getStyleClass().add("verdict-word");
        Label small = new Label(v.forbids());
        small.getStyleClass().addAll("muted", "slip-text");
        VBox words = new VBox(1, big, small);
        words.setAlignment(Pos.CENTER_LEFT);
        Sign sign = switch (v.sign()) {
            case STOP -> Sign.STOP;
            case INCOMPLETE -> Sign.UNCHECKED;
            case CAUTION -> Sign.CAUTION;
            case CLEAR -> Sign.CLEAR;
        };
        verdict.getChildren().setAll(sign.draw(42), words);
        verdict.setAccessibleText(v.count() + ", " + v.forbids());
    }
}
