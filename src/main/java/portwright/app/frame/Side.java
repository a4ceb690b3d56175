package portwright.app.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.FindingOrder;
import portwright.app.doc.Step;
import portwright.app.part.SlipView;
import portwright.check.Finding;
import portwright.check.NotChecked;

/** The side: tickets of the step, then the findings as slips, the worst first, then what was not checked. */
final class Side extends ScrollPane {
    private final Document doc;
    private final VBox content = new VBox(10);
    private final VBox messages = new VBox(8);
    private final VBox tickets = new VBox(10);
    private final VBox slips = new VBox(6);
    private final Label head = new Label();
    private final Label order = new Label("worst first");
    private final Consumer<Finding> act;
    private final Consumer<NotChecked> open;
    private Step step = Step.PORTS;
    private Finding chosen;
    private List<SlipView> views = new ArrayList<>();

    Side(Document doc, Consumer<Finding> act, Consumer<NotChecked> open) {
        this.doc = doc;
        this.act = act;
        this.open = open;
        getStyleClass().add("side-scroll");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        head.getStyleClass().add("section-head");
        order.getStyleClass().addAll("muted", "slip-text");
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        HBox line = new HBox(head, spring, order);
        line.setAlignment(Pos.BASELINE_LEFT);
        line.setStyle("-fx-padding: 2 2 0 2;");
        content.getChildren().addAll(messages, tickets, line, slips);
        content.setStyle("-fx-padding: 4 6 10 4;");
        setContent(content);
    }

    void show(Step s, List<Node> nodes) {
        step = s;
        tickets.getChildren().setAll(nodes);
        setVvalue(0);
        refresh();
    }

    VBox messages() {
        return messages;
    }

    /** Lays the slips anew. */
    void refresh() {
        views = new ArrayList<>();
        List<Finding> list = FindingOrder.of(doc, step);
        boolean focus = slips.getScene() != null && isIn(slips.getScene().getFocusOwner(), slips);
        slips.getChildren().clear();
        boolean part = step == Step.PORTS && doc.selected() != null;
        head.setText(
                switch (step) {
                    case KILN -> "The kiln";
                    case PORTS -> part ? "On this part" : "Holes and brick";
                    case GAS -> "Gas and fire";
                    case ROOM -> "Air and people";
                    case FIRING -> "The firing";
                    case PAPER -> "All findings";
                });
        boolean others = false;
        for (Finding f : list) {
            if (part && !others && !f.parts().contains(doc.selected())) {
                others = true;
                Label rest = new Label("Elsewhere");
                rest.getStyleClass().add("section-head");
                rest.setStyle("-fx-padding: 6 2 0 2;");
                slips.getChildren().add(rest);
            }
            SlipView v = SlipView.of(f, x -> {
                chosen = x;
                act.accept(x);
            });
            v.chosen(chosen != null && same(chosen, f));
            views.add(v);
            slips.getChildren().add(v);
        }
        if (list.isEmpty() && !doc.checking()) {
            slips.getChildren().add(SlipView.clear("Nothing to mend here", "No finding of this step.", null));
        }
        if (doc.fault() != null) {
            slips.getChildren()
                    .add(SlipView.caution(
                            "The full check ended early",
                            "Shapes are checked; gas, room and firing are not: " + doc.fault()));
        }
        List<NotChecked> open1 = FindingOrder.open(doc, step);
        for (NotChecked n : open1) {
            slips.getChildren().add(SlipView.unchecked(n, () -> open.accept(n)));
        }
        if (focus && !views.isEmpty()) {
            views.get(0).requestFocus();
        }
    }

    private static boolean isIn(Node n, Node box) {
        for (Node x = n; x != null; x = x.getParent()) {
            if (x == box) {
                return true;
            }
        }
        return false;
    }

    static boolean same(Finding a, Finding b) {
        return a.rule().equals(b.rule()) && a.parts().equals(b.parts());
    }

    /** Goes to the next finding; −1 to the one before. */
    void next(int by) {
        if (views.isEmpty()) {
            return;
        }
        int at = -1;
        for (int i = 0; i < views.size(); i++) {
            if (chosen != null && same(chosen, (Finding) views.get(i).getUserData())) {
                at = i;
            }
        }
        SlipView v = views.get(Math.floorMod(at < 0 ? by > 0 ? 0 : -1 : at + by, views.size()));
        chosen = (Finding) v.getUserData();
        act.accept(chosen);
        views.forEach(x -> x.chosen(same(chosen, (Finding) x.getUserData())));
        views.stream()
                .filter(x -> same(chosen, (Finding) x.getUserData()))
                .findFirst()
                .ifPresent(Node::requestFocus);
    }

    void forget() {
        chosen = null;
    }
}
