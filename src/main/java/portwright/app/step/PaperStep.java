package portwright.app.step;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Moves;
import portwright.app.doc.Offers;
import portwright.app.doc.PaperHold;
import portwright.app.doc.PaperModel;
import portwright.app.doc.Withheld;
import portwright.app.part.CorrectionGauge;
import portwright.app.part.Plain;
import portwright.app.part.PlainChoice;
import portwright.app.part.PlainField;
import portwright.app.part.SlipView;
import portwright.app.part.Ticket;
import portwright.app.part.WorkBar;
import portwright.sheet.Paper;
import portwright.sheet.SheetOptions;

/** Paper step: choose paper and parts, correct the printer, save or print. */
public final class PaperStep implements StepView {
    private static final List<SheetOptions.Part> PARTS =
            List.of(SheetOptions.Part.ALL, SheetOptions.Part.FLOOR, SheetOptions.Part.LID, SheetOptions.Part.WALL);
    private final Document doc;
    private final PaperModel model;
    private final HomeFolder home;
    private final PaperBoard board;
    private final VBox side = new VBox(10);
    private final VBox foot = new VBox(8);
    /** Says beside the buttons what was written last. */
    private final PaperControls.Told saved = new PaperControls.Told("muted");

    /** Says beside the buttons why they are off. */
    private final PaperControls.Told waits = new PaperControls.Told("field-note");

    private final VBox messages = new VBox(8);
    private final VBox held = new VBox();
    private final CorrectionGauge gauge;
    private final Label sheets = new Label();
    private final PlainField across;
    private final PlainField down;
    private final PlainField paper;
    private final WorkBar progress;
    private final ComboBox<String> parts = new ComboBox<>();
    private final ComboBox<String> faces = new ComboBox<>();
    private final Label sides = new Label();
    private final WithheldTicket withheld = new WithheldTicket();
    private final PaperFiles files;
    /** The button that was pressed while the pages were being made, and what it does; null for none. */
    private Button wanted;

    private Runnable then;
    private boolean naming;
    private boolean calledOff;
    private final Button save = PaperControls.big("Save PDF", true);
    private final Button print = PaperControls.big("Print at 100 %", false);
    private final Button card = PaperControls.big("Save card", false);

    public PaperStep(Document doc, PaperModel model, HomeFolder home) {
        this.doc = doc;
        this.home = home;
        this.model = model;
        board = new PaperBoard(model);
        files = new PaperFiles(doc, home, board, saved, messages);
        progress = new WorkBar("Laying out the pages", "Lay the pages out", this::cancel, model::make);
        gauge = new CorrectionGauge(model);
        across = new PlainField("across", model.across(), t -> model.measured(true, t), () -> factor(true));
        down = new PlainField("down", model.down(), t -> model.measured(false, t), () -> factor(false));
        paper = new PlainField("paper", paperWords(), model::paper, () -> "")
                .hinted("A4, or 900 × 1200 mm", this::paperWords)
                .offering(Offers.papers());
        sheets.getStyleClass().addAll("muted", "slip-text");
        sheets.setWrapText(true);
        sheets.setManaged(false);
        sides.getStyleClass().addAll("muted", "slip-text");
        sides.setWrapText(true);
        parts.getItems().setAll("all", "floor", "lid", "wall");
        parts.setValue(parts.getItems().get(PARTS.indexOf(model.choice().part())));
        nameFaces();
        parts.valueProperty().addListener((o, a, b) -> {
            model.part(PARTS.get(parts.getItems().indexOf(b)));
            nameFaces();
        });
        faces.valueProperty().addListener((o, a, b) -> {
            if (!naming && b != null) {
                model.face(FaceWords.SIDES.get(faces.getItems().indexOf(b)));
            }
        });
        VBox options = Ticket.of(
                "Sheets", "", paper, PlainChoice.row("parts", parts), PlainChoice.row("faces", faces), sides, sheets);
        Label ask = Plain.words("What does your steel rule read on the 100 mm (3 15/16 in) of the bars?"
                + (model.remembered() ? " This is your answer of last time: read again on another printer." : ""));
        VBox correction = Ticket.of("Printer correction", "", ask, across, down, gauge);
        ButtonRows buttons = new ButtonRows(save, print, card);
        save.setOnAction(e -> whenFresh(save, this::savePdf));
        card.setOnAction(e -> whenFresh(card, this::saveCard));
        print.setOnAction(e -> whenFresh(print, this::print));
        held.setVisible(false);
        held.setManaged(false);
        side.getChildren().addAll(held, withheld, options, correction, messages);
        foot.getChildren().addAll(progress, waits, saved, buttons);
        model.listen(this::heard);
        allow();
    }

    /** Whether pages have been made. */
    public boolean ready() {
        return model.pages() != null;
    }

    private String paperWords() {
        return Paper.parse(model.choice().paper()).words();
    }

    private String factor(boolean acrossBar) {
        return String.format(java.util.Locale.ROOT, "× %.4f", model.factor(acrossBar));
    }

