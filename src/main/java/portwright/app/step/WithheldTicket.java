package portwright.app.step;

import java.util.List;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.Withheld;
import portwright.app.part.RowList;
import portwright.app.part.Ticket;

/** What template and firing card wait for: a short list of links, with the count that the step's tile shows. */
final class WithheldTicket extends VBox {
    private final RowList list = new RowList();
    private final Ticket ticket = Ticket.of("Still missing", "", list);

    WithheldTicket() {
        getChildren().add(ticket);
        ticket.setSpacing(3);
        shown(false);
    }

    void show(Document doc) {
        List<Withheld.Row> rows = Withheld.of(doc);
        long stops = rows.stream().filter(r -> r.stop() != null).count();
        long open = rows.size() - stops;
        ticket.aside((stops == 0 ? "" : stops + (stops == 1 ? " stop" : " stops") + (open == 0 ? "" : " · "))
                + (open == 0 ? "" : open + " to fill in"));
        list.show(rows);
        shown(!rows.isEmpty());
    }

    private void shown(boolean on) {
        setVisible(on);
        setManaged(on);
    }
}
