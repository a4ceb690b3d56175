package portwright.layout;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;

/** Rounded layouts that the whole rule book has looked at, written out, and what stops each. */
final class Checked {
    /** Those that no rule of fire or clearance stops, and the others, in the order in which they were checked. */
    final Map<Combination, Proposal> good = new LinkedHashMap<>();

    final Map<Combination, Proposal> stopped = new LinkedHashMap<>();
    private final Map<Combination, Stops> stops = new HashMap<>();
    /** The fewest stops known of layouts with these holes. */
    private final Map<Sizes.Choice, Stops> fewest = new HashMap<>();

    /** Takes a layout up; gives what stops it. */
    Stops put(Combination c, Proposal p) {
        Stops s = Stops.of(p.check());
        stops.put(c, s);
        if (s.curable().isEmpty()) {
            good.put(c, p);
            fewest.merge(c.choice(), s, (a, b) -> a.compareTo(b) <= 0 ? a : b);
        } else {
            stopped.put(c, p);
        }
        return s;
    }

    /** What stops a checked layout. */
    Stops stops(Combination c) {
        return stops.get(c);
    }

    /** The same of any: of an unchecked one the fewest of those with its holes. */
    Stops expected(Combination c) {
        return stops.getOrDefault(c, fewest.getOrDefault(c.choice(), Stops.NONE));
    }

    /** The fewest stops of a layout that passes. */
    Stops least() {
        return good.keySet().stream()
                .map(stops::get)
                .min(Comparator.naturalOrder())
                .orElse(Stops.NONE);
    }

    /** The widest layout with the fewest stops of those of a kind that pass; null when none does. */
    Combination widest(Predicate<Combination> which) {
        Stops least = least();
        return good.keySet().stream()
                .filter(which)
                .filter(c -> stops.get(c).compareTo(least) == 0)
                .max(Combination.WIDTH)
                .orElse(null);
    }
}
