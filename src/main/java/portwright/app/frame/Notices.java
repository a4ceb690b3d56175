package portwright.app.frame;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.part.SlipView;

/** Messages of the window itself, over the findings; each stays until someone answers it, some only until work goes on. */
final class Notices {
    private final VBox place;

    Notices(VBox place) {
        this.place = place;
    }

    /** Says something that can only be closed. */
    void say(String head, String text) {
        SlipView[] slip = new SlipView[1];
        slip[0] = SlipView.caution(head, text, button("Close", () -> remove(slip[0])));
        add(slip[0]);
    }

    void add(SlipView slip) {
        place.getChildren().add(slip);
    }

    /** Adds a slip that goes by itself with the first edit or in another step. */
    void addPassing(SlipView slip) {
        slip.getProperties().put(Notices.class, true);
        add(slip);
    }

    /** Work goes on: takes away what is said only until then. */
    static void pass(VBox place) {
        place.getChildren().removeIf(n -> n.getProperties().containsKey(Notices.class));
    }

    /** Takes it away with the first edit too, once the hand has let go. */
    static void passWithEdits(Document doc, VBox place) {
        doc.listen(c -> {
            if (c == Document.Change.DESIGN && !doc.dragging()) {
                pass(place);
            }
        });
    }

    void remove(SlipView slip) {
        place.getChildren().remove(slip);
    }

    boolean holds(SlipView slip) {
        return place.getChildren().contains(slip);
    }

    void clear() {
        place.getChildren().clear();
    }

    static Button button(String words, Runnable run) {
        Button b = new Button(words);
        b.getStyleClass().setAll("plain-button");
        b.setOnAction(e -> run.run());
        return b;
    }
}
