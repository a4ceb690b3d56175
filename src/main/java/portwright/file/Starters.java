package portwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The starter designs that come with the program. */
public final class Starters {
    private static final String FOLDER = "/portwright/templates/";

    private Starters() {}

    /** Their names, in alphabetical order. */
    public static List<String> names() {
        return resource("index.txt").lines().filter(l -> !l.isBlank()).toList();
    }

    /** The starter as a document; empty when there is none of that name. */
    public static Optional<DesignText> find(String name) {
        return names().contains(name)
                ? Optional.of(DesignText.read(resource(name + ".json")).document())
                : Optional.empty();
    }

    /** A starter's title. */
    public static String title(String name) {
        return find(name).flatMap(d -> d.get("title")).orElse("");
    }

    /** A starter's notes: what kind of kiln and place it is. */
    public static String notes(String name) {
        return find(name).flatMap(d -> d.get("notes")).orElse("");
    }

    /** The name most like a mistyped one. */
    public static Optional<String> nearest(String typed) {
        return Nearest.of(typed, names());
    }

    private static String resource(String file) {
        try (InputStream in = Starters.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("starter design missing from the program: " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
