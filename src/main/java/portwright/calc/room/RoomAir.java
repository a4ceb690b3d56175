package portwright.calc.room;

/** Oxygen, carbon dioxide and warmth of the room. */
public final class RoomAir {

    /** Oxygen of dry air, volume fraction; the tool's air is 20.95/79.05. */
    public static final double AIR_OXYGEN = 0.2095;

    private static final double AIR_DENSITY = 1.2;
    private static final double AIR_CP = 1006;

    private RoomAir() {}

    /**
     * Oxygen in the room after a time: air short of what the burners take, {@code dx = -(dilution of r m³/s by Q')}.
     * {@code x = 0.2095 - r/Q' (1 - exp(-Q' t/V))}. Derived from the same balance as {@link Dilution}.
     *
     * @param usedMolPerS oxygen that burning takes out of the room's air (all flue gas in the room)
     * @param effectiveFlowM3PerS Q/K
     * @param volumeM3 room
     * @param timeS time burning
     * @return volume fraction, at least 0
     */
    public static double oxygenAfter(double usedMolPerS, double effectiveFlowM3PerS, double volumeM3, double timeS) {
        double used =
                Dilution.levelAfter(0, usedMolPerS * Dilution.MOLAR_VOLUME_20C, effectiveFlowM3PerS, volumeM3, timeS);
        return Math.max(0, AIR_OXYGEN - used);
    }

    /**
     * Steady temperature rise: {@code dT = P/(rho cp Q)}, rho 1.2 kg/m³, cp 1006 J/kgK. Heat into walls is left out (safe side
     * for a long firing). Example: 3 kW and 596 m³/h: 15 K. From memory of ASHRAE; derived.
     *
     * @return kelvin; positive infinity without any air
     */
    public static double riseK(double heatW, double flowM3PerS) {
        Check.atLeastZero(heatW, "the heat");
        Check.atLeastZero(flowM3PerS, "the flow");
        return heatW == 0
                ? 0
                : flowM3PerS == 0 ? Double.POSITIVE_INFINITY : heatW / (AIR_DENSITY * AIR_CP * flowM3PerS);
    }

    /** Air that keeps the rise to {@code riseK}: the same formula turned round, m³/s. */
    public static double flowForRise(double heatW, double riseK) {
        return Check.atLeastZero(heatW, "the heat") / (AIR_DENSITY * AIR_CP * Check.aboveZero(riseK, "the rise"));
    }
}
