package portwright.layout;

import java.util.List;

/**
 * How far the centre of one hole may wander before some rule stops, all other holes in their places. Read for a bore that runs square through the
 * slab and has the design's oversize.
 *
 * @param hole its name
 * @param wall whether it is in a wall: bearings then run clockwise from straight up, seen from inside
 * @param bearings directions clockwise from the back seen from above, deg
 * @param allowedMm distance in each direction, mm; {@link #MOST_MM} means that much or more
 * @param rules the rule that stops in each direction; empty text where none does within that distance
 * @param leastMm the least of them, mm
 * @param leastBearing its direction, deg
 */
public record Wander(
        String hole,
        boolean wall,
        List<Double> bearings,
        List<Double> allowedMm,
        List<String> rules,
        double leastMm,
        double leastBearing) {

    /** Whether a rule stops the hole at its mark already. */
    public boolean stoppedAtMark() {
        return leastMm < 1e-6;
    }

    /** Longest distance that is looked at, mm. */
    public static final double MOST_MM = 25;

    public Wander {
        bearings = List.copyOf(bearings);
        allowedMm = List.copyOf(allowedMm);
        rules = List.copyOf(rules);
    }
}
