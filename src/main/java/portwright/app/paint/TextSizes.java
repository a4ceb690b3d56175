package portwright.app.paint;

import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Widths of words, for canvases. */
public final class TextSizes {
    private TextSizes() {}

    public static double width(String words, Font font) {
        Text t = new Text(words);
        t.setFont(font);
        return t.getLayoutBounds().getWidth();
    }
}
