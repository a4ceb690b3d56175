package portwright.review;

/** Leaks of {@link ShedKiln} while its ports are plugged, reckoned apart from the product: half of the area at the floor, half under the lid. */
final class ShedLeak {
    private static final double EDGE = 0.6;
    private static final double ZERO_C = 273.15;

    private ShedLeak() {}

    /**
     * Heat that the air through them takes, W: the pull of the hot chamber is spent once on cold air going in and once on hot air going out.
     *
     * @param share of the leak that gapes with the ports plugged
     * @param m2 open area, m²
     * @param heightM from floor to lid, m
     */
    static double heatW(double share, double m2, double heightM, double chamberC, double roomC) {
        double cold = 353.0 / (roomC + ZERO_C);
        double hot = 353.0 / (chamberC + ZERO_C);
        double pullPa = 9.81 * Math.max(0, cold - hot) * heightM;
        double kgPerS = EDGE * share * m2 / 2 * Math.sqrt(2 * pullPa / (1 / cold + 1 / hot));
        return kgPerS * (1010 + 0.09 * chamberC) * (chamberC - roomC);
    }
}
