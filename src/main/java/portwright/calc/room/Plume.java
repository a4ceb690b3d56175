package portwright.calc.room;

/**
 * Temperature a ceiling sees above the flues. Two models side by side; the rule takes the hotter.
 *
 * <p>Both are made for fires on a floor; a flue jet starts faster and narrower. The answer is never hotter than the gas at the
 * flue. Heat in W, heights m, temperatures K.
 */
public final class Plume {

    private static final double G = 9.80665;
    private static final double RHO = 1.2;
    private static final double CP = 1006;

    private Plume() {}

    /**
     * Axis of a free plume: {@code dT = 9.1 (T/(g cp² rho²))^(1/3) Qc^(2/3) z^(-5/3)}, heat in kW and cp in kJ/kgK. From memory
     * of Heskestad's plume law (fire-protection handbooks), virtual source taken at the flue. Example: 5 kW, 1.5 m: 37 K.
     */
    public static double axisRiseK(double heatW, double heightM, double roomK) {
        double q = Check.atLeastZero(heatW, "the heat") / 1000;
        double cp = CP / 1000;
        double z = Check.aboveZero(heightM, "the height");
        return 9.1 * Math.cbrt(roomK / (G * cp * cp * RHO * RHO)) * Math.pow(q, 2.0 / 3) * Math.pow(z, -5.0 / 3);
    }

    /** Under a ceiling straight above: {@code dT = 16.9 Q^(2/3)/H^(5/3)}, kW and m. From memory of Alpert 1972. */
    public static double ceilingRiseK(double heatW, double heightM) {
        double q = Check.atLeastZero(heatW, "the heat") / 1000;
        return 16.9 * Math.pow(q, 2.0 / 3) / Math.pow(Check.aboveZero(heightM, "the height"), 5.0 / 3);
    }

    /** The hotter of both, capped by the gas at the flue. */
    public static double ceilingK(double heatW, double heightM, double roomK, double flueGasK) {
        double rise = Math.max(axisRiseK(heatW, heightM, roomK), ceilingRiseK(heatW, heightM));
        return Math.min(Math.max(roomK, flueGasK), roomK + rise);
    }

    /** Height in m above the flues from which the hotter model stays below a temperature. */
    public static double heightForK(double heatW, double limitK, double roomK) {
        double allowed = Check.aboveZero(limitK - roomK, "the allowed rise");
        double at1 = Math.max(axisRiseK(heatW, 1, roomK), ceilingRiseK(heatW, 1));
        return Math.pow(at1 / allowed, 3.0 / 5);
    }
}
