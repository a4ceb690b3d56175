package portwright.app.frame;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import portwright.app.doc.Document;
import portwright.app.doc.FreshDesign;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Moves;
import portwright.app.doc.OpenMark;
import portwright.app.doc.OpenedFile;
import portwright.app.doc.OriginBook;
import portwright.app.doc.Recovery;
import portwright.app.doc.Unread;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.file.Starters;

/** Opening, saving and leaving the one design of a window, without losing any of it. */
public final class FileDesk {
    private final Stage stage;
    private final Document doc;
    private final HomeFolder home;
    private final Notices notices;
    private final Consumer<BrokenReport> report;
    private final Runnable fresh;
    private final Runnable begun;
    private final OpenedFile file = new OpenedFile();
    private final OpenMark mark;
    private final LeftWork left;
    private final DiskWatch disk;
    private final OriginBook origins;

    /**
     * @param report shows the report of a broken file; null puts the board back
     * @param fresh called when another design lies on the board
     * @param begun called when it is a new kiln
     */
    FileDesk(
            Stage stage,
            Document doc,
            HomeFolder home,
            Notices notices,
            Consumer<BrokenReport> report,
            Runnable fresh,
            Runnable begun) {
        this.stage = stage;
        this.doc = doc;
        this.home = home;
        this.notices = notices;
        this.report = report;
        this.fresh = fresh;
        this.begun = begun;
        String window = UUID.randomUUID().toString().substring(0, 8);
        mark = new OpenMark(home, window);
        origins = new OriginBook(home);
        doc.listen(c -> {
            if (c == Document.Change.ENTRY && file.path() != null) {
                origins.keep(doc, file.path());
            }
        });
        left = new LeftWork(doc, file, new Recovery(home, window), notices);
        disk = new DiskWatch(file, notices, this::save, () -> read(file.path()));
    }

