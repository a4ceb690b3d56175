package portwright.app;

import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Opens the window. Not an Application itself, so that it starts from the class path. */
public final class WindowLauncher {
    private static final Logger JAVAFX = Logger.getLogger("javafx");
    private static final String REGIONS = "prism.dirtyregioncount";

    private WindowLauncher() {}

    /** Opens the window with a design, or the example; returns when the window is shut. */
    public static void open(String... design) {
        JAVAFX.setLevel(Level.SEVERE);
        prepare();
        Application.launch(WindowApp.class, design);
    }

    /**
     * Lets the toolkit, before it starts, keep apart more regions to be drawn anew than its usual six: a dragged hole changes the board,
     * the side, tiles and foot at once, and regions that it does not keep apart grow into one as large as the window.
     */
    static void prepare() {
        if (System.getProperty(REGIONS) == null) {
            System.setProperty(REGIONS, "20");
        }
    }
}
