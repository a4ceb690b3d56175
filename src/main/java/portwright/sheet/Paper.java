package portwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.data.Table;
import portwright.units.Format;

/**
 * A paper size, upright.
 *
 * @param name as asked for: a4, letter, … or the typed size
 * @param widthMm across
 * @param heightMm down
 */
public record Paper(String name, double widthMm, double heightMm) {
    /** Smallest size on which the check pins (150 and 200 mm apart) and both bars stand clear of the margins. */
    static final double MIN_WIDTH_MM = 200;

    static final double MIN_HEIGHT_MM = 270;
    /** PDF pages end at 14 400 points. */
    static final double MAX_MM = 5000;

    private static final Pattern SIZE =
            Pattern.compile("(\\d{2,5}(?:\\.\\d{1,3})?)\\s*[x×]\\s*(\\d{2,5}(?:\\.\\d{1,3})?)\\s*mm");

    /** All named sizes. */
    public static List<Paper> named() {
        return Table.load("papers.csv").rows().stream()
                .map(r -> new Paper(r.text("name"), r.positive("width_mm"), r.positive("height_mm")))
                .toList();
    }

    /**
     * Reads a name or {@code WxHmm}.
     *
     * @throws IllegalArgumentException that says what to write
     */
    public static Paper parse(String text) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        for (Paper p : named()) {
            if (p.name.equals(t)) {
                return p;
            }
        }
        Matcher m = SIZE.matcher(t);
        if (!m.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not a paper size. Write "
                    + String.join(", ", named().stream().map(Paper::name).toList())
                    + ", or a width and height such as 900x1200mm.");
        }
        double w = Double.parseDouble(m.group(1));
        double h = Double.parseDouble(m.group(2));
        if (w < MIN_WIDTH_MM || h < MIN_HEIGHT_MM) {
            throw new IllegalArgumentException(
                    "Paper " + text + " is too small for the check bars and pins. Use at least "
                            + Format.plain(MIN_WIDTH_MM, 0) + "x" + Format.plain(MIN_HEIGHT_MM, 0) + "mm.");
        }
        if (w > MAX_MM || h > MAX_MM) {
            throw new IllegalArgumentException("Paper " + text + " is longer than a PDF page can be. Use at most "
                    + Format.plain(MAX_MM, 0) + " mm a side.");
        }
        return new Paper(Format.plain(w, 3) + "x" + Format.plain(h, 3) + "mm", w, h);
    }

    /** Name for people: A4, letter, 900 × 1200 mm. */
    public String words() {
        if (name.matches("[a-c]\\d{1,2}")) {
            return name.toUpperCase(Locale.ROOT);
        }
        return name.endsWith("mm") ? Format.plain(widthMm, 1) + " × " + Format.plain(heightMm, 1) + " mm" : name;
    }
}