    void start() {
        disk.start(stage);
        stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, e -> left.rest());
    }

    /** The file of the design and its state in words. */
    public String words() {
        return file.words(doc.unsaved(), doc.text().get("title").orElse(""));
    }

    /** Starts from a starter design, under the kiln's own title; blank keeps the starter's. */
    public void starter(String name, String title) {
        if (mayReplace()) {
            become(FreshDesign.of(name, title), null, name, true);
            begun.run();
            FirstLines.ofStarter(notices);
        }
    }

    /** Starts from a kiln's own measures. */
    public void own(DesignText text) {
        if (mayReplace()) {
            become(text, null, null, true);
            begun.run();
            FirstLines.ofOwn(notices);
        }
    }

    /** Shows a starter as the first design of a fresh window, with the lines that say what to do. */
    public void firstStart(String name) {
        become(FreshDesign.of(name, ""), null, name, false);
        FirstLines.ofExample(notices);
        LastKiln.offer(home, notices, this::open);
    }

    /** Opens a file, after asking about unsaved work; a broken one shows its report and leaves the design as it is. */
    public boolean open(Path path) {
        return mayReplace() && read(path);
    }

    private boolean read(Path path) {
        ReadResult r;
        try {
            r = DesignFile.read(path);
        } catch (IOException e) {
            notices.say("Not opened", path.getFileName() + " cannot be read: " + e.getMessage());
            return false;
        }
        if (!r.ok()) {
            String text;
            try {
                text = Files.readString(path);
            } catch (IOException e) {
                text = "";
            }
            report.accept(new BrokenReport(
                    path, text, r.problems(), () -> read(path), this::openDialog, () -> report.accept(null)));
            return false;
        }
        report.accept(null);
        become(r.document(), path, null, false);
        home.opened(path);
        return true;
    }

    private void become(DesignText text, Path path, String example, boolean unsaved) {
        left.drop();
        mark.leave();
        notices.clear();
        if (path == null) {
            file.none(example);
        } else {
            file.read(path);
            mark(path);
        }
        doc.replace(text, text.read().design(), unsaved);
        if (example == null) {
            origins.recall(doc, path);
        } else {
            doc.borrowed().from(example, Starters.find(example).orElseThrow(), Set.of());
        }
        fresh.run();
    }

    private void mark(Path path) {
        if (mark.take(path)) {
            notices.say(
                    "Open in another window",
                    path.getFileName() + " is open in another window. Whoever saves second is asked first.");
        }
    }

    /** Offers what an earlier program left behind. */
    public void offerLeftWork() {
        left.offer(this::take);
    }

    private boolean take(Recovery.Left work) {
        if (!mayReplace()) {
            return false;
        }
        ReadResult r = work.text().read();
        if (!r.ok()) {
            notices.say(
                    "Not recovered",
                    "The copy has errors: " + r.problems().get(0).message());
            return false;
        }
        become(work.text(), work.file(), null, true);
        if (doc.borrowed().starter() == null) {
            Starters.find(work.starter()).ifPresent(t -> doc.borrowed().from(work.starter(), t, Set.of()));
        }
        return true;
    }

    /** Asks for a file to open. */
    public void openDialog() {
        File f = chooser("Open a design").showOpenDialog(stage);
        if (f != null) {
            open(f.toPath());
        }
    }

    /** Shows how a new kiln may begin. */
    public void newDialog() {
        StarterDialog.show(stage, Moves.units(doc.text()), this::starter, this::own);
    }

    private FileChooser chooser(String title) {
        FileChooser c = new FileChooser();
        c.setTitle(title);
        c.getExtensionFilters().add(new FileChooser.ExtensionFilter("Designs", "*.json"));
        Path folder = file.path() == null ? null : file.path().toAbsolutePath().getParent();
        File in = (folder == null ? home.lastFolder() : folder).toFile();
        c.setInitialDirectory(in.isDirectory() ? in : null);
        return c;
    }

    /** Saves; asks for a name when there is none. */
    public boolean save() {
        return file.path() == null ? saveAs() : saveTo(file.path());
    }

    /** Saves under another name. */
    public boolean saveAs() {
        FileChooser c = chooser("Save the design");
        c.setInitialFileName(
                file.path() == null
                        ? FreshDesign.stem(doc.text().get("title").orElse("")) + ".json"
                        : file.path().getFileName().toString());
        File f = c.showSaveDialog(stage);
        if (f == null) {
            return false;
        }
        Path path = FreshDesign.file(f.toPath());
        if (!path.equals(f.toPath()) && Files.exists(path)) {
            notices.say(
                    "Not saved yet",
                    path.getFileName() + " is there already. Save again and choose it, or take another name.");
            return false;
        }
        return saveTo(path);
    }

    /** Saves to a file, not over what somebody else saved there before the user has chosen; a failed write leaves the old file whole and says so. */
    public boolean saveTo(Path path) {
        if (path.equals(file.path()) && disk.asks()) {
            notices.say("Not saved yet", path.getFileName() + " was changed by another program. Choose which to keep.");
            return false;
        }
        try {
            DesignFile.save(path, doc.text());
        } catch (IOException e) {
            notices.say(
                    "Not saved",
                    path.getFileName() + " is not written: " + e.getMessage() + ". The old file is whole.");
            return false;
        }
        if (!path.equals(file.path())) {
            mark(path);
            home.opened(path);
        }
        file.written(path, LocalTime.now().format(DiskWatch.CLOCK));
        left.drop();
        disk.settled();
        doc.markSaved(doc.text());
        origins.keep(doc, path);
        if (!doc.unread().all().isEmpty()) {
            notices.say(
                    "Saved without an unreadable entry",
                    path.getFileName() + " holds the last good value of "
                            + String.join(
                                    ", ",
                                    doc.unread().all().stream()
                                            .map(Unread.Entry::field)
                                            .toList())
                            + ".");
        }
        return true;
    }

    private boolean mayReplace() {
        if (!doc.unsaved() || file.isExample() && doc.undoStack().size() == 0) {
            return true;
        }
        return LeaveDialog.ask(stage, doc.text().get("title").orElse("the design"), this::save);
    }

    /** Ends the window when nothing is lost by it. */
    public boolean leave() {
        if (!mayReplace()) {
            return false;
        }
        left.drop();
        mark.leave();
        return true;
    }
}
