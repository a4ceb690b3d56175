package portwright.app.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.Step;
import portwright.app.doc.Unread;
import portwright.app.part.SlipView;

/** A slip for each field that holds something unreadable, over all else at its step and at Paper. */
final class EntrySlips extends VBox {
    private final Document doc;
    private final Consumer<String> go;
    private List<Unread.Entry> shown = List.of();
    private Step shownAt;

    /** @param go shows the field of a path */
    EntrySlips(Document doc, Consumer<String> go) {
        super(8);
        this.doc = doc;
        this.go = go;
    }

    void show(Step step) {
        List<Unread.Entry> now = doc.unread().of(step);
        if (now.equals(shown) && step == shownAt) {
            return;
        }
        shown = now;
        shownAt = step;
        getChildren().setAll(now.stream().map(e -> slip(e)).toList());
        setVisible(!now.isEmpty());
        setManaged(!now.isEmpty());
    }

    private Node slip(Unread.Entry e) {
        List<Button> buttons = new ArrayList<>();
        if (e.step() != Step.PAPER) {
            buttons.add(Notices.button("Show the field", () -> go.accept(e.path())));
        }
        buttons.add(Notices.button(
                e.good().isEmpty() ? "Leave it empty" : "Keep " + e.good(),
                () -> doc.unread().settle(e.path())));
        return SlipView.stop(
                "The field " + e.field() + " cannot be read",
                e.words() + " No paper is saved or printed until this is settled.",
                buttons.toArray(Button[]::new));
    }
}
