package portwright.app.step;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import portwright.app.board.Board;
import portwright.app.doc.Document;
import portwright.app.doc.Parts;
import portwright.app.doc.Step;
import portwright.app.doc.Withheld;
import portwright.app.part.FormView;
import portwright.app.part.Showing;
import portwright.app.part.Sign;
import portwright.app.part.Ticket;
import portwright.form.Catalog;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;

/** Kiln step: measure the kiln. One ticket with groups that open and close; the board shows the same plan as in Ports. */
public final class KilnStep implements StepView {
    /** Words of the index for the groups whose title is longer. */
    private static final Map<String, String> SHORT =
            Map.of("Title, notes, units", "Title", "Inside plan", "Plan", "Chamber and power", "Chamber");

    private record Group(String title, FormView form, Button toggle, VBox box) {}

    private final Board board;
    private final Document doc;
    private final Map<String, Group> groups = new LinkedHashMap<>();
    private final VBox ticket;
    private final FlowPane index = new FlowPane(6, 2);
    private final Map<String, Button> links = new LinkedHashMap<>();
    private final LimitsForm limits;
    private final Button limitsToggle = new Button("▸ Own limits");
    private final VBox limitsBox = new VBox(8, limitsToggle);

    public KilnStep(Document doc, Board board) {
        this.doc = doc;
        this.board = board;
        limits = new LimitsForm(doc);
        ticket = Ticket.of("The kiln", "inside measures");
        ticket.setSpacing(4);
        ticket.getChildren().add(index);
        add(Catalog.design(), false);
        add(KilnCatalog.plan(), true);
        add(KilnCatalog.chamber(), true);
        add(KilnCatalog.wall(), false);
        add(KilnCatalog.slab("floor"), false);
        add(KilnCatalog.slab("lid"), false);
        add(KilnCatalog.elements(), false);
        add(KilnCatalog.fittings(), false);
        add(KilnCatalog.shelves(), false);
        add(Catalog.drilling(), false);
        addLimits();
        link("Limits", "limits", () -> {
            if (!limitsBox.getChildren().contains(limits)) {
                limitsToggle.fire();
            }
            Showing.see(limitsBox);
        });
        count();
    }

    /** A word of the index; it opens its group and shows its beginning. */
    private void link(String word, String path, Runnable open) {
        Button b = new Button(word);
        b.getStyleClass().setAll("index-link");
        b.setAccessibleText("go to " + word);
        b.setOnAction(e -> open.run());
        links.put(path, b);
        index.getChildren().add(b);
    }

    /** Beside each word how many of its fields some rule lacks. */
    private void count() {
        List<String> missing = Withheld.missing(doc, Step.KILN).stream()
                .map(Withheld.Row::path)
                .toList();
        links.forEach((path, b) -> {
            long n = missing.stream().filter(m -> path.equals(groupOf(m))).count();
            b.setGraphic(n == 0 ? null : Sign.UNCHECKED.draw(12));
            b.setText(b.getAccessibleText().substring("go to ".length()) + (n == 0 ? "" : " " + n));
        });
    }

    /** Path of the group that has a field: the longest that begins it. */
    private String groupOf(String field) {
        return groups.keySet().stream()
                .filter(p -> p.isEmpty() ? field.matches("title|notes|units") : field.startsWith(p))
                .max(Comparator.comparingInt(String::length))
                .orElse("");
    }

    private void addLimits() {
        limitsToggle.getStyleClass().setAll("group-toggle");
        limitsToggle.setMaxWidth(Double.MAX_VALUE);
        limitsToggle.setOnAction(e -> {
            boolean open = limitsBox.getChildren().remove(limits);
            if (!open) {
                limits.refresh();
                limitsBox.getChildren().add(limits);
            }
            limitsToggle.setText((open ? "▸ " : "▾ ") + "Own limits");
        });
        ticket.getChildren().add(limitsBox);
    }

    private void add(FormSpec spec, boolean open) {
        FormView form = new FormView(doc, spec, spec.path());
        Button toggle = new Button();
        toggle.getStyleClass().setAll("group-toggle");
        toggle.setMaxWidth(Double.MAX_VALUE);
        VBox box = new VBox(8, toggle);
        Group g = new Group(spec.title(), form, toggle, box);
        toggle.setOnAction(e -> show(g, !box.getChildren().contains(form)));
        groups.put(spec.path(), g);
        link(SHORT.getOrDefault(spec.title(), spec.title()), spec.path(), () -> {
            show(g, true);
            Showing.see(box);
        });
        ticket.getChildren().add(box);
        show(g, open);
    }

    private static void show(Group g, boolean open) {
        boolean was = g.box().getChildren().contains(g.form());
        if (open && !was) {
            g.box().getChildren().add(g.form());
        } else if (!open) {
            g.box().getChildren().remove(g.form());
        }
        g.toggle().setText((open ? "▾ " : "▸ ") + g.title());
    }

    /** Opens the group of a field and its part in it; the title has no path of its own. */
    @Override
    public void reveal(String field) {
        groups.forEach((p, g) -> {
            if (p.isEmpty() ? field.matches("title|notes|units") : field.startsWith(p)) {
                show(g, true);
                g.form().reveal(field);
            }
        });
        if (field.startsWith("limits") && !limitsBox.getChildren().contains(limits)) {
            limitsToggle.fire();
        }
    }

    @Override
    public Node board() {
        return board;
    }

    @Override
    public boolean views() {
        return true;
    }

    @Override
    public Node row() {
        String path = doc.selected() == null ? null : Parts.path(doc.text(), doc.selected());
        return path == null || !groups.containsKey(Parts.listOf(path)) ? null : Showing.heading(ticket, path);
    }

    @Override
    public List<Node> tickets() {
        return new ArrayList<>(List.of(ticket));
    }

    @Override
    public void changed(Document.Change change) {
        if (change == Document.Change.DESIGN || change == Document.Change.ENTRY) {
            groups.values().forEach(g -> g.form().refresh());
        }
        if (change == Document.Change.DESIGN && !doc.dragging() || change == Document.Change.CHECK) {
            count();
        }
        if (change == Document.Change.SELECTION && doc.selected() != null) {
            String path = Parts.path(doc.text(), doc.selected());
            if (path != null && groups.containsKey(Parts.listOf(path))) {
                show(groups.get(Parts.listOf(path)), true);
                groups.get(Parts.listOf(path)).form().open(doc.selected());
            }
        }
    }
}
