package portwright.app.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
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
import portwright.app.part.FindingSlip;
import portwright.app.part.Showing;
import portwright.app.part.Sign;
import portwright.app.part.SlipView;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.model.UnitSystem;

/** The side: tickets of the step, then the findings as slips, the worst first, then what was not checked. */
final class Side extends ScrollPane implements Showing {
    /** Room below the slips while a part is dragged, px. */
    private static final double HELD_PX = 300;

    private final Document doc;
    private final VBox content = new VBox(10);
    private final VBox messages = new VBox(8);
    private final EntrySlips entries;
    private final DeletedSlip deleted;
    private final BorrowedSlip borrowed;
    private final MissingSlip missing;
    private final ScrollHold hold;
    private final Runnable news;
    private final VBox tickets = new VBox(10);
    private final VBox slips = new VBox(6);
    private final Label head = new Label();
    private final Label order = new Label("worst first");
    private final Consumer<Finding> act;
    private final Consumer<NotChecked> add;
    private Step step = Step.PORTS;
    private Finding chosen;
    private List<FindingSlip> views = List.of();
    private final SlipDeck deck = new SlipDeck(this::choose);

    private List<NotChecked> unchecked = List.of();
    private final Label rest = new Label("Elsewhere");
    private final NothingHere nothing = new NothingHere();

    private final SlipView stopped;
    private List<SlipView> openSlips = List.of();

    /** @param news called when the side has something to say that must not be missed */
    Side(Document doc, Consumer<Finding> act, Consumer<NotChecked> add, Consumer<String> field, Runnable news) {
        this.news = news;
        this.doc = doc;
        this.act = act;
        this.add = add;
        entries = new EntrySlips(doc, field);
        deleted = new DeletedSlip(doc);
        borrowed = new BorrowedSlip(doc, field);
        missing = new MissingSlip(doc);
        stopped = SlipView.caution(
                "The check was called off",
                "Gas, room and firing are not checked for the design as it stands; what is shown of them may be older.",
                Notices.button("Check now", doc::start));
        getStyleClass().add("side-scroll");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        // the toolkit keeps a picture of what is scrolled and paints all of it anew when one number changes
        skinProperty().addListener((o, a, b) -> lookupAll(".viewport").forEach(n -> n.setCache(false)));
        vvalueProperty().addListener((o, a, b) -> {
            if (doc.dragging()) {
                refresh();
            }
        });
        Notices.passWithEdits(doc, messages);
        head.getStyleClass().add("section-head");
        rest.getStyleClass().add("section-head");
        rest.setStyle("-fx-padding: 6 2 0 2;");
        order.getStyleClass().addAll("muted", "slip-text");
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        HBox line = new HBox(head, spring, order);
        line.setAlignment(Pos.BASELINE_LEFT);
        line.setStyle("-fx-padding: 2 2 0 2;");
        // never broader than what is seen: content that once asks for one pixel more has all of the side painted anew,
        // twice
        content.setMinWidth(0);
        content.getChildren().addAll(messages, entries, borrowed, missing, tickets, line, slips);
        setContent(content);
        hold = new ScrollHold(this, content, tickets, slips);
        // a message of the window must be seen: it may take the place of what is read
        messages.getChildren().addListener((ListChangeListener<Node>) c -> {
            while (c.next()) {
                if (c.wasAdded()) {
                    hold.top();
                } else if (c.wasRemoved() && messages.isHover()) {
                    // closed by hand: no room is kept where it stood
                    hold.place().run();
                }
            }
        });
    }

    void show(Step s, List<Node> nodes) {
        if (s != step) {
            Notices.pass(messages);
        }
        step = s;
        tickets.getChildren().setAll(nodes);
        hold.top();
        refresh();
    }

    @Override
    protected void layoutChildren() {
        hold.around(super::layoutChildren);
    }

    /** What the last edit took out of the design: lies outside what scrolls, in sight wherever that stands. */
    DeletedSlip lost() {
        return deleted;
    }

    VBox messages() {
        return messages;
    }

    /** What was lost takes room from the slips: the field that is typed in stays in sight. */
    private void keepFocused() {
        Node at = getScene() == null ? null : getScene().getFocusOwner();
        if (at != null && FocusIn.within(at, content)) {
            getParent().layout();
            hold.see(at);
        }
    }

    /** A column of another height is drawn anew whole, tickets and all: while a part is dragged it keeps one height, with room for slips that come. */
    private void holdHeight() {
        if (!doc.dragging()) {
            slips.setMinHeight(USE_COMPUTED_SIZE);
        } else if (slips.getHeight() > slips.getMinHeight()) {
            slips.setMinHeight(slips.getHeight() + HELD_PX);
        }
    }

