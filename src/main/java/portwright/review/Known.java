package portwright.review;

import java.util.List;

/**
 * A figure, or the fields a design has to give before it can be computed.
 *
 * @param value null while something is missing
 * @param needs field paths to add; empty when the value is there
 */
public record Known<T>(T value, List<String> needs) {
    public Known {
        needs = List.copyOf(needs);
        if ((value == null) == needs.isEmpty()) {
            throw new IllegalArgumentException("a figure is either there or lacks fields");
        }
    }

    /** A figure that is there. */
    public static <T> Known<T> of(T value) {
        return new Known<>(value, List.of());
    }

    /** A figure that lacks fields. */
    public static <T> Known<T> lacks(List<String> needs) {
        return new Known<>(null, needs);
    }

    /** Whether the figure is there. */
    public boolean known() {
        return value != null;
    }

    /** The fields to add, as an array for the rules. */
    public String[] lacking() {
        return needs.toArray(String[]::new);
    }
}
