package portwright.app;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import portwright.app.doc.CheckDesk;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.frame.MainView;
import portwright.app.frame.Shell;
import portwright.app.paint.Fonts;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** The window's life: fonts, one document, one shell. */
public final class WindowApp extends Application {
    /** The starter on the board of a first start. */
    public static final String FIRST = "decagon-23";

    private CheckDesk desk;

    @Override
    public void start(Stage stage) {
        Fonts.load();
        desk = new CheckDesk(new RuleBook(LimitTable.load()), Platform::runLater);
        DesignText text = Starters.find(FIRST).orElseThrow();
        Document doc = new Document(text, text.read().design(), desk);
        HomeFolder home = HomeFolder.ofUser();
        MainView view = new MainView(doc, s -> Steps.make(doc, home, s));
        Shell shell = new Shell(stage, doc, view, home);
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        shell.show(Math.min(1440, screen.getWidth()), Math.min(900, screen.getHeight()));
        List<String> args = getParameters().getRaw();
        if (args.isEmpty()) {
            shell.files().firstStart(FIRST);
        } else {
            shell.files().open(Path.of(args.get(0)));
        }
        shell.files().offerLeftWork();
    }

    @Override
    public void stop() {
        desk.close();
    }
}
