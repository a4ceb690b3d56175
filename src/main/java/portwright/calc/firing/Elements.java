package portwright.calc.firing;

/**
 * The elements: P = V²/R.
 *
 * @param nominalW power of new elements at the supply's nominal voltage
 * @param resistanceRise R/R_new − 1; 0 new, about 0.1 to 0.3 aged
 * @param voltageShare supply voltage against the nominal one; 1 where unknown
 */
public record Elements(double nominalW, double resistanceRise, double voltageShare) {
    public Elements {
        if (!(nominalW >= 0 && resistanceRise > -1 && voltageShare >= 0) || !Double.isFinite(nominalW)) {
            throw new IllegalArgumentException("element power, resistance rise or voltage out of range");
        }
    }

    /** New elements at nominal voltage. */
    public static Elements fresh(double nominalW) {
        return new Elements(nominalW, 0, 1);
    }

    /** Power when all are on: P = P_nominal (V/V_n)² / (1 + rise), W. */
    public double fullW() {
        return nominalW * voltageShare * voltageShare / (1 + resistanceRise);
    }
}
