package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import portwright.file.DesignText;

/**
 * What the last edit took out of the design: a part that was deleted, or values that a new one ruled out.
 *
 * @param head what is gone, in words
 * @param words what that means and how it comes back
 * @param undo words of the button that brings it back
 */
public record LastLoss(String head, String words, String undo) {
    private static final String DELETE = "delete ";
    private static final String STEPS = "firing.steps";
    private static final Map<String, String> WORDS = Map.of("to", "goal");

    /** Of the step that undo would take back; empty when that lost nothing unasked. */
    public static Optional<LastLoss> of(UndoStack stack) {
        return stack.last().flatMap(e -> e.name().startsWith(DELETE) ? Optional.of(deleted(e)) : ruledOut(e));
    }

    private static LastLoss deleted(Edit e) {
        return new LastLoss(
                "Deleted " + e.name().substring(DELETE.length()),
                "Undo brings it back, here or with Ctrl+Z.",
                "Undo " + e.name());
    }

    private static Optional<LastLoss> ruledOut(Edit e) {
        return Stream.concat(Parts.LISTS.stream(), Stream.of(STEPS))
                .flatMap(list -> items(e, list))
                .flatMap(item -> ruledOut(e, item).stream())
                .findFirst();
    }

    private static Stream<String> items(Edit e, String list) {
        int n = e.after().size(list);
        return n != e.before().size(list)
                ? Stream.of()
                : Stream.iterate(0, i -> i < n, i -> i + 1).map(i -> list + "[" + i + "]");
    }

    /** A value that was put in while others went: taking one away with nothing in its place is what was asked for. */
    private static Optional<LastLoss> ruledOut(Edit e, String item) {
        List<String> before = e.before().fields(item);
        List<String> after = e.after().fields(item);
        List<String> gone = new ArrayList<>(before);
        gone.removeAll(after);
        boolean put = after.stream()
                .anyMatch(k ->
                        !e.after().getJson(item + "." + k).equals(e.before().getJson(item + "." + k)));
        if (gone.isEmpty() || !put) {
            return Optional.empty();
        }
        String what = String.join(
                ", ", gone.stream().map(k -> value(e.before(), item, k)).toList());
        boolean hold = item.startsWith(STEPS) && gone.contains("to");
        String name = Unread.name(e.after(), item, "").strip();
        return Optional.of(new LastLoss(
                name + " lost " + what,
                hold
                        ? "It holds now and rises no more: the firing may end lower. To reach the goal first and then hold, undo and add a step for the hold."
                        : "What was typed rules it out. Undo brings it back, here or with Ctrl+Z.",
                "Undo"));
    }

    private static String value(DesignText t, String item, String key) {
        return (WORDS.getOrDefault(key, key) + " " + t.get(item + "." + key).orElse("")).strip();
    }
}
