package portwright.app.step;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import portwright.file.DesignText;

/** Buttons and words of the Paper step. */
final class PaperControls {
    private PaperControls() {}

    /** A button to press with dusty fingers; the main one is filled. */
    static Button big(String words, boolean main) {
        Button b = new Button(words);
        b.getStyleClass().setAll(main ? List.of("main-button") : List.of("plain-button", "tall-button"));
        b.setMaxWidth(Double.MAX_VALUE);
        b.setMinHeight(36);
        return b;
    }

    /** Words over the buttons; without words it takes no room. */
    static final class Told extends Label {
        private DesignText about;

        Told(String style) {
            getStyleClass().addAll(style, "slip-text");
            setWrapText(true);
            setStyle("-fx-padding: 0;");
            setMinHeight(USE_PREF_SIZE);
            say("");
        }

        /** What is said of a design goes with it: with another one it takes no room. */
        void of(DesignText now) {
            if (about != null && !now.equals(about)) {
                about = null;
                say("");
            }
        }

        /** Says something of a design as it stands. */
        void say(String words, DesignText of) {
            about = of;
            say(words);
        }

        void say(String words) {
            setText(words);
            setManaged(!words.isEmpty());
            setVisible(!words.isEmpty());
        }
    }
}
