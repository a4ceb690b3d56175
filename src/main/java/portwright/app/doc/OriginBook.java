package portwright.app.doc;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import portwright.file.DesignText;
import portwright.file.Starters;

/**
 * Remembers from which starter a saved design was made and which of its values were said to be right. It lies in the user's folder: a file that
 * was moved, or comes from elsewhere, is known by its title as long as that is the starter's.
 */
public final class OriginBook {
    private static final String FILE = "origins.txt";
    private static final String CUT = "\t";
    private static final int MOST = 200;

    private final HomeFolder home;

    public OriginBook(HomeFolder home) {
        this.home = home;
    }

    /** Tells a document where it came from; {@code path} null for one without a file. */
    public void recall(Document doc, Path path) {
        List<String> line =
                path == null ? null : lines().get(OpenMark.real(path).toString());
        String name = line == null ? byTitle(doc.text()) : line.get(0);
        Starters.find(name == null ? "" : name)
                .ifPresent(t -> doc.borrowed()
                        .from(name, t, line == null ? Set.of() : new TreeSet<>(line.subList(1, line.size()))));
    }

    private static String byTitle(DesignText text) {
        String title = text.get("title").orElse("");
        return Starters.names().stream()
                .filter(n -> Starters.title(n).equals(title))
                .findFirst()
                .orElse(null);
    }

    /** Writes down where the design of a file came from. */
    public void keep(Document doc, Path path) {
        String key = OpenMark.real(path).toString();
        Map<String, List<String>> all = lines();
        List<String> was = all.remove(key);
        List<String> now = new java.util.ArrayList<>();
        if (doc.borrowed().starter() != null) {
            now.add(doc.borrowed().starter());
            now.addAll(new TreeSet<>(doc.borrowed().right()));
            all.put(key, now);
        }
        if (now.equals(was) || was == null && now.isEmpty()) {
            return;
        }
        StringBuilder b = new StringBuilder();
        all.entrySet().stream()
                .skip(Math.max(0, all.size() - MOST))
                .filter(e -> Files.exists(Path.of(e.getKey())))
                .forEach(e -> b.append(e.getKey())
                        .append(CUT)
                        .append(String.join(CUT, e.getValue()))
                        .append('\n'));
        home.write(FILE, b.toString());
    }

    private Map<String, List<String>> lines() {
        Map<String, List<String>> out = new LinkedHashMap<>();
        for (String line : home.lines(FILE)) {
            List<String> cells = List.of(line.split(CUT, -1));
            if (cells.size() > 1) {
                out.put(cells.get(0), cells.subList(1, cells.size()));
            }
        }
        return out;
    }
}
