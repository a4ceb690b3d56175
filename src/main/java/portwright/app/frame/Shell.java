package portwright.app.frame;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.util.Duration;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.OpenMark;
import portwright.app.doc.Recovery;
import portwright.app.part.SlipView;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.file.Starters;

/** Files of one window: new, open, save, what a crash left, what changed on disk. */
public final class Shell {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final Stage stage;
    private final Document doc;
    private final MainView view;
    private final HomeFolder home;
    private final Recovery recovery;
    private final OpenMark mark;
    private final StackPane root = new StackPane();
    private final ScaledPane scaled;
    private final PauseTransition keep = new PauseTransition(Duration.millis(700));
    private Path file;
    private DesignFile.Stamp stamp;
    private String savedAt;
    private String example;
    private boolean dark;
    private SlipView diskSlip;

    public Shell(Stage stage, Document doc, MainView view, HomeFolder home) {
        this.stage = stage;
        this.doc = doc;
        this.view = view;
        this.home = home;
        String window = UUID.randomUUID().toString().substring(0, 8);
        recovery = new Recovery(home, window);
        mark = new OpenMark(home, window);
        scaled = new ScaledPane(view);
        root.getChildren().setAll(scaled);
        dark = Boolean.parseBoolean(home.settings().getProperty("dark", "false"));
        scaled.factor(number(home.settings().getProperty("size", "1"), 1));
        keep.setOnFinished(e -> keepCopy());
        doc.listen(c -> {
            if (c == Document.Change.DESIGN) {
                if (doc.unsaved()) {
                    keep.playFromStart();
                }
                state();
            } else if (c == Document.Change.SAVED) {
                state();
            }
        });
    }

    private static double number(String s, double usual) {
        try {
            return Double.parseDouble(s);
        } catch (NumberFormatException e) {
            return usual;
        }
    }

    /** Builds the scene and shows the window. */
    public void show(double width, double height) {
        Scene scene = new Scene(root, width, height);
        Themes.set(scene, dark);
        keys(scene);
        drop(scene);
        stage.setScene(scene);
        stage.setMinWidth(640);
        stage.setMinHeight(480);
        stage.setTitle("Portwright");
        stage.setOnCloseRequest(e -> {
            if (!leave()) {
                e.consume();
            }
        });
        FileMenu.fill(view.fileMenu(), this);
        Timeline watch = new Timeline(new KeyFrame(Duration.seconds(2), e -> watchDisk()));
        watch.setCycleCount(Timeline.INDEFINITE);
        watch.play();
        stage.focusedProperty().addListener((o, a, b) -> watchDisk());
        state();
        stage.show();
        view.focusBoard();
        doc.start();
    }

