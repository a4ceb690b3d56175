package portwright.check;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A rule that lacks input, and what stays unproven without it.
 *
 * @param needs fields to add or, where a cause is told, to change
 * @param cause why it cannot be checked although the fields are there, with what helps; empty where they lack
 */
public record NotChecked(String rule, List<String> needs, Forbids forbids, String cause) {

    /** One whose fields lack. */
    public NotChecked(String rule, List<String> needs, Forbids forbids) {
        this(rule, needs, forbids, "");
    }

    /** The same with its cause put otherwise. */
    public NotChecked inWords(UnaryOperator<String> words) {
        return new NotChecked(rule, needs, forbids, words.apply(cause));
    }

    /** What to do about it: {@code add room.volume}, or the cause. */
    public String words() {
        return cause.isEmpty() ? "add " + String.join(", ", needs) : cause;
    }
}
