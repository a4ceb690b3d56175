package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.part.FormView;
import portwright.app.part.Ticket;
import portwright.form.FormSpec;

/** A step with one board of its own and a ticket a form. */
public class FormStep implements StepView {
    private final Region board;
    private final List<FormView> forms = new ArrayList<>();
    private final List<Node> tickets = new ArrayList<>();

    /** A step that shows the given forms beside the board. */
    public FormStep(Document doc, Region board, FormSpec... specs) {
        this.board = board;
        for (FormSpec s : specs) {
            FormView form = new FormView(doc, s, s.path());
            forms.add(form);
            VBox ticket = Ticket.of(s.title(), "", form);
            tickets.add(ticket);
        }
    }

    @Override
    public Node board() {
        return board;
    }

    @Override
    public List<Node> tickets() {
        return tickets;
    }

    @Override
    public void reveal(String field) {
        forms.forEach(f -> f.reveal(field));
    }

    @Override
    public void changed(Document.Change change) {
        if (change == Document.Change.DESIGN || change == Document.Change.ENTRY) {
            forms.forEach(FormView::refresh);
        }
        if (board instanceof Refreshing r && change != Document.Change.SAVED) {
            r.refresh();
        }
    }

    /** A board that shows the document. */
    public interface Refreshing {
        void refresh();
    }
}
