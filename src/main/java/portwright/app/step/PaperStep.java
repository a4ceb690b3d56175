package portwright.app.step;

import java.io.File;
import java.io.IOException;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import portwright.app.doc.Document;
import portwright.app.doc.FreshDesign;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Moves;
import portwright.app.doc.Offers;
import portwright.app.doc.PaperHold;
import portwright.app.doc.PaperModel;
import portwright.app.part.CorrectionGauge;
import portwright.app.part.FormView;
import portwright.app.part.PlainChoice;
import portwright.app.part.PlainField;
import portwright.app.part.SlipView;
import portwright.app.part.WorkBar;
import portwright.file.AtomicFile;
import portwright.model.UnitSystem;
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
        VBox options = FormView.ticket(
                "Sheets", "", paper, PlainChoice.row("parts", parts), PlainChoice.row("faces", faces), sides, sheets);
        Label ask = new Label("What does your steel rule read on the 100 mm (3 15/16 in) of the bars?");
        ask.setWrapText(true);
        ask.getStyleClass().addAll("muted", "slip-text");
        VBox correction = FormView.ticket("Printer correction", "", ask, across, down, gauge);
        HBox buttons = new HBox(8, save, print, card);
        HBox.setHgrow(save, Priority.ALWAYS);
        HBox.setHgrow(print, Priority.ALWAYS);
        save.setOnAction(e -> savePdf());
        card.setOnAction(e -> saveCard());
        print.setOnAction(e -> print());
        held.setVisible(false);
        held.setManaged(false);
        side.getChildren().addAll(held, options, correction, messages);
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

    /** Only pages of the design as it stands may leave the window. */
    private void allow() {
        PaperModel.Pages p = model.fresh() ? model.pages() : null;
        save.setDisable(p == null || p.print() == null);
        print.setDisable(p == null || p.print() == null);
        card.setDisable(p == null || p.cardPdf() == null);
        String why = doc.unread().forbids();
        boolean asked = model.pages() != null && !model.running() && !doc.checking();
        String stop = why == null && asked && model.pages().print() == null ? PaperHold.why(doc) : "";
        String lit = why == null && asked ? PaperHold.card(model.pages().cardRefused()) : "";
        waits.say((stop + "\n" + lit).strip());
        held.setVisible(why != null);
        held.setManaged(why != null);
        held.getChildren().setAll(why == null ? List.of() : List.of(SlipView.stop("Nothing leaves yet", why)));
        progress.show(model.running(), calledOff);
    }

    private void cancel() {
        model.cancel();
        calledOff = true;
        heard();
    }

    private void heard() {
        model.choice().keep(home);
        calledOff &= !model.running();
        allow();
        board.repaint();
        if (!model.running() && model.pages() != null) {
            made();
        }
    }

    private void made() {
        PaperModel.Pages p = model.pages();
        gauge.repaint();
        across.aside();
        down.aside();
        boolean ok = p.print() != null;
        boolean inch = Moves.units(doc.text()) == UnitSystem.INCH;
        sheets.setText(
                p.preview() == null
                        ? ""
                        : p.preview().sheets() + " sheets, overlap " + (inch ? "15/32 in" : "12 mm")
                                + " or more, content mark " + p.mark());
        sheets.setVisible(p.preview() != null);
        sheets.setManaged(p.preview() != null);
        messages.getChildren().clear();
        if (!ok) {
            messages.getChildren().add(SlipView.caution("The template does not print", p.refused()));
        } else {
            messages.getChildren()
                    .add(SlipView.clear(
                            "No stop: the template prints",
                            "A stop strikes every sheet through and takes the awl dots off.",
                            null));
        }
        if (p.cardRefused() != null) {
            messages.getChildren().add(SlipView.caution("The firing card does not print", p.cardRefused()));
        }
        messages.getChildren()
                .add(SlipView.note("Offer up before drilling", "Hold the real burner to the paper hole first."));
    }

    private File ask(String title, String name) {
        FileChooser c = new FileChooser();
        c.setTitle(title);
        c.setInitialFileName(FreshDesign.stem(doc.text().get("title").orElse("")) + "-" + name);
        c.setInitialDirectory(home.lastFolder().toFile());
        c.getExtensionFilters().add(new FileChooser.ExtensionFilter("PDF", "*.pdf"));
        return c.showSaveDialog(board.getScene().getWindow());
    }

    private void savePdf() {
        File f = ask("Save the drilling template", model.choice().stem() + "template.pdf");
        if (f != null) {
            write(f, model.pages().print().pdf());
        }
    }

    private void saveCard() {
        File f = ask("Save the firing card", "firing-card.pdf");
        if (f != null) {
            write(f, model.pages().cardPdf());
        }
    }

    /** Writes a PDF and says so. */
    public void write(File f, byte[] pdf) {
        try {
            AtomicFile.write(f.toPath(), pdf);
            saved.say("Saved: " + f.getName() + ", in " + f.getAbsoluteFile().getParent());
            messages.getChildren()
                    .add(
                            0,
                            SlipView.clear(
                                    "Saved " + f.getName(),
                                    "In " + f.getAbsolutePath()
                                            + ". Print at 100 %, never fit to page. Measure the bars.",
                                    null));
        } catch (IOException e) {
            saved.say("Not saved: " + f.getName() + ". The reason stands above.");
            messages.getChildren()
                    .add(
                            0,
                            SlipView.caution(
                                    "Not saved",
                                    f.getAbsolutePath() + " is not written: " + e.getMessage()
                                            + ". No file was left."));
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
