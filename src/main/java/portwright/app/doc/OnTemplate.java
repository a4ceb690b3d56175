package portwright.app.doc;

import java.util.List;

/** Which values decide where lines lie on the printed template, and which only change figures and findings. */
public final class OnTemplate {
    private static final List<String> LINES = List.of(
            "kiln.plan",
            "kiln.wall",
            "kiln.floor",
            "kiln.lid",
            "kiln.height",
            "kiln.elements",
            "kiln.fittings",
            "shelves",
            "ports",
            "drilling");

    private OnTemplate() {}

    /** Whether a line of the template stands elsewhere when the value of this field is another. */
    public static boolean matters(String path) {
        return LINES.stream().anyMatch(l -> path.equals(l) || path.startsWith(l + ".") || path.startsWith(l + "["))
                && !path.matches(".*\\.(coil|conductivity|density|brick|resistance|wire|type|class|notes)(\\..*)?");
    }

    /** What a value that is still the starter's means for the template, in one sentence. */
    public static String words(String path) {
        return matters(path)
                ? "The template is drawn with it: measure it before you drill."
                : "It changes figures and findings, no line of the template.";
    }

    /** How many of these fields the template is drawn with. */
    public static int count(List<String> paths) {
        return (int) paths.stream().filter(OnTemplate::matters).count();
    }
}
