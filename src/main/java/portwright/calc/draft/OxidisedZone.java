package portwright.calc.draft;

import java.util.OptionalDouble;
import portwright.source.Source;

/**
 * How far up incoming air can reach the ware before it has met gas. Pieces standing lower may come out oxidised (common
 * practice, no source).
 *
 * <p>The stream out of an inlet keeps an unmixed core of 6 hole diameters (free jet); a shelf over the hole turns it aside
 * at the shelf. Joints below the neutral level draw air as well, so the zone is never lower than that level. The band takes
 * cores of 4 and 10 diameters and the band of the neutral level: own judgement.
 *
 * @param height m above the hot face of the floor
 * @param low m
 * @param high m
 */
public record OxidisedZone(double height, double low, double high) {
    /** Where the core length comes from; its use here is this project's judgement. */
    public static final Source SOURCE = Source.judgement(
            "free-jet core of 6 hole diameters (published combustion file) taken as the reach of unmixed air");

    private static final double CORE = 6;
    private static final double CORE_LOW = 4;
    private static final double CORE_HIGH = 10;

    /**
     * The zone of one state.
     *
     * @param state the kiln
     * @param band its band, or null
     * @param shelf underside of the lowest shelf that covers every inlet, m; empty when some inlet is open above
     */
    public static OxidisedZone of(FireState state, FireBand band, OptionalDouble shelf) {
        DraftCase k = state.balance().kiln();
        double d = k.inlets().stream().mapToDouble(Inlet::diameter).max().orElse(0);
        double top = k.chamberHeight();
        double neutral = clamp(state.balance().neutralLevel().orElse(0), top);
        Double low = band == null ? null : band.neutralLevel().low();
        Double high = band == null ? null : band.neutralLevel().high();
        return new OxidisedZone(
                reach(CORE * d, shelf, neutral, top),
                reach(CORE_LOW * d, shelf, low == null ? neutral : clamp(low, top), top),
                reach(CORE_HIGH * d, shelf, high == null ? neutral : clamp(high, top), top));
    }

    private static double reach(double core, OptionalDouble shelf, double neutral, double top) {
        double blocked = shelf.isPresent() ? Math.min(core, shelf.getAsDouble()) : core;
        return Math.min(top, Math.max(blocked, neutral));
    }

    private static double clamp(double z, double top) {
        return Math.max(0, Math.min(top, z));
    }
}
