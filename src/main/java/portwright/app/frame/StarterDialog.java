package portwright.app.frame;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import portwright.app.doc.Care;
import portwright.app.doc.OwnMeasures;
import portwright.app.paint.Say;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.geometry.KilnGeometry;
import portwright.model.UnitSystem;

/** How a new kiln begins: from a starter design, shown with its picture, or from measures of its own. */
public final class StarterDialog {
    private static final double CARD_WIDTH = 212;
    /** Holds the longest notes in full. */
    private static final double CARD_HEIGHT = 348;
    /** Breadth of a line of notes, px, and the size they are broken for. */
    private static final double NOTES_PX = 182;

    private static final double NOTES_FONT_PX = 13;
    /** A row of cards whole and the pictures of the next, px; fits a screen of 720. */
    private static final double HEIGHT_PX = 680;

    private static final double WIDTH_PX = 960;

    private static final String HEAD = "Take the kiln that is most like yours, or type your own measures";
    private static final String OWN = "A kiln of my own measures";
    private static final String OWN_WORDS =
            "Type its plan, inside measures and thickness of brick; it begins without ports.";

    private StarterDialog() {}

    private static TilePane cards(Consumer<String> take) {
        TilePane pane = new TilePane(12, 12);
        pane.setPrefColumns(4);
        pane.setPrefTileWidth(CARD_WIDTH);
        pane.setPrefTileHeight(CARD_HEIGHT);
        for (String name : Starters.names()) {
            KilnGeometry kiln = Starters.find(name)
                    .map(d -> KilnGeometry.of(d.read().design()))
                    .orElse(null);
            pane.getChildren().add(card(Starters.title(name), Starters.notes(name), kiln, () -> take.accept(name)));
        }
        return pane;
    }

    private static Button card(String head, String words, KilnGeometry kiln, Runnable run) {
        Label notes = new Label(String.join("\n", Say.broken(words, NOTES_PX, NOTES_FONT_PX)));
        notes.setMaxWidth(Double.MAX_VALUE);
        VBox box = new VBox(6, new StarterThumb(kiln, 150, 112), title(head), small(notes));
        box.setAlignment(Pos.TOP_CENTER);
        box.setPrefWidth(190);
        Button b = button(head, box, run);
        b.setMaxSize(CARD_WIDTH, CARD_HEIGHT);
        return b;
    }

    /** The way to a kiln that none of them is like. */
    private static Button own(Runnable run) {
        VBox words = new VBox(2, title(OWN), small(new Label(OWN_WORDS)));
        words.setAlignment(Pos.CENTER_LEFT);
        Button b = button(OWN, words, run);
        b.setAlignment(Pos.CENTER_LEFT);
        b.setMaxWidth(Double.MAX_VALUE);
        b.setMinHeight(56);
        return b;
    }

    private static Label title(String words) {
        Label title = new Label(words);
        title.getStyleClass().add("slip-head");
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        return title;
    }

    private static Label small(Label l) {
        l.getStyleClass().addAll("muted", "small");
        l.setMinHeight(Region.USE_PREF_SIZE);
        return l;
    }

    private static Button button(String words, Node graphic, Runnable run) {
        Button b = new Button();
        b.setGraphic(graphic);
        b.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        b.getStyleClass().setAll("plain-button");
        b.setAccessibleText(words);
        b.setOnAction(e -> run.run());
        return b;
    }

    /** The name typed; null, after asking for it, while there is none. */
    private static String named(TextField own, Label why) {
        if (!own.getText().isBlank()) {
            return own.getText();
        }
        why.getStyleClass().setAll("label", "field-note");
        why.setText("Write a name first: it stands on every sheet.");
        own.requestFocus();
        return null;
    }

    /**
     * @param units of the design on the board, first choice for a kiln of one's own measures
     * @param take hears the starter and the kiln's own name, which is asked for first: it stands on every sheet
     * @param made hears the design of a kiln of one's own measures
     */
    static void show(Stage owner, UnitSystem units, BiConsumer<String, String> take, Consumer<DesignText> made) {
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("New kiln");
        Label head = new Label(HEAD);
        head.getStyleClass().add("board-heading");
        TextField own = new TextField();
        own.setPrefColumnCount(28);
        own.setAccessibleText("name of your kiln");
        own.setPromptText("e.g. shed kiln");
        Label ask = new Label("Name of your kiln");
        ask.setLabelFor(own);
        ask.setMinWidth(Region.USE_PREF_SIZE);
        Label why = new Label("It stands on every sheet.");
        why.getStyleClass().addAll("muted", "small");
        why.setMinWidth(Region.USE_PREF_SIZE);
        HBox name = new HBox(8, ask, own, why);
        name.setAlignment(Pos.CENTER_LEFT);
        StackPane body = new StackPane();
        ScrollPane scroll = new ScrollPane();
        VBox choice = new VBox(10);
        OwnForm form = new OwnForm(
                new OwnMeasures(units),
                () -> named(own, why),
                text -> {
                    stage.close();
                    made.accept(text);
                },
                () -> {
                    head.setText(HEAD);
                    body.getChildren().setAll(choice);
                });
        scroll.setContent(cards(starter -> {
            String title = named(own, why);
            if (title != null) {
                stage.close();
                take.accept(starter, title);
            }
        }));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        choice.getChildren()
                .setAll(
                        own(() -> {
                            head.setText(OWN);
                            body.getChildren().setAll(form);
                            if (!own.getText().isBlank()) {
                                form.begin();
                            }
                        }),
                        scroll);
        body.getChildren().setAll(choice);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        Button cancel = new Button("Cancel");
        cancel.getStyleClass().setAll("plain-button");
        cancel.setCancelButton(true);
        cancel.setMinSize(96, 36);
        cancel.setOnAction(e -> stage.close());
        HBox end = new HBox(cancel);
        end.setAlignment(Pos.CENTER_RIGHT);
        VBox.setVgrow(body, Priority.ALWAYS);
        VBox box = new VBox(10, head, name, body, new CareLine(Care.NEW_KILN), end);
        box.getStyleClass().add("card-window");
        stage.setScene(Themes.beside(owner, box, WIDTH_PX, HEIGHT_PX));
        SmallWindow.show(stage);
        own.requestFocus();
    }
}
