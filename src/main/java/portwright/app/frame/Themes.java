package portwright.app.frame;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;

/** Light and dark: two small style sheets of colours over one of forms. */
public final class Themes {
    private Themes() {}

    /** Puts a theme on a scene. */
    public static void set(Scene scene, boolean dark) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        scene.getStylesheets().setAll(sheet(dark ? "dark.css" : "light.css"), sheet("window.css"));
    }

    private static String sheet(String name) {
        return Themes.class.getResource("/portwright/app/" + name).toExternalForm();
    }
}
