package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import portwright.app.board.Board;
import portwright.app.doc.Document;
import portwright.app.doc.FieldModel;
import portwright.app.doc.Parts;
import portwright.app.doc.Picture;
import portwright.app.doc.RegionWords;
import portwright.app.paint.Fonts;
import portwright.app.paint.TextSizes;
import portwright.app.part.FieldBox;
import portwright.app.part.FormView;
import portwright.app.part.HeldKeys;
import portwright.app.part.PlaceBox;
import portwright.app.part.Steady;
import portwright.app.part.Ticket;
import portwright.form.Catalog;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.model.On;

/** Ports step: the ticket of the chosen port, or the list of ports. */
public final class PortsStep implements StepView {
    /** What a row of the list holds in the narrowest side, px. */
    private static final double ROW_PX = 220;

    private final Board board;
    private final Document doc;
    private final VBox holder = new Steady(0);
    private final List<Runnable> refreshers = new ArrayList<>();
    private String shown;
    private final ProposalTicket proposals;

    public PortsStep(Document doc, Board board) {
        this.doc = doc;
        this.board = board;
        proposals = new ProposalTicket(doc, board::requestFocus);
        board.onRegion(() -> refreshers.forEach(Runnable::run));
        build();
    }

    private String signature() {
        String name = doc.selected();
        String path = name == null ? null : Parts.path(doc.text(), name);
        if (path == null) {
            return "list " + Parts.names(doc.text(), "ports");
        }
        return path + " of " + doc.text().size(Parts.listOf(path))
                + doc.text().get(path + ".on").orElse("");
    }

    private void build() {
        shown = signature();
        refreshers.clear();
        String path = doc.selected() == null ? null : Parts.path(doc.text(), doc.selected());
        HeldKeys.keep(
                holder,
                () -> holder.getChildren()
                        .setAll(path == null ? list() : path.startsWith("ports[") ? port(path) : other(path)));
    }

    private Node list() {
        VBox rows = new VBox(2);
        for (String name : Parts.names(doc.text(), "ports")) {
            String path = Parts.path(doc.text(), name);
            String on = doc.text().get(path + ".on").orElse("");
            String d = doc.text().get(path + ".diameter").orElse("");
            HBox line = row(path, name, on + " · " + d);
            Button row = new Button();
            row.getStyleClass().setAll("part-row");
            row.setGraphic(line);
            row.setMaxWidth(Double.MAX_VALUE);
            line.prefWidthProperty().bind(row.widthProperty().subtract(18));
            row.setAccessibleText(name + ", in the " + on + ", " + d);
            row.setOnAction(e -> choose(name, on));
            rows.getChildren().add(row);
        }
        FlowPane buttons = new FlowPane(8, 8, act("New port  Ctrl+Shift+N", "new"));
        int holes = Parts.names(doc.text(), "ports").size();
        VBox ports = Ticket.of("Ports", holes + (holes == 1 ? " hole" : " holes"), rows, buttons);
        return new VBox(10, ports, proposals);
    }

