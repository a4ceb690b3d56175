package portwright.app.step;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import portwright.app.doc.Document;
import portwright.app.doc.FreshDesign;
import portwright.app.doc.HomeFolder;
import portwright.app.part.SlipView;
import portwright.file.AtomicFile;

/** Asks where a PDF shall go, writes it whole or not at all, and says so. */
final class PaperFiles {
    private final Document doc;
    private final HomeFolder home;
    private final Node in;
    private final PaperControls.Told saved;
    private final VBox messages;

    /**
     * @param in lies in the window that asks
     * @param saved says beside the buttons what was written last
     * @param messages takes a slip
     */
    PaperFiles(Document doc, HomeFolder home, Node in, PaperControls.Told saved, VBox messages) {
        this.doc = doc;
        this.home = home;
        this.in = in;
        this.saved = saved;
        this.messages = messages;
    }

    void save(String title, String name, byte[] pdf) {
        FileChooser c = new FileChooser();
        c.setTitle(title);
        c.setInitialFileName(FreshDesign.stem(doc.text().get("title").orElse("")) + "-" + name);
        Path folder = home.lastFolder();
        // the toolkit opens nothing at all for a folder that is not there
        c.setInitialDirectory(folder.toFile().isDirectory() ? folder.toFile() : null);
        c.getExtensionFilters().add(new FileChooser.ExtensionFilter("PDF", "*.pdf"));
        File f = c.showSaveDialog(in.getScene().getWindow());
        if (f != null) {
            write(f, pdf);
        }
    }

    /** Writes a PDF and says so. */
    private void write(File f, byte[] pdf) {
        try {
            AtomicFile.write(f.toPath(), pdf);
            saved.say("Saved: " + f.getName() + ", in " + f.getAbsoluteFile().getParent(), doc.text());
            first(SlipView.clear(
                    "Saved " + f.getName(),
                    "In " + f.getAbsolutePath() + ". Print at 100 %, never fit to page. Measure the bars.",
                    null));
        } catch (IOException e) {
            saved.say("Not saved: " + f.getName() + ". The reason stands above.");
            first(SlipView.caution(
                    "Not saved", f.getAbsolutePath() + " is not written: " + e.getMessage() + ". No file was left."));
        }
    }

    private void first(SlipView slip) {
        messages.getChildren().add(0, slip);
    }
}
