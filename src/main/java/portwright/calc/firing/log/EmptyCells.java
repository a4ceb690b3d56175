package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Lines that a table has and that hold no reading, no error and no word: they are told all the same. */
final class EmptyCells {
    private static final int NAMED = 5;

    private final List<Integer> noReading = new ArrayList<>();
    private final List<Integer> nothing = new ArrayList<>();

    /** A row that tells of damper or gas and whose temperature cell is empty. */
    void noReading(int line) {
        noReading.add(line);
    }

    /** A line of separators alone. */
    void nothing(int line) {
        nothing.add(line);
    }

    /** What is said of them, a sentence a kind. */
    List<String> words() {
        List<String> out = new ArrayList<>();
        if (!noReading.isEmpty()) {
            out.add(lines(noReading) + ": no temperature; only damper or gas is read there");
        }
        if (!nothing.isEmpty()) {
            out.add(lines(nothing) + ": separators alone, nothing to read");
        }
        return out;
    }

    private static String lines(List<Integer> all) {
        String named = all.stream().limit(NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        int more = all.size() - NAMED;
        return (all.size() == 1 ? "line " : "lines ") + named + (more > 0 ? " and " + more + " more" : "");
    }
}
