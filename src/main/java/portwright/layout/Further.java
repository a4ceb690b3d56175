package portwright.layout;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Beside which layouts further ones are still to be asked for: the first, then the first two; again where one that was found takes the place of the second. */
final class Further {
    private static final int ASKED = 5;

    private final Set<List<Combination>> asked = new HashSet<>();

    /** The next of those that would be shown; null where all were asked for, or often enough. */
    List<Combination> next(List<Combination> shown) {
        for (int n = 1; n < Choosing.SHOWN && asked.size() < ASKED; n++) {
            List<Combination> some = List.copyOf(shown.subList(0, Math.min(n, shown.size())));
            if (asked.add(some)) {
                return some;
            }
        }
        return null;
    }
}