    private void keys(Scene scene) {
        var acc = scene.getAccelerators();
        acc.put(new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN), this::save);
        acc.put(
                new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                this::saveAs);
        acc.put(new KeyCodeCombination(KeyCode.O, KeyCombination.SHORTCUT_DOWN), this::openDialog);
        acc.put(new KeyCodeCombination(KeyCode.N, KeyCombination.SHORTCUT_DOWN), this::newDialog);
        acc.put(
                new KeyCodeCombination(KeyCode.P, KeyCombination.SHORTCUT_DOWN),
                () -> view.go(portwright.app.doc.Step.PAPER));
        acc.put(new KeyCodeCombination(KeyCode.PLUS, KeyCombination.SHORTCUT_DOWN), () -> size(scaled.factor() + 0.25));
        acc.put(
                new KeyCodeCombination(KeyCode.EQUALS, KeyCombination.SHORTCUT_DOWN),
                () -> size(scaled.factor() + 0.25));
        acc.put(
                new KeyCodeCombination(KeyCode.MINUS, KeyCombination.SHORTCUT_DOWN),
                () -> size(scaled.factor() - 0.25));
    }

    private void drop(Scene scene) {
        scene.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
            }
            e.consume();
        });
        scene.setOnDragDropped(e -> {
            List<File> files = e.getDragboard().getFiles();
            e.setDropCompleted(!files.isEmpty());
            dropped(files.stream().map(File::toPath).toList());
        });
    }

    /** Takes files that were let go over the window: logs lie over the forecast, else the first is opened as a design. */
    public void dropped(List<Path> files) {
        List<Path> logs = files.stream()
                .filter(f -> f.toString().toLowerCase(java.util.Locale.ROOT).matches(".*\\.(csv|tsv|txt|log)"))
                .toList();
        if (!logs.isEmpty()) {
            view.records(logs);
        } else if (!files.isEmpty()) {
            open(files.get(0));
        }
    }

    /** Sets the size of everything, 1 to 2. */
    public void size(double f) {
        scaled.factor(f);
        home.set("size", String.valueOf(scaled.factor()));
    }

    public double size() {
        return scaled.factor();
    }

    /** Turns between light and dark. */
    public void turnTheme() {
        dark = !dark;
        Themes.set(stage.getScene(), dark);
        home.set("dark", String.valueOf(dark));
    }

    public HomeFolder home() {
        return home;
    }

    public Path file() {
        return file;
    }

    private void state() {
        String title = doc.text().get("title").orElse("");
        String name = file == null
                ? example != null ? "example, not saved" : "not saved yet"
                : file.getFileName().toString();
        String tail =
                file == null ? "" : doc.unsaved() ? " · changed" : savedAt == null ? " · saved" : " · saved " + savedAt;
        view.fileState(title, name + tail);
        stage.setTitle((doc.unsaved() ? "• " : "") + title + " – Portwright");
    }

    // ---- new and open

    /** Starts from a starter design. */
    public void starter(String name) {
        if (!mayReplace()) {
            return;
        }
        DesignText text = Starters.find(name).orElseThrow();
        become(text, null);
        example = name;
        state();
    }

    /** Shows a starter as the first design of a fresh window, with three lines that say what to do. */
    public void firstStart(String name) {
        DesignText text = Starters.find(name).orElseThrow();
        become(text, null);
        doc.markSaved(text);
        example = name;
        state();
        SlipView first = SlipView.note(
                "This kiln is an example.",
                "Drag an inlet and watch the slips on the right.\nReady? Kiln step: measure yours.");
        view.messages().getChildren().add(first);
        first.setOnMouseClicked(e -> view.messages().getChildren().remove(first));
    }

    /** Opens a file; a broken one shows its report. */
    public boolean open(Path path) {
        if (!mayReplace()) {
            return false;
        }
        ReadResult r;
        try {
            r = DesignFile.read(path);
        } catch (IOException e) {
            message("Not opened", path.getFileName() + " cannot be read: " + e.getMessage());
            return false;
        }
        if (!r.ok()) {
            broken(path, r);
            return false;
        }
        root.getChildren().setAll(scaled);
        become(r.document(), path);
        home.opened(path);
        return true;
    }

    private void broken(Path path, ReadResult r) {
        String text;
        try {
            text = Files.readString(path);
        } catch (IOException e) {
            text = "";
        }
        root.getChildren()
                .setAll(new BrokenReport(
                        path,
                        text,
                        r.problems(),
                        () -> open(path),
                        this::openDialog,
                        () -> root.getChildren().setAll(scaled)));
    }

    /** Whether the report of a broken file is up. */
    public boolean showsReport() {
        return !root.getChildren().contains(scaled);
    }

    private void become(DesignText text, Path path) {
        file = path;
        example = null;
        savedAt = null;
        stamp = null;
        recovery.drop();
        mark.leave();
        view.messages().getChildren().clear();
        if (path != null) {
            remember(path);
            if (mark.take(path)) {
                message(
                        "Open in another window",
                        path.getFileName() + " is open in another window. What is saved last stays.");
            }
        }
        doc.replace(text, text.read().design(), path == null);
        view.board().fit();
    }

    private void remember(Path path) {
        try {
            stamp = DesignFile.stamp(path);
        } catch (IOException e) {
            stamp = null;
        }
    }

    /** Asks for a file. */
    public void openDialog() {
        FileChooser c = chooser("Open a design");
        File f = c.showOpenDialog(stage);
        if (f != null) {
            open(f.toPath());
        }
    }

    /** Shows the starter designs. */
    public void newDialog() {
        StarterDialog.show(stage, this::starter);
    }

    private FileChooser chooser(String title) {
        FileChooser c = new FileChooser();
        c.setTitle(title);
        c.getExtensionFilters().add(new FileChooser.ExtensionFilter("Designs", "*.json"));
        if (file != null && file.toAbsolutePath().getParent() != null) {
            c.setInitialDirectory(file.toAbsolutePath().getParent().toFile());
        }
        return c;
    }

    // ---- save

    /** Saves; asks for a name when there is none. */
    public boolean save() {
        return file == null ? saveAs() : saveTo(file);
    }

    /** Saves under another name. */
    public boolean saveAs() {
        FileChooser c = chooser("Save the design");
        c.setInitialFileName(
                file == null
                        ? fileName(doc.text().get("title").orElse("kiln"))
                        : file.getFileName().toString());
        File f = c.showSaveDialog(stage);
        return f != null && saveTo(f.toPath());
    }

    private static String fileName(String title) {
        String s = title.toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return (s.isEmpty() ? "kiln" : s) + ".json";
    }

    /** Saves to a file. */
    public boolean saveTo(Path path) {
        try {
            DesignFile.save(path, doc.text());
        } catch (IOException e) {
            message(
                    "Not saved",
                    path.getFileName() + " is not written: " + e.getMessage() + ". The old file is whole.");
            return false;
        }
        boolean other = !path.equals(file);
        file = path;
        example = null;
        remember(path);
        savedAt = LocalTime.now().format(CLOCK);
        if (other) {
            mark.take(path);
            home.opened(path);
        }
        recovery.drop();
        keep.stop();
        clearDiskSlip();
        doc.markSaved(doc.text());
        return true;
    }

    private void keepCopy() {
        if (doc.unsaved()) {
            recovery.keep(doc.text(), file);
        }
    }

    // ---- disk, crash, end

    private void watchDisk() {
        if (file == null || diskSlip != null) {
            return;
        }
        try {
            if (!DesignFile.changed(file, stamp)) {
                return;
            }
        } catch (IOException e) {
            return;
        }
        String at = LocalTime.now().format(CLOCK);
        boolean gone = !Files.exists(file);
        diskSlip = SlipView.caution(
                gone ? "The file is gone from the disk" : "The file changed on disk at " + at + ".",
                gone ? "Save writes it again." : "Keep yours, or take that one?",
                gone ? button("Save", this::save) : button("Keep mine", this::keepMine),
                button(gone ? "Leave it" : "Take that one", gone ? this::keepMine : this::takeTheirs));
        view.messages().getChildren().add(diskSlip);
    }

    private void keepMine() {
        remember(file);
        clearDiskSlip();
    }

    private void takeTheirs() {
        Path p = file;
        clearDiskSlip();
        recovery.drop();
        doc.markSaved(doc.text());
        open(p);
    }

    private void clearDiskSlip() {
        if (diskSlip != null) {
            view.messages().getChildren().remove(diskSlip);
            diskSlip = null;
        }
    }

    /** Shows what a crash left, to be opened or dropped. */
    public void offerRecovery() {
        for (Recovery.Left left : recovery.left()) {
            SlipView[] slip = new SlipView[1];
            Button take = button("Open it", () -> {
                view.messages().getChildren().remove(slip[0]);
                takeLeft(left);
            });
            Button drop = button("Drop it", () -> {
                view.messages().getChildren().remove(slip[0]);
                Recovery.delete(left.copy());
            });
            slip[0] = SlipView.caution(
                    "Unsaved work was left", "Portwright ended without saving " + left.words() + ".", take, drop);
            view.messages().getChildren().add(0, slip[0]);
        }
    }

    private void takeLeft(Recovery.Left left) {
        ReadResult r = left.text().read();
        if (!r.ok()) {
            message(
                    "Not recovered",
                    "The copy has errors: " + r.problems().get(0).message());
            return;
        }
        become(left.text(), left.file());
        doc.replace(left.text(), r.design(), true);
        recovery.keep(left.text(), left.file());
        Recovery.delete(left.copy());
    }

    private boolean mayReplace() {
        if (!doc.unsaved() || example != null && doc.undoStack().size() == 0) {
            return true;
        }
        return LeaveDialog.ask(stage, doc.text().get("title").orElse("the design"), this::save);
    }

    /** Ends the window when nothing is lost by it. */
    public boolean leave() {
        if (!mayReplace()) {
            return false;
        }
        keep.stop();
        recovery.drop();
        mark.leave();
        return true;
    }

    private void message(String head, String text) {
        SlipView[] slip = new SlipView[1];
        slip[0] = SlipView.caution(
                head, text, button("Close", () -> view.messages().getChildren().remove(slip[0])));
        view.messages().getChildren().add(slip[0]);
    }

    static Button button(String words, Runnable run) {
        Button b = new Button(words);
        b.getStyleClass().setAll("plain-button");
        b.setOnAction(e -> run.run());
        return b;
    }
}
