package portwright.app.doc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import portwright.file.AtomicFile;

/** Where the window keeps what is not a design: recent files, recovery copies, who has a file open, window settings. */
public final class HomeFolder {
    private static final int MOST_RECENT = 10;

    private final Path root;

    public HomeFolder(Path root) {
        this.root = root;
    }

    /** The user's folder; the property {@code portwright.home} names another. */
    public static HomeFolder ofUser() {
        String given = System.getProperty("portwright.home");
        return new HomeFolder(given != null ? Path.of(given) : Path.of(System.getProperty("user.home"), ".portwright"));
    }

    public Path root() {
        return root;
    }

    /** A folder below, made when missing; null where it cannot be made. */
    Path folder(String name) {
        try {
            return Files.createDirectories(root.resolve(name));
        } catch (IOException e) {
            return null;
        }
    }

    /** Files opened last, the newest first, only those that still exist. */
    public List<Path> recent() {
        try {
            return lines("recent.txt").stream()
                    .filter(l -> !l.isBlank())
                    .map(Path::of)
                    .filter(Files::exists)
                    .toList();
        } catch (RuntimeException e) {
            return List.of();
        }
    }

    /** The folder of the design opened or saved last, else the user's own. */
    public Path lastFolder() {
        return recent().stream()
                .map(Path::getParent)
                .filter(f -> f != null && Files.isDirectory(f))
                .findFirst()
                .orElse(Path.of(System.getProperty("user.home")));
    }

    /** Puts a file first among the recent ones. */
    public void opened(Path file) {
        Path full = file.toAbsolutePath().normalize();
        List<Path> all = new ArrayList<>(recent());
        all.remove(full);
        all.add(0, full);
        write(
                "recent.txt",
                String.join(
                                "\n",
                                all.stream()
                                        .limit(MOST_RECENT)
                                        .map(Path::toString)
                                        .toList()) + "\n");
    }

    /** Settings of the window: theme, size. */
    public Properties settings() {
        Properties p = new Properties();
        Path file = root.resolve("window.properties");
        if (Files.exists(file)) {
            try (var in = Files.newBufferedReader(file)) {
                p.load(in);
            } catch (IOException | IllegalArgumentException e) {
                return new Properties();
            }
        }
        return p;
    }

    public void set(String key, String value) {
        Properties p = settings();
        p.setProperty(key, value);
        StringBuilder b = new StringBuilder();
        p.stringPropertyNames().stream()
                .sorted()
                .forEach(k -> b.append(k).append('=').append(p.getProperty(k)).append('\n'));
        write("window.properties", b.toString());
    }

    /** Lines of a file below; none when it cannot be read. */
    List<String> lines(String name) {
        Path file = root.resolve(name);
        try {
            return Files.exists(file) ? Files.readAllLines(file, StandardCharsets.UTF_8) : List.of();
        } catch (IOException e) {
            return List.of();
        }
    }

    void write(String name, String text) {
        try {
            Files.createDirectories(root);
            AtomicFile.write(root.resolve(name), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException notPossible) {
            return;
        }
    }

    /** Files in a folder below. */
    List<Path> list(String name) {
        Path folder = folder(name);
        if (folder == null) {
            return List.of();
        }
        try (Stream<Path> s = Files.list(folder)) {
            return s.sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
