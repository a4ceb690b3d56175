package portwright.layout;

/**
 * Margins on one scale for every rule: below 0 a stop, 0 at the stop limit, 1 at the caution limit, above 1 as many times better than the caution
 * limit asks. Continuous and rising with the quality of the layout.
 */
final class Scale {
    /** Margin of what no rule limits. */
    static final double FREE = Double.POSITIVE_INFINITY;

    /** Clear width that a thing which is cautioned only where it is met has for a margin of 2, mm. Judgement: a few times a drill's wander. */
    static final double BESIDE_MM = 10;

    private Scale() {}

    /** A clearance that is cautioned only where it is gone: 1 where the two touch. */
    static double beside(double clearMm) {
        return clearMm >= 0 ? 1 + clearMm / BESIDE_MM : 1 / (1 - clearMm / BESIDE_MM);
    }

    /**
     * A measure that must not be less than its limits; {@code stop} NaN where the rule has no stop. A caution limit of 0 without a stop cautions what
     * touches ({@link #beside}).
     */
    static double atLeast(double measured, double stop, double caution) {
        if (caution == 0 && Double.isNaN(stop)) {
            return beside(measured);
        }
        if (measured >= caution) {
            return caution > 0 ? measured / caution : FREE;
        }
        if (Double.isNaN(stop)) {
            return Math.max(0, measured) / caution;
        }
        return measured >= stop ? (measured - stop) / (caution - stop) : (measured - stop) / Math.max(1, caution);
    }

    /** A measure that must not exceed its limits; {@code stop} NaN where the rule has no stop. */
    static double atMost(double measured, double stop, double caution) {
        if (measured <= caution) {
            return measured > 0 ? caution / measured : FREE;
        }
        if (Double.isNaN(stop)) {
            return caution / measured;
        }
        return (stop - measured) / (measured <= stop ? stop - caution : caution);
    }

    /** The measure at which a rule of the kind {@link #atMost} with a stop has a margin; infinite for a margin of minus infinity. */
    static double atMostFor(double margin, double stop, double caution) {
        if (margin == Double.NEGATIVE_INFINITY) {
            return Double.POSITIVE_INFINITY;
        }
        return margin >= 1
                ? caution / margin
                : margin >= 0 ? stop - margin * (stop - caution) : stop - margin * caution;
    }
}
