package portwright.app.frame;

import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import portwright.app.board.Board;
import portwright.app.doc.Document;
import portwright.app.doc.FindingOrder;
import portwright.app.doc.Parts;
import portwright.app.doc.Picture;
import portwright.app.doc.Step;
import portwright.app.doc.StepCount;
import portwright.app.doc.Unread;
import portwright.app.doc.Withheld;
import portwright.app.part.FieldBox;
import portwright.app.part.Lead;
import portwright.app.part.Showing;
import portwright.app.part.Sign;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.model.On;

/** Leads to where something is: the parts of a finding, a field, the first of what a count counts. */
final class Finder {
    private final MainView view;
    private final Document doc;

    Finder(MainView view, Document doc) {
        this.view = view;
        this.doc = doc;
        view.addEventHandler(Lead.LEAD, e -> {
            if (e.finding() == null && e.path().isEmpty() && e.rule().isEmpty()) {
                first(Step.PAPER, Sign.UNCHECKED);
            } else if (e.finding() == null) {
                field(e.path(), e.rule());
            } else {
                show(e.finding());
                slip(e.finding());
            }
        });
    }

    /** Goes to a step and shows the first of what a count on its tile counts. */
    void first(Step s, Sign sign) {
        List<Unread.Entry> unread = doc.unread().of(s);
        if (sign == Sign.UNREAD && unread.get(0).step() != Step.PAPER) {
            field(unread.get(0).path(), "");
            return;
        }
        view.go(s);
        view.openDrawer();
        List<Withheld.Row> missing = Withheld.missing(doc, s);
        if (s == Step.PAPER) {
            view.side().top();
        } else if (sign == Sign.UNCHECKED && FindingOrder.open(doc, s).isEmpty() && !missing.isEmpty()) {
            field(missing.get(0).path(), missing.get(0).rule());
        } else {
            view.side().first(sign);
        }
    }

    /** Goes where the worst of the whole design is: a field that cannot be read, else the first stop, what is not checked, the first caution. */
    void worst() {
        if (!doc.unread().all().isEmpty()) {
            first(doc.unread().all().get(0).step(), Sign.UNREAD);
            return;
        }
        for (Sign sign : List.of(Sign.STOP, Sign.UNCHECKED, Sign.CAUTION)) {
            for (Step s : Step.values()) {
                if (s != Step.PAPER && counts(FindingOrder.count(doc, s), sign) > 0) {
                    first(s, sign);
                    return;
                }
            }
        }
    }

    private static int counts(StepCount c, Sign sign) {
        return sign == Sign.STOP ? c.stops() : sign == Sign.CAUTION ? c.cautions() : c.open();
    }

    /** Shows the parts of a finding. */
    void show(Finding f) {
        Step home = Step.of(f.rule());
        if (view.stepView(home).views() && view.step() != home && view.step() != Step.PAPER) {
            view.go(home);
        }
        if (view.stepView(view.step()).views() && !f.parts().isEmpty()) {
            String first = f.parts().get(0);
            String path = Parts.path(doc.text(), first);
            if (path != null) {
                doc.text().get(path + ".on").ifPresent(this::picture);
                doc.select(first);
            }
            doc.highlight(f.parts());
        }
    }

    /** Goes to the step of a finding and to its slip. */
    void slip(Finding f) {
        Step home = Step.of(f.rule());
        if (view.step() != home && view.step() != Step.PAPER) {
            view.go(home);
        }
        view.openDrawer();
        view.side().find(f);
    }

    private void picture(String on) {
        Board board = view.board();
        Picture want = Picture.of(On.valueOf(on.toUpperCase(Locale.ROOT)));
        if (board.picture() != Picture.SECTION && !board.picture().samePart(want)) {
            board.show(want);
        }
    }

    /** Goes to the first field that a rule lacks. */
    void add(NotChecked n) {
        field(n.needs().isEmpty() ? "" : n.needs().get(0), n.rule());
    }

    /** Goes to the step, group and part of a field and into it; without a path to the step of the rule. */
    void field(String path, String rule) {
        Step to = Step.ofField(path, rule);
        view.go(to);
        doc.text()
                .get(path.replaceAll("\\].*", "].name"))
                .filter(name -> path.contains("["))
                .ifPresent(doc::select);
        view.stepView(to).reveal(path);
        view.openDrawer();
        Platform.runLater(() -> into(path));
    }

    /** Scrolls to a field of the side and puts the keys into it. */
    private void into(String path) {
        Side side = view.side();
        side.applyCss();
        side.layout();
        side.lookupAll("*").stream()
                .filter(n -> n instanceof FieldBox b && b.model().path().equals(path))
                .map(FieldBox.class::cast)
                .findFirst()
                .ifPresentOrElse(
                        b -> {
                            side.to(b);
                            b.control(true);
                        },
                        () -> Showing.nearest(side, path).ifPresent(side::to));
    }
}