    /** Name at the left, place and hole at the right; under each other where one line is too short. */
    private HBox row(String path, String name, String what) {
        Label word = new Label(name);
        Label where = new Label(what);
        where.getStyleClass().addAll("muted", "slip-text");
        boolean one = TextSizes.width(name, Fonts.sans(14)) + TextSizes.width(what, Fonts.sans(13)) < ROW_PX;
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        HBox line =
                one ? new HBox(6, dot(path), word, spring, where) : new HBox(6, dot(path), new VBox(1, word, where));
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private void choose(String name, String on) {
        Picture want = Picture.of(On.valueOf(on.toUpperCase(java.util.Locale.ROOT)));
        if (board.picture() != Picture.SECTION && !board.picture().samePart(want)) {
            board.show(want);
        }
        doc.select(name);
    }

    private Button act(String words, String action) {
        Button b = new Button(words);
        b.getStyleClass().setAll("plain-button");
        b.setOnAction(e -> board.press(action));
        return b;
    }

    private Region dot(String path) {
        Region r = new Region();
        boolean inlet = doc.text().get(path + ".role").orElse("").equals("inlet");
        r.setStyle("-fx-background-radius: 9; -fx-min-width: 17; -fx-min-height: 17; -fx-max-width: 17; -fx-max-height:"
                + " 17; -fx-background-color: "
                + (inlet ? "-color-accent-emphasis, -color-accent-subtle" : "-pw-umber, -color-bg-default")
                + "; -fx-background-insets: 0, 2;");
        return r;
    }

    private Node port(String path) {
        boolean wall = doc.text().get(path + ".on").orElse("").equals("wall");
        VBox fields = new VBox(8);
        FormSpec spec = Catalog.ports();
        field(fields, path, spec, "diameter");
        PlaceBox place = new PlaceBox(doc, path + ".at", wall);
        refreshers.add(place::refresh);
        fields.getChildren().add(place);
        if (wall) {
            field(fields, path, spec, "panel");
        } else {
            fields.getChildren().add(roomLine());
        }
        field(fields, path, spec, "name");
        NameOffer offer = new NameOffer(doc, path);
        refreshers.add(offer::refresh);
        fields.getChildren().add(offer);
        field(fields, path, spec, "role");
        field(fields, path, spec, "on");
        FlowPane acts = new FlowPane(
                6,
                6,
                act("Duplicate  Ctrl+D", "duplicate"),
                act("Mirror  Ctrl+I", "mirror"),
                act("Spread  Ctrl+E", "spread"),
                act("Delete", "delete"),
                act("All ports", "escape"));
        VBox ticket = headed(
                wall ? "in the wall" : "in the " + doc.text().get(path + ".on").orElse(""), fields, acts);
        ((HBox) ticket.getChildren().get(0)).getChildren().add(0, dot(path));
        ((HBox) ticket.getChildren().get(0)).setAlignment(Pos.CENTER_LEFT);
        return ticket;
    }

    /** How much of the slab is clear for the centre, in words for those who do not see the board; an unseen longest text keeps its room. */
    private Node roomLine() {
        Label l = line("");
        Label room = line("");
        room.setVisible(false);
        Runnable show = () -> {
            room.setText(RegionWords.longest(board.region()));
            l.setText(RegionWords.of(board.region(), doc.design().units()));
        };
        refreshers.add(show);
        show.run();
        return new StackPane(room, l);
    }

    private static Label line(String words) {
        Label l = new Label(words);
        l.setWrapText(true);
        l.setMinHeight(Region.USE_PREF_SIZE);
        l.getStyleClass().addAll("muted", "slip-text");
        StackPane.setAlignment(l, Pos.TOP_LEFT);
        return l;
    }

    private void field(VBox box, String path, FormSpec spec, String key) {
        FieldSpec f = spec.fields().stream()
                .filter(x -> x.key().equals(key))
                .findFirst()
                .orElseThrow();
        FieldBox b = new FieldBox(new FieldModel(doc, path, f));
        refreshers.add(b::refresh);
        box.getChildren().add(b);
    }

    private Node other(String path) {
        String list = Parts.listOf(path);
        FormSpec spec =
                List.of(KilnCatalog.elements(), KilnCatalog.fittings(), KilnCatalog.shelves(), Catalog.burners())
                        .stream()
                        .filter(s -> s.path().equals(list))
                        .findFirst()
                        .orElseThrow();
        FormSpec one = FormSpec.object(
                spec.path(), spec.title(), null, spec.fields(), spec.inner().toArray(FormSpec[]::new));
        FormView form = new FormView(doc, one, path);
        refreshers.add(form::refresh);
        return headed(spec.title().toLowerCase(java.util.Locale.ROOT), form, act("All ports", "escape"));
    }

    /** A ticket headed by the name of the chosen part, which follows a rename. */
    private VBox headed(String aside, Node... content) {
        VBox ticket = Ticket.of(doc.selected(), aside, content);
        Label head = (Label) ((HBox) ticket.getChildren().get(0)).getChildren().get(0);
        refreshers.add(() -> head.setText(doc.selected()));
        return ticket;
    }

    @Override
    public Node row() {
        return doc.selected() == null ? null : holder;
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
    public List<Node> tickets() {
        return List.of(holder);
    }

    @Override
    public void changed(Document.Change change) {
        if (change == Document.Change.CHECK || change == Document.Change.SAVED) {
            return;
        }
        proposals.changed();
        if (!signature().equals(shown)) {
            build();
        } else {
            refreshers.forEach(Runnable::run);
        }
    }
}
