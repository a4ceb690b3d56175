package portwright.app.frame;

import java.util.ArrayList;
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
    private final Label big = new Label();
    private final Label small = new Label();
    private final VBox words = new VBox(1, big, small);
    private int most = 6;
    private List<Figure> figures = List.of();
    private final List<Cell> shown = new ArrayList<>();
    private VerdictWords said;

    Foot() {
        getStyleClass().add("foot");
        setMinHeight(88);
        setPrefHeight(88);
        setMaxHeight(88);
        setAlignment(Pos.CENTER_LEFT);
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        cells.setMinWidth(0);
        big.getStyleClass().add("verdict-word");
        small.getStyleClass().addAll("muted", "slip-text");
        words.setAlignment(Pos.CENTER_LEFT);
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
        int count = Math.min(most, list.size());
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

    /** One figure: what it is, its number, its unit. */
    private static final class Cell extends VBox {
        private final Label label = new Label();
        private final Label value = new Label();
        private final Label unit = new Label();

        Cell(boolean first) {
            super(2);
            label.getStyleClass().addAll("muted", "slip-text");
            value.getStyleClass().add("live-figure");
            unit.getStyleClass().add("figure-unit");
            HBox line = new HBox(6, value, unit);
            line.setAlignment(Pos.BASELINE_LEFT);
            getChildren().addAll(label, line);
            getStyleClass().add("foot-cell");
            setMinWidth(USE_PREF_SIZE);
            if (first) {
                getStyleClass().add("first");
            }
        }

        void show(Figure f) {
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
