package portwright.app.frame;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import portwright.app.doc.Care;

/** The card of keys. */
final class KeyCard {
    private static final List<String[]> KEYS = List.of(
            new String[] {"Ctrl+1 … 6", "the six steps"},
            new String[] {"F6", "next region; Tab inside"},
            new String[] {"F2", "fields and findings; in a small window opens and shuts them"},
            new String[] {"J, Shift+J", "next finding, back"},
            new String[] {". and ,", "next port, back; then the other parts in the picture"},
            new String[] {"arrows", "nudge the chosen port 1/16 in or 1 mm; Shift 1/2 in or 10 mm; Alt 0.1 mm"},
            new String[] {"arrows", "with nothing chosen: slide the drawing"},
            new String[] {"Enter", "into the first field of the chosen part"},
            new String[] {"Ctrl+Shift+N", "new port"},
            new String[] {"Ctrl+D", "duplicate"},
            new String[] {"Ctrl+I, Ctrl+Shift+I", "mirror left–right, front–back"},
            new String[] {"Ctrl+E", "spread on a circle"},
            new String[] {"Delete", "take away"},
            new String[] {"S", "snap on or off; Alt lifts it"},
            new String[] {"M", "measure; Tab: centres"},
            new String[] {"R", "where the centre may go, on or off"},
            new String[] {"T", "turn the part over"},
            new String[] {"F, + −", "fit, zoom"},
            new String[] {"Ctrl+U", "inches or millimetres"},
            new String[] {"Ctrl+plus, minus, 0", "everything larger, smaller, at 100 % again"},
            new String[] {"Ctrl+Z, Ctrl+Shift+Z", "undo, redo"},
            new String[] {"Ctrl+S, O, N, P", "save, open, new, print"},
            new String[] {"F1, Shift+F1", "these keys; all cautions"},
            new String[] {"Esc", "put back, let go"});

    private static final double CARE_PX = 640;

    private KeyCard() {}

    static void show(Window owner) {
        GridPane grid = new GridPane(18, 5);
        for (int i = 0; i < KEYS.size(); i++) {
            Label key = new Label(KEYS.get(i)[0]);
            key.getStyleClass().add("key-cap");
            key.setMinWidth(Region.USE_PREF_SIZE);
            Label words = new Label(KEYS.get(i)[1]);
            words.setWrapText(true);
            words.setMinHeight(Region.USE_PREF_SIZE);
            grid.add(key, 0, i);
            grid.add(words, 1, i);
        }
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("Keys");
        ScrollPane keys = new ScrollPane(grid);
        keys.setFitToWidth(true);
        VBox box = new VBox(12, keys, new CareLine(Care.KEYS).wide(CARE_PX));
        box.getStyleClass().add("card-window");
        Scene scene = Themes.beside(owner, box, Region.USE_COMPUTED_SIZE, Region.USE_COMPUTED_SIZE);
        scene.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE || e.getCode() == KeyCode.F1) {
                stage.close();
            }
        });
        stage.setScene(scene);
        SmallWindow.show(stage);
    }
}
