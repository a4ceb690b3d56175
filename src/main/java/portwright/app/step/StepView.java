package portwright.app.step;

import java.util.List;
import javafx.scene.Node;
import portwright.app.doc.Document;

/** One step of the job: its board in the middle and its tickets at the side. */
public interface StepView {
    /** What lies in the middle. */
    Node board();

    /** Whether the column of views stands beside the board. */
    default boolean views() {
        return false;
    }

    /** Tickets at the side, top to bottom. */
    List<Node> tickets();

    /** What stands below the tickets whatever is scrolled, null for nothing. */
    default Node pinned() {
        return null;
    }

    /** Opens what a field lies in. */
    default void reveal(String field) {}

    /** Where the chosen part stands among the tickets; null where it does not. */
    default Node row() {
        return null;
    }

    /** Shows a change of the document. */
    void changed(Document.Change change);
}