    /** Shows the findings as they stand; slips that stay are the same ones. */
    void refresh() {
        if (!doc.dragging()) {
            entries.show(step);
            if (deleted.show()) {
                news.run();
                Platform.runLater(this::keepFocused);
            }
            borrowed.show(step);
            missing.show(step);
        }
        boolean focus =
                slips.getScene() != null && FocusIn.within(slips.getScene().getFocusOwner(), slips);
        boolean part = step == Step.PORTS && doc.selected() != null;
        head.setText(part ? "On this part" : step.findings());
        List<Finding> findings = FindingOrder.of(doc, step);
        views = deck.of(
                doc.dragging() ? findings.subList(0, Math.min(findings.size(), seen())) : findings,
                inch(),
                doc.dragging());
        views.forEach(v -> v.view().chosen(chosen != null && same(chosen, v.finding())));
        List<Node> lie = new ArrayList<>();
        for (FindingSlip v : views) {
            if (part && !lie.contains(rest) && !v.finding().parts().contains(doc.selected())) {
                lie.add(rest);
            }
            lie.add(v.view());
        }
        List<NotChecked> open = FindingOrder.open(doc, step);
        // at Paper the list of what is missing tells it, field by field
        List<NotChecked> lying = step == Step.PAPER ? List.of() : open;
        if (!lying.equals(unchecked)) {
            unchecked = lying;
            openSlips = lying.stream()
                    .map(n -> SlipView.unchecked(n, inch(), () -> add.accept(n)))
                    .toList();
        }
        if (views.isEmpty() && FindingOrder.known(doc)) {
            lie.add(nothing.of(open.size(), FindingOrder.open(doc, Step.PAPER).size()));
        }
        if (doc.fault() != null) {
            lie.add(SlipView.caution(
                    "The full check ended early", "Shapes are checked; gas, room and firing are not: " + doc.fault()));
        }
        if (doc.stopped()) {
            lie.add(0, stopped);
        }
        lie.addAll(openSlips);
        SlipOrder.lay(slips, lie, doc.dragging());
        holdHeight();
        if (focus && !views.isEmpty() && !FocusIn.within(slips.getScene().getFocusOwner(), slips)) {
            views.get(0).view().requestFocus();
        }
    }

    private boolean inch() {
        return doc.design().units() == UnitSystem.INCH;
    }

    private void choose(Finding f) {
        chosen = f;
        act.accept(f);
    }

    /** How many slips can be seen, with one to spare: the others wait while a part is dragged. */
    private int seen() {
        double room = getViewportBounds().getHeight();
        double bottom = getVvalue() * Math.max(0, content.getHeight() - room) + room - slips.getLayoutY();
        return 2
                + (int) views.stream()
                        .map(FindingSlip::view)
                        .filter(v -> v.getLayoutY() + v.getHeight() < bottom)
                        .count();
    }

    static boolean same(Finding a, Finding b) {
        return a.rule().equals(b.rule()) && a.parts().equals(b.parts());
    }

    /** Goes to its beginning. */
    void top() {
        hold.top();
    }

    /** Goes to the next finding; −1 to the one before. */
    void next(int by) {
        if (views.isEmpty()) {
            return;
        }
        List<Finding> all = views.stream().map(FindingSlip::finding).toList();
        int at = chosen == null
                ? -1
                : all.stream().map(f -> same(chosen, f)).toList().indexOf(true);
        find(all.get(Math.floorMod(at < 0 ? by > 0 ? 0 : -1 : at + by, all.size())));
    }

    /** Chooses a finding and brings its slip into sight. */
    void find(Finding f) {
        choose(f);
        views.forEach(x -> x.view().chosen(same(chosen, x.finding())));
        views.stream().filter(x -> same(chosen, x.finding())).findFirst().ifPresent(x -> hold.show(x.view()));
    }

    @Override
    public void stay(Node row) {
        hold.see(row);
    }

    /** Goes to the first field at or below a row of the tickets. */
    void edit(Node row) {
        hold.edit(row);
    }

    @Override
    public Runnable place() {
        return hold.place();
    }

    @Override
    public void begin(Node n) {
        hold.begin(n);
    }

    @Override
    public void to(Node n) {
        hold.show(n);
    }

    /** Chooses the first finding of a sign, or shows the first slip of what is not checked or cannot be read. */
    void first(Sign sign) {
        Node to = sign == Sign.UNREAD ? entries : openSlips.isEmpty() ? null : openSlips.get(0);
        for (FindingSlip v : views) {
            if (Sign.of(v.finding().severity()) == sign) {
                choose(v.finding());
                to = v.view();
                break;
            }
        }
        views.forEach(x -> x.view().chosen(chosen != null && same(chosen, x.finding())));
        if (to != null) {
            Node at = to;
            Platform.runLater(() -> hold.show(at));
        }
    }
}