    /** The faces in the words of the board, for the parts that are chosen. */
    private void nameFaces() {
        naming = true;
        faces.getItems().setAll(FaceWords.of(model.choice().part()));
        faces.setValue(
                faces.getItems().get(FaceWords.SIDES.indexOf(model.choice().face())));
        naming = false;
        String words = FaceWords.remark(model.choice());
        sides.setText(words);
        sides.setVisible(!words.isEmpty());
        sides.setManaged(!words.isEmpty());
    }

    /**
     * Only pages of the design as it stands may leave the window. While they are being made the buttons stay as they were: what is typed in a field is
     * taken when a button gets the keys, and a button that went off then would not hear its own click.
     */
    private void allow() {
        String why = doc.unread().forbids();
        boolean asked = model.pages() != null && !model.running() && !doc.checking();
        PaperModel.Pages p = model.fresh() ? model.pages() : null;
        boolean first = why == null && model.pages() == null && model.running();
        if (why != null || asked || model.pages() == null) {
            save.setDisable(!first && (p == null || p.print() == null));
            print.setDisable(!first && (p == null || p.print() == null));
            card.setDisable(!first && (p == null || p.cardPdf() == null));
        }
        String stop = why == null && asked && model.pages().print() == null ? PaperHold.why(doc) : "";
        String lit = why == null && asked ? PaperHold.card(model.pages().cardRefused(), doc) : "";
        waits.say(
                wanted != null
                        ? wanted.getText() + " follows when the pages are laid out."
                        : (stop + "\n" + lit).strip());
        withheld.show(doc);
        held.setVisible(why != null);
        held.setManaged(why != null);
        held.getChildren().setAll(why == null ? List.of() : List.of(SlipView.stop("Nothing leaves yet", why)));
        progress.show(model.running(), calledOff);
    }

    private void cancel() {
        model.cancel();
        calledOff = true;
        wanted = null;
        heard();
    }

    private void heard() {
        model.keep(home);
        paper.show(paperWords());
        calledOff &= !model.running();
        allow();
        board.repaint();
        if (!model.running() && model.pages() != null) {
            made();
        }
        follow();
    }

    private void made() {
        PaperModel.Pages p = model.pages();
        gauge.repaint();
        across.aside();
        down.aside();
        boolean ok = p.print() != null;
        sheets.setText(p.preview() == null ? "" : SheetWords.count(p, Moves.units(doc.text())));
        sheets.setVisible(p.preview() != null);
        sheets.setManaged(p.preview() != null);
        messages.getChildren().clear();
        if (ok) {
            messages.getChildren().add(PrintSlip.of(doc));
        }
        String whole = Withheld.of(doc).isEmpty()
                ? Stream.of(p.refused(), p.cardRefused())
                        .filter(Objects::nonNull)
                        .collect(Collectors.joining(" "))
                : "";
        if (!whole.isEmpty()) {
            messages.getChildren().add(SlipView.caution("Something does not print", whole));
        }
        messages.getChildren()
                .add(SlipView.note("Offer up before drilling", "Hold the real burner to the paper hole first."));
    }

    private void savePdf() {
        files.save(
                "Save the drilling template",
                model.choice().stem() + "template.pdf",
                model.pages().print().pdf());
    }

    private void saveCard() {
        files.save("Save the firing card", "firing-card.pdf", model.pages().cardPdf());
    }

    /** Does it at once with pages of the design as it stands; while they are being made, as soon as they are there. */
    private void whenFresh(Button b, Runnable does) {
        if (model.fresh()) {
            does.run();
        } else {
            wanted = b;
            then = does;
            allow();
        }
    }

    private void follow() {
        if (wanted == null || model.running() || doc.checking()) {
            return;
        }
        boolean go = model.fresh() && !wanted.isDisabled() && board.getScene() != null;
        wanted = null;
        if (go) {
            Platform.runLater(then);
        }
    }

    private void print() {
        TruePrint.Refusal no = TruePrint.print(
                board.getScene().getWindow(),
                doc.text().get("title").orElse("template"),
                Paper.parse(model.choice().paper()),
                model.pages().print().pictures());
        if (no != null) {
            messages.getChildren().add(0, SlipView.caution(no.head(), no.words()));
        }
    }

    @Override
    public Node board() {
        return board;
    }

    @Override
    public List<Node> tickets() {
        return List.of(side);
    }

    @Override
    public Node pinned() {
        return foot;
    }

    @Override
    public void changed(Document.Change change) {
        if (change == Document.Change.DESIGN) {
            saved.of(doc.text());
        }
        if (change == Document.Change.CHECK && !doc.checking()
                || change == Document.Change.DESIGN && model.pages() == null) {
            model.make();
        }
        if (change == Document.Change.ENTRY) {
            giveUp(across, PaperModel.ACROSS, model.across());
            giveUp(down, PaperModel.DOWN, model.down());
            giveUp(paper, PaperModel.PAPER, paperWords());
        }
        allow();
        board.repaint();
    }

    private void giveUp(PlainField field, String path, String good) {
        if (doc.unread().at(path).isEmpty()) {
            field.giveUp(good);
        }
    }
}
