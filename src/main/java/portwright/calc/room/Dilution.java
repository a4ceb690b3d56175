package portwright.calc.room;

/**
 * A gas released into a ventilated room. Flows in m³/s, volumes in m³, levels as volume fractions, times in s.
 *
 * <p>Balance {@code V dC = G dt - Q' C dt}; steady {@code Q' = G/C}; with imperfect mixing {@code Q' = Q/K}. Source: course
 * sheet of formulae for the ACGIH Industrial Ventilation manual, chapter on dilution (published); the build-up form from
 * memory of that manual and derived from the balance. Range: any flow and volume; the room is one stirred volume, so a place
 * near the kiln is worse than the answer.
 */
public final class Dilution {

    /** Volume of a mole of gas at 20 °C and one atmosphere, m³/mol: R T/p. */
    public static final double MOLAR_VOLUME_20C = 0.02405;

    private Dilution() {}

    /**
     * Fresh air for a level: {@code Q = K G / C}. Example: 0.22 m³/h of CO, K 3, 25 ppm: 26 400 m³/h.
     *
     * @param releaseM3PerS gas released
     * @param level wanted volume fraction, above 0
     * @param mixing K, at least 1
     */
    public static double flowForLevel(double releaseM3PerS, double level, double mixing) {
        Check.atLeastZero(releaseM3PerS, "the release");
        Check.aboveZero(level, "the level");
        return mixing(mixing) * releaseM3PerS / level;
    }

    /**
     * Level after a time: {@code C = Cs + (C0 - Cs) exp(-Q' t/V)}, Cs = G/Q'; without air {@code C0 + G t/V}. Example: G 1.2
     * cfm, Q' 2000 cfm, V 100 000 ft³, 60 min from zero: 419 ppm.
     *
     * @param startLevel volume fraction at the start
     * @param releaseM3PerS gas released
     * @param effectiveFlowM3PerS Q' = Q/K
     * @param volumeM3 room
     * @param timeS time passed
     * @return volume fraction, never above 1
     */
    public static double levelAfter(
            double startLevel, double releaseM3PerS, double effectiveFlowM3PerS, double volumeM3, double timeS) {
        Check.atLeastZero(startLevel, "the starting level");
        Check.atLeastZero(releaseM3PerS, "the release");
        Check.atLeastZero(effectiveFlowM3PerS, "the flow");
        Check.aboveZero(volumeM3, "the volume");
        Check.atLeastZero(timeS, "the time");
        double turns = effectiveFlowM3PerS * timeS / volumeM3;
        double kept = Math.exp(-turns);
        double filled = releaseM3PerS * timeS / volumeM3 * (turns > 0 ? -Math.expm1(-turns) / turns : 1);
        return Math.min(1, startLevel * kept + filled);
    }

    /**
     * Time integral of the level over a stretch, fraction·s; the part of an average that the stretch gives.
     */
    static double exposure(
            double startLevel, double releaseM3PerS, double effectiveFlowM3PerS, double volumeM3, double timeS) {
        double k = effectiveFlowM3PerS / volumeM3;
        double g = releaseM3PerS / volumeM3;
        double x = k * timeS;
        if (x < 1e-6) {
            return startLevel * timeS * (1 - x / 2) + g * timeS * timeS / 2 * (1 - x / 3);
        }
        double kept = -Math.expm1(-x) / k;
        return startLevel * kept + g / k * (timeS - kept);
    }

    /**
     * Time to air a room out: {@code t = (V/Q') ln(C1/C2)}. Example: Q' 2000 cfm, V 100 000 ft³, 100 to 25 ppm: 69.3 min.
     *
     * @return seconds; positive infinity without any flow
     */
    public static double timeToClear(double from, double to, double effectiveFlowM3PerS, double volumeM3) {
        Check.aboveZero(to, "the level to reach");
        Check.aboveZero(volumeM3, "the volume");
        if (from <= to) {
            return 0;
        }
        return volumeM3 / Check.atLeastZero(effectiveFlowM3PerS, "the flow") * Math.log(from / to);
    }

    private static double mixing(double k) {
        if (!(k >= 1) || !Double.isFinite(k)) {
            throw new IllegalArgumentException("the mixing factor must be at least 1, got " + k);
        }
        return k;
    }
}
