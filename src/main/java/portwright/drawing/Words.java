package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import portwright.geometry.Pt;

/** Running text. */
public final class Words {
    /** Line height over type size. */
    public static final double LEADING = 1.38;

    /** Between words, yet not within a quantity: {@code 8 21/32 in}, {@code 760 °C}. */
    private static final Pattern BREAK = Pattern.compile(
            "(?<!\\d)\\s+|(?<=\\d)\\s+(?!\\d+/\\d|(?:mm|m|in|ft|kg|g|kW|min|h|s|ppm|°C|°F|%)(?![\\p{L}\\d]))");

    private Words() {}

    /** The text in lines no wider than {@code width}; words longer than a line are broken. */
    public static List<String> wrap(Pen pen, String text, double width, TextStyle style) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BREAK.split(text.strip(), -1)) {
            String rest = word;
            String joined = line.length() == 0 ? rest : line + " " + rest;
            if (pen.textWidth(joined, style) <= width) {
                line.setLength(0);
                line.append(joined);
                continue;
            }
            if (line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (pen.textWidth(rest, style) > width && rest.codePointCount(0, rest.length()) > 1) {
                int end = Math.max(fitting(pen, rest, "", width, style), rest.offsetByCodePoints(0, 1));
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(rest);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** Writes lines downwards; answers the y where the next line's top would be. */
    public static double flow(Pen pen, String text, double x, double top, double width, TextStyle style) {
        return flow(pen, wrap(pen, text, width, style), x, top, style);
    }

    /** The same of lines that are wrapped already. */
    public static double flow(Pen pen, List<String> lines, double x, double top, TextStyle style) {
        double y = top;
        double size = pen.textSize(style);
        for (String line : lines) {
            pen.text(line, new Pt(x, y - size), Pen.Align.LEFT, 0, style);
            y -= size * LEADING;
        }
        return y;
    }

    /** Height that {@link #flow} would use. */
    public static double height(Pen pen, String text, double width, TextStyle style) {
        return wrap(pen, text, width, style).size() * pen.textSize(style) * LEADING;
    }

    /** The text cut to a width, with an ellipsis where it was cut. */
    public static String fit(Pen pen, String text, double width, TextStyle style) {
        if (pen.textWidth(text, style) <= width) {
            return text;
        }
        return text.substring(0, fitting(pen, text, "…", width, style)).stripTrailing() + "…";
    }

    /** Length of the longest beginning that fits with its end put on; found by halving, since a word may have thousands of letters. */
    private static int fitting(Pen pen, String text, String end, double width, TextStyle style) {
        int[] cuts = IntStream.rangeClosed(0, text.codePointCount(0, text.length()))
                .map(n -> text.offsetByCodePoints(0, n))
                .toArray();
        int low = 0;
        int high = cuts.length - 1;
        while (low < high) {
            int mid = (low + high + 1) / 2;
            if (pen.textWidth(text.substring(0, cuts[mid]) + end, style) <= width) {
                low = mid;
            } else {
                high = mid - 1;
            }
        }
        return cuts[low];
    }
}
