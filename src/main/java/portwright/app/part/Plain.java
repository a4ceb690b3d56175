package portwright.app.part;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import portwright.units.Unbroken;

/** Words and buttons of a ticket, all alike. */
public final class Plain {
    private Plain() {}

    /** A paragraph of the window's own size and colour, as high as its lines. */
    public static Label text(String text) {
        Label l = new Label(Unbroken.words(text));
        l.setWrapText(true);
        l.setMinHeight(Region.USE_PREF_SIZE);
        return l;
    }

    /** A quiet paragraph, as high as its lines. */
    public static Label words(String text) {
        Label l = text(text);
        l.getStyleClass().addAll("muted", "slip-text");
        return l;
    }

    /** A button never narrower than its words. */
    public static Button button(String words, Runnable run) {
        Button b = new Button(words);
        b.getStyleClass().setAll("plain-button");
        b.setMinWidth(Region.USE_PREF_SIZE);
        b.setOnAction(e -> run.run());
        return b;
    }
}
