package portwright.app.frame;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Step;
import portwright.app.part.Typed;

/** One window on the screen: its scene, theme, size, title, and the keys and drops that concern files. */
public final class Shell {
    /** What the rail needs at twice its size, px. */
    private static final double MIN_WIDTH_PX = 700;

    private static final double MIN_HEIGHT_PX = 500;
    private static final double SIZE_STEP = 0.25;

    private final Stage stage;
    private final Document doc;
    private final MainView view;
    private final HomeFolder home;
    private final FileDesk files;
    private final StackPane root = new StackPane();
    private final ScaledPane scaled;
    private boolean dark;

    public Shell(Stage stage, Document doc, MainView view, HomeFolder home) {
        this.stage = stage;
        this.doc = doc;
        this.view = view;
        this.home = home;
        scaled = new ScaledPane(view);
        root.getChildren().setAll(scaled);
        dark = Boolean.parseBoolean(home.settings().getProperty("dark", "false"));
        scaled.factor(number(home.settings().getProperty("size", "1"), 1));
        files = new FileDesk(
                stage,
                doc,
                home,
                new Notices(view.messages()),
                r -> root.getChildren().setAll(r == null ? scaled : larger(r)),
                () -> view.board().fit(),
                () -> view.go(Step.KILN));
        doc.listen(c -> {
            if (c == Document.Change.DESIGN || c == Document.Change.SAVED) {
                title();
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

    /**
     * Builds the scene and shows the window.
     *
     * @param width of the window, px
     * @param height of the window, px
     */
    public void show(double width, double height) {
        Scene scene = new Scene(root, width, height);
        Themes.set(scene, dark, size());
        keys(scene);
        drop(scene);
        stage.setScene(scene);
        stage.setMinWidth(Math.min(width, MIN_WIDTH_PX));
        stage.setMinHeight(Math.min(height, MIN_HEIGHT_PX));
        stage.setOnCloseRequest(e -> {
            Typed.takeIn(stage.getScene());
            if (!files.leave()) {
                e.consume();
            }
        });
        FileMenu.fill(view.fileMenu(), this);
        files.start();
        title();
        stage.show();
        // once more: some window managers open a window at its least size, whatever its scene
        stage.setWidth(width);
        stage.setHeight(height);
        view.board().requestFocus();
        doc.start();
    }

    private void keys(Scene scene) {
        key(scene, KeyCode.S, () -> {
            Typed.takeIn(stage.getScene());
            files.save();
        });
        key(scene, KeyCode.O, files::openDialog);
        key(scene, KeyCode.N, files::newDialog);
        key(scene, KeyCode.P, () -> view.go(Step.PAPER));
        key(scene, KeyCode.PLUS, () -> size(size() + SIZE_STEP));
        key(scene, KeyCode.EQUALS, () -> size(size() + SIZE_STEP));
        key(scene, KeyCode.MINUS, () -> size(size() - SIZE_STEP));
        key(scene, KeyCode.ADD, () -> size(size() + SIZE_STEP));
        key(scene, KeyCode.SUBTRACT, () -> size(size() - SIZE_STEP));
        key(scene, KeyCode.DIGIT0, () -> size(1));
        key(scene, KeyCode.NUMPAD0, () -> size(1));
        scene.getAccelerators()
                .put(new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN), () -> {
                    Typed.takeIn(stage.getScene());
                    files.saveAs();
                });
    }

    private static void key(Scene scene, KeyCode code, Runnable run) {
        scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), run);
    }

    private void drop(Scene scene) {
        scene.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
            }
            e.consume();
        });
        scene.setOnDragDropped(e -> {
            List<File> dropped = e.getDragboard().getFiles();
            e.setDropCompleted(!dropped.isEmpty());
            dropped(dropped.stream().map(File::toPath).toList());
        });
    }

    /** Takes files that were let go over the window: logs lie over the forecast, else the first is opened as a design. */
    public void dropped(List<Path> paths) {
        List<Path> logs = paths.stream()
                .filter(f -> f.toString().toLowerCase(Locale.ROOT).matches(".*\\.(csv|tsv|txt|log)"))
                .toList();
        if (!logs.isEmpty()) {
            view.records(logs);
        } else if (!paths.isEmpty()) {
            files.open(paths.get(0));
        }
    }

    /** Sets the size of everything, 1 to 2. */
    public void size(double f) {
        scaled.factor(f);
        Themes.set(stage.getScene(), dark, size());
        home.set("size", String.valueOf(scaled.factor()));
    }

    public double size() {
        return scaled.factor();
    }

    private ScaledPane larger(Parent content) {
        ScaledPane pane = new ScaledPane(content);
        pane.factor(size());
        return pane;
    }

    /** Shows all cautions. */
    void safety() {
        view.base().care().open();
    }

    /** Turns between light and dark. */
    public void turnTheme() {
        dark = !dark;
        Themes.set(stage.getScene(), dark, size());
        home.set("dark", String.valueOf(dark));
    }

    public HomeFolder home() {
        return home;
    }

    public FileDesk files() {
        return files;
    }

    /** Whether the report of a broken file is up. */
    public boolean showsReport() {
        return !root.getChildren().contains(scaled);
    }

    private void title() {
        String name = doc.text().get("title").orElse("");
        view.fileState(name, files.words());
        stage.setTitle((doc.unsaved() ? "• " : "") + name + " – Portwright");
    }
}
