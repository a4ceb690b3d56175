package portwright.calc.firing;

/** Constants of heat transfer. */
public final class Heat {
    private Heat() {}

    /** Stefan–Boltzmann constant, W/(m² K⁴): CODATA 2018, exact from the SI of 2019. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /**
     * Radiation coefficient between two temperatures: h = ε σ (T1² + T2²)(T1 + T2), W/(m² K).
     *
     * @param emissivity effective emissivity, 0 to 1
     */
    public static double radiationCoefficient(double emissivity, double t1K, double t2K) {
        return emissivity * STEFAN_BOLTZMANN * (t1K * t1K + t2K * t2K) * (t1K + t2K);
    }
}
