package portwright.app.frame;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.View;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Box;
import portwright.drawing.PartLook;
import portwright.file.Starters;
import portwright.geometry.KilnGeometry;

/** The starter designs with their pictures. */
public final class StarterDialog {
    private static final double CARD_WIDTH = 212;
    /** Holds the longest notes in full. */
    private static final double CARD_HEIGHT = 348;
    /** Breadth of a line of notes, px, and the size they are broken for. */
    private static final double NOTES_PX = 182;

    private static final double NOTES_FONT_PX = 13;
    /** A row of cards whole and the pictures of the next, px; fits a screen of 720. */
    private static final double HEIGHT_PX = 680;

    private StarterDialog() {}

    private static TilePane cards(Consumer<String> take) {
        TilePane pane = new TilePane(12, 12);
        pane.setPrefColumns(4);
        pane.setPrefTileWidth(CARD_WIDTH);
        pane.setPrefTileHeight(CARD_HEIGHT);
        for (String name : Starters.names()) {
            Label title = new Label(Starters.title(name));
            title.getStyleClass().add("slip-head");
            title.setWrapText(true);
            title.setMinHeight(Region.USE_PREF_SIZE);
            Label notes = new Label(String.join("\n", Say.broken(Starters.notes(name), NOTES_PX, NOTES_FONT_PX)));
            notes.getStyleClass().addAll("muted", "small");
            notes.setMinHeight(Region.USE_PREF_SIZE);
            VBox box = new VBox(6, new Thumb(name), title, notes);
            box.setAlignment(Pos.TOP_CENTER);
            box.setPrefWidth(190);
            Button b = new Button();
            b.setMaxSize(CARD_WIDTH, CARD_HEIGHT);
            b.setGraphic(box);
            b.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            b.getStyleClass().setAll("plain-button");
            b.setAccessibleText(Starters.title(name));
            b.setOnAction(e -> take.accept(name));
            pane.getChildren().add(b);
        }
        return pane;
    }

    /** @param take hears the starter and the kiln's own name, which is asked for first: it stands on every sheet */
    static void show(Stage owner, BiConsumer<String, String> take) {
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("New from a starter design");
        Label head = new Label("Take the kiln that is most like yours, then measure your own");
        head.getStyleClass().add("board-heading");
        TextField own = new TextField();
        own.setPrefColumnCount(28);
        own.setAccessibleText("name of your kiln");
        own.setPromptText("e.g. shed kiln");
        Label ask = new Label("Name of your kiln");
        ask.setLabelFor(own);
        Label why = new Label("It stands on every sheet.");
        why.getStyleClass().addAll("muted", "small");
        HBox name = new HBox(8, ask, own, why);
        name.setAlignment(Pos.CENTER_LEFT);
        ScrollPane scroll = new ScrollPane(cards(starter -> {
            if (own.getText().isBlank()) {
                why.getStyleClass().setAll("label", "field-note");
                why.setText("Write a name first: it stands on every sheet.");
                own.requestFocus();
                return;
            }
            stage.close();
            take.accept(starter, own.getText());
        }));
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        Button cancel = new Button("Cancel");
        cancel.getStyleClass().setAll("plain-button");
        cancel.setCancelButton(true);
        cancel.setMinSize(96, 36);
        cancel.setOnAction(e -> stage.close());
        HBox end = new HBox(cancel);
        end.setAlignment(Pos.CENTER_RIGHT);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox box = new VBox(10, head, name, scroll, end);
        box.getStyleClass().add("card-window");
        Scene scene = new Scene(box, 960, HEIGHT_PX);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        stage.setScene(scene);
        SmallWindow.show(stage);
        own.requestFocus();
    }

    /** Plan of a starter. */
    private static final class Thumb extends PaintedRegion {
        private final KilnGeometry kiln;

        Thumb(String name) {
            kiln = Starters.find(name)
                    .map(d -> KilnGeometry.of(d.read().design()))
                    .orElse(null);
            setPrefSize(150, 112);
            setMinSize(150, 112);
        }

        @Override
        protected void paint(GraphicsContext g, double w, double h, Palette p) {
            if (kiln != null) {
                List<Picture> order =
                        kiln.holes().stream().anyMatch(x -> x.face().on() == portwright.model.On.FLOOR)
                                ? List.of(Picture.FLOOR_HOT)
                                : List.of(Picture.WALLS_HOT);
                Plot plot = new Plot(kiln, order.get(0), List.of(), PartLook.small());
                Box b = plot.bounds();
                plot.paint(
                        CanvasPen.thumb(g, View.fit(b.minX(), b.minY(), b.maxX(), b.maxY(), 0, 0, w, h, 2), p, 0.6), b);
            }
        }
    }
}
