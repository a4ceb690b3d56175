package portwright.app.part;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A ticket frame with a head line. */
public final class Ticket extends VBox {
    private final Label aside = new Label();

    private Ticket(String head, String words, Node... content) {
        super(8);
        Label h = new Label(head);
        h.getStyleClass().add("ticket-head");
        aside.setText(words);
        aside.getStyleClass().addAll("muted", "slip-text");
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        HBox line = new HBox(8, h, spring, aside);
        line.setAlignment(Pos.BASELINE_LEFT);
        getChildren().add(line);
        getChildren().addAll(content);
        getStyleClass().add("ticket");
    }

    /** One with words at the right end of its head line. */
    public static Ticket of(String head, String aside, Node... content) {
        return new Ticket(head, aside, content);
    }

    /** Other words at the right end of its head line. */
    public void aside(String words) {
        aside.setText(words);
    }

    /** Shows it, or takes it out of the column. */
    public void shown(boolean on) {
        setVisible(on);
        setManaged(on);
    }
}
