package portwright.app;

import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Opens the window. Not an Application itself, so that it starts from the class path. */
public final class WindowLauncher {
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private WindowLauncher() {}

    /** Opens the window with a design, or the example; returns when the window is shut. */
    public static void open(String... design) {
        JAVAFX.setLevel(Level.SEVERE);
        Application.launch(WindowApp.class, design);
    }
}
