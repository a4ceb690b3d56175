package portwright.app.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.ProposalDesk;
import portwright.app.doc.ProposalTitles;
import portwright.app.doc.ProposalWords;
import portwright.app.part.FieldRing;
import portwright.app.part.Plain;
import portwright.app.part.Showing;
import portwright.app.part.Ticket;
import portwright.check.Severity;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.layout.CutJoint;
import portwright.layout.Proposal;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.BothSystems;
import portwright.units.Unbroken;

/** Proposed places for the ports: a bar while the search runs, then a few layouts with their reason, one to be taken. */
final class ProposalTicket extends VBox {
    /** The measure of a search, for who reads all. */
    private static final String MARGIN =
            "Margin: how many times the room that its caution asks the tightest place has. At 1 the first caution would come; under 0 a rule stops.";

    private final Document doc;
    private final ProposalDesk desk;
    private final Runnable taken;
    private final ProgressBar bar = new ProgressBar();
    private final Label at = Plain.words("");
    /** Where the keys go when what held them here is replaced: the button that goes on. */
    private Button next;

    private boolean searching;
    /** Whether a search was begun whose answer has not been brought into sight. */
    private boolean shows;

    private String refusal;

    /** @param taken runs after a proposal was taken */
    ProposalTicket(Document doc, Runnable taken) {
        this.doc = doc;
        this.taken = taken;
        desk = new ProposalDesk(doc, Platform::runLater, this::heard);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText("search for places");
        build();
    }

    /** Hears that the design changed. */
    void changed() {
        desk.changed();
        if (!Objects.equals(refusal, desk.refusal())) {
            build();
        }
    }

    private void heard() {
        bar.setProgress(desk.share());
        at.setText(desk.stage());
        if (!desk.running() || !searching) {
            build();
        }
    }

    private void build() {
        shows |= searching || desk.running();
        searching = desk.running();
        List<Node> rows = new ArrayList<>();
        refusal = desk.refusal();
        if (desk.running()) {
            rows.add(bar);
            rows.add(at);
            next = Plain.button("Cancel", desk::cancel);
            rows.add(next);
        } else {
            rows.add(part(refusal != null));
            rows.add(choice(
                    "numbers",
                    "numbers of holes",
                    refusal != null,
                    kept("numbers"),
                    desk.keepNumbers(),
                    desk::keepNumbers));
            rows.add(choice(
                    "sizes", "sizes of holes", refusal != null, kept("sizes"), desk.keepSizes(), desk::keepSizes));
            Button start = Plain.button("Propose places", desk::start);
            start.setDisable(refusal != null);
            rows.add(start);
            next = start;
            rows.add(
                    Plain.words(
                            refusal != null
                                    ? refusal
                                    : "The places that leave the most room are searched. Sizes are kept where all inlets, or all flues, have one."));
            found(rows);
        }
        boolean keys = holdsKeys();
        getChildren().setAll(Ticket.of("Places", desk.running() ? "searching" : "", rows.toArray(Node[]::new)));
        if (keys) {
            next.requestFocus();
        }
        if (shows && !searching) {
            shows = false;
            Platform.runLater(this::toFound);
        }
    }

    /** The answer to a search comes into sight: its first proposal, or why there is none. */
    private void toFound() {
        Node at = lookup(".proposal") == null ? this : lookup(".proposal");
        if (at.getScene() != null) {
            Showing.see(at);
        }
    }

    private boolean holdsKeys() {
        for (Node n = getScene() == null ? null : getScene().getFocusOwner(); n != null; n = n.getParent()) {
            if (n == this) {
                return true;
            }
        }
        return false;
    }

    private void take(Proposal p) {
        if (desk.take(p).isEmpty()) {
            taken.run();
        }
    }

