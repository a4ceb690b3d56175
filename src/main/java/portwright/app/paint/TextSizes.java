package portwright.app.paint;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Widths of words, for canvases. */
public final class TextSizes {
    private static final int KEPT = 2000;
    private static final Map<Words, Double> WIDTHS = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Words, Double> eldest) {
            return size() > KEPT;
        }
    };

    private record Words(String words, Font font) {}

    private TextSizes() {}

    /** Width, px; measured once, as the same words are asked for in every frame. */
    public static synchronized double width(String words, Font font) {
        return WIDTHS.computeIfAbsent(new Words(words, font), TextSizes::measure);
    }

    private static double measure(Words w) {
        Text t = new Text(w.words);
        t.setFont(w.font);
        return t.getLayoutBounds().getWidth();
    }
}
