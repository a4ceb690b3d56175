package portwright.app.frame;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javafx.stage.Window;

/** Light and dark: two small style sheets of colours over one of forms; and the size that all windows share. */
public final class Themes {
    private static final String SIZE = "portwright.size";
    private static final double MENU_PX = 14;
    private static final double TIP_PX = 13;
    /** Shares of the screen that a window beside the main one may take; the rest is its frame's. */
    private static final double WIDE = 0.98;

    private static final double HIGH = 0.94;

    private Themes() {}

    /**
     * Puts a theme on a scene.
     *
     * @param size of menus, tips and the windows opened from this one, 1 to 2; what the scene holds is scaled by {@link ScaledPane}
     */
    public static void set(Scene scene, boolean dark, double size) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        scene.getProperties().put(SIZE, size);
        scene.getStylesheets().setAll(sheet(dark ? "dark.css" : "light.css"), sheet("window.css"), popups(size));
    }

    /** The size that a window's scene is shown at, 1 to 2; 1 for a scene without theme. */
    public static double size(Window window) {
        return window.getScene().getProperties().get(SIZE) instanceof Double d ? d : 1;
    }

    /**
     * A scene for a window beside another, in its look and size, no larger than the screen.
     *
     * @param width of the content at 100 %, px; {@link Region#USE_COMPUTED_SIZE} for as wide as it asks
     * @param height the same
     */
    static Scene beside(Window owner, Parent content, double width, double height) {
        double size = size(owner);
        ScaledPane pane = new ScaledPane(content);
        pane.factor(size);
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        pane.setPrefSize(scaled(width, size), scaled(height, size));
        pane.setMaxSize(WIDE * screen.getWidth(), HIGH * screen.getHeight());
        Scene scene = new Scene(pane);
        scene.getProperties().put(SIZE, size);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        return scene;
    }

    private static double scaled(double px, double size) {
        return px == Region.USE_COMPUTED_SIZE ? px : px * size;
    }

    /** Menus and tips are windows of their own, which no pane scales: their letters grow by a style sheet. */
    private static String popups(double size) {
        String css = String.format(
                Locale.ROOT,
                ".context-menu, .combo-box-popup > .list-view { -fx-font-size: %.1fpx; } .tooltip { -fx-font-size: %.1fpx; }",
                MENU_PX * size,
                TIP_PX * size);
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
    }

    private static String sheet(String name) {
        return Themes.class.getResource("/portwright/app/" + name).toExternalForm();
    }
}
