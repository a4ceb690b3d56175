package portwright.app.step;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import portwright.app.doc.Background;
import portwright.app.doc.Document;
import portwright.app.doc.RecordDesk;
import portwright.app.part.WorkBar;
import portwright.form.FormSpec;

/** Firing step: forecast, steps, records. */
public final class FiringStep implements StepView {
    private final FormStep form;
    private final RecordTicket ticket;
    private final RecordDesk records;
    private final Document doc;
    private final WorkBar bar;

    public FiringStep(Document doc, FormSpec... specs) {
        this.doc = doc;
        bar = new WorkBar("Computing the forecast", "Compute the forecast", doc::stopCheck, doc::start);
        records = new RecordDesk(doc, Background.one("portwright records"), Platform::runLater, this::heard);
        form = new FormStep(doc, new FiringBoard(doc, records), specs);
        ticket = new RecordTicket(records);
    }

    private void heard() {
        ticket.build();
        form.changed(Document.Change.CHECK);
    }

    /** Reads logs and shows the last. */
    public void load(List<Path> files) {
        records.load(files);
    }

    @Override
    public Node board() {
        return form.board();
    }

    @Override
    public List<Node> tickets() {
        List<Node> all = new ArrayList<>();
        all.add(ticket);
        all.addAll(form.tickets());
        return all;
    }

    @Override
    public Node pinned() {
        return bar;
    }

    @Override
    public void reveal(String field) {
        form.reveal(field);
    }

    @Override
    public void changed(Document.Change change) {
        bar.show(doc.checking() && !doc.stopped() && !doc.dragging(), doc.stopped());
        records.changed();
        ticket.build();
        form.changed(change);
    }
}
