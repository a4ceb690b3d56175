package portwright.app.doc;

import java.nio.file.Path;
import java.util.Locale;
import portwright.file.DesignText;
import portwright.file.Starters;

/** A design made from a starter, and the file it goes to. */
public final class FreshDesign {
    private static final String FILE = ".json";

    private FreshDesign() {}

    /** The starter under the kiln's own title; blank, or one that cannot be read, leaves the starter's. */
    public static DesignText of(String starter, String title) {
        DesignText text = Starters.find(starter).orElseThrow();
        DesignText own = title.isBlank() ? text : text.setText("title", title.strip());
        return own.read().ok() ? own : text;
    }

    /** A title as the beginning of a file's name. */
    public static String stem(String title) {
        String s = title.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return s.isEmpty() ? "kiln" : s;
    }

    /** The file under the ending by which designs are found again, when its name has none; a figure such as {@code 18.5} is none. */
    public static Path file(Path chosen) {
        String name = chosen.getFileName().toString();
        return name.matches(".*\\.[A-Za-z]\\w*") ? chosen : chosen.resolveSibling(name + FILE);
    }
}
