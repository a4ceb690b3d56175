package portwright.app.frame;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import portwright.app.part.Sign;
import portwright.check.Severity;
import portwright.data.Caution;
import portwright.data.Emergency;
import portwright.data.LocalCodes;

/** The list of all cautions, by the moment of the work at which they matter, and what is done when something goes wrong. */
final class SafetyWindow {
    private static final double WIDTH_PX = 820;
    private static final double HEIGHT_PX = 640;

    private SafetyWindow() {}

    /** Opens it at the cautions of a moment. */
    static void show(Window owner, Caution.Moment at) {
        Map<Caution.Moment, Label> heads = new EnumMap<>(Caution.Moment.class);
        VBox list = new VBox(6);
        for (Caution.Moment m : Caution.Moment.values()) {
            Label head = words(m.heading(), "board-heading");
            head.setStyle("-fx-padding: 12 0 2 0;");
            heads.put(m, head);
            list.getChildren().add(head);
            Caution.all().stream()
                    .filter(c -> c.moment() == m)
                    .forEach(c -> list.getChildren().add(row(c)));
        }
        Label wrong = words(Emergency.HEADING, "board-heading");
        wrong.setStyle("-fx-padding: 12 0 2 0;");
        list.getChildren().add(wrong);
        Emergency.all().forEach(e -> list.getChildren().add(words(e.words(), "slip-text")));
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Stage stage = new Stage();
        Button close = Notices.button("Close", stage::close);
        close.setMinSize(96, 36);
        HBox end = new HBox(close);
        end.setAlignment(Pos.CENTER_RIGHT);
        VBox box = new VBox(
                10,
                words("Before you drill or light", "board-heading"),
                words(LocalCodes.before("this window"), "slip-text"),
                scroll,
                end);
        box.getStyleClass().add("card-window");
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("Safety");
        Scene scene = Themes.beside(owner, box, WIDTH_PX, HEIGHT_PX);
        scene.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE || e.getCode() == KeyCode.F1) {
                stage.close();
            }
        });
        stage.setScene(scene);
        SmallWindow.show(stage);
        scroll.requestFocus();
        // once the window has its size and the lines have broken
        Platform.runLater(() -> Platform.runLater(() -> to(scroll, list, heads.get(at))));
    }

    private static void to(ScrollPane scroll, VBox list, Node head) {
        scroll.applyCss();
        scroll.layout();
        double rest = list.getHeight() - scroll.getViewportBounds().getHeight();
        scroll.setVvalue(rest <= 0 ? 0 : Math.min(1, head.getBoundsInParent().getMinY() / rest));
    }

    private static HBox row(Caution c) {
        Severity severity = Severity.valueOf(c.severity().toUpperCase(Locale.ROOT));
        Label source = words(c.source().line(), "muted");
        source.getStyleClass().add("small");
        VBox words = new VBox(1, words(c.text(), "slip-text"), source);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(9, Sign.of(severity).draw(18), words);
        row.setAccessibleText(c.severity() + ": " + c.text());
        return row;
    }

    private static Label words(String text, String style) {
        Label l = new Label(text);
        l.getStyleClass().add(style);
        l.setWrapText(true);
        l.setMinHeight(Region.USE_PREF_SIZE);
        return l;
    }
}
