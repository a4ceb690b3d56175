package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;

/** What stands beside a part's name in the heading of its form, so that one is found among its like. */
public final class Headings {
    private static final Map<String, List<String>> TOLD = Map.of(
            "kiln.elements", List.of("height", "on"),
            "kiln.fittings", List.of("kind"),
            "shelves", List.of("height"),
            "burners", List.of("port"));

    /** Stands over the word that a list of fittings is complete. */
    public static final String WHOLE_LIST =
            "Go round the kiln: leg, hinge, latch, handle, vent, thermocouple, spyhole, terminals, control box. When every one is listed, say"
                    + " so: from then on what is not listed counts as not there.";

    private Headings() {}

    /** A nameless item in one line. */
    public static String summary(DesignText t, FormSpec s, String item) {
        List<String> words = new ArrayList<>();
        for (FieldSpec f : s.fields()) {
            t.get(item + "." + f.key())
                    .filter(v -> words.size() < 3)
                    .ifPresent(v -> words.add(f.key().equals("hold") ? "hold " + v : v));
        }
        return String.join(" · ", words);
    }

    /** The first of its telling fields that the part has; empty for parts that their name tells. */
    public static String aside(DesignText text, String list, String part) {
        String name = text.get(part + ".name").orElse("");
        return TOLD.getOrDefault(list, List.of()).stream()
                .map(key -> text.get(part + "." + key)
                        .map(v -> key.equals("on") ? "in the " + v : key.equals("height") ? v + " up" : v))
                .flatMap(Optional::stream)
                .filter(v -> !name.isEmpty() && !name.contains(v))
                .findFirst()
                .map(v -> "  ·  " + v)
                .orElse("");
    }
}
