package portwright.model;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** An enum constant with the word by which the design file names it. */
public interface Ided {
    /** Word in the design file. */
    String id();

    /** The constant of that word. */
    static <E extends Enum<E> & Ided> Optional<E> of(Class<E> type, String id) {
        return Arrays.stream(type.getEnumConstants())
                .filter(e -> e.id().equals(id))
                .findFirst();
    }

    /** All words, for messages. */
    static <E extends Enum<E> & Ided> String words(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Ided::id).collect(Collectors.joining(", "));
    }
}
