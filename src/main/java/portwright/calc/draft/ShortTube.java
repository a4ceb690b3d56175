package portwright.calc.draft;

/** Loss coefficients of holes that do not change while a balance is solved. */
final class ShortTube {
    private ShortTube() {}

    /** Discharge coefficient at infinite Reynolds number of a hole of length over diameter {@code ratio}. */
    static double cd(double ratio) {
        if (ratio <= 0.3) {
            return 0.61;
        }
        if (ratio < 1.5) {
            return 0.61 + (0.81 - 0.61) * (ratio - 0.3) / 1.2;
        }
        return ratio < 2 ? 0.81 : 0.827 - 0.0085 * Math.min(ratio, 10);
    }

    /** Loss at a mouth with this open share, in velocity heads of the whole hole; infinite when shut. */
    static double mouthLoss(double share) {
        if (share <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double b = Math.sqrt(share);
        double b5 = share * share * b;
        double contraction = 1 + 0.622 * (1 - 0.215 * share - 0.785 * b5);
        return (0.0696 * (1 - b5) + 1) * contraction * contraction / (share * share);
    }

    /** Viscosity of air and, near enough, of combustion products, Pa s; t in K. */
    static double viscosity(double t) {
        return 1.716e-5 * Math.pow(t / 273.15, 1.5) * 383.55 / (t + 110.4);
    }
}
