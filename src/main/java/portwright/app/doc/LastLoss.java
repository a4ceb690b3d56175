package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import portwright.file.DesignText;

/**
 * What the last edit took out of the design: a part that was deleted, or values that a new one ruled out; or left behind: posts and legs when
 * the plan became another.
 *
 * @param head what is gone, in words
 * @param words what that means and how it comes back
 * @param undo words of the button that brings it back
 */
public record LastLoss(String head, String words, String undo) {
    private static final String DELETE = "delete ";
    private static final String PLAN = "kiln.plan";
    private static final String STEPS = "firing.steps";
    private static final Map<String, String> WORDS = Map.of("to", "goal");

    /** Of the step that undo would take back; empty when that lost nothing unasked. */
    public static Optional<LastLoss> of(UndoStack stack) {
        return stack.last()
                .flatMap(e -> e.name().startsWith(DELETE)
                        ? Optional.of(deleted(e))
                        : ruledOut(e).or(() -> stood(e)));
    }

    /** Another plan leaves legs and posts where they were: their places are measured from the middle, whatever lies round it. */
    private static Optional<LastLoss> stood(Edit e) {
        if (e.before().getJson(PLAN).equals(e.after().getJson(PLAN))) {
            return Optional.empty();
        }
        DesignText t = e.after();
        long legs = items(t, "kiln.fittings")
                .filter(i -> t.get(i + ".kind").orElse("").equals("leg"))
                .count();
        long posts = items(t, "shelves").mapToLong(i -> t.size(i + ".posts")).sum();
        if (legs + posts == 0) {
            return Optional.empty();
        }
        String what = legs == 0 ? "Posts" : posts == 0 ? "Legs" : "Posts and legs";
        return Optional.of(new LastLoss(
                what + " stand where they were",
                "The plan is another, and nothing moved along with it: " + (posts == 0 ? "" : count(posts, "post"))
                        + (posts == 0 || legs == 0 ? "" : ", ") + (legs == 0 ? "" : count(legs, "leg"))
                        + ". Look at them on the floor and move those that no longer stand right.",
                "Undo"));
    }

    private static String count(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private static Stream<String> items(DesignText t, String list) {
        return Stream.iterate(0, i -> i < t.size(list), i -> i + 1).map(i -> list + "[" + i + "]");
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
        return e.after().size(list) != e.before().size(list) ? Stream.of() : items(e.after(), list);
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
                        ? "It holds now and rises no more: the firing may end lower. To reach the goal first and then"
                                + " hold, undo and add a step for the hold."
                        : "What was typed rules it out. Undo brings it back, here or with Ctrl+Z.",
                "Undo"));
    }

    private static String value(DesignText t, String item, String key) {
        return (WORDS.getOrDefault(key, key) + " " + t.get(item + "." + key).orElse("")).strip();
    }
}
