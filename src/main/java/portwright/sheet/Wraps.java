package portwright.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;

/** Texts in lines: each is wrapped once, however often its height is asked for. */
final class Wraps {
    private final PdfPen pen;
    private final Map<Asked, List<String>> known = new HashMap<>();

    private record Asked(String text, double width, TextStyle style) {}

    Wraps(Fonts fonts) {
        pen = PdfPen.onPage(new Page(1, 1), fonts);
    }

    List<String> lines(String text, double width, TextStyle style) {
        return known.computeIfAbsent(new Asked(text, width, style), a -> Words.wrap(pen, text, width, style));
    }

    double high(String text, double width, TextStyle style) {
        return lines(text, width, style).size() * pen.textSize(style) * Words.LEADING;
    }
}
