package portwright.calc.combustion;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import portwright.source.Source;

/** Atmosphere levels by bands of lambda. The bands are this project's proposal; the names are the trade's. */
public enum AtmosphereLevel {
    /** Above lambda 1.00. */
    OXIDIZING(1.00, Double.POSITIVE_INFINITY),
    /** 0.98 to 1.00. */
    NEUTRAL(0.98, 1.00),
    /** 0.94 to 0.98. */
    LIGHT(0.94, 0.98),
    /** 0.87 to 0.94. */
    MEDIUM(0.87, 0.94),
    /** 0.80 to 0.87. */
    HEAVY(0.80, 0.87),
    /** Below 0.80: wasteful, more CO than any glaze asks for; the rule of soot has limits of its own. */
    BEYOND(0, 0.80);

    /** Where the bands come from. */
    public static final Source SOURCE =
            Source.judgement("lambda bands proposed here from computed CO; level names of the trade");

    private final double lambdaLow;
    private final double lambdaHigh;

    AtmosphereLevel(double lambdaLow, double lambdaHigh) {
        this.lambdaLow = lambdaLow;
        this.lambdaHigh = lambdaHigh;
    }

    /** Lower end of the band of lambda. */
    public double lambdaLow() {
        return lambdaLow;
    }

    /** Upper end of the band of lambda; infinite for oxidizing. */
    public double lambdaHigh() {
        return lambdaHigh;
    }

    /** The lower-case name used in design files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The level of a lambda; a limit between two bands belongs to the leaner one, 1.00 itself to neutral.
     *
     * @throws IllegalArgumentException for a negative number
     */
    public static AtmosphereLevel of(double lambda) {
        if (!(lambda >= 0)) {
            throw new IllegalArgumentException("lambda " + lambda + ": write a number from 0 up");
        }
        return Arrays.stream(values())
                .filter(l -> l == OXIDIZING ? lambda > l.lambdaLow : lambda >= l.lambdaLow)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Shares of a stretch over which lambda moves evenly from one value to another, by level; they add up to 1. They move
     * smoothly with both ends, so a spell that lies beside a limit does not go over to the next level as a whole.
     *
     * @throws IllegalArgumentException for a negative number
     */
    public static Map<AtmosphereLevel, Double> shares(double fromLambda, double toLambda) {
        double lo = Math.min(fromLambda, toLambda);
        double hi = Math.max(fromLambda, toLambda);
        Map<AtmosphereLevel, Double> out = new EnumMap<>(AtmosphereLevel.class);
        if (of(lo) == of(hi)) {
            out.put(of(lo), 1.0);
            return out;
        }
        for (AtmosphereLevel l : values()) {
            double part = Math.min(hi, l.lambdaHigh) - Math.max(lo, l.lambdaLow);
            if (part > 0) {
                out.put(l, part / (hi - lo));
            }
        }
        return out;
    }

    /**
     * The level of a name.
     *
     * @throws IllegalArgumentException for an unknown name
     */
    public static AtmosphereLevel named(String id) {
        for (AtmosphereLevel l : values()) {
            if (l.id().equals(id)) {
                return l;
            }
        }
        throw new IllegalArgumentException(
                "atmosphere '" + id + "' is not known: write oxidizing, neutral, light, medium or heavy");
    }
}
