package portwright.layout;

import java.util.Map;

/**
 * How likely one hole, drilled by hand, breaks a limit that stops.
 *
 * @param hole its name
 * @param wall whether it is in a wall
 * @param stop share of drillings that break any, 0 to 1
 * @param stopError standard error of that share from the number of drillings simulated
 * @param byRule share by rule
 * @param nudgeX shortest shift of the mark that meets the target, or the safest within {@link Nudge#REACH_MM} where none does, mm to the right; in walls
 *     seen from inside; 0 where the mark meets the target as it is, or no other is safer
 * @param nudgeY the same to the back, in walls up, mm
 * @param stopNudged share with the mark shifted
 */
public record HoleOdds(
        String hole,
        boolean wall,
        double stop,
        double stopError,
        Map<String, Double> byRule,
        double nudgeX,
        double nudgeY,
        double stopNudged) {
    /** Share of drillings that is to pass. */
    public static final double TARGET = 0.99;

    public HoleOdds {
        byRule = Map.copyOf(byRule);
    }

    /** Whether at least 99 of 100 drillings pass. */
    public boolean meetsTarget() {
        return meets(stop);
    }

    /** The same with the mark shifted. */
    public boolean nudgedMeetsTarget() {
        return meets(stopNudged);
    }

    private static boolean meets(double share) {
        return share <= 1 - TARGET + 1e-12;
    }

    /** Whether another mark is safer. */
    public boolean hasNudge() {
        return nudgeX != 0 || nudgeY != 0;
    }
}
