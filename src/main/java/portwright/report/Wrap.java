package portwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines for a terminal. */
final class Wrap {
    /** Width of a terminal that nobody has widened, characters. */
    static final int USUAL = 80;

    /** A number and its unit stay on one line. */
    private static final Pattern UNIT = Pattern.compile("([0-9]) (°C|°F|h|kWh|kW|kg|mm|%|g/s|min)(?![A-Za-z])");

    private Wrap() {}

    /**
     * Lines of a paragraph, the later ones indented under the first.
     *
     * @param first what stands before the text; colour codes in it take no room
     * @param width most characters of a line; a longer word stands alone
     */
    static List<String> lines(String first, String text, int width) {
        int indent = first.replaceAll("\u001b\\[[0-9;]*m", "").length();
        List<String> out = new ArrayList<>();
        StringBuilder row = new StringBuilder(first);
        int used = indent;
        boolean fresh = true;
        for (String part : UNIT.matcher(text).replaceAll("$1\u00a0$2").split(" ", 0)) {
            String word = part.replace('\u00a0', ' ');
            if (!fresh && used + 1 + word.length() > width) {
                out.add(row.toString().stripTrailing());
                row = new StringBuilder(" ".repeat(indent));
                used = indent;
                fresh = true;
            }
            row.append(fresh ? "" : " ").append(word);
            used += word.length() + (fresh ? 0 : 1);
            fresh = false;
        }
        out.add(row.toString().stripTrailing());
        return out;
    }
}
