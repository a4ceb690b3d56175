package portwright.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import portwright.file.Json.Spot;

/** Collects problems, and knows where each field stands. */
final class Faults {
    private final List<Problem> problems;
    private final Map<String, Spot> spots = new HashMap<>();
    private final Set<String> gaps = new HashSet<>();

    Faults(List<Problem> problems) {
        this.problems = new ArrayList<>(problems);
    }

    void place(String path, Spot spot) {
        spots.put(path, spot);
    }

    /** Notes that a list was read with items left out, so that its numbering is not to be trusted. */
    void gap(String path) {
        gaps.add(path);
    }

    /** Whether items of the list were left out. */
    boolean gaps(String path) {
        return gaps.contains(path);
    }

    void add(Spot spot, String path, String message) {
        problems.add(new Problem(spot.line(), spot.column(), path, message));
    }

    /** A problem of a field that was read; of its nearest parent when the field is absent. */
    void at(String path, String message) {
        String p = path;
        while (!spots.containsKey(p) && !p.isEmpty()) {
            p = p.substring(0, Math.max(0, Math.max(p.lastIndexOf('.'), p.lastIndexOf('['))));
        }
        add(spots.getOrDefault(p, new Spot(1, 1)), path, message);
    }

    boolean none() {
        return problems.isEmpty();
    }

    /** All problems in file order. */
    List<Problem> sorted() {
        return problems.stream()
                .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
                .toList();
    }
}
