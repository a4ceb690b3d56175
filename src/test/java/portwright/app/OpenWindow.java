package portwright.app;

import java.nio.file.Path;
import javafx.application.Platform;
import javafx.stage.Stage;
import portwright.app.doc.CheckDesk;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.frame.MainView;
import portwright.app.frame.Shell;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** A window on the starter octagon-17 in the real toolkit, as tests open it. */
record OpenWindow(Document doc, MainView view, Shell shell, Stage stage, CheckDesk desk) {
    /** Opens it; call on the toolkit's thread. */
    static OpenWindow show(Path home, double width, double height) {
        CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), Platform::runLater);
        DesignText text = Starters.find("octagon-17").orElseThrow();
        Document doc = new Document(text, text.read().design(), desk);
        HomeFolder folder = new HomeFolder(home);
        MainView view = new MainView(doc, s -> Steps.make(doc, folder, s));
        Stage stage = new Stage();
        Shell shell = new Shell(stage, doc, view, folder);
        shell.show(width, height);
        return new OpenWindow(doc, view, shell, stage, desk);
    }

    /** Closes it; call on the toolkit's thread. */
    void close() {
        desk.close();
        stage.close();
    }
}