    private void found(List<Node> rows) {
        if (desk.fault() != null) {
            rows.add(Plain.text(desk.fault()));
        }
        if (desk.found() == null) {
            return;
        }
        if (desk.found().best().isEmpty()) {
            rows.add(Plain.text("No layout passes every rule that stops."));
            desk.found().impossible().forEach(i -> rows.add(both(i.words())));
            rows.add(Plain.text(desk.found().tried()));
        }
        int n = 1;
        List<String> titles =
                ProposalTitles.of(desk.found().best(), doc.design().units());
        for (Proposal p : desk.found().best()) {
            Label head = new Label(Unbroken.words(n + ". " + titles.get(n - 1)));
            head.setWrapText(true);
            head.getStyleClass().add("slip-head");
            Button take = Plain.button("Take proposal " + n, () -> take(p));
            next = n == 1 ? take : next;
            VBox box = new VBox(5, head, new ProposalPicture(p), take);
            gist(p, n).stream().filter(w -> !w.isEmpty()).map(this::both).forEach(box.getChildren()::add);
            box.getChildren().addAll(more(p, n));
            box.getStyleClass().add("proposal");
            rows.add(box);
            n++;
        }
        if (!desk.found().few().isEmpty()) {
            rows.add(Plain.words(desk.found().few()));
        }
        if (n > 1) {
            rows.add(Plain.words(
                    "A proposal rests on the measures typed here. Offer up the real parts before drilling."));
        }
    }

    /** What a potter chooses by, a paragraph each; some may be empty. */
    private List<String> gist(Proposal p, int number) {
        long stops = p.check().count(Severity.STOP);
        List<String> all = new ArrayList<>();
        all.add(stops == 0 ? "" : "It still has " + stops + (stops == 1 ? " stop." : " stops."));
        all.addAll(ProposalWords.of(p, desk.found().own()));
        all.add(desk.odds(number - 1));
        return all;
    }

    /** The rest of what is told of it, behind a button. */
    private List<Node> more(Proposal p, int number) {
        List<String> all = new ArrayList<>(
                List.of(p.arrangement() + ".", MARGIN, p.gist(), desk.found().besideOwn(p), p.rest(), p.limits()));
        all.addAll(CutJoint.words(p.design()));
        all.add(desk.outlook(number - 1));
        VBox rest = new VBox(5);
        all.stream().filter(w -> !w.isEmpty()).map(this::both).forEach(rest.getChildren()::add);
        rest.setVisible(false);
        rest.managedProperty().bind(rest.visibleProperty());
        Button more = Plain.button("More", () -> rest.setVisible(!rest.isVisible()));
        more.textProperty()
                .bind(Bindings.when(rest.visibleProperty()).then("Less").otherwise("More"));
        more.setAccessibleText("more about proposal " + number);
        return List.of(more, rest);
    }

    /** Where the inlets shall lie. */
    private Node part(boolean off) {
        Map<String, On> choices = new LinkedHashMap<>();
        choices.put("where they suit", null);
        choices.put("floor", On.FLOOR);
        choices.put("wall", On.WALL);
        return choice("inlets in", "part for the inlets", off, choices, desk.inletsOn(), desk::inletsOn);
    }

    private static Map<String, Boolean> kept(String what) {
        Map<String, Boolean> choices = new LinkedHashMap<>();
        choices.put("keep " + what, true);
        choices.put("choose " + what, false);
        return choices;
    }

    /** A named chooser of words. */
    private static <T> Node choice(
            String named, String spoken, boolean off, Map<String, T> choices, T now, Consumer<T> chosen) {
        ComboBox<String> choice = new ComboBox<>();
        choice.getStyleClass().add("choice");
        choice.getItems().setAll(choices.keySet());
        choices.forEach((word, value) -> {
            if (Objects.equals(value, now)) {
                choice.setValue(word);
            }
        });
        choice.setMaxWidth(Double.MAX_VALUE);
        choice.setDisable(off);
        choice.setAccessibleText(spoken);
        choice.valueProperty().addListener((o, a, b) -> chosen.accept(choices.get(b)));
        HBox box = new HBox(choice);
        box.getStyleClass().add("field");
        FieldRing.round(box, choice);
        box.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(choice, Priority.ALWAYS);
        HBox.setHgrow(box, Priority.ALWAYS);
        Label name = new Label(named);
        name.getStyleClass().add("field-name");
        name.setMinWidth(86);
        HBox row = new HBox(4, name, box);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Rules by their headings, figures as the design is written: inch first with millimetres beside them, or millimetres alone. */
    private Label both(String words) {
        String plain = RuleWords.inWords(FieldNames.inWords(words));
        return Plain.text(
                doc.design().units() == UnitSystem.METRIC
                        ? BothSystems.metricOnly(plain)
                        : BothSystems.inchFirst(BothSystems.words(plain)));
    }
}
